//! What a spreadsheet is given: the cuts, the marks and what to buy, as tables of cells.
//!
//! Beside every length as it is printed stand its exact millimetres and, where the house writes
//! inches, its exact inches or yards as a decimal.

mod buying;
mod cell_table;
mod column;
mod csv;
mod cuts;
mod harmless;
mod marks;
mod tables;
mod workbook;

pub(crate) use cell_table::TableName;
pub(crate) use csv::csv;
pub(crate) use tables::tables;
pub(crate) use workbook::workbook;
