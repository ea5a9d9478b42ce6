//! Where the comparison of two packets has come to.

use crate::change::{Change, ChangeKind, Named};
use crate::fields::part_of;
use crate::printed::joined;

/// Where the comparison of two packets has come to.
#[derive(Clone, Default)]
pub(super) struct Place {
    /// The fields that lead here, from the packet on.
    pub(super) path: String,
    /// The fields that lead here, from the innermost thing that has a name on.
    pub(super) within: String,
    /// The things that have a name and that this is a part of.
    of: Vec<Named>,
}

impl Place {
    /// A field of what is here.
    pub(super) fn field(&self, field: &str) -> Place {
        Place {
            path: joined(&self.path, field),
            within: joined(&self.within, field),
            of: self.of.clone(),
        }
    }

    /// One thing of the list that is here.
    pub(super) fn inside(&self, called: &str, name: &str) -> Place {
        let thing = Named {
            called: called.to_owned(),
            name: name.to_owned(),
        };
        Place {
            path: self.path.clone(),
            within: String::new(),
            of: [self.of.as_slice(), &[thing]].concat(),
        }
    }

    /// A change of what is here; one that is told by no text is one of something that stayed.
    pub(super) fn change(&self, what: String, was: Option<String>, is: Option<String>) -> Change {
        Change {
            part: part_of(&self.path),
            kind: match (&was, &is) {
                (None, Some(_)) => ChangeKind::Added,
                (Some(_), None) => ChangeKind::Removed,
                _ => ChangeKind::Changed,
            },
            of: self.of.clone(),
            what,
            before: was,
            after: is,
            difference: None,
        }
    }
}
