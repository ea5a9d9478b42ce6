//! How a value can be written, as data: what reading, reports, the reference and an editor agree on.

use crate::closed_sets::WordSet;
use crate::kind::Kind;

/// One way to write a phrase: its parts in their order.
pub type Form = &'static [FormPart];

/// How a value can be written, phrase by phrase: as one phrase that stands alone, or as a first phrase
/// with others behind it.
#[derive(Copy, Clone, Debug)]
pub struct Takes {
    /// The forms of a phrase behind which none can stand.
    pub alone: &'static [Form],
    /// The forms of a first phrase.
    pub first: &'static [Form],
    /// The forms of each phrase behind it.
    pub then: &'static [Form],
    /// Whether one phrase at least has to stand behind the first.
    pub needs_more: bool,
}

/// A part of a phrase.
#[derive(Copy, Clone, Debug)]
pub enum FormPart {
    /// These words.
    Words(&'static str),
    /// One of these words, which mean the same; the usual one first.
    AnyOf(&'static [&'static str]),
    /// The words of one member of a closed set.
    OneOf(WordSet),
    /// A length, or a sum that comes to one.
    Length,
    /// A length, or a range of lengths: `3 in to 4 in ideally 3 1/4 in`.
    Range,
    /// A whole number of things.
    Count,
    /// A plain number.
    Number,
    /// A part of a whole: `3 %`.
    Percentage,
    /// A weight: `12 g`.
    Weight,
    /// A weight for an area: `210 g/m2`.
    WeightOfArea,
    /// A unit that cloth is sold by: `yd`, `m`, `ft`.
    Unit,
    /// The sign of a size: `x`.
    Times,
    /// A point of an outline: `(width, drop)`.
    Point,
    /// The name of an item of this kind, with arguments where it asks for them.
    Name(Kind),
    /// The name of a panel of the same treatment, or of the window's.
    Panel,
    /// The name of a step of the same making method, or words of the maker's own.
    StepName,
    /// A figure of a panel.
    Figure,
    /// A file of the standard library.
    LibraryFile,
    /// What a line of `expect` speaks of: the job, a cloth, a window, a panel, or a window and a panel.
    Subject,
    /// A value of the kind that the size before it has.
    Sum,
    /// The code of a warning.
    Warning,
    /// Words of the maker's own.
    OwnWords,
    /// A text in quotes.
    Text,
    /// A text in quotes, with figures of a panel between curly brackets.
    Sentence,
    /// The path of a file, in quotes.
    Path,
    /// What may be left out.
    Perhaps(Form),
}

impl FormPart {
    /// Whether it is written as a sum: numbers and the names that stand for them.
    pub(crate) fn is_sum(self) -> bool {
        match self {
            Self::Length
            | Self::Range
            | Self::Count
            | Self::Number
            | Self::Percentage
            | Self::Weight
            | Self::WeightOfArea
            | Self::Point
            | Self::Sum => true,
            Self::Words(_)
            | Self::AnyOf(_)
            | Self::OneOf(_)
            | Self::Unit
            | Self::Times
            | Self::Name(_)
            | Self::Panel
            | Self::StepName
            | Self::Figure
            | Self::LibraryFile
            | Self::Subject
            | Self::Warning
            | Self::OwnWords
            | Self::Text
            | Self::Sentence
            | Self::Path
            | Self::Perhaps(_) => false,
        }
    }
}

/// A range of lengths, part by part.
pub(crate) const RANGE: Form = {
    use FormPart::{Length, Perhaps, Words};
    &[
        Length,
        Perhaps(&[Words("to"), Length, Perhaps(&[Words("ideally"), Length])]),
    ]
};

impl Takes {
    /// No phrase at all.
    pub(crate) const NOTHING: Self = Self::one(&[]);

    /// One phrase.
    pub(crate) const fn one(alone: &'static [Form]) -> Self {
        Self {
            alone,
            first: &[],
            then: &[],
            needs_more: false,
        }
    }

    /// As many phrases as there are, all alike.
    pub(crate) const fn each(forms: &'static [Form]) -> Self {
        Self::first(forms, forms)
    }

    /// A first phrase, and perhaps others behind it.
    pub(crate) const fn first(first: &'static [Form], then: &'static [Form]) -> Self {
        Self {
            first,
            then,
            ..Self::NOTHING
        }
    }

    /// A first phrase, and others behind it.
    pub(crate) const fn both(first: &'static [Form], then: &'static [Form]) -> Self {
        Self {
            needs_more: true,
            ..Self::first(first, then)
        }
    }

    /// The same, or one phrase that stands alone.
    pub(crate) const fn or(self, alone: &'static [Form]) -> Self {
        Self { alone, ..self }
    }

    /// The forms of the phrase with this number, counted from nought.
    pub fn phrase(&self, number: usize) -> impl Iterator<Item = Form> {
        let (alone, first) = match number {
            0 => (self.alone, self.first),
            _ => (self.then, &[][..]),
        };
        alone.iter().chain(first).copied()
    }
}
