//! Things that have another name and are otherwise as they were.

use serde_json::Value;

use crate::printed::leaves;

/// The old and the new name of each cloth, window and panel that is otherwise as it was.
#[derive(Default)]
pub(super) struct Renames(Vec<(String, String)>);

impl Renames {
    /// Finds them: of cloths first, then of windows, then of the panels of windows that stayed.
    pub(super) fn between(before: &Value, after: &Value) -> Renames {
        let mut renames = Renames::default();
        renames.find(&before["cloths"], &after["cloths"]);
        let windows = (&before["windows"], &after["windows"]);
        renames.find(windows.0, windows.1);
        for one in list(windows.0) {
            let stayed = |other: &&Value| renames.same(Some(name_of(one)), Some(name_of(other)));
            if let Some(other) = list(windows.1).iter().find(stayed) {
                renames.find(&one["panels"], &other["panels"]);
            }
        }
        renames
    }

    /// Whether this is the old and the new name of one of them.
    pub(super) fn has(&self, old: &str, new: &str) -> bool {
        self.0
            .iter()
            .any(|(before, after)| before == old && after == new)
    }

    /// Whether two texts say the same, the new names put in the place of the old.
    pub(super) fn same(&self, before: Option<&str>, after: Option<&str>) -> bool {
        let renamed = |before: &str, after: &str| self.renamed(before) == after;
        before == after
            || before
                .zip(after)
                .is_some_and(|(one, other)| renamed(one, other))
    }

    /// A text with the new names in the place of the old.
    pub(super) fn renamed(&self, text: &str) -> String {
        let renames = self.0.iter();
        renames.fold(text.to_owned(), |text, (old, new)| {
            replaced(&text, old, new)
        })
    }

    /// Adds the renames from one list of things to another.
    fn find(&mut self, before: &Value, after: &Value) {
        let (before, after) = (list(before), list(after));
        let is_in = |things: &[Value], name: &str| things.iter().any(|one| name_of(one) == name);
        let went = before.iter().filter(|one| !is_in(after, name_of(one)));
        let came = after.iter().filter(|one| !is_in(before, name_of(one)));
        let mut came: Vec<(&str, Leaves)> = came.map(|one| (name_of(one), leaves(one))).collect();
        for one in went {
            let (old, leaves) = (name_of(one), leaves(one));
            let found = came
                .iter()
                .position(|(new, others)| self.alike(&leaves, others, (old, new)));
            if let Some(at) = found {
                let (new, _) = came.remove(at);
                self.0.push((old.to_owned(), new.to_owned()));
            }
        }
    }

    /// Whether two things are the same but for these two names, and those known to be renamed.
    fn alike(&self, before: &Leaves, after: &Leaves, (old, new): (&str, &str)) -> bool {
        let same = |before: &str, after: &str| {
            before == after || replaced(&self.renamed(before), old, new) == after
        };
        before.len() == after.len()
            && before
                .iter()
                .zip(after)
                .all(|(one, other)| one.0 == other.0 && same(&one.1, &other.1))
    }
}

/// Where each leaf of a thing stands in it, and how it is printed.
type Leaves = Vec<(String, String)>;

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn name_of(thing: &Value) -> &str {
    thing["name"].as_str().unwrap_or("")
}

/// A text with a name in the place of another, wherever that stands as a whole word.
fn replaced(text: &str, old: &str, new: &str) -> String {
    if old.is_empty() {
        return text.to_owned();
    }
    let is_in_name = |letter: char| letter.is_alphanumeric() || letter == '-' || letter == '_';
    let mut done = String::new();
    let mut rest = text;
    while let Some((before, after)) = rest.split_once(old) {
        let preceding = if before.is_empty() {
            done.as_str()
        } else {
            before
        };
        let is_whole = !preceding.ends_with(is_in_name) && !after.starts_with(is_in_name);
        done.push_str(before);
        done.push_str(if is_whole { new } else { old });
        rest = after;
    }
    done.push_str(rest);
    done
}

#[cfg(test)]
mod tests {
    use super::replaced;

    #[test]
    fn only_whole_names_are_replaced() {
        for (text, renamed) in [
            ("wing", "side"),
            ("wing face", "side face"),
            ("`wing`, wing.", "`side`, side."),
            (
                "wing-left, swing, wings, wing2",
                "wing-left, swing, wings, wing2",
            ),
            ("wingwing wing", "wingwing side"),
            ("", ""),
        ] {
            assert_eq!(replaced(text, "wing", "side"), renamed);
        }
        assert_eq!(replaced("a", "", "b"), "a");
        assert_eq!(replaced("é à", "à", "où"), "é où");
    }
}
