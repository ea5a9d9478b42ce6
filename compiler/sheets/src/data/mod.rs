//! What a spreadsheet is given: the cuts, the marks and what to buy, as tables of cells.
//!
//! Beside every length as it is printed stand its exact millimetres and, where the house writes
//! inches, its exact inches or yards as a decimal.

mod buying;
mod column;
mod csv;
mod cuts;
mod harmless;
mod marks;
mod workbook;

use pelmet_packet::Packet;

pub(crate) use csv::csv;
pub(crate) use workbook::workbook;

/// A table with a name.
pub(crate) struct Sheet {
    /// Its name, as a file or a sheet of a workbook is called.
    pub(crate) name: &'static str,
    pub(crate) headings: Vec<String>,
    pub(crate) rows: Vec<Vec<Cell>>,
}

/// What stands in a cell.
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

/// Every table of a packet.
pub(crate) fn sheets(packet: &Packet) -> [Sheet; 3] {
    [
        buying::sheet(packet),
        cuts::sheet(packet),
        marks::sheet(packet),
    ]
}
