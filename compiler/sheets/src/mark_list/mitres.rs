//! The line of each mitre, measured from the cut edges beside its corner.

use pelmet_packet::{Mitre, MitrePlace, MitrePoint};

use crate::page::Page;
use crate::table::{Column, Table};

/// Corners with the same line share one table.
pub(crate) fn print(mitres: &[Mitre], page: &mut Page) {
    let mut left: Vec<&Mitre> = mitres.iter().collect();
    while let Some(first) = left.first().copied() {
        let is_like = |mitre: &&Mitre| mitre.line == first.line;
        let (alike, others): (Vec<&Mitre>, Vec<&Mitre>) = left.into_iter().partition(is_like);
        print_alike(first, &alike, page);
        left = others;
    }
}

fn print_alike(first: &Mitre, alike: &[&Mitre], page: &mut Page) {
    let numbers: Vec<String> = alike.iter().map(|mitre| mitre.corner.to_string()).collect();
    let corners = if numbers.len() == 1 {
        "corner"
    } else {
        "corners"
    };
    page.paragraph(&format!(
        "Mitre at {corners} {}: mark on the wrong side of the cut face, before anything is turned, from the \
        cut edges that meet there.",
        numbers.join(" and "),
    ));
    let mut table = Table::new([
        Column::text("Mitre line"),
        Column::text("In from side"),
        Column::text("Up from lower edge"),
    ]);
    for point in &first.line {
        table.row(row(point));
    }
    page.table(&table);
    page.paragraph(&how(first));
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
