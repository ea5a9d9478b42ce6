//! The steps of a making method with the figures of one panel in their words.

use pelmet_model::{
    Fabric, Figure, Matter, PanelMade, PanelOrder, PartMade, PieceMatter, Said, Sentence,
    SentenceMade, SentencePart, StepMade,
};

use crate::finish::figures::Figured;

/// The steps of the panel's method, those left out that say nothing of it.
pub(crate) fn steps(
    order: &PanelOrder,
    made: &PanelMade,
    fabrics: &[Fabric],
    matters: &mut Vec<Matter>,
) -> Vec<StepMade> {
    let panel = Figured {
        order,
        made,
        fabrics,
    };
    let mut steps = Vec::new();
    for (number, step) in order.making.steps.iter().enumerate() {
        let mut sentences = Vec::new();
        for (sentence, written) in step.sentences.iter().enumerate() {
            sentences.extend(panel.said(written));
            let absent = panel
                .absent(written)
                .map(|figure| PieceMatter::FigureAbsent {
                    step: number,
                    sentence,
                    figure,
                });
            matters.extend(absent.map(Matter::from));
        }
        if !sentences.is_empty() {
            steps.push(StepMade {
                name: step.name.clone(),
                sentences,
                cautions: step.cautions.clone(),
            });
        }
    }
    steps
}

impl Figured<'_> {
    /// How often a sentence is said of the panel.
    fn times(self, said: Said) -> usize {
        let has = |figure| self.figure(figure, 0).is_some();
        match said {
            Said::Always => 1,
            Said::When(figure) => has(figure).into(),
            Said::WhenNo(figure) => usize::from(!has(figure)),
            Said::ForEach(each) => self.number_of(each),
        }
    }

    /// A sentence as often as it is said.
    fn said(self, sentence: &Sentence) -> Vec<SentenceMade> {
        let turns = 0..self.times(sentence.said);
        let made = turns.map(|turn| SentenceMade {
            one_of_each: matches!(sentence.said, Said::ForEach(_)),
            parts: sentence
                .parts
                .iter()
                .filter_map(|part| self.part(part, turn))
                .collect(),
        });
        made.collect()
    }

    fn part(self, part: &SentencePart, turn: usize) -> Option<PartMade> {
        match part {
            SentencePart::Words(words) => Some(PartMade::Words(words.clone())),
            SentencePart::Figure(figure) => self.figure(*figure, turn).map(PartMade::Value),
        }
    }

    /// The figures that a sentence said of the panel names and the panel has not.
    fn absent(self, sentence: &Sentence) -> impl Iterator<Item = Figure> {
        let said = self.times(sentence.said) > 0;
        let parts = sentence.parts.iter().filter(move |_| said);
        parts.filter_map(move |part| match part {
            SentencePart::Figure(figure) => self.figure(*figure, 0).is_none().then_some(*figure),
            SentencePart::Words(_) => None,
        })
    }
}
