//! What a heading adds to a panel's length, and whether it suits its rod or board.

use pelmet_measure::{Length, Ratio};
use pelmet_model::SupportKind;
use pelmet_model::{FastenerOrder, Heading, HeadingWork, Matter, PieceMatter, SupportOrder};

/// Half of pi to 18 decimals: the way round a rod comes out right to the nanometre, however thick.
const HALF_PI: Ratio = Ratio::new_raw(1_570_796_326_794_896_619, 1_000_000_000_000_000_000);

/// A quarter of pi, as exact.
pub(crate) const QUARTER_PI: Ratio =
    Ratio::new_raw(1_570_796_326_794_896_619, 2_000_000_000_000_000_000);

/// A heading worked out for one panel.
#[derive(Clone, PartialEq, Debug)]
pub(crate) struct HeadingMade {
    /// Made length less drop.
    pub(crate) depth: Length,
    /// How far the heading line lies below the made-up top edge.
    pub(crate) line: Length,
    /// What holds it.
    pub(crate) fastener: Option<FastenerOrder>,
    /// Further lines to fold, stitch or fasten along, below the made-up top edge.
    pub(crate) lines: Vec<(HeadingWork, Length)>,
}

/// Works out a heading. `None` where it cannot be made.
pub(crate) fn make_heading(
    heading: &Heading,
    support: &SupportOrder,
    drop: Length,
    matters: &mut Vec<Matter>,
) -> Option<HeadingMade> {
    match (heading, support) {
        (Heading::OverRod { tail, fastener }, SupportOrder::Rod(rod)) => {
            let over = OverRod {
                tail: *tail,
                diameter: rod.diameter,
                drop,
            };
            matters.extend(over.matters(fastener.as_ref()));
            over.is_possible().then(|| over.made(fastener.clone()))
        }
        (
            Heading::RodPocket {
                pocket,
                ease,
                above,
                turn,
            },
            SupportOrder::Rod(rod),
        ) => {
            let least = half_circumference(rod.diameter);
            let pocket = pocket.unwrap_or(least + *ease);
            matters.extend(pocket_matters(pocket, least, drop, *above));
            Some(HeadingMade {
                lines: pocket_lines(pocket, *above, *turn),
                ..HeadingMade::laid_back(*above + pocket + *turn, None)
            })
        }
        (Heading::OnBoard { lap, fastener }, SupportOrder::Board(board)) => {
            let lap = lap.unwrap_or(board.depth);
            matters.extend(fastener_too_wide(fastener.as_ref(), lap));
            Some(HeadingMade::laid_back(lap, fastener.clone()))
        }
        (Heading::Plain, _) => Some(HeadingMade::laid_back(Length::ZERO, None)),
        (Heading::OverRod { .. } | Heading::RodPocket { .. }, SupportOrder::Board(_)) => {
            matters.push(
                PieceMatter::HeadingNeedsOther {
                    needs: SupportKind::Rod,
                }
                .into(),
            );
            None
        }
        (Heading::OnBoard { .. }, SupportOrder::Rod(_)) => {
            matters.push(
                PieceMatter::HeadingNeedsOther {
                    needs: SupportKind::Board,
                }
                .into(),
            );
            None
        }
    }
}

impl HeadingMade {
    /// Cloth folded back at the heading line and lying flat behind it.
    fn laid_back(depth: Length, fastener: Option<FastenerOrder>) -> Self {
        Self {
            depth,
            line: depth,
            fastener,
            lines: Vec::new(),
        }
    }
}

/// A panel laid over a rod, its tail running down the back from the rod's centre line.
struct OverRod {
    tail: Length,
    diameter: Length,
    drop: Length,
}

impl OverRod {
    /// Down the front from the rod's centre line, half round the rod and down the tail:
    /// `made length = (drop - d/2) + pi*d/2 + tail`. A quarter of the way round lies above the
    /// tail, below the line that rests on the rod's top.
    fn made(&self, fastener: Option<FastenerOrder>) -> HeadingMade {
        let around = half_circumference(self.diameter);
        // The tail's end hangs level with this line of the front, and is held there.
        let end_of_tail = self.tail * 2 + around;
        let mate = fastener.as_ref().map(|order| end_of_tail - order.width);
        HeadingMade {
            lines: mate
                .map(|down| (HeadingWork::FastenerMate, down))
                .into_iter()
                .collect(),
            depth: around + self.tail - self.diameter.divided(2),
            line: self.tail + self.diameter.scaled(QUARTER_PI),
            fastener,
        }
    }

    fn is_possible(&self) -> bool {
        self.drop >= self.diameter.divided(2)
    }

    fn matters(&self, fastener: Option<&FastenerOrder>) -> Vec<Matter> {
        let (tail, drop) = (self.tail, self.drop);
        let least = self.diameter.divided(2);
        let too_short = PieceMatter::DropTooShort { drop, least };
        // The tail starts half a diameter lower than the drop does.
        let shows = self.is_possible() && tail + least >= drop;
        let own = [
            (!self.is_possible()).then_some(too_short),
            shows.then_some(PieceMatter::TailShows { tail, drop }),
        ];
        let own = own.into_iter().flatten().map(Matter::from);
        own.chain(fastener_too_wide(fastener, tail)).collect()
    }
}

/// Where a pocket is folded under and stitched. The cloth folded back at the heading line reaches
/// as far below it in front as it was above it, and the stitching goes through both.
fn pocket_lines(pocket: Length, above: Length, turn: Length) -> Vec<(HeadingWork, Length)> {
    let heading_line = above + pocket + turn;
    let folded = (HeadingWork::TurnUnder, turn);
    let upper = (HeadingWork::UpperStitching, heading_line + above);
    let lower = (HeadingWork::LowerStitching, heading_line + above + pocket);
    let none_above = |(work, _): &(HeadingWork, Length)| match work {
        HeadingWork::TurnUnder => turn.is_positive(),
        HeadingWork::UpperStitching => above.is_positive(),
        HeadingWork::LowerStitching | HeadingWork::FastenerMate => true,
    };
    [folded, upper, lower]
        .into_iter()
        .filter(none_above)
        .collect()
}

/// The way half round a rod.
fn half_circumference(diameter: Length) -> Length {
    diameter.scaled(HALF_PI)
}

/// A pocket lying flat is two layers, so it takes a rod only if twice its depth goes round it.
fn pocket_matters(pocket: Length, least: Length, drop: Length, above: Length) -> Vec<Matter> {
    let too_small = PieceMatter::PocketTooSmall { pocket, least };
    let seam_below = above + pocket;
    let too_short = PieceMatter::DropTooShort {
        drop,
        least: seam_below,
    };
    let found = [
        (pocket < least).then_some(too_small),
        (drop < seam_below).then_some(too_short),
    ];
    found.into_iter().flatten().map(Matter::from).collect()
}

fn fastener_too_wide(fastener: Option<&FastenerOrder>, tail: Length) -> Option<Matter> {
    let fastener = fastener.filter(|fastener| fastener.width > tail)?.clone();
    Some(PieceMatter::FastenerWiderThanTail { fastener, tail }.into())
}
