//! Changes to a text that a machine can make.

use crate::Span;

/// A change that a machine can make, and what it does in words.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Fix {
    /// What the change does, as a command: "write a colon".
    pub title: String,
    /// The edits, all of which are made or none.
    pub edits: Vec<Edit>,
}

/// One stretch of text to be replaced by another.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Edit {
    /// What is taken out; empty for an insertion.
    pub span: Span,
    /// What is put in; empty for a removal.
    pub text: String,
}

impl Fix {
    /// Puts `text` in the place of what stands at `span`.
    pub fn replace(title: impl Into<String>, span: Span, text: impl Into<String>) -> Fix {
        let edit = Edit {
            span,
            text: text.into(),
        };
        Fix {
            title: title.into(),
            edits: vec![edit],
        }
    }

    /// Puts `text` before the first byte of `span`.
    pub fn insert(title: impl Into<String>, before: Span, text: impl Into<String>) -> Fix {
        Fix::replace(title, before.start_of(), text)
    }

    /// Takes out what stands at `span`.
    pub fn remove(title: impl Into<String>, span: Span) -> Fix {
        Fix::replace(title, span, "")
    }

    /// Adds a further edit, made together with the others.
    #[must_use]
    pub fn and(mut self, span: Span, text: impl Into<String>) -> Fix {
        let text = text.into();
        self.edits.push(Edit { span, text });
        self
    }
}

/// The text with all edits made, whatever order they come in; insertions at one place keep theirs.
///
/// Nothing is done, and `None` given, when edits overlap, name different files, leave the text or
/// split a character.
pub fn apply_fixes(text: &str, edits: &[Edit]) -> Option<String> {
    let mut sorted: Vec<&Edit> = edits.iter().collect();
    sorted.sort_by_key(|edit| edit.span);

    let mut result = String::new();
    let mut done = 0;
    for edit in &sorted {
        if sorted
            .first()
            .is_some_and(|first| first.span.file != edit.span.file)
        {
            return None;
        }
        let range = edit.span.range();
        result.push_str(text.get(done..range.start)?);
        result.push_str(&edit.text);
        text.get(range.clone())?;
        done = range.end;
    }
    result.push_str(text.get(done..)?);
    Some(result)
}
