//! Yardage: what to buy, and where each piece lies on the bolt.

use pelmet_packet::Packet;
use pelmet_packet::packet::{Cloth, Fold, PlacedPiece, PrintRepeat, RepeatMatch, WayUp};

use crate::drawing;
use crate::page::Page;
use crate::table::{Column, Table};
use crate::words::{counted_of, optional};

pub(crate) fn print(packet: &Packet, page: &mut Page) {
    if packet.cloths.is_empty() {
        page.paragraph("Nothing is cut from any cloth.");
        return;
    }
    page.table(&buy_list(packet));
    page.paragraph(
        "Exact is the length this layout uses, and what to buy is that length rounded up. The rule \
        of thumb lays each kind of piece by itself. At least is a length no layout can beat.",
    );
    for cloth in &packet.cloths {
        page.heading(&cloth.name);
        page.paragraph(&about(cloth));
        page.paragraph(&to_buy(cloth));
        if cloth.search_stopped {
            page.paragraph(STOPPED);
        }
        if let Some(print_line) = &cloth.print_line {
            page.paragraph(&where_to_begin(&print_line.text));
        }
        page.paragraph(
            "Lengths are measured along the bolt from its cut end, places across from the left end \
            of the usable width.",
        );
        if cloth.placed.iter().any(|piece| piece.nested) {
            page.paragraph(NESTED);
        }
        if !cloth.sections.is_empty() {
            page.paragraph(FOLDED);
            page.table(&sections(cloth));
        }
        if cloth.placed.iter().any(|piece| piece.middle_at.is_some()) {
            page.paragraph(OPENED_OUT);
        }
        page.table(&cutting_order(cloth));
        page.drawing(drawing::layout(cloth));
    }
}

const STOPPED: &str = "The search for a shorter layout was stopped before its end: this is the \
    shortest it had found. Build again and let it end before you buy.";

const NESTED: &str = "Some pieces lie within one another's width and length. Trace their outlines \
    before any of them is cut, and cut along these.";

const FOLDED: &str = "Some pieces are cut on the fold. Cut the bolt straight across between these \
    stretches and fold each along its length as it says; what lies beside the doubled cloth is cut \
    from a single layer.";

const OPENED_OUT: &str = "A piece that is opened out lies where the cloth cannot be folded for it: \
    trace the half on one side of its middle, turn it over and trace it on the other.";

fn buy_list(packet: &Packet) -> Table {
    let mut table = Table::new([
        Column::text("Cloth"),
        Column::text("Buy"),
        Column::text("Exact"),
        Column::text("Rule of thumb"),
        Column::text("At least"),
        Column::count("Cost"),
    ]);
    for cloth in &packet.cloths {
        table.row([
            cloth.name.clone(),
            cloth.bought.text.clone(),
            cloth.exact.text.clone(),
            cloth.rule_of_thumb.text.clone(),
            cloth.at_least.text.clone(),
            cloth
                .cost
                .as_ref()
                .map(|cost| cost.text.clone())
                .unwrap_or_default(),
        ]);
    }
    if let Some(cost) = &packet.cloth_cost {
        let blank = String::new;
        let together = String::from("together");
        table.row([
            together,
            blank(),
            blank(),
            blank(),
            blank(),
            cost.text.clone(),
        ]);
    }
    table
}

/// Where the cloth is cut off square before anything else, so that the print falls as it should.
fn where_to_begin(print_line: &str) -> String {
    format!(
        "Begin with a square cut {print_line} before the part of the print that is held: the motif's \
        centre, or what is to hang at the heading line."
    )
}

/// What the cloth is like, in a sentence or two.
fn about(cloth: &Cloth) -> String {
    let repeat = cloth
        .repeat
        .as_ref()
        .map(repeat_in_words)
        .unwrap_or_default();
    let way_up = match cloth.way_up {
        WayUp::OneWay => "One-way: every piece lies with its top toward the cut end.",
        WayUp::Any => "A piece lies with its top toward the cut end unless it says otherwise.",
    };
    let (width, usable) = (&cloth.width.text, &cloth.usable_width.text);
    format!("{width} wide, {usable} usable{repeat}. {way_up}")
}

fn repeat_in_words(repeat: &PrintRepeat) -> String {
    let along = repeat
        .along
        .as_ref()
        .map(|along| format!("{} along", along.text));
    let across = repeat
        .across
        .as_ref()
        .map(|across| format!("{} across", across.text));
    let lengths: Vec<String> = along.into_iter().chain(across).collect();
    let matching = match repeat.matching {
        RepeatMatch::Straight => "straight match",
        RepeatMatch::HalfDrop => "half-drop match",
    };
    format!("; repeat {}, {matching}", lengths.join(" and "))
}

fn to_buy(cloth: &Cloth) -> String {
    let pieces = counted_of(cloth.piece_count, "piece", "pieces");
    let bolts = if has_several_bolts(cloth) {
        bolts(cloth)
    } else {
        String::new()
    };
    let price = cloth
        .price
        .as_ref()
        .map(|price| format!(" at {}", price.text))
        .unwrap_or_default();
    let cost = cloth
        .cost
        .as_ref()
        .map(|cost| format!(": {}", cost.text))
        .unwrap_or_default();
    let praise = if cloth.cannot_be_beaten {
        " No layout can buy less."
    } else {
        ""
    };
    format!(
        "Buy {}{bolts}{price}{cost}. {pieces} to cut.{praise}",
        cloth.bought.text
    )
}

fn has_several_bolts(cloth: &Cloth) -> bool {
    cloth.bolts.len() > 1
}

fn bolts(cloth: &Cloth) -> String {
    let of_each = cloth
        .bolts
        .iter()
        .map(|bolt| format!("{} of bolt {}", bolt.bought.text, bolt.number));
    format!(" ({})", of_each.collect::<Vec<String>>().join(", "))
}

/// The stretches of the bolt that are folded, and those that lie open.
fn sections(cloth: &Cloth) -> Table {
    let several_bolts = has_several_bolts(cloth);
    let mut table = Table::new([
        Column::count("Bolt"),
        Column::text("From"),
        Column::text("To"),
        Column::text("The cloth lies"),
    ]);
    for section in &cloth.sections {
        let bolt = several_bolts.then(|| section.bolt.to_string());
        let folds = [("left", &section.left_fold), ("right", &section.right_fold)];
        let folded = folds.into_iter().filter_map(|(side, fold)| {
            let Fold { at, edge_comes_to } = fold.as_ref()?;
            let (at, to) = (&at.text, &edge_comes_to.text);
            Some(format!("folded at {at}, its {side} end brought to {to}"))
        });
        let folded: Vec<String> = folded.collect();
        table.row([
            bolt.unwrap_or_default(),
            section.from.text.clone(),
            section.to.text.clone(),
            if folded.is_empty() {
                String::from("open")
            } else {
                folded.join("; ")
            },
        ]);
    }
    table
}

/// The pieces band by band; the first of each band says where the bolt is cut across after it.
fn cutting_order(cloth: &Cloth) -> Table {
    let several_bolts = has_several_bolts(cloth);
    let mut table = Table::new([
        Column::count("Bolt"),
        Column::text("Cut across at"),
        Column::count("No"),
        Column::text("Piece"),
        Column::text("Size"),
        Column::text("Along"),
        Column::text("Across"),
    ]);
    for band in &cloth.bands {
        let pieces = band
            .pieces
            .iter()
            .filter_map(|number| numbered(cloth, *number));
        for (index, piece) in pieces.enumerate() {
            let leads = index == 0;
            let bolt = (leads && several_bolts).then(|| band.bolt.to_string());
            table.row([
                bolt.unwrap_or_default(),
                optional(leads.then_some(&band.to)),
                piece.number.to_string(),
                piece_in_words(piece),
                format!("{} x {}", piece.width.text, piece.length.text),
                piece.along.text.clone(),
                piece.across.text.clone(),
            ]);
        }
    }
    table
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
