//! Reading the lines that say how this house works: units, rounding, the job's title.

use pelmet_diagnostics::{Span, codes};
use pelmet_measure::{Length, Ratio, Style, System};
use pelmet_syntax::tree::{Entry, Phrase, Term, TermKind};

use crate::closed_sets::ClosedSet;
use crate::cursor::Cursor;
use crate::gather::Definitions;
use crate::item::Line;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::Scope;

/// What the settings of all files come to. The main file's own go before those of files it uses.
#[derive(Clone, Debug)]
pub(crate) struct Settings {
    /// How lengths are written and rounded.
    pub style: Style,
    /// The title of the job.
    pub title: Option<String>,
    /// The currency of prices.
    pub currency: Option<String>,
    /// What an hour of work costs.
    pub labour_per_hour: Option<Ratio>,
    /// The part of the cost that a quote adds to it.
    pub markup: Option<Ratio>,
}

/// One setting: the word it begins with and where it was set.
struct Set<'t> {
    line: Line<'t>,
    span: Span,
}

/// Reads the settings. Units are read first, so that diagnostics of all else are in this house's
/// units.
pub(crate) fn read_settings<'t>(
    reader: &mut Reader<'t>,
    definitions: &'t Definitions<'t>,
) -> Settings {
    let system =
        setting(reader, definitions, "units").and_then(|set| units(reader, set.line.entry));
    reader.style = match system {
        Some(System::Metric) => Style::METRIC,
        Some(System::Inches) | None => Style::INCHES,
    };
    if let Some(step) =
        setting(reader, definitions, "cut").and_then(|set| step(reader, set.line.entry, "cut"))
    {
        reader.style.cut_step = step;
    }
    if let Some(step) =
        setting(reader, definitions, "mark").and_then(|set| step(reader, set.line.entry, "mark"))
    {
        reader.style.mark_step = step;
    }
    Settings {
        style: reader.style,
        title: setting(reader, definitions, "job")
            .and_then(|set| text(reader, set.line.entry, "job")),
        currency: setting(reader, definitions, "currency")
            .and_then(|set| text(reader, set.line.entry, "currency")),
        labour_per_hour: setting(reader, definitions, "labour")
            .and_then(|set| number(reader, set.line.entry, "labour", &["per", "hour"], LABOUR)),
        markup: setting(reader, definitions, "markup")
            .and_then(|set| number(reader, set.line.entry, "markup", &[], MARKUP)),
    }
}

/// The line that sets something: the main file's, or else the last of the files it uses. Two in
/// one file are told of.
fn setting<'t>(
    reader: &mut Reader<'t>,
    definitions: &'t Definitions<'t>,
    word: &str,
) -> Option<Set<'t>> {
    let mut found: Option<Set<'t>> = None;
    for line in definitions.lines.iter().filter(|line| line.word == word) {
        let span = line.entry.span;
        if let Some(earlier) = &found
            && earlier.span.file == span.file
        {
            reader.report(codes::PropertyTwice {
                second: span,
                first: earlier.span,
                property: word,
            });
            continue;
        }
        if found.as_ref().is_none_or(|earlier| !earlier.line.in_main) {
            found = Some(Set { line: *line, span });
        }
    }
    found
}

fn units(reader: &mut Reader<'_>, entry: &Entry) -> Option<System> {
    let words = only_phrase(entry).and_then(Phrase::words);
    let system = match words.as_deref() {
        Some([_, system]) => System::of_word(system),
        _ => None,
    };
    if system.is_none() {
        unclear(reader, entry, "units", "`units inches` or `units metric`");
    }
    system
}

/// `cut to 1/8 in`, `mark to 1 mm`.
fn step<'t>(reader: &mut Reader<'t>, entry: &'t Entry, word: &str) -> Option<Length> {
    let can_be = format!("`{word} to` and a length, such as `{word} to 1/8 in`");
    let phrase = only_phrase(entry);
    let cursor = phrase.map(|phrase| Cursor::new(phrase, &Scope::default()));
    let Some(mut cursor) = cursor.filter(|cursor| cursor.clone().words(&[word, "to"])) else {
        unclear(reader, entry, word, &can_be);
        return None;
    };
    cursor.words(&[word, "to"]);
    let length = reader.length_at(&mut cursor, word, Sign::Positive)?;
    reader.nothing_more(&cursor, word, &can_be)?;
    Some(length)
}

const LABOUR: &str = "`labour` and what an hour costs, such as `labour 32 per hour`";
const MARKUP: &str = "`markup` and a percentage, such as `markup 40 %`";

/// `labour 32 per hour`, `markup 40 %`.
fn number<'t>(
    reader: &mut Reader<'t>,
    entry: &'t Entry,
    word: &str,
    after: &[&str],
    can_be: &str,
) -> Option<Ratio> {
    let Some(phrase) = only_phrase(entry) else {
        unclear(reader, entry, word, can_be);
        return None;
    };
    let mut cursor = Cursor::new(phrase, &Scope::default());
    cursor.words(&[word]);
    let number = reader.positive_number(&mut cursor, word)?;
    if !cursor.words(after) {
        unclear(reader, entry, word, can_be);
        return None;
    }
    reader.nothing_more(&cursor, word, can_be)?;
    Some(number)
}

fn text(reader: &mut Reader<'_>, entry: &Entry, word: &str) -> Option<String> {
    match only_phrase(entry).map(|phrase| phrase.terms.as_slice()) {
        Some(
            [
                _,
                Term {
                    kind: TermKind::Text(text),
                    ..
                },
            ],
        ) => Some(text.clone()),
        _ => {
            unclear(
                reader,
                entry,
                word,
                &format!("`{word}` and a text in quotes"),
            );
            None
        }
    }
}

fn only_phrase(entry: &Entry) -> Option<&Phrase> {
    match (entry.head.phrases.as_slice(), &entry.value, &entry.block) {
        ([only], None, None) => Some(only),
        _ => None,
    }
}

fn unclear(reader: &mut Reader<'_>, entry: &Entry, word: &str, can_be: &str) {
    if !entry.is_broken() {
        reader.word_not_expected(entry.span, word, can_be);
    }
}
