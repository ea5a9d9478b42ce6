//! Every code, one file each; the file is named like the code, with underscores for its hyphens.
//!
//! To add a code, write its file, then name it twice here: as a module and in [`ALL`].

use crate::Code;

pub mod name_unknown;

/// Every code, sorted by slug.
pub const ALL: &[&Code] = &[&name_unknown::CODE];

/// The code with this slug.
pub fn by_slug(slug: &str) -> Option<&'static Code> {
    let at = ALL.binary_search_by_key(&slug, |code| code.slug).ok()?;
    ALL.get(at).copied()
}
