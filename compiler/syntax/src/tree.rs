//! The syntax tree: what was written and where, and nothing of what it means.
//!
//! A file is a sheet of [`Entry`]s. An entry has a head, perhaps a value after `:` and perhaps a block
//! of further entries. Heads and values are [`Phrases`]: phrases parted by commas, each a run of
//! [`Term`]s. No word is reserved; `design` gives the words their meaning.
//!
//! What could not be read has been reported and stands in the tree as [`TermKind::Broken`], so that
//! whoever reads the tree stays silent about it.

mod dump;
mod node;
mod reading;

use pelmet_diagnostics::{FileId, Span};
use pelmet_measure::{Ratio, Unit};

pub use node::Node;

/// All that one file says.
#[derive(Clone, Debug)]
pub struct SyntaxTree {
    /// The file that was read.
    pub file: FileId,
    /// The entries, as they follow each other.
    pub entries: Vec<Entry>,
    /// Every comment, as they follow each other; no comment is part of an entry.
    pub comments: Vec<Comment>,
}

/// Words for people, from `#` to the end of its line.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Comment {
    /// The comment with its `#`, without blanks at its end.
    pub text: String,
    /// Where it stands.
    pub span: Span,
}

/// One property, item or step: `drop: 17 in`, `window bench-left: valance { ... }`, `to (width, drop)`.
#[derive(Clone, Debug)]
pub struct Entry {
    /// What stands before the separator, or all of an entry without one.
    pub head: Phrases,
    /// The sign between head and value.
    pub separator: Option<Separator>,
    /// What stands after the separator; nothing for `drop:`.
    pub value: Option<Phrases>,
    /// The entries within its braces.
    pub block: Option<EntryBlock>,
    /// From its first letter to its last.
    pub span: Span,
}

/// The sign between a head and a value.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Separator {
    /// `:`, the usual sign.
    Colon,
    /// `=`, which `expect` and `measure` compare with; elsewhere it is reported and read as [`Separator::Colon`].
    Equals,
}

/// Entries between braces.
#[derive(Clone, Debug)]
pub struct EntryBlock {
    /// The entries, as they follow each other.
    pub entries: Vec<Entry>,
    /// From `{` to `}`, both included.
    pub span: Span,
}

/// Phrases parted by commas.
#[derive(Clone, Debug)]
pub struct Phrases {
    /// One phrase or more.
    pub phrases: Vec<Phrase>,
    /// From the first letter of the first to the last of the last.
    pub span: Span,
}

/// A run of terms: `fill 20 in to 30 in`.
#[derive(Clone, Debug)]
pub struct Phrase {
    /// One term or more.
    pub terms: Vec<Term>,
    /// From the first letter of the first to the last of the last.
    pub span: Span,
}

/// One thing said.
#[derive(Clone, Debug)]
pub struct Term {
    /// What was written, and what it is made of.
    pub kind: TermKind,
    /// Where it stands.
    pub span: Span,
}

/// The things that can be written as one term.
#[derive(Clone, Debug)]
pub enum TermKind {
    /// A number, with its unit if it has one.
    Number(Number),
    /// A word: a name or a word of the language.
    Name(String),
    /// A text in quotes, without them.
    Text(String),
    /// A name with arguments: `brass-pole(72 in)`.
    Call(Call),
    /// Two terms or more in brackets: `(width, drop)`.
    Point(Vec<Term>),
    /// One term in brackets: `(drop - 4 in)`.
    Group(Box<Term>),
    /// The sign between the sides of a size: `x` or `×`.
    Times,
    /// A term with a minus before it.
    Negative(Box<Term>),
    /// A sum of two terms.
    Binary {
        /// What is done with them.
        operator: Operator,
        /// Where its sign stands.
        operator_span: Span,
        /// The term before the sign.
        left: Box<Term>,
        /// The term after the sign.
        right: Box<Term>,
    },
    /// What could not be read and has been reported, with the names in it that could.
    Broken(Vec<Name>),
}

/// A number as it was written, exactly.
#[derive(Clone, PartialEq, Debug)]
pub struct Number {
    /// How many of its unit, exactly as written; of inches for `5' 6"`, which is 66.
    pub amount: Ratio,
    /// Of what, and where the unit stands; nothing for a plain number.
    pub unit: Option<(Unit, Span)>,
}

/// A name with arguments, or with parameters where a template is made.
#[derive(Clone, Debug)]
pub struct Call {
    /// The name before the bracket: of what is used with these arguments, or made with these parameters.
    pub name: Name,
    /// What stands between the brackets.
    pub arguments: Vec<Argument>,
}

/// A name and where it stands.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Name {
    /// Its letters, as they were written.
    pub text: String,
    /// Where it stands.
    pub span: Span,
}

/// One argument or parameter: `72 in`, `tail = 5 in`.
#[derive(Clone, Debug)]
pub struct Argument {
    /// What it is for, where that is said.
    pub name: Option<Name>,
    /// What it is; nothing only for `tail =`.
    pub value: Option<Phrase>,
    /// From its first letter to its last.
    pub span: Span,
}

/// What a sum does with its two terms.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Operator {
    /// `+`: the sum.
    Add,
    /// `-`: the difference.
    Subtract,
    /// `*`: the product.
    Multiply,
    /// `/`: the quotient.
    Divide,
}

impl Operator {
    /// The one sign that the formatter writes for it.
    #[must_use]
    pub const fn sign(self) -> &'static str {
        match self {
            Self::Add => "+",
            Self::Subtract => "-",
            Self::Multiply => "*",
            Self::Divide => "/",
        }
    }
}
