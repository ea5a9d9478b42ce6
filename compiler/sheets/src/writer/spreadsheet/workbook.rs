//! The tables as one workbook, in which costs and the quote are formulas: change a length, a price or
//! the markup, and all that follows from it changes.

use pelmet_packet::{Packet, Quote, QuoteKind, QuoteLine};
use rust_xlsxwriter::{
    DocProperties, ExcelDateTime, Format, Formula, Workbook, Worksheet, XlsxError,
};

use super::cell_table::{Cell, CellTable, TableName};
use super::tables::tables;
use crate::text::words::quote_kind;

/// Money is shown to the hundredth.
const MONEY: &str = "0.00";
const PART: &str = "0.##%";

/// The whole file; empty if a table is larger than a workbook may be.
pub(crate) fn workbook(packet: &Packet) -> Vec<u8> {
    written(packet).unwrap_or_default()
}

fn written(packet: &Packet) -> Result<Vec<u8>, XlsxError> {
    let mut workbook = Workbook::new();
    // A date of its own, so that the same packet makes the same bytes on every day.
    let created = ExcelDateTime::from_ymd(2000, 1, 1)?;
    let properties = DocProperties::new()
        .set_title(&packet.title)
        .set_creation_datetime(&created);
    workbook.set_properties(&properties);
    for table in tables(packet) {
        write_table(&table, workbook.add_worksheet())?;
        if let (TableName::Buying, Some(quote)) = (table.name, &packet.quote) {
            write_quote(quote, &table, workbook.add_worksheet())?;
        }
    }
    workbook.save_to_buffer()
}

fn write_table(table: &CellTable, page: &mut Worksheet) -> Result<(), XlsxError> {
    page.set_name(table.name.word())?;
    write_headings(&table.headings, page)?;
    for (row, cells) in (1_u32..).zip(&table.rows) {
        for (column, cell) in (0_u16..).zip(cells) {
            write_cell(cell, (row, column), page)?;
        }
    }
    page.autofit();
    Ok(())
}

fn write_headings(headings: &[String], page: &mut Worksheet) -> Result<(), XlsxError> {
    let bold = Format::new().set_bold();
    for (column, heading) in (0_u16..).zip(headings) {
        page.write_string_with_format(0, column, heading, &bold)?;
    }
    page.set_freeze_panes(1, 0)?;
    Ok(())
}

/// Text is written as text, so that nothing in it can become a formula.
fn write_cell(
    cell: &Cell,
    (row, column): (u32, u16),
    page: &mut Worksheet,
) -> Result<(), XlsxError> {
    let money = Format::new().set_num_format(MONEY);
    match cell {
        Cell::Empty => return Ok(()),
        Cell::Text(text) => page.write_string(row, column, text)?,
        Cell::Number(number) => page.write_number(row, column, *number)?,
        Cell::Money(amount) => page.write_number_with_format(row, column, *amount, &money)?,
        Cell::Cost(amount) => {
            let (price, quantity) = (column.saturating_sub(1), column.saturating_sub(3));
            let formula = format!("=ROUND({}*{},2)", name(row, quantity), name(row, price));
            let formula = Formula::new(formula).set_result(format!("{amount:.2}"));
            page.write_formula_with_format(row, column, formula, &money)?
        }
    };
    Ok(())
}

/// Columns of the quote.
const COST: u16 = 6;
const HEADINGS: [&str; 7] = [
    "For",
    "What",
    "How much",
    "Quantity",
    "Unit",
    "Price of one unit",
    "Cost",
];

/// Cloth and notions cost what the buy list says; an hour of work has sixty minutes.
fn write_quote(quote: &Quote, bought: &CellTable, page: &mut Worksheet) -> Result<(), XlsxError> {
    page.set_name("quote")?;
    write_headings(&HEADINGS.map(str::to_owned), page)?;
    let mut next = 1_u32;
    for line in &quote.lines {
        write_line(line, bought, next, page)?;
        next = next.saturating_add(1);
    }
    let (first, last) = (name(1, COST), name(next.saturating_sub(1), COST));
    let lines = format!("=SUM({first}:{last})");
    let cost = name(next, COST);
    write_sum("cost", &lines, quote.cost.amount, next, page)?;
    let mut total = format!("={cost}");
    if let Some(markup) = &quote.markup {
        next = next.saturating_add(1);
        let part = Format::new().set_num_format(PART);
        page.write_number_with_format(next, 3, markup.part, &part)?;
        let formula = format!("=ROUND({cost}*{},2)", name(next, 3));
        write_sum("markup", &formula, markup.amount.amount, next, page)?;
        total = format!("={cost}+{}", name(next, COST));
    }
    next = next.saturating_add(1);
    write_sum("together", &total, quote.total.amount, next, page)?;
    page.autofit();
    Ok(())
}

fn write_line(
    line: &QuoteLine,
    bought: &CellTable,
    row: u32,
    page: &mut Worksheet,
) -> Result<(), XlsxError> {
    for (column, text) in (0_u16..).zip([quote_kind(line.kind), &line.name, &line.amount]) {
        page.write_string(row, column, text)?;
    }
    let money = Format::new().set_num_format(MONEY);
    let reckoned = &line.reckoned;
    let formula = if line.kind == QuoteKind::Labour {
        page.write_number(row, 3, reckoned.quantity * MINUTES_IN_AN_HOUR)?;
        page.write_string(row, 4, "min, priced by the hour")?;
        page.write_number_with_format(row, 5, reckoned.price, &money)?;
        format!("=ROUND({}/60*{},2)", name(row, 3), name(row, 5))
    } else {
        page.write_string(row, 4, "as in the sheet of what to buy")?;
        format!("={}!{}", bought.name.word(), place_of(line, bought))
    };
    let formula = Formula::new(formula).set_result(format!("{:.2}", line.cost.amount));
    page.write_formula_with_format(row, COST, formula, &money)?;
    Ok(())
}

const MINUTES_IN_AN_HOUR: f64 = 60.0;

/// The cell of the buy list that says what a cloth or a notion costs.
fn place_of(line: &QuoteLine, bought: &CellTable) -> String {
    let is_it = |row: &&Vec<Cell>| {
        let words = [quote_kind(line.kind), &line.name].map(|word| Cell::Text(word.to_owned()));
        row.starts_with(&words)
    };
    let rows = bought.rows.iter().take_while(|row| !is_it(row)).count();
    let row = u32::try_from(rows).unwrap_or(u32::MAX).saturating_add(1);
    let column = bought.headings.len().saturating_sub(1);
    name(row, u16::try_from(column).unwrap_or(u16::MAX))
}

fn write_sum(
    what: &str,
    formula: &str,
    amount: f64,
    row: u32,
    page: &mut Worksheet,
) -> Result<(), XlsxError> {
    let bold = Format::new().set_bold();
    page.write_string_with_format(row, 0, what, &bold)?;
    let formula = Formula::new(formula).set_result(format!("{amount:.2}"));
    page.write_formula_with_format(row, COST, formula, &bold.set_num_format(MONEY))?;
    Ok(())
}

/// A cell by its letters and number: `C4`, by row and column from 0.
fn name(row: u32, column: u16) -> String {
    rust_xlsxwriter::utility::row_col_to_cell(row, column)
}

#[cfg(test)]
mod tests {
    use super::workbook;
    use crate::examples::packets;

    #[test]
    fn the_same_packet_makes_the_same_bytes() {
        for packet in packets() {
            let file = workbook(&packet);
            assert!(file.starts_with(b"PK"), "{} bytes", file.len());
            assert_eq!(file, workbook(&packet));
        }
    }
}
