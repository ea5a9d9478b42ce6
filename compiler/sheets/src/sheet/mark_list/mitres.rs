//! The line of each mitre, measured from the cut edges beside its corner.

use pelmet_packet::{Mitre, MitrePlace, MitrePoint};

use crate::content::{SheetBlocks, TextColumn, TextTable};

/// Corners with the same line share one table.
pub(crate) fn print(mitres: &[Mitre], sheet: &mut SheetBlocks) {
    let mut left: Vec<&Mitre> = mitres.iter().collect();
    while let Some(first) = left.first().copied() {
        let is_like = |mitre: &&Mitre| mitre.line == first.line;
        let (alike, others): (Vec<&Mitre>, Vec<&Mitre>) = left.into_iter().partition(is_like);
        print_alike(first, &alike, sheet);
        left = others;
    }
}

fn print_alike(first: &Mitre, alike: &[&Mitre], sheet: &mut SheetBlocks) {
    let numbers: Vec<String> = alike.iter().map(|mitre| mitre.corner.to_string()).collect();
    let corners = if numbers.len() == 1 {
        "corner"
    } else {
        "corners"
    };
    sheet.paragraph(&format!(
        "Mitre at {corners} {}: mark on the wrong side of the cut face, before anything is turned, from the \
        cut edges that meet there.",
        numbers.join(" and "),
    ));
    let mut table = TextTable::new([
        TextColumn::text("Mitre line"),
        TextColumn::text("In from side"),
        TextColumn::text("Up from lower edge"),
    ]);
    for point in &first.line {
        table.row(row(point));
    }
    sheet.table(&table);
    sheet.paragraph(&how(first));
}

fn row(point: &MitrePoint) -> [String; 3] {
    [
        point.place.to_string(),
        point.in_from_side.text.clone(),
        point.up_from_lower.text.clone(),
    ]
}

fn how(mitre: &Mitre) -> String {
    let is_turn =
        |point: &MitrePoint| matches!(point.place, MitrePlace::SideTurn | MitrePlace::LowerTurn);
    let before = if mitre.line.iter().any(is_turn) {
        "Turn the raw edges under first: the line then lies straight. "
    } else {
        ""
    };
    format!(
        "{before}Fold the corner in along the line and turn both hems over it: they meet in a mitre {} long. The \
        cloth beyond the line may be cut away to {} from it once the fold has been tried.",
        mitre.length.text, mitre.kept.text,
    )
}
