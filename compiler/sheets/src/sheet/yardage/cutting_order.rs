//! The pieces of a cloth in the order they are cut.

use pelmet_packet::{Band, Cloth, Flaw, PlacedPiece};

use crate::content::{TextColumn, TextTable};
use crate::text::words::optional;

/// The pieces band by band, and what is cut around; the first of each band says where the bolt is cut
/// across after it.
pub(super) fn cutting_order(cloth: &Cloth) -> TextTable {
    let mut order = CuttingOrder {
        cloth,
        flaws: &cloth.flaws,
        table: TextTable::new([
            TextColumn::count("Bolt"),
            TextColumn::text("Cut across at"),
            TextColumn::count("No"),
            TextColumn::text("Piece"),
            TextColumn::text("Size"),
            TextColumn::text("Along"),
            TextColumn::text("Across"),
        ]),
    };
    for band in &cloth.bands {
        order.flaws_before(band);
        order.band(band);
    }
    order.table
}

/// The table of a cloth being filled.
struct CuttingOrder<'a> {
    cloth: &'a Cloth,
    /// The flaws not told yet.
    flaws: &'a [Flaw],
    table: TextTable,
}

impl CuttingOrder<'_> {
    /// The flaws that begin before a band ends.
    fn flaws_before(&mut self, band: &Band) {
        while let Some((flaw, rest)) = self.flaws.split_first()
            && (flaw.bolt < band.bolt || flaw.bolt == band.bolt && flaw.from.mm < band.to.mm)
        {
            self.flaws = rest;
            self.flaw(flaw);
        }
    }

    fn flaw(&mut self, flaw: &Flaw) {
        let stretch = format!("{} to {}", flaw.from.text, flaw.to.text);
        let across = if flaw.whole_width {
            String::from("whole width")
        } else {
            format!("{} to {}", flaw.left.text, flaw.right.text)
        };
        let blank = String::new;
        let leave = String::from("leave: flaw");
        self.table.row([
            self.bolt(flaw.bolt),
            blank(),
            blank(),
            leave,
            blank(),
            stretch,
            across,
        ]);
    }

    fn band(&mut self, band: &Band) {
        let cloth = self.cloth;
        let pieces = band
            .pieces
            .iter()
            .filter_map(|number| numbered(cloth, *number));
        for (index, piece) in pieces.enumerate() {
            let leads = index == 0;
            let bolt = if leads {
                self.bolt(band.bolt)
            } else {
                String::new()
            };
            self.table.row([
                bolt,
                optional(leads.then_some(&band.to)),
                piece.number.to_string(),
                piece_in_words(piece),
                format!("{} x {}", piece.width.text, piece.length.text),
                piece.along.text.clone(),
                piece.across.text.clone(),
            ]);
        }
    }

    /// The number of a bolt where there are several.
    fn bolt(&self, number: u32) -> String {
        if has_several_bolts(self.cloth) {
            number.to_string()
        } else {
            String::new()
        }
    }
}

/// Whether it matters which bolt a place is on.
pub(super) fn has_several_bolts(cloth: &Cloth) -> bool {
    cloth.bolts.len() > 1
}

/// The piece with that number: they are numbered in their order.
fn numbered(cloth: &Cloth, number: u32) -> Option<&PlacedPiece> {
    let index = usize::try_from(number.checked_sub(1)?).ok()?;
    cloth.placed.get(index)
}

fn piece_in_words(piece: &PlacedPiece) -> String {
    let mut words = vec![piece.name.clone()];
    if piece.copies > 1 {
        words.push(format!("{} of {}", piece.copy, piece.copies));
    }
    if piece.turned {
        words.push(String::from("upside down"));
    }
    if piece.railroaded {
        words.push(String::from("lying along"));
    }
    if piece.nested {
        words.push(String::from("cut along its outline"));
    }
    if let Some(fold) = &piece.fold_at {
        words.push(format!("fold at {}", fold.text));
    }
    if let Some(middle) = &piece.middle_at {
        words.push(format!("opened out, middle at {}", middle.text));
    }
    words.join(", ")
}
