//! The cloths: everything that is cut lies on one, apart from the rest, on its print, and is paid for.

use serde_json::Value;

use super::{Sums, list, mm, number, text, total};

/// Adds up the cloths of a packet.
pub fn check(packet: &Value, sums: &mut Sums) {
    for cloth in list(packet, "cloths") {
        check_length(packet, cloth, sums);
        check_pieces(packet, cloth, sums);
        check_places(cloth, sums);
        check_print(cloth, sums);
        check_bands(cloth, sums);
    }
}

/// What is bought reaches to the end of the last piece, and is a multiple of the buying step.
fn check_length(packet: &Value, cloth: &Value, sums: &mut Sums) {
    let name = text(cloth, "name");
    let step = mm(&packet["units"], "buy_to");
    for bolt in list(cloth, "bolts") {
        let on_bolt = list(cloth, "placed").iter();
        let on_bolt = on_bolt.filter(|piece| piece["bolt"] == bolt["number"]);
        let end = on_bolt.map(|piece| mm(piece, "along") + mm(piece, "length"));
        let end = end.fold(0.0, f64::max);
        sums.same(&format!("exact length of {name}"), mm(bolt, "exact"), end);
        let bought = mm(bolt, "bought");
        let steps = (bought / step).round();
        sums.same(&format!("bought of {name}, in steps"), bought, steps * step);
        sums.holds(
            &format!("enough of {name} is bought"),
            bought >= end && bought - step < end,
        );
    }
    let bolts = list(cloth, "bolts");
    sums.same(
        &format!("exact length of {name}"),
        mm(cloth, "exact"),
        total(bolts, "exact"),
    );
    sums.same(
        &format!("bought of {name}"),
        mm(cloth, "bought"),
        total(bolts, "bought"),
    );
    let is_so = mm(cloth, "at_least") <= mm(cloth, "exact");
    sums.holds(&format!("{name} is not shorter than it can be"), is_so);
}

/// What is cut from a cloth is what lies on it, piece by piece, no smaller than it is cut and larger
/// by less than the step to which cuts are rounded up.
fn check_pieces(packet: &Value, cloth: &Value, sums: &mut Sums) {
    let name = text(cloth, "name");
    let step = mm(&packet["units"], "cut_to");
    let placed = list(cloth, "placed");
    let mut wanted = 0.0;
    for window in list(packet, "windows") {
        for panel in list(window, "panels") {
            let pieces = list(panel, "pieces").iter();
            for piece in pieces.filter(|piece| piece["cloth"] == cloth["name"]) {
                let alike = placed.iter().filter(|one| {
                    one["window"] == window["name"]
                        && one["panel"] == panel["name"]
                        && one["layer"] == piece["layer"]
                });
                let strips = list(&piece["joined"], "strips");
                wanted += number(piece, "quantity") * strips.len().max(1) as f64;
                for one in alike {
                    let strip = one["strip"]
                        .as_u64()
                        .and_then(|number| number.checked_sub(1));
                    let strip = strip.and_then(|index| strips.get(usize::try_from(index).ok()?));
                    let width = strip.map_or(mm(piece, "cut_width"), |strip| number(strip, "mm"));
                    check_size(one, (width, mm(piece, "cut_length")), step, sums);
                }
            }
        }
    }
    sums.same(&format!("pieces of {name}"), placed.len() as f64, wanted);
    sums.same(
        &format!("piece count of {name}"),
        number(cloth, "piece_count"),
        wanted,
    );
}

fn check_size(placed: &Value, cut: (f64, f64), step: f64, sums: &mut Sums) {
    let (width, length) = match placed["railroaded"] == true {
        true => (cut.1, cut.0),
        false => cut,
    };
    for (way, cut) in [("width", width), ("length", length)] {
        let more = mm(placed, way) - cut;
        let what = format!(
            "{} of {} on its cloth: {more} more",
            way,
            text(placed, "name")
        );
        sums.holds(&what, (-0.001..step).contains(&more));
    }
}

/// Every piece lies between the selvages, and no two over one another.
fn check_places(cloth: &Value, sums: &mut Sums) {
    let placed = list(cloth, "placed");
    for (index, piece) in placed.iter().enumerate() {
        let name = text(piece, "name");
        let right = mm(piece, "across") + mm(piece, "width");
        let is_so = mm(piece, "across") >= 0.0 && right <= mm(cloth, "usable_width") + 0.001;
        sums.holds(&format!("{name} lies between the selvages"), is_so);
        // What reaches into another's width and length is parted by its outline.
        let others = placed.iter().skip(index.saturating_add(1));
        let others =
            others.filter(|other| other["bolt"] == piece["bolt"] && other["nested"] == false);
        for other in others.filter(|_| piece["nested"] == false) {
            let is_apart = is_apart(piece, other, "across", "width")
                || is_apart(piece, other, "along", "length");
            sums.holds(
                &format!("{name} lies apart from {}", text(other, "name")),
                is_apart,
            );
        }
    }
}

fn is_apart(one: &Value, other: &Value, from: &str, size: &str) -> bool {
    mm(one, from) + mm(one, size) <= mm(other, from) + 0.001
        || mm(other, from) + mm(other, size) <= mm(one, from) + 0.001
}

/// A piece whose print is held lies whole repeats from the line of the print.
fn check_print(cloth: &Value, sums: &mut Sums) {
    let (repeat, name) = (&cloth["repeat"], text(cloth, "name"));
    let ways = [
        ("along", "print_line", "print_along"),
        ("across", "print_line_across", "print_across"),
    ];
    for (way, line, held) in ways {
        let lines = cloth[line].is_object() && repeat[way].is_object();
        for piece in list(cloth, "placed")
            .iter()
            .filter(|piece| lines && piece[held].is_object())
        {
            let repeats = (mm(piece, held) - mm(cloth, line)) / mm(repeat, way);
            let what = format!("print of {name} {way} {}", text(piece, "name"));
            sums.within(&what, repeats, repeats.round(), 0.000_01);
        }
    }
}

/// The bolt is cut straight across into bands, and every piece lies in one.
fn check_bands(cloth: &Value, sums: &mut Sums) {
    let name = text(cloth, "name");
    let mut numbers: Vec<f64> = Vec::new();
    for band in list(cloth, "bands") {
        for number in list(band, "pieces") {
            let piece = list(cloth, "placed")
                .iter()
                .find(|piece| piece["number"] == *number);
            let is_within = piece.is_some_and(|piece| {
                piece["bolt"] == band["bolt"]
                    && mm(piece, "along") >= mm(band, "from") - 0.001
                    && mm(piece, "along") + mm(piece, "length") <= mm(band, "to") + 0.001
            });
            sums.holds(
                &format!("piece {number} of {name} lies in its band"),
                is_within,
            );
            numbers.extend(number.as_f64());
        }
    }
    numbers.sort_by(f64::total_cmp);
    let all: Vec<f64> = (1_u32..)
        .map(f64::from)
        .take(list(cloth, "placed").len())
        .collect();
    sums.holds(
        &format!("every piece of {name} lies in one band"),
        numbers == all,
    );
}
