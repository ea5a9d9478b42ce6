//! The typeface in a file: only the signs it uses, and the way back from each to its character.

use std::collections::{BTreeMap, BTreeSet};

use pdf_writer::types::{CidFontType, FontFlags, SystemInfo, UnicodeCmap};
use pdf_writer::{Name, Rect, Ref, Str};
use pelmet_lettering::{FontSubset, FontWeight, composed};

use super::file::{PdfFile, number};
use crate::drawing::{Drawing, Element};

/// The parts of the typeface that some drawings use.
pub(super) struct Fonts(BTreeMap<FontWeight, FontSubset>);

/// What a page calls each weight.
pub(super) fn font_name(weight: FontWeight) -> &'static [u8] {
    match weight {
        FontWeight::Plain => b"P",
        FontWeight::Bold => b"B",
    }
}

/// Characters have numbers of our own.
const SYSTEM: SystemInfo<'static> = SystemInfo {
    registry: Str(b"Adobe"),
    ordering: Str(b"Identity"),
    supplement: 0,
};

impl Fonts {
    /// What these drawings use.
    pub(super) fn of(drawings: &[Drawing]) -> Self {
        let mut used: BTreeMap<FontWeight, BTreeSet<char>> = BTreeMap::new();
        let elements = drawings.iter().flat_map(|drawing| &drawing.elements);
        for (weight, text) in elements.filter_map(words) {
            used.entry(weight)
                .or_default()
                .extend(printed(text).chars());
        }
        let subset = |(weight, characters)| (weight, FontSubset::new(weight, &characters));
        Self(used.into_iter().map(subset).collect())
    }

    /// A text as a page holds it: two bytes for each character.
    pub(super) fn codes(&self, weight: FontWeight, text: &str) -> Vec<u8> {
        let subset = self.0.get(&weight);
        let code = |character| subset.map_or(0, |subset| subset.code(character));
        printed(text)
            .chars()
            .flat_map(|character| code(character).to_be_bytes())
            .collect()
    }

    /// Writes each weight, and gives its name and number.
    pub(super) fn write(&self, file: &mut PdfFile) -> Vec<(&'static [u8], Ref)> {
        let weights = self.0.iter();
        weights
            .map(|(weight, subset)| (font_name(*weight), write_font(*weight, subset, file)))
            .collect()
    }
}

/// The words of an element, if it has any, and how heavy they are.
fn words(element: &Element) -> Option<(FontWeight, &str)> {
    match element {
        Element::Words { text, .. } => Some((FontWeight::Plain, text)),
        Element::Text {
            lettering, text, ..
        } => Some((lettering.weight, text)),
        Element::Path { .. } => None,
    }
}

/// The signs that stand for a text on paper. A blank that holds two words together has done so by
/// then, and is copied out as any other.
fn printed(text: &str) -> String {
    composed(text).replace('\u{a0}', " ")
}

fn write_font(weight: FontWeight, subset: &FontSubset, file: &mut PdfFile) -> Ref {
    let name = tagged(weight, &subset.program);
    let program = file.stream(&subset.program);
    let outlines = file.stream(&outlines(subset));
    let characters = file.stream(&characters(subset));
    let descriptor = write_descriptor(weight, &name, program, file);
    let (descendant, font) = (file.next(), file.next());
    let mut letters = file.pdf.cid_font(descendant);
    letters
        .subtype(CidFontType::Type2)
        .base_font(Name(name.as_bytes()))
        .system_info(SYSTEM)
        .font_descriptor(descriptor)
        .cid_to_gid_map_stream(outlines)
        .default_width(0.0);
    let widths = subset.signs.iter().map(|sign| number(sign.advance));
    letters.widths().consecutive(1, widths);
    drop(letters);
    file.pdf
        .type0_font(font)
        .base_font(Name(name.as_bytes()))
        .encoding_predefined(Name(b"Identity-H"))
        .descendant_font(descendant)
        .to_unicode(characters);
    font
}

fn write_descriptor(weight: FontWeight, name: &str, program: Ref, file: &mut PdfFile) -> Ref {
    let descriptor = file.next();
    let metrics = weight.metrics();
    let [left, lower, right, upper] = metrics.bounds.map(number);
    file.pdf
        .font_descriptor(descriptor)
        .name(Name(name.as_bytes()))
        .flags(FontFlags::SYMBOLIC)
        .bbox(Rect::new(left, lower, right, upper))
        .italic_angle(0.0)
        .ascent(number(metrics.ascent))
        .descent(number(metrics.descent))
        .cap_height(number(metrics.capital))
        // Nought says that it is not known.
        .stem_v(0.0)
        .font_file2(program);
    descriptor
}

/// For each number of a character that of its outline, two bytes each, from nought on.
fn outlines(subset: &FontSubset) -> Vec<u8> {
    let glyphs = subset.signs.iter().map(|sign| sign.glyph);
    std::iter::once(0)
        .chain(glyphs)
        .flat_map(u16::to_be_bytes)
        .collect()
}

/// For each number of a character the character, so that text can be copied and searched.
fn characters(subset: &FontSubset) -> Vec<u8> {
    let mut characters = UnicodeCmap::new(Name(b"Pelmet-Characters"), SYSTEM);
    for (code, sign) in (1_u16..).zip(&subset.signs) {
        characters.pair(code, sign.character);
    }
    characters.finish().into_vec()
}

/// The name of a part of a typeface begins with six capitals that tell one part from another. They
/// are made from the bytes of the part (by the hash FNV-1a), so that equal parts have equal names.
fn tagged(weight: FontWeight, program: &[u8]) -> String {
    let mut hash = program
        .iter()
        .fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
            (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
        });
    let mut name = String::new();
    for _ in 0..6 {
        let letter = u8::try_from(hash % 26).unwrap_or(0);
        name.push(char::from(b'A'.saturating_add(letter)));
        hash /= 26;
    }
    format!("{name}+{}", weight.name())
}
