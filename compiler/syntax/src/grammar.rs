//! The grammar of `grammar/pelmet.pest`, as a parser.

use pest_derive::Parser;

/// The parser that the grammar describes; it reads cleaned text, see [`crate::scan`].
#[derive(Parser)]
#[grammar = "../../../grammar/pelmet.pest"]
pub(crate) struct Grammar;
