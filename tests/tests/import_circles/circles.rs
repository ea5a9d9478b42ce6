//! Circles of modules: each uses every other, by whatever way round.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use crate::house::Uses;

/// The circles of more than one module, the largest first.
pub fn circles(uses: &Uses) -> Vec<BTreeSet<&str>> {
    let reached: BTreeMap<&str, BTreeSet<&str>> = uses
        .keys()
        .map(|from| (from.as_str(), reached_from(from, uses)))
        .collect();
    let circle = |from: &str| -> BTreeSet<&str> {
        let others = reached[from].iter().copied();
        others
            .filter(|other| reached[other].contains(from))
            .collect()
    };
    let circles: BTreeSet<BTreeSet<&str>> = uses.keys().map(|from| circle(from)).collect();
    let mut circles: Vec<_> = circles
        .into_iter()
        .filter(|circle| circle.len() > 1)
        .collect();
    circles.sort_by_key(|circle| std::cmp::Reverse(circle.len()));
    circles
}

/// Every module that is reached from one, over whatever others.
fn reached_from<'t>(from: &str, uses: &'t Uses) -> BTreeSet<&'t str> {
    let mut reached = BTreeSet::new();
    let mut waiting = vec![from];
    while let Some(module) = waiting.pop() {
        for other in uses.get(module).into_iter().flat_map(BTreeMap::keys) {
            if reached.insert(other.as_str()) {
                waiting.push(other);
            }
        }
    }
    reached
}

/// A circle as a list to read: under each of its modules, what it uses of which others.
pub fn told(circle: &BTreeSet<&str>, uses: &Uses) -> String {
    let mut text = String::new();
    for module in circle {
        // Writing to a text cannot fail.
        let _ = writeln!(text, "    {module}");
        for (other, names) in &uses[*module] {
            if circle.contains(other.as_str()) {
                let names: Vec<&str> = names.iter().map(String::as_str).collect();
                let _ = writeln!(text, "        of {other}: {}", names.join(", "));
            }
        }
    }
    text
}
