//! The sizes of a panel, and what makes each of them so.

use pelmet_design::{Expected, PanelKey, PanelSize, PanelSource};
use pelmet_diagnostics::Span;
use pelmet_measure::{Length, Style};
use pelmet_model::{Layer, PanelMade, PanelOrder, PieceMade, PleatMade};

use super::came_out::CameOut;
use crate::words::part_of_panel;

/// A panel whose size is asked for.
pub(super) struct PanelAsked<'a> {
    pub(super) order: &'a PanelOrder,
    pub(super) made: &'a PanelMade,
    pub(super) way: &'a PanelSource,
    pub(super) style: Style,
}

impl PanelAsked<'_> {
    pub(super) fn came_out(&self, size: PanelSize, window: &str) -> Option<CameOut> {
        let PanelMade {
            finished,
            flat,
            made_length,
            ..
        } = *self.made;
        let (what, value, sum) = match size {
            PanelSize::FinishedWidth => ("finished width", finished, self.finished_sum()),
            PanelSize::FlatWidth => ("flat width", flat, self.flat_sum()),
            PanelSize::MadeLength => ("made length", made_length, self.made_sum()),
            PanelSize::Drop => ("drop", self.order.drop, Vec::new()),
            PanelSize::CutWidth => {
                let cut = self.face()?.cut_width;
                ("cut width", cut, self.cut_sum("flat", flat, cut))
            }
            PanelSize::CutLength => {
                let cut = self.face()?.cut_length;
                ("cut length", cut, self.cut_sum("made up", made_length, cut))
            }
            PanelSize::ThickestStack => ("thickest stack", self.made.thickest_stack?, Vec::new()),
            PanelSize::Tape => {
                let runs = self.made.tape.iter().map(|run| run.length);
                ("tape", runs.sum(), Vec::new())
            }
            PanelSize::Weight => return self.weight(window),
            PanelSize::Pleats => {
                return self.counted("number of pleats", self.made.pleating.pleats.len(), window);
            }
            PanelSize::Layers => {
                let thickest = usize::try_from(self.made.folding.thickest).ok()?;
                return self.counted("number of layers", thickest, window);
            }
        };
        Some(CameOut {
            what: self.in_words(what, window),
            value: Expected::Length(value),
            text: self.style.plain(value),
            cause: Some((self.cause(size), "this makes it so")),
            sum,
        })
    }

    fn weight(&self, window: &str) -> Option<CameOut> {
        let weight = self.made.weight?;
        Some(CameOut {
            what: self.in_words("weight", window),
            value: Expected::Weight(weight),
            text: self.style.mass(weight),
            cause: None,
            sum: Vec::new(),
        })
    }

    fn counted(&self, what: &str, count: usize, window: &str) -> Option<CameOut> {
        Some(CameOut {
            what: self.in_words(what, window),
            value: Expected::Count(u32::try_from(count).ok()?),
            text: count.to_string(),
            cause: Some((
                self.way.item.property_or_name(PanelKey::Pleats),
                "this makes it so",
            )),
            sum: Vec::new(),
        })
    }

    fn in_words(&self, what: &str, window: &str) -> String {
        part_of_panel(what, &self.order.name, window)
    }

    fn face(&self) -> Option<&PieceMade> {
        self.made
            .pieces
            .iter()
            .find(|piece| piece.layer == Layer::Face)
    }

    /// Where the number was written that the size follows from.
    fn cause(&self, size: PanelSize) -> Span {
        let keys = match size {
            PanelSize::MadeLength | PanelSize::Drop | PanelSize::CutLength => LENGTHS,
            PanelSize::FinishedWidth => WIDTHS_FINISHED_FIRST,
            PanelSize::FlatWidth
            | PanelSize::CutWidth
            | PanelSize::Pleats
            | PanelSize::Layers
            | PanelSize::Weight
            | PanelSize::ThickestStack
            | PanelSize::Tape => WIDTHS,
        };
        let stated = keys.iter().copied().find(|key| self.way.item.states(*key));
        self.way
            .item
            .property_or_name(stated.unwrap_or(PanelKey::Pleats))
    }

    fn finished_sum(&self) -> Vec<String> {
        let PanelMade { finished, flat, .. } = *self.made;
        let (taken_up, turns) = self.taken_up();
        let turns = turns.map_or_else(String::new, |turns| format!(" - {turns} in turns of cloth"));
        self.of_pleats(format!(
            "{} flat - {taken_up} taken up{turns} = {}",
            self.style.plain(flat),
            self.style.plain(finished),
        ))
    }

    fn flat_sum(&self) -> Vec<String> {
        let PanelMade { finished, flat, .. } = *self.made;
        let (taken_up, turns) = self.taken_up();
        let turns = turns.map_or_else(String::new, |turns| format!(" + {turns} in turns of cloth"));
        self.of_pleats(format!(
            "{} finished + {taken_up} taken up{turns} = {}",
            self.style.plain(finished),
            self.style.plain(flat),
        ))
    }

    /// What the pleats take up, and what their creases lose in turns, where they do.
    fn taken_up(&self) -> (String, Option<String>) {
        let PanelMade { finished, flat, .. } = *self.made;
        let turns: Length = self
            .made
            .pleating
            .pleats
            .iter()
            .map(PleatMade::lost_in_turns)
            .sum();
        let counted = turns.is_positive().then(|| self.style.plain(turns));
        (self.style.plain(flat - finished - turns), counted)
    }

    /// A sum that says something only where the panel is wider flat than finished.
    fn of_pleats(&self, sum: String) -> Vec<String> {
        if self.made.flat == self.made.finished {
            Vec::new()
        } else {
            vec![sum]
        }
    }

    fn made_sum(&self) -> Vec<String> {
        let PanelMade {
            made_length,
            heading_depth,
            ..
        } = *self.made;
        vec![format!(
            "{} of heading + {} of drop = {}",
            self.style.plain(heading_depth),
            self.style.plain(self.order.drop),
            self.style.plain(made_length),
        )]
    }

    fn cut_sum(&self, what: &str, sewn: Length, cut: Length) -> Vec<String> {
        vec![format!(
            "{} {what} + {} for allowances and shrinkage = {}",
            self.style.plain(sewn),
            self.style.plain(cut - sewn),
            self.style.plain(cut),
        )]
    }
}

const LENGTHS: &[PanelKey] = &[PanelKey::Drop];
const WIDTHS_FINISHED_FIRST: &[PanelKey] = &[
    PanelKey::FinishedWidth,
    PanelKey::FlatWidth,
    PanelKey::CutWidth,
    PanelKey::Fullness,
];
const WIDTHS: &[PanelKey] = &[
    PanelKey::FlatWidth,
    PanelKey::CutWidth,
    PanelKey::FinishedWidth,
    PanelKey::Fullness,
];
