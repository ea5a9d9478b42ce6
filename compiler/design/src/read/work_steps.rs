//! Reading the steps of a making method.

use pelmet_diagnostics::{PlacedText, Span, codes};
use pelmet_model::{CautionKind, Each, Figure, MakingStep, Said, Sentence};
use pelmet_syntax::tree::{Phrase, Term, TermKind};

use crate::cursor::Cursor;
use crate::item::WorkStep;
use crate::reader::Reader;
use crate::scope::Scope;
use crate::source_map::SentencePlace;

/// The most sentences one making method may have. Some are said once for each pleat, so many times
/// over.
pub(crate) const MAXIMUM_SENTENCES: usize = 200;

/// The steps of a making method, each with the places of its sentences.
pub(crate) type PlacedSteps = (Vec<MakingStep>, Vec<Vec<SentencePlace>>);

const STEP: &str = "words in quotes, perhaps after `when FIGURE`, `when no FIGURE` or \
    `for each pleat`, and cautions such as `caution shears`";

impl<'t> Reader<'t> {
    /// The steps; one that cannot be read is reported.
    pub fn work_steps(&mut self, written: &'t [WorkStep<'t>], scope: &Scope<'t>) -> PlacedSteps {
        let phrases = written.iter().flat_map(|step| step.said.phrases);
        if let Some(beyond) = phrases.into_iter().nth(MAXIMUM_SENTENCES) {
            self.report(codes::too_many_sentences(beyond.span, MAXIMUM_SENTENCES));
            return PlacedSteps::default();
        }
        let steps = written.iter().map(|step| self.work_step_read(step, scope));
        steps.unzip()
    }

    fn work_step_read(
        &mut self,
        written: &'t WorkStep<'t>,
        scope: &Scope<'t>,
    ) -> (MakingStep, Vec<SentencePlace>) {
        let mut step = MakingStep {
            name: written.name.clone(),
            ..MakingStep::default()
        };
        let mut places = Vec::new();
        let (mut cautions_before, mut says_nothing) = (false, true);
        for phrase in written.said.phrases {
            let mut cursor = Cursor::new(phrase, scope);
            // After a caution a word alone is one more.
            let one_more = cautions_before && is_one_word(phrase);
            cautions_before = cursor.words(&["caution"]) || one_more;
            if cautions_before {
                step.cautions.extend(self.caution(&mut cursor, &step.name));
                continue;
            }
            says_nothing = false;
            if let Some((sentence, place)) = self.sentence(cursor, &step.name) {
                step.sentences.push(sentence);
                places.push(place);
            }
        }
        if says_nothing {
            self.word_not_expected(written.said.span.end_of(), &step.name, STEP);
        }
        (step, places)
    }

    fn caution(&mut self, cursor: &mut Cursor<'t>, step: &str) -> Option<CautionKind> {
        let Some((name, span)) = cursor.any_word() else {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, step, "the name of a caution behind `caution`");
            return None;
        };
        self.nothing_more(cursor, step, STEP)?;
        let kind = CautionKind::of_word(name);
        if kind.is_none() {
            let known: Vec<&str> = CautionKind::ALL.iter().map(|kind| kind.word()).collect();
            self.report(codes::caution_unknown(span, name, &known));
        }
        kind
    }

    /// `"Cut the face {face size}."`, `when lining "…"`, `for each pleat "…"`.
    fn sentence(
        &mut self,
        mut cursor: Cursor<'t>,
        step: &str,
    ) -> Option<(Sentence, SentencePlace)> {
        let said = self.said(&mut cursor, step)?;
        let Some(Term {
            kind: TermKind::Text(text),
            span,
        }) = cursor.peek()
        else {
            if !cursor.is_broken() {
                let place = cursor.peek().map_or(cursor.end(), |term| term.span);
                self.word_not_expected(place, step, STEP);
            }
            return None;
        };
        cursor.next();
        self.nothing_more(&cursor, step, STEP)?;
        let (parts, figures) = self.words_with_figures(text, *span, said);
        let place = SentencePlace {
            words: *span,
            figures,
        };
        Some((Sentence { said, parts }, place))
    }

    /// What stands before the words of a sentence.
    fn said(&mut self, cursor: &mut Cursor<'t>, step: &str) -> Option<Said> {
        if cursor.words(&["for", "each"]) {
            return self.each(cursor, step).map(Said::ForEach);
        }
        if !cursor.words(&["when"]) {
            return Some(Said::Always);
        }
        let no = cursor.words(&["no"]);
        let (name, span) = words_before_text(cursor);
        let Some(span) = span else {
            self.word_not_expected(cursor.end(), step, STEP);
            return None;
        };
        let figure = self.figure(&name, span)?;
        if let Some(each) = figure.of_each() {
            self.report(codes::FigureOutOfPlace {
                words: span,
                figure: PlacedText::new(span, name),
                each: each.word(),
                bare: false,
            });
            return None;
        }
        Some(if no {
            Said::WhenNo(figure)
        } else {
            Said::When(figure)
        })
    }

    fn each(&mut self, cursor: &mut Cursor<'t>, step: &str) -> Option<Each> {
        let (name, span) = words_before_text(cursor);
        let known = Each::of_word(&name);
        if known.is_none() {
            let place = span.unwrap_or(cursor.end());
            let can_be = "`for each pleat`, `for each join` or `for each tape run`, then words";
            self.word_not_expected(place, step, can_be);
        }
        known
    }

    /// A figure by its name, which is reported where there is none.
    pub(super) fn figure(&mut self, name: &str, span: Span) -> Option<Figure> {
        let figure = Figure::from_name(name);
        if figure.is_none() {
            let known: Vec<&str> = Figure::ALL.iter().map(|(_, name)| *name).collect();
            self.report(codes::figure_unknown(span, name, &known));
        }
        figure
    }
}

/// The next words up to a text, which are then read, and where they stand.
fn words_before_text(cursor: &mut Cursor<'_>) -> (String, Option<Span>) {
    let mut words = Vec::new();
    let mut place: Option<Span> = None;
    while let Some((word, span)) = cursor.any_word() {
        words.push(word);
        place = Some(place.map_or(span, |place| place.to(span)));
    }
    (words.join(" "), place)
}

fn is_one_word(phrase: &Phrase) -> bool {
    phrase.terms.len() == 1 && phrase.words().is_some()
}
