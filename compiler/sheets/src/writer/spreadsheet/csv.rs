//! A table as comma-separated values by RFC 4180: lines end in CR and LF, and what needs quotes has
//! them. It begins with a byte order mark, without which spreadsheets misread accents.

use csv::{Terminator, WriterBuilder};

use super::cell_table::{Cell, CellTable};
use super::harmless::harmless;

const BYTE_ORDER_MARK: &str = "\u{feff}";

/// The whole file.
pub(crate) fn csv(table: &CellTable) -> Vec<u8> {
    let mut writer = WriterBuilder::new()
        .terminator(Terminator::CRLF)
        .from_writer(BYTE_ORDER_MARK.as_bytes().to_vec());
    let headings = table
        .headings
        .iter()
        .map(|heading| harmless(heading).into_owned());
    let rows = table.rows.iter().map(|row| row.iter().map(told).collect());
    for row in std::iter::once(headings.collect::<Vec<String>>()).chain(rows) {
        // Writing into memory does not fail, and every row has as many cells as there are headings.
        let _ = writer.write_record(row);
    }
    writer.into_inner().unwrap_or_default()
}

fn told(cell: &Cell) -> String {
    match cell {
        Cell::Empty => String::new(),
        Cell::Text(text) => harmless(text).into_owned(),
        Cell::Number(number) => number.to_string(),
        Cell::Money(amount) | Cell::Cost(amount) => format!("{amount:.2}"),
    }
}

#[cfg(test)]
mod tests {
    use super::csv;
    use crate::writer::spreadsheet::cell_table::{Cell, CellTable, TableName};

    #[test]
    fn lines_end_in_crlf_and_cells_are_quoted_where_they_must_be() {
        let sheet = CellTable {
            name: TableName::Cuts,
            headings: vec![String::from("What"), String::from("How much")],
            rows: vec![
                vec![
                    Cell::Text(String::from("a \"b\", c\nd")),
                    Cell::Number(-939.8),
                ],
                vec![Cell::Text(String::from("=1+1")), Cell::Cost(12.5)],
                vec![Cell::Empty, Cell::Number(12.0)],
            ],
        };
        let file = String::from_utf8(csv(&sheet)).unwrap();
        let told =
            "\u{feff}What,How much\r\n\"a \"\"b\"\", c\nd\",-939.8\r\n'=1+1,12.50\r\n,12\r\n";
        assert_eq!(file, told);
    }
}
