//! The sums of a packet, worked out again from nothing but the packet, each by another way than the
//! one by which it was made.

mod bought;
mod cloth;
mod fold;
mod marks;
mod piece;
mod row;
mod texts;
mod weight;

use serde_json::Value;

/// How far two lengths that are the same may lie apart: each is printed to the nanometre, and a sum
/// has a few dozen of them.
const MOST_MILLIMETRES: f64 = 0.000_1;

/// What was worked out again.
#[derive(Default)]
pub struct Sums {
    /// How many sums there were.
    pub counted: usize,
    /// What does not add up, a line each.
    pub faults: Vec<String>,
}

impl Sums {
    /// Two lengths in millimetres, grams or numbers are the same.
    fn same(&mut self, what: &str, told: f64, worked_out: f64) {
        self.within(what, told, worked_out, MOST_MILLIMETRES);
    }

    /// Two numbers are at most so far apart.
    fn within(&mut self, what: &str, told: f64, worked_out: f64, most: f64) {
        let is_so = (told - worked_out).abs() <= most;
        self.holds(
            &format!("{what}: {told} is told, {worked_out} worked out"),
            is_so,
        );
    }

    /// Something is so.
    fn holds(&mut self, what: &str, is_so: bool) {
        self.counted = self.counted.saturating_add(1);
        if !is_so {
            self.faults.push(what.to_owned());
        }
    }
}

/// All sums of a packet.
pub fn of(packet: &Value) -> Sums {
    let mut sums = Sums::default();
    texts::check(packet, &mut sums);
    cloth::check(packet, &mut sums);
    bought::check(packet, &mut sums);
    weight::check(packet, &mut sums);
    for window in list(packet, "windows") {
        row::check(window, &mut sums);
        for panel in list(window, "panels") {
            let name = format!("{} of {}", text(panel, "name"), text(window, "name"));
            fold::check(&name, panel, &mut sums);
            marks::check(&name, panel, &mut sums);
            for piece in list(panel, "pieces") {
                piece::check(&name, panel, piece, &mut sums);
            }
        }
    }
    sums
}

/// The list that is a field of something; none if it is not there.
fn list<'t>(of: &'t Value, field: &str) -> &'t [Value] {
    of[field].as_array().map_or(&[], Vec::as_slice)
}

/// The text that is a field of something.
fn text<'t>(of: &'t Value, field: &str) -> &'t str {
    of[field].as_str().unwrap_or_default()
}

/// The number that is a field of something.
fn number(of: &Value, field: &str) -> f64 {
    of[field].as_f64().expect(field)
}

/// The length that is a field of something, in millimetres.
fn mm(of: &Value, field: &str) -> f64 {
    number(&of[field], "mm")
}

/// The lengths that are fields of everything in a list, added up.
fn total(of: &[Value], field: &str) -> f64 {
    of.iter().map(|one| mm(one, field)).sum()
}
