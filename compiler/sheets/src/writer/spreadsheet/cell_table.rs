//! A table of cells.

/// The tables that a spreadsheet is given.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum TableName {
    /// Everything to buy, which a quote points into.
    Buying,
    /// Every piece to cut.
    Cuts,
    /// Everything to mark.
    Marks,
}

impl TableName {
    /// What a file or a sheet of a workbook is called that holds it.
    pub(crate) const fn word(self) -> &'static str {
        match self {
            Self::Buying => "buying",
            Self::Cuts => "cuts",
            Self::Marks => "marks",
        }
    }
}

/// Headings, and rows of as many cells.
pub(crate) struct CellTable {
    pub(crate) name: TableName,
    pub(crate) headings: Vec<String>,
    pub(crate) rows: Vec<Vec<Cell>>,
}

/// What stands in a cell, by what a spreadsheet makes of it.
#[derive(Clone, PartialEq, Debug)]
pub(crate) enum Cell {
    Empty,
    Text(String),
    Number(f64),
    /// An amount of money, to the hundredth.
    Money(f64),
    /// An amount of money: the cell before it times the cell three before it, to the hundredth.
    Cost(f64),
}
