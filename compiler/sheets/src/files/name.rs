//! What files of a packet are called.

use std::fmt::Display;

/// A file of a packet's folder.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PacketFile {
    /// What it is called in the folder, with its ending.
    pub name: String,
    /// All its bytes.
    pub contents: Vec<u8>,
}

/// What a file is called: a beginning and an ending. Where the beginning ends in a hyphen there are
/// several, each with its number and its own name between the two.
#[derive(Copy, Clone, Debug)]
pub(super) struct FileName(pub(super) &'static str, pub(super) &'static str);

impl FileName {
    /// Whether a file has such a name.
    pub(super) fn fits(self, name: &str) -> bool {
        let FileName(begins, ends) = self;
        let between = name
            .strip_prefix(begins)
            .and_then(|rest| rest.strip_suffix(ends));
        between.is_some_and(|between| between.is_empty() != begins.ends_with('-'))
    }
}

/// The only file of its kind.
pub(super) fn one(
    FileName(begins, ends): FileName,
    contents: impl Into<Vec<u8>>,
) -> Vec<PacketFile> {
    vec![PacketFile {
        name: format!("{begins}{ends}"),
        contents: contents.into(),
    }]
}

/// Files of one kind: `layout-1-kelp-stripe.svg`. The number keeps two names apart that a file
/// system takes for one.
pub(super) fn numbered(
    FileName(begins, ends): FileName,
    named: Vec<(impl Display, impl Into<Vec<u8>>)>,
) -> Vec<PacketFile> {
    let numbered = (1_u32..).zip(named);
    numbered
        .map(|(number, (name, contents))| PacketFile {
            name: format!("{begins}{number}-{name}{ends}"),
            contents: contents.into(),
        })
        .collect()
}
