//! The windows and panels of a design as a diagnostic speaks of them: by name, at their text.

use pelmet_diagnostics::{FileId, PlacedText, Span};
use pelmet_measure::{Length, System};
use pelmet_model::{FinishedOrder, Layer, PanelOrder, Said, SupportKind, WidthOrder, WindowOrder};

use crate::{
    Design, HeadingKey, MakingKey, PanelKey, PanelSource, SentencePlace, WindowKey, WindowSource,
};

/// A window: what was ordered and where it was written.
#[derive(Copy, Clone)]
pub(super) struct WindowPlace<'d> {
    design: &'d Design,
    pub(super) order: Option<&'d WindowOrder>,
    way: Option<&'d WindowSource>,
}

/// A panel of a window: what was ordered and where it was written.
#[derive(Copy, Clone)]
pub(super) struct PanelPlace<'d> {
    pub(super) window: WindowPlace<'d>,
    pub(super) order: Option<&'d PanelOrder>,
    way: Option<&'d PanelSource>,
}

/// A width as the maker stated it.
pub(super) struct Stated {
    /// The property it was stated by; the finished width where it was not stated.
    pub(super) property: PanelKey,
    /// Its value, or the panel's name where it was not stated.
    pub(super) span: Span,
    /// The length, where it was stated as one.
    length: Option<Length>,
}

impl<'d> WindowPlace<'d> {
    pub(super) fn new(design: &'d Design, window: usize) -> Self {
        let order = design.job.windows.get(window);
        Self {
            design,
            order,
            way: design.source_map.windows.get(window),
        }
    }

    pub(super) fn panel(self, panel: Option<usize>) -> PanelPlace<'d> {
        let order = panel.and_then(|panel| self.order?.panels.get(panel));
        let way = panel.and_then(|panel| self.way?.panels.get(panel));
        PanelPlace {
            window: self,
            order,
            way,
        }
    }

    /// The window in a sentence.
    pub(super) fn name(self) -> String {
        format!("the window {}", self.quoted())
    }

    /// Where a property was written, or else the window's name.
    pub(super) fn span(self, key: WindowKey) -> Span {
        self.way
            .map_or(NOWHERE, |way| way.item.property_or_name(key))
    }

    /// Where its name was written.
    fn place(self) -> Span {
        self.way.map_or(NOWHERE, |way| way.item.name)
    }

    /// A length with where the property was written that it belongs to, or else the window's name.
    pub(super) fn placed(self, key: WindowKey, length: Length) -> PlacedText {
        PlacedText::new(self.span(key), self.text(length))
    }

    /// Where the rod or board was written.
    pub(super) fn support(self) -> Span {
        self.span(WindowKey::of_support(self.support_kind()))
    }

    /// What the window hangs from.
    pub(super) fn support_kind(self) -> SupportKind {
        self.order
            .map_or(SupportKind::Rod, |order| order.support.kind())
    }

    /// By how much neighbours in its row overlap.
    pub(super) fn overlap(self) -> Length {
        self.order.map_or(Length::ZERO, |order| order.overlap)
    }

    /// Whether a property was written for this window.
    pub(super) fn states(self, key: WindowKey) -> bool {
        self.way.is_some_and(|way| way.item.states(key))
    }

    /// A length for a diagnostic.
    pub(super) fn text(self, length: Length) -> String {
        self.design.style.plain(length)
    }

    /// An estimate that is no more than this, rounded up to the step of a mark.
    pub(super) fn at_most(self, length: Length) -> String {
        let step = self.design.style.mark_step;
        self.design.style.mark(length.round_up_to(step))
    }

    /// A length to the step of a mark, as an estimate is told.
    pub(super) fn mark(self, length: Length) -> String {
        self.design.style.mark(length)
    }

    /// A length to be typed in: exactly this one, in millimetres where no fraction of an inch is.
    pub(super) fn exact(self, length: Length) -> String {
        let rounded = self
            .text(length)
            .starts_with(|first: char| first.is_alphabetic());
        if rounded {
            format!("{} mm", length.millimetres_text())
        } else {
            self.text(length)
        }
    }

    fn quoted(self) -> String {
        format!("`{}`", self.order.map_or("", |order| &order.name))
    }
}

impl<'d> PanelPlace<'d> {
    /// The panel in a sentence.
    pub(super) fn name(self) -> String {
        format!(
            "the panel `{}` of {}",
            self.own_name(),
            self.window.quoted()
        )
    }

    /// The name the maker gave it.
    pub(super) fn own_name(self) -> &'d str {
        self.order.map_or("", |order| &order.name)
    }

    /// Where its name was written.
    pub(super) fn place(self) -> Span {
        self.way.map_or(self.window.place(), |way| way.item.name)
    }

    /// Where a property was written, or else the panel's name.
    pub(super) fn span(self, key: PanelKey) -> Span {
        self.way
            .map_or(self.place(), |way| way.item.property_or_name(key))
    }

    /// A length with where the property was written that it belongs to, or else the panel's name.
    pub(super) fn placed(self, key: PanelKey, length: Length) -> PlacedText {
        PlacedText::new(self.span(key), self.text(length))
    }

    /// Where the cloth of a layer was named.
    pub(super) fn cloth(self, layer: Layer) -> Span {
        self.span(PanelKey::of_layer(layer.kind()))
    }

    /// Where the cloth of a layer was described.
    pub(super) fn fabric(self, layer: Layer) -> Option<Span> {
        let fabric = self.order?.cloth(layer)?;
        self.window.design.source_map.fabrics.get(fabric).copied()
    }

    /// The name of the face cloth.
    pub(super) fn face_name(self) -> Option<&'d str> {
        let fabric = self.window.design.job.fabrics.get(self.order?.face)?;
        Some(&fabric.name)
    }

    /// Whether a property was written for this panel.
    pub(super) fn states(self, key: PanelKey) -> bool {
        self.way.is_some_and(|way| way.item.states(key))
    }

    /// Where a step of the pleats was written.
    pub(super) fn pleat_step(self, step: usize) -> Span {
        let step = self.way.and_then(|way| way.pleat_steps.get(step));
        step.copied().unwrap_or(self.span(PanelKey::Pleats))
    }

    /// Where a step of the outline was written.
    pub(super) fn outline_step(self, step: usize) -> Span {
        let step = self.way.and_then(|way| way.outline_steps.get(step));
        step.copied().unwrap_or(self.span(PanelKey::Outline))
    }

    /// Where a number of the heading was written, if it was.
    pub(super) fn heading(self, key: HeadingKey) -> Option<Span> {
        self.way?.heading.get(&key).copied()
    }

    /// Where a number of the making method was written, if it was.
    pub(super) fn making(self, key: MakingKey) -> Option<Span> {
        self.way?.making.get(&key).copied()
    }

    /// Where the words of a making step were written, by its number and that of the sentence.
    pub(super) fn sentence(self, step: usize, sentence: usize) -> Option<&'d SentencePlace> {
        self.way?.making_steps.get(step)?.get(sentence)
    }

    /// Whether those words are said of every panel.
    pub(super) fn is_always_said(self, step: usize, sentence: usize) -> bool {
        let step = self.order.and_then(|order| order.making.steps.get(step));
        let sentence = step.and_then(|step| step.sentences.get(sentence));
        sentence.is_some_and(|sentence| sentence.said == Said::Always)
    }

    /// How the finished width was stated, by itself or by another that it follows from.
    pub(super) fn finished_width(self) -> Stated {
        self.first_stated(FINISHED_FIRST)
    }

    /// How the flat width was stated, by itself or by another that it follows from.
    pub(super) fn flat_width(self) -> Stated {
        self.first_stated(FLAT_FIRST)
    }

    fn first_stated(self, properties: &[PanelKey]) -> Stated {
        let stated = properties.iter().copied().find(|key| self.states(*key));
        self.stated(stated.unwrap_or(PanelKey::FinishedWidth))
    }

    /// What was stated by one of the properties of a width.
    pub(super) fn stated(self, property: PanelKey) -> Stated {
        let width = self.order.map(|order| order.width).unwrap_or_default();
        let length = stated_length(&width, property).filter(|_| self.states(property));
        Stated {
            property,
            span: self.span(property),
            length,
        }
    }

    /// A length for a diagnostic.
    pub(super) fn text(self, length: Length) -> String {
        self.window.text(length)
    }

    /// A length to be typed in.
    pub(super) fn exact(self, length: Length) -> String {
        self.window.exact(length)
    }

    /// A length to be typed in that is this one or a little more, as cloth is cut.
    pub(super) fn at_least(self, length: Length) -> String {
        self.window.design.style.cut(length)
    }

    /// A place on the cloth, as it is marked.
    pub(super) fn mark(self, length: Length) -> String {
        self.window.design.style.mark(length)
    }

    /// A width for an example, in the units of the house.
    pub(super) fn example(self) -> &'static str {
        match self.window.design.style.system {
            System::Inches => "40 in",
            System::Metric => "1000 mm",
        }
    }
}

impl Stated {
    /// What to write so that the width is so much more (or less, where negative).
    pub(super) fn changed(&self, panel: PanelPlace<'_>, by: Length) -> Option<String> {
        let length = self.length? + by;
        length.is_positive().then(|| panel.exact(length))
    }
}

/// The properties that can state a width, the most direct first.
const FINISHED_FIRST: &[PanelKey] = &[
    PanelKey::FinishedWidth,
    PanelKey::FlatWidth,
    PanelKey::CutWidth,
    PanelKey::Fullness,
];
const FLAT_FIRST: &[PanelKey] = &[
    PanelKey::FlatWidth,
    PanelKey::CutWidth,
    PanelKey::Fullness,
    PanelKey::FinishedWidth,
];

/// What has no place of its own is told at the start of the main file.
const NOWHERE: Span = Span {
    file: FileId(0),
    start: 0,
    end: 0,
};

fn stated_length(width: &WidthOrder, property: PanelKey) -> Option<Length> {
    match (property, width.finished) {
        (PanelKey::FinishedWidth, Some(FinishedOrder::Exact(length))) => Some(length),
        (PanelKey::FlatWidth, _) => width.flat,
        (PanelKey::CutWidth, _) => width.cut,
        _ => None,
    }
}
