//! How things are told, whatever they are written as: the packet's fixed values in words, fractions,
//! and which words stay on one line.

pub(crate) mod fractions;
pub(crate) mod held_together;
pub(crate) mod words;
