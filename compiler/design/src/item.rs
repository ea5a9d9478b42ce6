//! Items as written: named, sorted into their parts, nothing read yet.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Entry, Phrase, Term};

use crate::kind::Kind;
use crate::scope::Written;

/// A fabric, rod, outline, panel … as written.
#[derive(Clone, Debug)]
pub(crate) struct Item<'t> {
    /// Its kind.
    pub kind: Kind,
    /// Its name.
    pub name: &'t str,
    /// Where its name stands.
    pub name_span: Span,
    /// What has to be given to use it.
    pub parameters: Vec<Parameter<'t>>,
    /// The item it copies, with arguments.
    pub like: Option<&'t Term>,
    /// The treatment of a window, with arguments.
    pub treatment: Option<&'t Term>,
    /// The words after its name that say how it is drawn: `half`; `from centre`, `mirrored`.
    pub manner: Vec<&'t [Term]>,
    /// Its properties by key.
    pub properties: BTreeMap<&'t str, Written<'t>>,
    /// Where the key of each stands; a window of a list has none.
    pub key_spans: BTreeMap<&'t str, Span>,
    /// Its panels, for a treatment.
    pub panels: Vec<Item<'t>>,
    /// Its measures.
    pub measures: BTreeMap<&'t str, Written<'t>>,
    /// Its steps, for an outline or a pleat rule.
    pub steps: Vec<Step<'t>>,
    /// The steps of the work, for a making method.
    pub work_steps: Vec<WorkStep<'t>>,
    /// Whether it comes from the standard library.
    pub from_library: bool,
    /// Whether a part of it was reported while it was sorted, so that what is missing may be there.
    pub damaged: bool,
}

/// Something that has to be given to use an item.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Parameter<'t> {
    /// Its name.
    pub name: &'t str,
    /// Where it stands.
    pub span: Span,
    /// What it is when nothing is given.
    pub default: Option<Written<'t>>,
}

/// A written step: phrases that belong together, or steps made several times.
#[derive(Clone, Debug)]
pub(crate) enum Step<'t> {
    /// One step.
    Plain {
        /// Its phrases; the first begins with the word of the step.
        phrases: Vec<&'t Phrase>,
        /// All of them.
        span: Span,
    },
    /// Steps made several times.
    Repeat {
        /// `repeat 4 to 9 times`.
        head: &'t Phrase,
        /// What is repeated.
        steps: Vec<Step<'t>>,
        /// All of it.
        span: Span,
    },
}

/// A step of the work as written: `cut: "Cut the face {face size}.", caution shears`.
#[derive(Clone, Debug)]
pub(crate) struct WorkStep<'t> {
    /// Its name.
    pub name: String,
    /// Where its name stands.
    pub name_span: Span,
    /// What is said of it.
    pub said: Written<'t>,
}

impl Step<'_> {
    /// Where it stands.
    pub fn span(&self) -> Span {
        match self {
            Self::Plain { span, .. } | Self::Repeat { span, .. } => *span,
        }
    }
}

impl<'t> Item<'t> {
    /// Where the item is named; what a missing property is reported at.
    pub fn place(&self) -> Span {
        self.name_span
    }

    /// The names of its parameters.
    pub fn parameter_names(&self) -> impl Iterator<Item = &'t str> + '_ {
        self.parameters.iter().map(|parameter| parameter.name)
    }
}

/// An entry at file level that is not an item: a setting, an expectation, an suppression.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Line<'t> {
    /// The word it begins with.
    pub word: &'t str,
    /// The entry.
    pub entry: &'t Entry,
    /// Whether it stands in the main file.
    pub in_main: bool,
}
