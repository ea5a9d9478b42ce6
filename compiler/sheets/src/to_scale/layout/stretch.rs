//! How the bolts of a cloth are parted so that each part finds room on a page.

use pelmet_packet::{BoltUsed, Cloth};

/// A part of a bolt that is drawn in one. Lengths are millimetres of cloth from the cut end.
#[derive(Clone, PartialEq, Debug)]
pub(super) struct BoltStretch {
    /// The bolt, from 1.
    pub(super) bolt: u32,
    pub(super) from: f64,
    pub(super) to: f64,
    /// What is said of the place it begins at where that is a cut straight across.
    pub(super) from_text: Option<String>,
    /// How its bolt goes on.
    pub(super) then: AfterStretch,
}

/// How its bolt goes on below a stretch.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum AfterStretch {
    /// The end of what is bought of the bolt.
    End,
    /// Left over cloth alone, which is not drawn.
    Rest,
    /// More pieces, which another stretch shows.
    More,
}

/// Lengths nearer to each other than this, in millimetres, are the same: sums of them differ in their
/// last digits.
pub(super) const NOTHING: f64 = 1e-3;

impl BoltStretch {
    pub(super) fn length(&self) -> f64 {
        self.to - self.from
    }

    /// Whether a piece or flaw from one place to another lies in it, wholly or in part.
    pub(super) fn holds(&self, bolt: u32, from: f64, to: f64) -> bool {
        self.bolt == bolt && from + NOTHING < self.to && self.from + NOTHING < to
    }
}

/// The longest part of a cloth that no cut straight across parts.
pub(super) fn longest_band(cloth: &Cloth) -> f64 {
    let bands = cloth.bands.iter();
    let lengths = bands.map(|band| band.to.mm - band.from.mm);
    lengths.fold(0.0, f64::max)
}

/// Every bolt in stretches no longer than `longest`, each ending at a cut straight across where one is
/// near enough.
pub(super) fn stretches(cloth: &Cloth, longest: f64) -> Vec<BoltStretch> {
    let used = cloth.bolts.iter().filter(|bolt| bolt.bought.mm > 0.0);
    used.flat_map(|bolt| stretches_of(cloth, bolt, longest))
        .collect()
}

fn stretches_of(cloth: &Cloth, bolt: &BoltUsed, longest: f64) -> Vec<BoltStretch> {
    let end = bolt.bought.mm;
    let cuts: Vec<(f64, &str)> = cloth
        .bands
        .iter()
        .filter(|band| band.bolt == bolt.number && band.to.mm < end)
        .map(|band| (band.to.mm, band.to.text.as_str()))
        .collect();
    let mut stretches = Vec::new();
    let (mut from, mut from_text) = (0.0, None);
    loop {
        let reach = from + longest;
        let in_reach = |(cut, _): &&(f64, &str)| from < *cut && *cut <= reach;
        // Parted where the bolt is cut across, no piece is parted. Where no cut is in reach a piece is longer
        // than the page, and is drawn in parts; after the last cut there is only cloth left over.
        let cut = cuts.iter().rfind(in_reach).copied();
        let last = cuts.last().copied();
        let (to, text, then) = match cut {
            _ if end <= reach => (end, None, AfterStretch::End),
            _ if cut == last && cut.is_some() => (reach, None, AfterStretch::Rest),
            Some((cut, text)) => (cut, Some(text.to_owned()), AfterStretch::More),
            None => (reach, None, AfterStretch::More),
        };
        stretches.push(BoltStretch {
            bolt: bolt.number,
            from,
            to,
            from_text,
            then,
        });
        if then != AfterStretch::More {
            break;
        }
        (from, from_text) = (to, text);
    }
    stretches
}

/// The stretches page by page: as many together as find room, with `between` two of them.
pub(super) fn pages(stretches: Vec<BoltStretch>, room: f64, between: f64) -> Vec<Vec<BoltStretch>> {
    let mut pages: Vec<Vec<BoltStretch>> = Vec::new();
    let mut left = 0.0;
    for stretch in stretches {
        let taken = stretch.length() + between;
        match pages.last_mut() {
            Some(page) if taken <= left => {
                left -= taken;
                page.push(stretch);
            }
            _ => {
                left = room - stretch.length();
                pages.push(vec![stretch]);
            }
        }
    }
    pages
}
