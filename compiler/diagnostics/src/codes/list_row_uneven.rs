//! A line of a list with more or fewer cells than the list has columns.

use crate::example::windows_from;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "list-row-uneven",
    severity: Severity::Error,
    page: "\
Every line of a list of windows has one cell for each column, even if it is empty. With one too many
or too few, a measure would land in the wrong column, and in the wrong cloth.

Count the commas; a value that holds a comma itself goes in quotes.
",
    failing: windows_from! { "\
name,rod,drop
bay,pole(40 in)
" },
    mend: windows_from! { "\
name,rod,drop
bay,pole(40 in),12 in
" },
};

/// A line of a list has more or fewer cells than the list has columns.
pub struct ListRowUneven {
    /// The line, from its first cell to its last.
    pub span: Span,
    /// How many it has, the empty ones too.
    pub cells: usize,
    /// How many columns the first line names.
    pub columns: usize,
}

impl From<ListRowUneven> for Diagnostic {
    fn from(told: ListRowUneven) -> Diagnostic {
        let ListRowUneven {
            span,
            cells,
            columns,
        } = told;
        CODE.report(format!(
            "this line has {cells} cells and the list has {columns} columns"
        ))
        .label(
            span,
            "the cells of this line and the names of the columns do not match",
        )
        .help("leave a cell empty by writing its comma; put a value that holds a comma in quotes")
    }
}
