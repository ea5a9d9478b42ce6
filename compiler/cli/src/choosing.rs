//! What is to be written of a packet, as it is chosen on the command line.

use clap::Args;
use clap::builder::{PossibleValue, PossibleValuesParser, TypedValueParser, ValueParser};
use pelmet_sheets::{FORMS, PacketChoice, PacketForm, Paper, SHEETS, SheetKind, sheet_word};

/// What is written of a packet.
#[derive(Args, Clone, Debug)]
pub struct Choosing {
    /// In which forms the packet is written, with commas between them
    #[arg(
        long,
        value_name = "FORMS",
        value_delimiter = ',',
        default_value = USUAL,
        value_parser = forms()
    )]
    write: Vec<String>,
    /// Which sheets are written and printed, with commas between them; all unless said
    #[arg(long, value_name = "SHEETS", value_delimiter = ',', value_parser = sheets())]
    sheets: Vec<SheetKind>,
    /// The paper; letter where the job measures in inches, else a4, unless said
    #[arg(long, ignore_case = true, value_parser = papers())]
    paper: Option<Paper>,
}

/// What stands for every form that is written unless others are chosen.
const USUAL: &str = "usual";

/// What stands for every form.
const EVERY: &str = "all";

impl Choosing {
    /// What was chosen. Whatever the order it was typed in, forms and sheets have their own.
    pub fn choice(&self) -> PacketChoice {
        PacketChoice {
            forms: FORMS.iter().filter(|form| self.wants(form)).collect(),
            sheets: SHEETS
                .iter()
                .copied()
                .filter(|kind| self.sheets.is_empty() || self.sheets.contains(kind))
                .collect(),
            paper: self.paper,
        }
    }

    fn wants(&self, form: &PacketForm) -> bool {
        self.write.iter().any(|word| match word.as_str() {
            EVERY => true,
            USUAL => form.usual,
            word => form.word == word,
        })
    }
}

fn forms() -> ValueParser {
    let usual: Vec<&str> = FORMS
        .iter()
        .filter(|form| form.usual)
        .map(|form| form.word)
        .collect();
    let shorthands = [
        PossibleValue::new(USUAL).help(usual.join(", ")),
        PossibleValue::new(EVERY).help("every form there is"),
    ];
    let forms = FORMS
        .iter()
        .map(|form| PossibleValue::new(form.word).help(form.about));
    PossibleValuesParser::new(shorthands.into_iter().chain(forms)).into()
}

fn sheets() -> impl TypedValueParser<Value = SheetKind> {
    let words = SHEETS.iter().map(|kind| sheet_word(*kind));
    PossibleValuesParser::new(words).try_map(|chosen| {
        let mut sheets = SHEETS.iter().copied();
        let sheet = sheets.find(|kind| sheet_word(*kind) == chosen);
        sheet.ok_or("no such sheet")
    })
}

fn papers() -> impl TypedValueParser<Value = Paper> {
    PossibleValuesParser::new(Paper::ALL.map(Paper::word)).try_map(|chosen| {
        let is_chosen = |paper: &Paper| paper.word().eq_ignore_ascii_case(&chosen);
        let paper = Paper::ALL.into_iter().find(is_chosen);
        paper.ok_or("no such paper")
    })
}
