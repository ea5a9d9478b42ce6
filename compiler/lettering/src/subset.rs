//! The part of a typeface that a document needs.

use std::collections::BTreeSet;

use subsetter::GlyphRemapper;

use crate::FontWeight;

/// The part of a typeface that a document carries, and the signs in it.
#[derive(Clone, PartialEq, Debug)]
pub struct FontSubset {
    /// A TrueType file with the outlines of the signs, and without a table from characters to them.
    pub program: Vec<u8>,
    /// Each character once, in the order of their numbers. Two characters may look alike and share an
    /// outline; they stay two, so that a text copied out of the document is the text that went in.
    pub signs: Vec<FontSign>,
}

/// A character of a subset.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct FontSign {
    /// What a text copied out of the document says at this sign.
    pub character: char,
    /// The number of its outline in the file.
    pub glyph: u16,
    /// How far it takes the text along, in thousandths of its size.
    pub advance: f64,
}

impl FontSubset {
    /// The part of a weight with these characters. One that is missing has the outline for it.
    pub fn new(weight: FontWeight, characters: &BTreeSet<char>) -> Self {
        let mut kept = GlyphRemapper::new();
        let glyphs: Vec<u16> = characters
            .iter()
            .map(|character| weight.glyph(*character).map_or(0, |glyph| glyph.0))
            .collect();
        let renumbered: Vec<u16> = glyphs.iter().map(|glyph| kept.remap(*glyph)).collect();
        // Were it not to be had in part, it would be carried whole; a test asks for every part.
        let (program, glyphs) = match subsetter::subset(weight.file(), 0, &kept) {
            Ok(part) => (part, renumbered),
            Err(_) => (weight.file().to_vec(), glyphs),
        };
        let sign = |(character, glyph): (&char, u16)| FontSign {
            character: *character,
            glyph,
            advance: weight.advance(*character),
        };
        let signs = characters.iter().zip(glyphs).map(sign).collect();
        Self { program, signs }
    }

    /// The number by which a document calls a character: its place among the signs, counted from one;
    /// zero for a character that is not among them.
    pub fn code(&self, character: char) -> u16 {
        let found = self
            .signs
            .binary_search_by_key(&character, |sign| sign.character);
        let code = found.ok().and_then(|at| u16::try_from(at).ok());
        code.and_then(|at| at.checked_add(1)).unwrap_or(0)
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::FontSubset;
    use crate::{FontWeight, first_not_printable};

    #[test]
    fn every_printable_sign_can_be_taken_out() {
        let printable: BTreeSet<char> = ('\u{20}'..='\u{ffff}')
            .filter(|character| first_not_printable(&character.to_string()).is_none())
            .collect();
        assert!(printable.len() > 4000, "{}", printable.len());
        for weight in FontWeight::ALL {
            let subset = FontSubset::new(weight, &printable);
            assert_ne!(subset.program, weight.file());
            assert!(subset.signs.iter().all(|sign| sign.glyph > 0));
        }
    }

    #[test]
    fn a_few_signs_take_little_room() {
        let subset = FontSubset::new(FontWeight::Plain, &"Cut 15 1/2 in".chars().collect());
        assert!(
            subset.program.len() < 16_000,
            "{} bytes",
            subset.program.len()
        );
    }

    #[test]
    fn characters_that_look_alike_keep_their_own_numbers() {
        let subset = FontSubset::new(
            FontWeight::Plain,
            &BTreeSet::from(['A', '\u{391}', '\u{410}']),
        );
        let codes = ['A', '\u{391}', '\u{410}', 'B'].map(|character| subset.code(character));
        assert_eq!(codes, [1, 2, 3, 0]);
    }
}
