//! Outlines as DXF files for a plotter or a cutter, in the form of AutoCAD Release 12, which every
//! reader knows: one piece a file, opened out, in millimetres, its foot down.
//!
//! The form has no place for a unit, so that it is told in a comment and among the words. Lines are in
//! layers by what they mean. It knows no sign but those of ASCII; others are written as `\U+00E9`.

use std::fmt::Write;

use crate::drawing::{PaperPoint, at};
use crate::true_size::outlines::{Arcs, MOTIF, OutlineVertex, SharedOutline, WholePiece};

/// What a layer of the file holds.
#[derive(Copy, Clone)]
enum DxfLayer {
    Cut,
    Sew,
    Marks,
    Text,
}

impl DxfLayer {
    const ALL: [Self; 4] = [Self::Cut, Self::Sew, Self::Marks, Self::Text];

    fn name(self) -> &'static str {
        match self {
            Self::Cut => "CUT",
            Self::Sew => "SEW",
            Self::Marks => "MARKS",
            Self::Text => "TEXT",
        }
    }

    /// Its colour by the numbers of the form: white or black, red, blue, green.
    fn colour(self) -> u32 {
        match self {
            Self::Cut => 7,
            Self::Sew => 1,
            Self::Marks => 5,
            Self::Text => 3,
        }
    }
}

/// The height of words, and from one line of them to the next.
const LETTERS: f64 = 5.0;
const ROW: f64 = 8.0;
/// How far a mark reaches to either side of its corner, and where its number stands from it.
const MARK: f64 = 2.0;

const UNIT: &str = "Lengths are in millimetres.";

/// The whole file.
pub(crate) fn dxf(outline: &SharedOutline<'_>) -> String {
    let whole = WholePiece::of(outline, Arcs::Kept);
    let mut file = DxfFile::default();
    file.pair(999, UNIT);
    file.header(&whole, outline);
    file.tables();
    file.begin_section("ENTITIES");
    let up = Up {
        length: outline.piece.cut_length.mm,
    };
    file.closed_line(DxfLayer::Cut, &whole.cut, up);
    file.closed_line(DxfLayer::Sew, &whole.sewn, up);
    for (line, ends) in &whole.lines {
        file.line(DxfLayer::Marks, ends.map(|end| up.place(end)));
        let [start, _] = ends;
        let start = up.place(*start);
        file.words(at(start.x + MARK, start.y - ROW), line.word());
    }
    for (corner, words) in &whole.corners {
        file.mark(up.place(*corner), words);
    }
    for motif in &whole.motifs {
        file.mark(up.place(*motif), MOTIF);
    }
    let told = std::iter::once(outline.size()).chain(outline.cut());
    let mut y = up.length / 2.0;
    for words in told.chain([UNIT.to_owned()]) {
        file.words(at(outline.piece.cut_width.mm / 4.0, y), &words);
        y -= ROW;
    }
    file.end_section();
    file.pair(0, "EOF");
    file.text
}

/// From places counted downward to places counted upward, as the form has them.
#[derive(Copy, Clone)]
struct Up {
    length: f64,
}

impl Up {
    fn place(self, point: PaperPoint) -> PaperPoint {
        at(point.x, self.length - point.y)
    }
}

/// A file being written: pairs of a group code and a value.
#[derive(Default)]
struct DxfFile {
    text: String,
}

impl DxfFile {
    fn pair(&mut self, code: u32, value: &str) {
        // Writing to a text cannot fail.
        let _ = write!(self.text, "{code:>3}\r\n{value}\r\n");
    }

    fn number(&mut self, code: u32, value: f64) {
        self.pair(code, &number(value));
    }

    fn point(&mut self, point: PaperPoint) {
        self.number(10, point.x);
        self.number(20, point.y);
        self.number(30, 0.0);
    }

    fn begin_section(&mut self, name: &str) {
        self.pair(0, "SECTION");
        self.pair(2, name);
    }

    fn end_section(&mut self) {
        self.pair(0, "ENDSEC");
    }

    /// The release, and how far the drawing reaches.
    fn header(&mut self, whole: &WholePiece, outline: &SharedOutline<'_>) {
        self.begin_section("HEADER");
        self.pair(9, "$ACADVER");
        self.pair(1, "AC1009");
        let most = |place: fn(PaperPoint) -> f64| {
            let places = whole.cut.iter().map(|vertex| place(vertex.at));
            places.fold(0.0, f64::max)
        };
        let corner = at(
            most(|at| at.x),
            most(|at| at.y).max(outline.piece.cut_length.mm),
        );
        for (name, point) in [("$EXTMIN", at(0.0, 0.0)), ("$EXTMAX", corner)] {
            self.pair(9, name);
            self.point(point);
        }
        self.end_section();
    }

    /// The kind of line and the layers.
    fn tables(&mut self) {
        self.begin_section("TABLES");
        self.begin_table("LTYPE", 1);
        self.pair(0, "LTYPE");
        self.pair(2, "CONTINUOUS");
        self.pair(70, "0");
        self.pair(3, "Solid line");
        self.pair(72, "65");
        self.pair(73, "0");
        self.number(40, 0.0);
        self.pair(0, "ENDTAB");
        self.begin_table("LAYER", DxfLayer::ALL.len());
        for layer in DxfLayer::ALL {
            self.pair(0, "LAYER");
            self.pair(2, layer.name());
            self.pair(70, "0");
            self.pair(62, &layer.colour().to_string());
            self.pair(6, "CONTINUOUS");
        }
        self.pair(0, "ENDTAB");
        self.end_section();
    }

    fn begin_table(&mut self, name: &str, entries: usize) {
        self.pair(0, "TABLE");
        self.pair(2, name);
        self.pair(70, &entries.to_string());
    }

    fn begin(&mut self, kind: &str, layer: DxfLayer) {
        self.pair(0, kind);
        self.pair(8, layer.name());
    }

    /// A line that comes back to its start, arcs as bulges.
    fn closed_line(&mut self, layer: DxfLayer, vertices: &[OutlineVertex], up: Up) {
        self.begin("POLYLINE", layer);
        self.pair(66, "1");
        self.point(at(0.0, 0.0));
        self.pair(70, "1");
        for vertex in vertices {
            self.begin("VERTEX", layer);
            self.point(up.place(vertex.at));
            if vertex.bulge.abs() > 0.0 {
                self.pair(42, &format!("{:.9}", vertex.bulge));
            }
        }
        self.begin("SEQEND", layer);
    }

    fn line(&mut self, layer: DxfLayer, [from, to]: [PaperPoint; 2]) {
        self.begin("LINE", layer);
        self.point(from);
        self.number(11, to.x);
        self.number(21, to.y);
        self.number(31, 0.0);
    }

    /// A cross with words beside it.
    fn mark(&mut self, PaperPoint { x, y }: PaperPoint, words: &str) {
        self.line(DxfLayer::Marks, [at(x - MARK, y), at(x + MARK, y)]);
        self.line(DxfLayer::Marks, [at(x, y - MARK), at(x, y + MARK)]);
        self.words(at(x + MARK, y + MARK), words);
    }

    fn words(&mut self, start: PaperPoint, words: &str) {
        self.begin("TEXT", DxfLayer::Text);
        self.point(start);
        self.number(40, LETTERS);
        self.pair(1, &ascii(words));
    }
}

/// A number to the millionth of a millimetre, and never `-0`.
fn number(value: f64) -> String {
    let told = format!("{value:.6}");
    match told.strip_prefix('-') {
        Some(rest) if rest.chars().all(|sign| matches!(sign, '0' | '.')) => rest.to_owned(),
        _ => told,
    }
}

/// The form holds texts of no more signs; what goes beyond is left out.
const LONGEST_TEXT: usize = 255;

/// A text in the signs of the form. A backslash, a caret and a percent sign begin something of their
/// own there, so they are written by their number too.
fn ascii(text: &str) -> String {
    let mut told = String::with_capacity(text.len());
    let mut units = [0; 2];
    for sign in text.chars() {
        let written = if matches!(sign, ' '..='~') && !matches!(sign, '\\' | '^' | '%') {
            sign.to_string()
        } else {
            let units = sign.encode_utf16(&mut units).iter();
            units.map(|unit| format!("\\U+{unit:04X}")).collect()
        };
        if told.len().saturating_add(written.len()) > LONGEST_TEXT {
            break;
        }
        told.push_str(&written);
    }
    told
}

#[cfg(test)]
mod tests {
    use super::{ascii, number};

    #[test]
    fn numbers_have_six_places_and_are_never_minus_nothing() {
        for (value, told) in [
            (0.0, "0.000000"),
            (-0.0, "0.000000"),
            (-0.000_000_4, "0.000000"),
            (-1.25, "-1.250000"),
            (304.8, "304.800000"),
        ] {
            assert_eq!(number(value), told);
        }
    }

    #[test]
    fn other_signs_are_written_by_their_number() {
        for (text, told) in [
            ("wing face", "wing face"),
            ("étoffe <a> & \"b\"", "\\U+00E9toffe <a> & \"b\""),
            ("100 %", "100 \\U+0025"),
            ("a\\b^c", "a\\U+005Cb\\U+005Ec"),
            ("line\nbreak", "line\\U+000Abreak"),
        ] {
            assert_eq!(ascii(text), told);
        }
    }

    #[test]
    fn no_text_is_longer_than_the_form_holds() {
        assert_eq!(ascii(&"w".repeat(300)), "w".repeat(255));
        assert_eq!(ascii(&"é".repeat(300)), "\\U+00E9".repeat(36));
    }
}
