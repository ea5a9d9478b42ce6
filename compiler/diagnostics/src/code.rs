//! What one code is: its name, its page, and an example of it.

use std::fmt;

use crate::{Diagnostic, Severity};

/// One kind of diagnostic: a constant in a file of its own under [`codes`](crate::codes).
pub struct Code {
    /// The readable name, such as `name-unknown`; the same as its file, with hyphens.
    pub slug: &'static str,
    /// What it means for the work; a warning alone can be accepted.
    pub severity: Severity,
    /// What it means, why it matters in cloth, and what to do; paragraphs parted by a blank line.
    pub page: &'static str,
    /// A design in which this code arises, and no other.
    pub failing: Example,
    /// The same design put right.
    pub mend: Example,
}

/// A small design that shows a code, or its mend.
#[derive(Clone, Copy)]
pub enum Example {
    /// A design in one file.
    Text(&'static str),
    /// Several files as name and text; the first is the main one.
    Files(&'static [(&'static str, &'static str)]),
    /// One file made by a function, where a text would be too long to keep or would be no text.
    Made {
        /// What is in the file, for a reader.
        words: &'static str,
        /// The bytes of the file.
        make: fn() -> Vec<u8>,
    },
    /// Something that happens around a design and not in it, told in words; it cannot be compiled.
    Told(&'static str),
}

impl Code {
    /// Begins a diagnostic of this code; the title says by itself what is wrong.
    pub fn report(&'static self, title: impl Into<String>) -> Diagnostic {
        Diagnostic {
            code: self,
            severity: self.severity,
            title: title.into(),
            labels: Vec::new(),
            sum: Vec::new(),
            help: Vec::new(),
            fix: None,
            accepted: None,
        }
    }
}

/// Two codes are the same when their slugs are.
impl PartialEq for Code {
    fn eq(&self, other: &Code) -> bool {
        self.slug == other.slug
    }
}

impl Eq for Code {}

/// A code prints as its slug; its page would drown whatever it stands in.
impl fmt::Debug for Code {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(self.slug)
    }
}
