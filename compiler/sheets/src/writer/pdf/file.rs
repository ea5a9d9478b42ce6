//! A PDF file being written.

use pdf_writer::{Chunk, Filter, Pdf, Ref, Settings};

/// The file so far, and the number of its next object.
pub(super) struct PdfFile {
    pub(super) pdf: Pdf,
    next: i32,
}

/// PDF counts in points, of which an inch has 72.
pub(super) const POINTS_IN_MILLIMETRE: f64 = 72.0 / 25.4;

/// How hard streams are packed, of ten: more takes longer and saves little.
const EFFORT: u8 = 6;

impl PdfFile {
    pub(super) fn new() -> Self {
        Self {
            pdf: Pdf::with_settings(Settings { pretty: false }),
            next: 1,
        }
    }

    /// A number that no object has yet.
    pub(super) fn next(&mut self) -> Ref {
        let number = Ref::new(self.next);
        self.next = self.next.saturating_add(1);
        number
    }

    /// Writes a packed stream, and gives its number.
    pub(super) fn stream(&mut self, contents: &[u8]) -> Ref {
        let number = self.next();
        let packed = miniz_oxide::deflate::compress_to_vec_zlib(contents, EFFORT);
        let chunk: &mut Chunk = &mut self.pdf;
        chunk.stream(number, &packed).filter(Filter::FlateDecode);
        number
    }
}

/// A number as PDF takes it, to a ten-thousandth.
pub(super) fn number(value: f64) -> f32 {
    exact((value * 10_000.0).round() / 10_000.0)
}

/// A number as PDF takes it, as near as it can.
#[expect(
    clippy::cast_possible_truncation,
    reason = "seven digits of a number tell a ten-thousandth of a millimetre on any paper that is printed"
)]
pub(super) fn exact(value: f64) -> f32 {
    value as f32
}
