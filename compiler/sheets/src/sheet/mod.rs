//! The sheets, one module each, and the table that says what each of them is.
//!
//! A sheet is a view: it prints what the packet holds and works nothing out. `cautions` stands at the end
//! of every sheet it concerns; `changes` and `cloths` are about more than one packet and so no sheet of any.

mod by_window;
pub(crate) mod cautions;
pub(crate) mod changes;
mod checks;
pub(crate) mod cloths;
mod cut_sheet;
mod elevation;
mod folding_chart;
mod labels;
mod making_order;
mod mark_list;
mod notions;
mod quote;
mod rod_check;
mod yardage;

use pelmet_packet::{Packet, SheetKind};

use crate::content::SheetBlocks;

/// All that is to be known of a sheet.
struct SheetRow {
    /// The word it is chosen by, and the end of its address on a page: its title, made one word.
    word: &'static str,
    /// What stands at its top before the name of the job, and wherever sheets are listed.
    title: &'static str,
    /// Makes what stands on it, below its title and above its cautions.
    print: fn(&Packet, &mut SheetBlocks),
}

/// Makes of one table both the order of the sheets and the row of each. A kind of sheet without a row has
/// no arm in the match and so does not compile; one with two rows has an arm that is never reached.
macro_rules! sheets {
    ($($kind:ident: $word:literal, $title:literal, $print:path;)*) => {
        /// Every sheet, in the order the work is done.
        pub const SHEETS: &[SheetKind] = &[$(SheetKind::$kind),*];

        #[deny(unreachable_patterns)]
        fn row(kind: SheetKind) -> SheetRow {
            match kind {
                $(SheetKind::$kind => SheetRow { word: $word, title: $title, print: $print },)*
            }
        }
    };
}

sheets! {
    Elevation: "elevation", "Elevation", elevation::print;
    Yardage: "yardage", "Yardage", yardage::print;
    Notions: "tape-and-fasteners", "Tape and fasteners", notions::print;
    Quote: "quote", "Quote", quote::print;
    CutSheet: "cut-sheet", "Cut sheet", cut_sheet::print;
    Labels: "labels", "Labels", labels::print;
    MarkList: "mark-list", "Mark list", mark_list::print;
    FoldingChart: "folding-chart", "Folding chart", folding_chart::print;
    MakingOrder: "making-order", "Making order", making_order::print;
    RodCheck: "rod-check", "Rod check", rod_check::print;
    Checks: "what-to-check", "What to check", checks::print;
}

/// What stands at the top of a sheet, and wherever sheets are listed.
pub fn sheet_title(kind: SheetKind) -> &'static str {
    row(kind).title
}

/// The word a sheet is chosen by, and the end of its address on a page.
pub fn sheet_word(kind: SheetKind) -> &'static str {
    row(kind).word
}

/// A whole sheet: its title, what stands on it, and its cautions.
pub(crate) fn sheet(packet: &Packet, kind: SheetKind) -> SheetBlocks {
    let SheetRow { title, print, .. } = row(kind);
    let mut sheet = SheetBlocks::default();
    sheet.title(&format!("{title}: {}", packet.title));
    print(packet, &mut sheet);
    cautions::print(packet, kind, &mut sheet);
    sheet
}
