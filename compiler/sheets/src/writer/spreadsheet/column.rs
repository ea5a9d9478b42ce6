//! Columns of a table, each with what it says of a row.

use pelmet_packet::{Measure, SystemOfUnits};

use super::cell_table::{Cell, CellTable, TableName};

/// One column, or several that say the same length.
pub(super) enum CellColumn<T> {
    Text(&'static str, fn(&T) -> String),
    Number(&'static str, fn(&T) -> Option<f64>),
    /// A length as it is printed, then in the house's unit and in millimetres.
    Length(&'static str, LengthUse, fn(&T) -> Option<&Measure>),
    /// A heading of its own making, for money.
    Money(String, fn(&T) -> Option<Cell>),
}

/// What a length is for, which decides the units it is told in.
#[derive(Copy, Clone)]
pub(super) enum LengthUse {
    /// What is cut and marked: inches, or millimetres.
    OnTheTable,
    /// What is bought: yards, or metres.
    FromTheBolt,
}

/// A unit of length and how many millimetres it has.
#[derive(Copy, Clone)]
struct DecimalUnit(&'static str, f64);

const MILLIMETRE: DecimalUnit = DecimalUnit("mm", 1.0);

impl LengthUse {
    /// The units in which such lengths are told as decimals.
    fn units(self, system: SystemOfUnits) -> Vec<DecimalUnit> {
        match (self, system) {
            (Self::OnTheTable, SystemOfUnits::Inches) => vec![DecimalUnit("in", 25.4), MILLIMETRE],
            (Self::FromTheBolt, SystemOfUnits::Inches) => {
                vec![DecimalUnit("yd", 914.4), MILLIMETRE]
            }
            (Self::OnTheTable, SystemOfUnits::Metric) => vec![MILLIMETRE],
            (Self::FromTheBolt, SystemOfUnits::Metric) => {
                vec![DecimalUnit("m", 1000.0), MILLIMETRE]
            }
        }
    }
}

/// A table of rows by its columns.
pub(super) fn table<T>(
    name: TableName,
    system: SystemOfUnits,
    columns: &[CellColumn<T>],
    rows: &[T],
) -> CellTable {
    let headings = columns.iter().flat_map(|column| column.headings(system));
    let cells = |row: &T| {
        let cells = columns.iter().flat_map(|column| column.cells(system, row));
        cells.collect()
    };
    CellTable {
        name,
        headings: headings.collect(),
        rows: rows.iter().map(cells).collect(),
    }
}

impl<T> CellColumn<T> {
    fn headings(&self, system: SystemOfUnits) -> Vec<String> {
        match self {
            Self::Text(heading, _) | Self::Number(heading, _) => vec![(*heading).to_owned()],
            Self::Money(heading, _) => vec![heading.clone()],
            Self::Length(heading, kind, _) => {
                let units = kind.units(system).into_iter();
                let decimals = units.map(|DecimalUnit(name, _)| format!("{heading} ({name})"));
                std::iter::once((*heading).to_owned())
                    .chain(decimals)
                    .collect()
            }
        }
    }

    fn cells(&self, system: SystemOfUnits, row: &T) -> Vec<Cell> {
        match self {
            Self::Text(_, of) => vec![text(of(row))],
            Self::Number(_, of) => {
                let number = of(row).map(to_the_millionth);
                vec![number.map_or(Cell::Empty, Cell::Number)]
            }
            Self::Money(_, of) => vec![of(row).unwrap_or(Cell::Empty)],
            Self::Length(_, kind, of) => {
                let length = of(row);
                let printed = length.map_or(Cell::Empty, |length| text(length.text.clone()));
                let decimal = |DecimalUnit(_, millimetres)| {
                    length.map_or(Cell::Empty, |length| {
                        Cell::Number(to_the_millionth(length.mm / millimetres))
                    })
                };
                let decimals = kind.units(system).into_iter().map(decimal);
                std::iter::once(printed).chain(decimals).collect()
            }
        }
    }
}

fn text(text: String) -> Cell {
    if text.is_empty() {
        Cell::Empty
    } else {
        Cell::Text(text)
    }
}

/// Nothing finer is of use, and no number ends in the noise of its division.
fn to_the_millionth(number: f64) -> f64 {
    (number * 1e6).round() / 1e6
}

#[cfg(test)]
mod tests {
    use pelmet_packet::{Measure, SystemOfUnits};

    use super::{CellColumn, LengthUse, table};
    use crate::writer::spreadsheet::cell_table::{Cell, TableName};

    #[test]
    fn a_length_stands_as_printed_and_as_decimals_of_the_house() {
        let half_a_yard = Measure {
            mm: 457.2,
            text: String::from("1/2 yd"),
        };
        let column = |kind| [CellColumn::Length("Long", kind, |it: &Measure| Some(it))];
        let rows = [half_a_yard];
        for (kind, system, decimals) in [
            (
                LengthUse::OnTheTable,
                SystemOfUnits::Inches,
                vec![("in", 18.0), ("mm", 457.2)],
            ),
            (
                LengthUse::FromTheBolt,
                SystemOfUnits::Inches,
                vec![("yd", 0.5), ("mm", 457.2)],
            ),
            (
                LengthUse::OnTheTable,
                SystemOfUnits::Metric,
                vec![("mm", 457.2)],
            ),
            (
                LengthUse::FromTheBolt,
                SystemOfUnits::Metric,
                vec![("m", 0.4572), ("mm", 457.2)],
            ),
        ] {
            let sheet = table(TableName::Cuts, system, &column(kind), &rows);
            let headings = decimals.iter().map(|(unit, _)| format!("Long ({unit})"));
            let headings: Vec<String> = std::iter::once(String::from("Long"))
                .chain(headings)
                .collect();
            assert_eq!(sheet.headings, headings);
            let cells = decimals.iter().map(|(_, number)| Cell::Number(*number));
            let printed = Cell::Text(String::from("1/2 yd"));
            let cells: Vec<Cell> = std::iter::once(printed).chain(cells).collect();
            assert_eq!(sheet.rows, [cells]);
        }
    }
}
