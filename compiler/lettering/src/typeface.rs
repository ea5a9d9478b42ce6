//! The typeface and its measures.

use std::sync::LazyLock;

use ttf_parser::{Face, GlyphId};

/// How heavy letters are.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum FontWeight {
    /// For running text.
    Plain,
    /// For titles and the heads of tables.
    Bold,
}

/// Measures of a typeface, in thousandths of the size it is set in.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct FontMetrics {
    /// How far letters rise above the line they stand on.
    pub ascent: f64,
    /// How far they reach below it, negative.
    pub descent: f64,
    /// How far a flat capital, an H, rises above it.
    pub capital: f64,
    /// Left, lower, right and upper end of the largest signs.
    pub bounds: [f64; 4],
}

static PLAIN: LazyLock<Option<Face<'static>>> = LazyLock::new(|| parsed(FontWeight::Plain));
static BOLD: LazyLock<Option<Face<'static>>> = LazyLock::new(|| parsed(FontWeight::Bold));

/// `None` only for a broken file, which a test rules out.
fn parsed(weight: FontWeight) -> Option<Face<'static>> {
    Face::parse(weight.file(), 0).ok()
}

impl FontWeight {
    /// Both weights.
    pub const ALL: [Self; 2] = [Self::Plain, Self::Bold];

    /// The name of the typeface in this weight, as its makers write it.
    pub fn name(self) -> &'static str {
        match self {
            Self::Plain => "DejaVuSans",
            Self::Bold => "DejaVuSans-Bold",
        }
    }

    /// The width of a text set in a size of one: the sum of its advances.
    pub fn width(self, text: &str) -> f64 {
        let advances = text.chars().map(|character| self.advance(character));
        advances.sum::<f64>() / 1000.0
    }

    /// How far a sign takes the text along, in thousandths of its size.
    pub fn advance(self, character: char) -> f64 {
        // The sign for what is missing stands in for it.
        let glyph = self.glyph(character).unwrap_or(GlyphId(0));
        let advance = self.face().and_then(|face| face.glyph_hor_advance(glyph));
        self.thousandths(advance.unwrap_or(0))
    }

    /// The measures of the typeface in this weight.
    pub fn metrics(self) -> FontMetrics {
        let face = self.face();
        let bounds = face.map(Face::global_bounding_box);
        let capital = self.glyph('H').and_then(|glyph| {
            let bounds = face?.glyph_bounding_box(glyph)?;
            Some(bounds.y_max)
        });
        FontMetrics {
            ascent: self.thousandths(face.map_or(0, Face::ascender)),
            descent: self.thousandths(face.map_or(0, Face::descender)),
            capital: self.thousandths(capital.unwrap_or(0)),
            bounds: bounds.map_or([0.0; 4], |it| {
                [it.x_min, it.y_min, it.x_max, it.y_max].map(|end| self.thousandths(end))
            }),
        }
    }

    pub(crate) fn glyph(self, character: char) -> Option<GlyphId> {
        self.face()?.glyph_index(character)
    }

    /// The whole file of the typeface.
    pub(crate) fn file(self) -> &'static [u8] {
        match self {
            Self::Plain => dejavu::sans::regular(),
            Self::Bold => dejavu::sans::bold(),
        }
    }

    fn face(self) -> Option<&'static Face<'static>> {
        match self {
            Self::Plain => PLAIN.as_ref(),
            Self::Bold => BOLD.as_ref(),
        }
    }

    fn thousandths(self, units: impl Into<f64>) -> f64 {
        let of_size = self.face().map_or(1, Face::units_per_em);
        units.into() * 1000.0 / f64::from(of_size)
    }
}

#[cfg(test)]
mod tests {
    use super::FontWeight;

    /// The figures are those of the tables `hhea`, `hmtx` and `glyf` of the two files, read by another
    /// program (fontTools 4.68.0), in units of 1/2048.
    #[test]
    fn measures_are_those_of_the_files() {
        for (weight, ascent, descent, capital, wide, one) in [
            (FontWeight::Plain, 1901, -483, 1493, 1675, 1303),
            (FontWeight::Bold, 1901, -483, 1493, 1892, 1425),
        ] {
            let part = |units: i32| f64::from(units) * 1000.0 / 2048.0;
            let metrics = weight.metrics();
            assert!((metrics.ascent - part(ascent)).abs() < 1e-9);
            assert!((metrics.descent - part(descent)).abs() < 1e-9);
            assert!((metrics.capital - part(capital)).abs() < 1e-9);
            assert!((weight.advance('w') - part(wide)).abs() < 1e-9);
            assert!((weight.advance('1') - part(one)).abs() < 1e-9);
        }
    }

    #[test]
    fn a_text_is_as_wide_as_its_signs_together() {
        let one = FontWeight::Plain.width("1");
        assert!((FontWeight::Plain.width("111") - 3.0 * one).abs() < 1e-9);
        assert!(FontWeight::Plain.width("").abs() < 1e-9);
    }

    /// Columns of numbers stand under each other.
    #[test]
    fn all_digits_are_equally_wide() {
        for weight in FontWeight::ALL {
            for digit in '0'..='9' {
                assert!((weight.advance(digit) - weight.advance('0')).abs() < 1e-9);
            }
        }
    }
}
