//! What is told to the maker at places of the text: an error, a warning or a note.

use std::fmt;

use crate::{Code, Fix, Span};

/// How bad a diagnostic is; the worst comes first.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Severity {
    /// It cannot be made.
    Error,
    /// It can be made and will probably disappoint.
    Warning,
    /// What was assumed where the design is silent.
    Note,
}

/// What is told at once: what is wrong, every place that takes part, the sum that shows why, and what to do.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Diagnostic {
    /// Which kind of diagnostic this is.
    pub code: &'static Code,
    /// How bad it is; as its code says.
    pub severity: Severity,
    /// What is wrong, in workroom words; it can be understood without the text it points at.
    pub title: String,
    /// Every place that takes part; the first is where it is wrong.
    pub labels: Vec<Label>,
    /// The lines of the sum that shows why.
    pub sum: Vec<String>,
    /// What to do about it.
    pub help: Vec<String>,
    /// A change that a machine can make.
    pub fix: Option<Fix>,
    /// The reason for which the maker accepts this warning.
    pub accepted: Option<String>,
}

/// What one place has to do with it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Label {
    /// What is underlined when the diagnostic is drawn.
    pub span: Span,
    /// What is wrong here, or what is stated here.
    pub text: String,
}

/// A text and the place in a design that it stands for, as a diagnostic speaks of both: a length
/// with where it was written, a kind with the value that is of it. It is printed as its text.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct PlacedText {
    /// The place, to be labelled.
    pub span: Span,
    /// What stands there, or comes of it, in words.
    pub text: String,
}

impl PlacedText {
    /// A text for what stands at `span`.
    pub fn new(span: Span, text: impl Into<String>) -> PlacedText {
        let text = text.into();
        PlacedText { span, text }
    }
}

impl fmt::Display for PlacedText {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&self.text)
    }
}

impl Severity {
    /// What a diagnostic of it begins with: "error".
    pub fn word(self) -> &'static str {
        match self {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Note => "note",
        }
    }
}

impl Diagnostic {
    /// Adds a place that takes part; the first one added is the primary.
    #[must_use]
    pub fn label(mut self, span: Span, text: impl Into<String>) -> Diagnostic {
        let text = text.into();
        self.labels.push(Label { span, text });
        self
    }

    /// Adds a place that takes part, where one is known.
    #[must_use]
    pub fn label_if_known(self, span: Option<Span>, text: impl Into<String>) -> Diagnostic {
        match span {
            Some(span) => self.label(span, text),
            None => self,
        }
    }

    /// Adds one line of the sum that shows why.
    #[must_use]
    pub fn sum(mut self, line: impl Into<String>) -> Diagnostic {
        self.sum.push(line.into());
        self
    }

    /// Adds something to do about it.
    #[must_use]
    pub fn help(mut self, text: impl Into<String>) -> Diagnostic {
        self.help.push(text.into());
        self
    }

    /// Sets the change that a machine can make.
    #[must_use]
    pub fn fix(mut self, fix: Fix) -> Diagnostic {
        self.fix = Some(fix);
        self
    }

    /// Marks a warning as accepted for a reason; an error or a note stays as it is, since nothing
    /// makes the impossible possible.
    #[must_use]
    pub fn accept(mut self, reason: impl Into<String>) -> Diagnostic {
        if self.severity == Severity::Warning {
            self.accepted = Some(reason.into());
        }
        self
    }

    /// Where it is wrong, if that is in a text at all.
    pub fn primary(&self) -> Option<Span> {
        self.labels.first().map(|label| label.span)
    }
}
