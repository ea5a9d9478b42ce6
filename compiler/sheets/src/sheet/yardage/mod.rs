//! Yardage: what to buy, and where each piece lies on the bolt.

mod cutting_order;

use pelmet_packet::{Amount, Cloth, Fold, Packet, PiecesAlong, Way, WayCompared};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::text::words::{counted_of, repeat_in_words};
use crate::to_scale;
use cutting_order::{cutting_order, has_several_bolts};

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    if packet.cloths.is_empty() {
        sheet.paragraph("Nothing is cut from any cloth.");
        return;
    }
    sheet.table(&buy_list(packet));
    sheet.paragraph(
        "Exact is the length this layout uses, and what to buy is that length rounded up. The rule \
        of thumb lays each kind of piece by itself. At least is a length no layout can beat.",
    );
    for cloth in &packet.cloths {
        sheet.heading(&cloth.name);
        sheet.paragraph(&about(cloth));
        sheet.paragraph(&to_buy(cloth));
        if cloth.search_stopped {
            sheet.paragraph(STOPPED);
        }
        if !cloth.ways_compared.is_empty() {
            sheet.paragraph(&ways_compared(cloth));
        }
        if let Some(print_line) = &cloth.print_line {
            sheet.paragraph(&where_to_begin(&print_line.text));
        }
        if let Some(line) = &cloth.print_line_across {
            sheet.paragraph(&where_it_lies_across(&line.text));
        }
        if !cloth.flaws.is_empty() {
            sheet.paragraph(FLAWS);
        }
        sheet.paragraph(
            "Lengths are measured along the bolt from its cut end, places across from the left end \
            of the usable width.",
        );
        if cloth.placed.iter().any(|piece| piece.nested) {
            sheet.paragraph(NESTED);
        }
        if !cloth.sections.is_empty() {
            sheet.paragraph(FOLDED);
            sheet.table(&sections(cloth));
        }
        if cloth.placed.iter().any(|piece| piece.middle_at.is_some()) {
            sheet.paragraph(OPENED_OUT);
        }
        sheet.table(&cutting_order(cloth));
        for drawing in to_scale::layout(cloth) {
            sheet.drawing(drawing);
        }
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

const FLAWS: &str = "Measure each flaw again and mark it on the cloth before the first cut. Where one lies \
    elsewhere than it says here, change the design and lay the cloth out again.";

/// Each cloth with its lengths, and below them what each costs.
fn buy_list(packet: &Packet) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("Cloth"),
        TextColumn::text("Buy"),
        TextColumn::text("Exact"),
        TextColumn::text("Rule of thumb"),
        TextColumn::text("At least"),
    ]);
    for cloth in &packet.cloths {
        let lengths = [
            &cloth.bought,
            &cloth.exact,
            &cloth.rule_of_thumb,
            &cloth.at_least,
        ];
        table.row(named(
            &cloth.name,
            lengths.map(|length| length.text.clone()),
        ));
        if cloth.cost.is_some() {
            let costs = [
                &cloth.cost,
                &cloth.exact_cost,
                &cloth.rule_of_thumb_cost,
                &cloth.at_least_cost,
            ];
            let costs = costs.map(|cost| cost.as_ref().map_or_else(String::new, in_words));
            table.row(named("its cost", costs));
        }
    }
    if let Some(cost) = &packet.cloth_cost {
        let [exact, rule, least] = [(); 3].map(|()| String::new());
        table.row(named("together", [cost.text.clone(), exact, rule, least]));
    }
    table
}

fn named(name: &str, [buy, exact, rule, least]: [String; 4]) -> [String; 5] {
    [name.to_owned(), buy, exact, rule, least]
}

fn in_words(amount: &Amount) -> String {
    amount.text.clone()
}

/// Where the cloth is cut off square before anything else, so that the print falls as it should.
fn where_to_begin(print_line: &str) -> String {
    format!(
        "Begin with a square cut {print_line} before the part of the print that is held: the motif's \
        centre, or what is to hang at the heading line."
    )
}

/// Where the print must lie across the bolt for the layout to be right.
fn where_it_lies_across(line: &str) -> String {
    format!(
        "Across, a line of the print lies {line} from the left end of the usable width. Look whether it \
        does; on some bolts the print has wandered."
    )
}

/// What the cloth is like, in a sentence or two.
fn about(cloth: &Cloth) -> String {
    let repeat = cloth
        .repeat
        .as_ref()
        .map(|repeat| format!("; repeat {}", repeat_in_words(repeat)))
        .unwrap_or_default();
    let way_up = match cloth.way_up {
        Way::OneWay => "One-way: every piece lies with its top toward the cut end.",
        Way::Any => "A piece lies with its top toward the cut end unless it says otherwise.",
    };
    let (width, usable) = (&cloth.width.text, &cloth.usable_width.text);
    format!("{width} wide, {usable} usable{repeat}. {way_up}")
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

/// What each way to lay the cloth buys, and which is taken.
fn ways_compared(cloth: &Cloth) -> String {
    let way = |way: &WayCompared| {
        let along = match way.along {
            PiecesAlong::None => "with every piece upright, joined where it is too wide",
            PiecesAlong::TooWide => "with what is too wide lying along it",
            PiecesAlong::AllThatFit => "with every piece lying along it that fits",
        };
        let cost = way.cost.as_ref();
        let cost = cost.map(|cost| format!(" for {}", cost.text));
        let used = if way.is_used {
            ", which is how it is laid"
        } else {
            ""
        };
        format!(
            "{}{} {along}{used}",
            way.bought.text,
            cost.unwrap_or_default()
        )
    };
    let ways: Vec<String> = cloth.ways_compared.iter().map(way).collect();
    format!("This cloth would take {}.", ways.join("; "))
}

fn bolts(cloth: &Cloth) -> String {
    let used = cloth.bolts.iter().filter(|bolt| bolt.bought.mm > 0.0);
    let of_each = used.map(|bolt| format!("{} of bolt {}", bolt.bought.text, bolt.number));
    format!(" ({})", of_each.collect::<Vec<String>>().join(", "))
}

/// The stretches of the bolt that are folded, and those that lie open.
fn sections(cloth: &Cloth) -> TextTable {
    let several_bolts = has_several_bolts(cloth);
    let mut table = TextTable::new([
        TextColumn::count("Bolt"),
        TextColumn::text("From"),
        TextColumn::text("To"),
        TextColumn::text("The cloth lies"),
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
