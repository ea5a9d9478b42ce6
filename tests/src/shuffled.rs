//! The same file with its entries in another order.

use pelmet_diagnostics::FileId;
use pelmet_syntax::parse;
use pelmet_syntax::tree::Entry;

/// The kinds of things whose blocks are steps, which are done one after the other.
const KINDS_WITH_STEPS: [&str; 3] = ["outline", "pleats", "steps"];

/// The text of a file with its entries, and the properties of each, in another order; comments are
/// left out. Every seed gives an order of its own, the same on every run.
pub fn shuffled(text: &str, seed: u64) -> String {
    let file = parse(FileId(0), text).file;
    Shuffle { text, state: seed }.entries(&file.entries)
}

struct Shuffle<'t> {
    text: &'t str,
    state: u64,
}

impl Shuffle<'_> {
    fn entries(&mut self, entries: &[Entry]) -> String {
        let mut texts: Vec<String> = entries.iter().map(|entry| self.entry(entry)).collect();
        for last in (1..texts.len()).rev() {
            let other = self.below(last.saturating_add(1));
            texts.swap(last, other);
        }
        texts.concat()
    }

    fn entry(&mut self, entry: &Entry) -> String {
        let key = entry.key().unwrap_or_default();
        let steps = KINDS_WITH_STEPS
            .iter()
            .any(|kind| key.split(' ').next() == Some(kind));
        match &entry.block {
            Some(block) if !steps => {
                let before = entry.span.start as usize..block.span.start as usize;
                let before = self.text.get(before).unwrap_or_default().to_owned();
                format!("{before}{{\n{}}}\n", self.entries(&block.entries))
            }
            _ => format!(
                "{}\n",
                self.text.get(entry.span.range()).unwrap_or_default()
            ),
        }
    }

    /// A number below `limit`, by Marsaglia's xorshift.
    fn below(&mut self, limit: usize) -> usize {
        self.state = self.state.wrapping_add(0x9e37_79b9_7f4a_7c15);
        self.state ^= self.state << 13;
        self.state ^= self.state >> 7;
        self.state ^= self.state << 17;
        let limit = u64::try_from(limit).unwrap_or(u64::MAX).max(1);
        usize::try_from(self.state.checked_rem(limit).unwrap_or_default()).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::shuffled;

    const TEXT: &str = "\
units inches
rod pole { length: 40 in, diameter: 1 in }
outline level whole {
    from (0, drop)
    to (width, drop)
    up to heading
}
";

    #[test]
    fn entries_change_places_and_steps_do_not() {
        let orders: Vec<String> = (0..20).map(|seed| shuffled(TEXT, seed)).collect();
        let wholes = |text: &String| {
            text.contains("from (0, drop)\n    to (width, drop)\n    up to heading")
                && text.contains("units inches\n")
                && text.contains("length: 40 in\n")
                && text.contains("diameter: 1 in\n")
        };
        assert!(orders.iter().all(wholes), "{orders:#?}");
        assert!(orders.iter().any(|text| text.starts_with("outline")));
        assert!(orders.iter().any(|text| text.starts_with("rod")));
        assert!(
            orders
                .iter()
                .any(|text| text.find("diameter") < text.find("length"))
        );
        assert_eq!(shuffled(TEXT, 7), shuffled(TEXT, 7));
    }
}
