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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::FileId;

    fn edit(start: usize, end: usize, text: &str) -> Edit {
        Edit {
            span: Span::new(FileId(0), start, end),
            text: text.to_owned(),
        }
    }

    #[test]
    fn edits_are_made_in_the_order_of_the_text() {
        for (edits, result) in [
            (vec![], Some("drop = 17")),
            (vec![edit(5, 6, ":")], Some("drop : 17")),
            (
                vec![edit(9, 9, " in"), edit(4, 6, ":")],
                Some("drop: 17 in"),
            ),
            (vec![edit(0, 0, "a"), edit(0, 0, "b")], Some("abdrop = 17")),
            (
                vec![edit(0, 4, "width"), edit(4, 4, "s")],
                Some("widths = 17"),
            ),
            (vec![edit(0, 9, "")], Some("")),
        ] {
            assert_eq!(
                apply_fixes("drop = 17", &edits).as_deref(),
                result,
                "{edits:?}"
            );
        }
    }

    #[test]
    fn what_cannot_be_done_is_not_begun() {
        let elsewhere = Edit {
            span: Span::new(FileId(1), 4, 5),
            text: String::new(),
        };
        for (edits, why) in [
            (vec![edit(0, 2, "x"), edit(1, 3, "y")], "overlapping"),
            (vec![edit(0, 2, "x"), edit(0, 2, "x")], "twice the same"),
            (
                vec![edit(0, 4, "x"), edit(1, 1, "y")],
                "an insertion within",
            ),
            (vec![edit(8, 99, "x")], "beyond the text"),
            (vec![edit(98, 99, "x")], "wholly beyond the text"),
            (vec![edit(1, 2, "x")], "half a character"),
            (vec![edit(0, 0, "x"), elsewhere], "two files"),
        ] {
            assert_eq!(apply_fixes("éclair", &edits), None, "{why}");
        }
    }

    #[test]
    fn every_kind_of_fix_is_a_replacement() {
        let span = Span::new(FileId(0), 2, 5);
        assert_eq!(Fix::insert("", span, "x").edits, [edit(2, 2, "x")]);
        assert_eq!(Fix::remove("", span).edits, [edit(2, 5, "")]);
        let both = Fix::replace("", span, "x").and(span.end_of(), "y");
        assert_eq!(both.edits, [edit(2, 5, "x"), edit(5, 5, "y")]);
    }
}
