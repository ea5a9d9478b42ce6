//! Lists of windows measured on site: a CSV file with a window a line.

use pelmet_diagnostics::{Diagnostic, FileId, Span, codes};
use pelmet_syntax::parse_value;
use pelmet_syntax::tree::{Entry, Name, Phrase, Term, TermKind};

use crate::load::{List, ListRow};

/// The most windows one list may hold.
pub const MAXIMUM_LIST_ROWS: usize = 10_000;

/// The name of the column that names the windows.
pub(crate) const NAME_COLUMN: &str = "name";

/// The place of the text in `windows from "list.csv"`.
pub(crate) fn list_path(entry: &Entry) -> Option<Span> {
    let [Phrase { terms, .. }] = entry.head.phrases.as_slice() else {
        return None;
    };
    match terms.as_slice() {
        [
            windows,
            from,
            Term {
                kind: TermKind::Text(_),
                span,
            },
        ] if windows.word() == Some("windows") && from.word() == Some("from") => Some(*span),
        _ => None,
    }
}

/// Reads a list: the first line names the columns, `name` among them; every other line is a window.
///
/// A cell is written as the value of a property would be. Empty cells are left out.
pub(crate) fn read_list(file: FileId, text: &str, diagnostics: &mut Vec<Diagnostic>) -> List {
    let mut list = List {
        file,
        columns: Vec::new(),
        rows: Vec::new(),
    };
    if let Some(quote) = quote_left_open(text) {
        let place = Span::new(file, quote, quote.saturating_add(1));
        diagnostics.push(codes::list_quote_open(place));
        return list;
    }
    let mut records = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes())
        .into_records();
    let Some(Ok(columns)) = records.next() else {
        diagnostics.push(codes::list_without_names(Span::new(file, 0, 0)));
        return list;
    };
    let columns = cells(file, text, &columns);
    let named = columns.iter().cloned();
    list.columns = named.map(|(text, span)| Name { text, span }).collect();
    let Some(name_column) = columns.iter().position(|(column, _)| column == NAME_COLUMN) else {
        let line = whole(&columns).unwrap_or(Span::new(file, 0, 0));
        diagnostics.push(without_names(line, &columns));
        return list;
    };
    for record in records {
        let Ok(record) = record else { continue };
        let row = cells(file, text, &record);
        if row.iter().all(|(cell, _)| cell.is_empty()) {
            continue;
        }
        if list.rows.len() >= MAXIMUM_LIST_ROWS {
            let place = whole(&row).unwrap_or(Span::new(file, 0, 0));
            diagnostics.push(codes::list_too_long(place, MAXIMUM_LIST_ROWS));
            return list;
        }
        list.rows.extend(read_row(
            file,
            text,
            &columns,
            name_column,
            &row,
            diagnostics,
        ));
    }
    list
}

type Cell = (String, Span);

/// Reports columns of which none is for names, perhaps because something else parts them.
fn without_names(line: Span, columns: &[Cell]) -> Diagnostic {
    let diagnostic = codes::list_without_names(line);
    let parted_otherwise = |sign: char| columns.iter().any(|(column, _)| column.contains(sign));
    if parted_otherwise(';') || parted_otherwise('\t') {
        return diagnostic.help("part the columns with commas");
    }
    diagnostic
}

/// Where the first cell begins whose quotes are not closed in its line. No value needs a second
/// line, so quotes that go on to one were forgotten.
fn quote_left_open(text: &str) -> Option<usize> {
    let mut open = None;
    let mut at_start = true;
    for (at, letter) in text.char_indices() {
        match (letter, open) {
            ('\n', Some(_)) => return open,
            // A doubled quote within a cell closes it and opens it again, which comes to the same.
            ('"', Some(_)) => open = None,
            ('"', None) if at_start => open = Some(at),
            _ => {}
        }
        let closed = letter == '"' && open.is_none();
        at_start = open.is_none() && (closed || matches!(letter, ',' | '\n' | '\r'));
    }
    open
}

fn read_row(
    file: FileId,
    text: &str,
    columns: &[Cell],
    name_column: usize,
    row: &[Cell],
    diagnostics: &mut Vec<Diagnostic>,
) -> Option<ListRow> {
    if row.len() != columns.len() {
        let place = whole(row)?;
        let uneven = codes::ListRowUneven {
            span: place,
            cells: row.len(),
            columns: columns.len(),
        };
        diagnostics.push(uneven.into());
        return None;
    }
    let (name, name_span) = row.get(name_column)?.clone();
    if name.is_empty() {
        diagnostics.push(codes::list_without_names(whole(row)?));
        return None;
    }
    let mut cells = Vec::new();
    let mut damaged = false;
    for ((column, _), (cell, span)) in columns.iter().zip(row) {
        if column == NAME_COLUMN || cell.is_empty() {
            continue;
        }
        let (value, found) = parse_value(file, text, *span);
        damaged |= value.is_none() || !found.is_empty();
        diagnostics.extend(found);
        cells.extend(value.map(|value| (column.clone(), value)));
    }
    Some(ListRow {
        name: Name {
            text: name,
            span: name_span,
        },
        cells,
        damaged,
    })
}

/// The cells of a record with their places. A cell with doubled quotes in it has no text of its
/// own in the file, so its place is where its line begins.
fn cells(file: FileId, text: &str, record: &csv::StringRecord) -> Vec<Cell> {
    let start = record
        .position()
        .map_or(0, |at| usize::try_from(at.byte()).unwrap_or(0));
    let mut at = start;
    let mut found = Vec::new();
    for cell in record {
        let place = text
            .get(at..)
            .and_then(|rest| rest.find(cell))
            .map(|skip| at.saturating_add(skip));
        let from = place.unwrap_or(at);
        let to = place.map_or(at, |from| from.saturating_add(cell.len()));
        let blank = cell.len().saturating_sub(cell.trim_start().len());
        let kept = cell.trim();
        let first = from.saturating_add(blank);
        found.push((
            kept.to_owned(),
            Span::new(file, first, first.saturating_add(kept.len())),
        ));
        at = to;
    }
    found
}

fn whole(row: &[Cell]) -> Option<Span> {
    Some(row.first()?.1.to(row.last()?.1))
}
