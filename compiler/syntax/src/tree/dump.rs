//! The tree as plain text without places: what two files must have in common to say the same.

use std::fmt::{self, Display, Formatter, Write};

use super::{
    Argument, Call, Entry, EntryBlock, Number, Operator, Phrase, Phrases, Separator, SyntaxTree,
    Term, TermKind,
};

impl SyntaxTree {
    /// The tree as text, one entry a line and without places: two files say the same if their
    /// dumps are the same.
    #[must_use]
    pub fn dump(&self) -> String {
        let mut out = String::new();
        // Writing to a string cannot fail.
        let _ = dump_entries(&self.entries, 0, &mut out);
        out
    }
}

fn dump_entries(entries: &[Entry], depth: usize, out: &mut String) -> fmt::Result {
    entries
        .iter()
        .try_for_each(|entry| dump_entry(entry, depth, out))
}

fn dump_entry(entry: &Entry, depth: usize, out: &mut String) -> fmt::Result {
    write!(out, "{}{}", "  ".repeat(depth), entry.head)?;
    if let Some(separator) = entry.separator {
        write!(out, " {separator}")?;
    }
    if let Some(value) = &entry.value {
        write!(out, " {value}")?;
    }
    match &entry.block {
        Some(EntryBlock { entries, .. }) => {
            writeln!(out, " {{}}")?;
            dump_entries(entries, depth.saturating_add(1), out)
        }
        None => writeln!(out),
    }
}

impl Display for Separator {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Colon => ":",
            Self::Equals => "=",
        })
    }
}

impl Display for Phrases {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        separated(f, &self.phrases, ", ")
    }
}

impl Display for Phrase {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        separated(f, &self.terms, " ")
    }
}

impl Display for Term {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        match &self.kind {
            TermKind::Number(number) => number.fmt(f),
            TermKind::Name(word) => f.write_str(word),
            TermKind::Text(text) => write!(f, "{text:?}"),
            TermKind::Call(call) => call.fmt(f),
            TermKind::Point(places) => {
                f.write_str("(point ")?;
                separated(f, places, " ")?;
                f.write_char(')')
            }
            TermKind::Group(inner) => write!(f, "(group {inner})"),
            TermKind::Times => f.write_char('×'),
            TermKind::Negative(inner) => write!(f, "(minus {inner})"),
            TermKind::Binary {
                operator,
                left,
                right,
                ..
            } => write!(f, "({operator} {left} {right})"),
            TermKind::Broken(_) => f.write_str("<broken>"),
        }
    }
}

impl Display for Number {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        match self.unit {
            Some((unit, _)) => write!(f, "[{} {}]", self.amount, unit.symbol()),
            None => write!(f, "[{}]", self.amount),
        }
    }
}

impl Display for Call {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        write!(f, "{}(", self.name.text)?;
        separated(f, &self.arguments, ", ")?;
        f.write_char(')')
    }
}

impl Display for Argument {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        if let Some(name) = &self.name {
            write!(f, "{} =", name.text)?;
        }
        if let Some(value) = &self.value {
            let before = if self.name.is_some() { " " } else { "" };
            write!(f, "{before}{value}")?;
        }
        Ok(())
    }
}

impl Display for Operator {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        f.write_str(self.sign())
    }
}

fn separated<T: Display>(f: &mut Formatter<'_>, parts: &[T], between: &str) -> fmt::Result {
    for (index, part) in parts.iter().enumerate() {
        if index > 0 {
            f.write_str(between)?;
        }
        part.fmt(f)?;
    }
    Ok(())
}
