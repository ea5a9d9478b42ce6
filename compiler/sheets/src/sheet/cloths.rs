//! What a job would take if its cloths were others, as a sheet.

use pelmet_packet::{
    Amount, ClothCompared, ClothComparison, ClothTrial, Measure, PiecesAlong, PrintRepeat,
};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::text::words::repeat_in_words;

pub(crate) fn print(comparison: &ClothComparison, sheet: &mut SheetBlocks) {
    sheet.title(&format!("Cloths compared: {}", comparison.title));
    if comparison.cloths.is_empty() {
        sheet.paragraph("Nothing is cut from any cloth.");
    }
    for cloth in &comparison.cloths {
        sheet.heading(&cloth.name);
        sheet.table(&taken(cloth));
        sheet.table(&what_they_are(cloth));
        for trial in &cloth.trials {
            if let Some(why) = &trial.impossible {
                sheet.paragraph(&format!("Not with {}: {why}.", trial.what));
            }
        }
    }
}

/// What the job takes of each, and how much more or less that is than today.
fn taken(cloth: &ClothCompared) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("With"),
        TextColumn::text("Buy"),
        TextColumn::text("Exact"),
        TextColumn::text("Rule of thumb"),
        TextColumn::text("At least"),
        TextColumn::count("Cost"),
        TextColumn::text("Difference"),
    ]);
    for trial in &cloth.trials {
        let length = |of: fn(&pelmet_packet::ClothTaken) -> &Measure| {
            trial
                .taken
                .as_ref()
                .map(|taken| of(taken).text.clone())
                .unwrap_or_default()
        };
        table.row([
            trial.what.clone(),
            trial.taken.as_ref().map_or_else(
                || String::from("cannot be made"),
                |taken| taken.bought.text.clone(),
            ),
            length(|taken| &taken.exact),
            length(|taken| &taken.rule_of_thumb),
            length(|taken| &taken.at_least),
            amount(trial.taken.as_ref().and_then(|taken| taken.cost.as_ref())),
            difference(trial),
        ]);
    }
    table
}

fn amount(amount: Option<&Amount>) -> String {
    amount.map(|amount| amount.text.clone()).unwrap_or_default()
}

/// In money where both cloths have a price, else in lengths.
fn difference(trial: &ClothTrial) -> String {
    let Some(taken) = &trial.taken else {
        return String::new();
    };
    match (&taken.more_cost, &taken.more_bought) {
        (Some(cost), _) => cost.text.clone(),
        (None, Some(length)) => length.text.clone(),
        (None, None) => String::new(),
    }
}

/// What each of the cloths is like.
fn what_they_are(cloth: &ClothCompared) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("With"),
        TextColumn::text("Width"),
        TextColumn::text("Repeat"),
        TextColumn::text("Way up"),
        TextColumn::text("Lying along"),
        TextColumn::count("Pieces"),
    ]);
    for trial in &cloth.trials {
        let way_up = trial.way_up.word();
        let along = match trial.along {
            PiecesAlong::None => "none",
            PiecesAlong::TooWide => "what is too wide",
            PiecesAlong::AllThatFit => "all that fits",
        };
        let pieces = trial
            .taken
            .as_ref()
            .map(|taken| taken.piece_count.to_string());
        table.row([
            trial.what.clone(),
            trial.width.text.clone(),
            repeat(trial.repeat.as_ref()),
            way_up.to_owned(),
            along.to_owned(),
            pieces.unwrap_or_default(),
        ]);
    }
    table
}

fn repeat(repeat: Option<&PrintRepeat>) -> String {
    repeat.map_or_else(|| String::from("none"), repeat_in_words)
}
