//! The kinds of pleat, a row each.
//!
//! A folded kind is a pattern of creases, and nothing else is known of it: where its folds lie and what
//! they are brought to, what it takes up, how many layers it makes and what is lost in its turns all
//! follow from where its creases lie.

use pelmet_measure::Length;

use crate::{CreaseKind, Held};

/// Makes the kinds of pleat from their rows: a name, the word for it, and how it is made.
macro_rules! pleat_kinds {
    ($($(#[$of_kind:meta])* $kind:ident = $word:literal: $make:expr;)+) => {
        crate::closed_set::closed_set! {
            /// The kinds of pleat.
            pub enum PleatKind {
                $($(#[$of_kind])* $kind = $word,)+
            }
        }

        impl PleatKind {
            /// How it is made.
            #[must_use]
            pub const fn make(self) -> PleatMake {
                match self {
                    $(Self::$kind => {
                        const MAKE: PleatMake = $make;
                        MAKE
                    })+
                }
            }
        }
    };
}

pleat_kinds! {
    /// One fold laid to one side.
    Knife = "knife": pressed(&[valley(1, 0), mountain(2, 0)], flat(2, 0), PatternFace::None);

    /// Two folds turned under away from each other, a face standing between them.
    Box = "box": pressed(
        &[valley(1, 0), mountain(2, 0), mountain(2, 1), valley(3, 1)],
        flat(4, 1),
        PatternFace::AsSaid,
    );

    /// A box pleat standing on another as wide: two folds on each side, one exactly over the other.
    DoubleBox = "double box": pressed(
        &[
            valley(1, 0), mountain(2, 0), valley(3, 0), mountain(4, 0),
            mountain(4, 1), valley(5, 1), mountain(6, 1), valley(7, 1),
        ],
        flat(8, 1),
        PatternFace::AsSaid,
    );

    /// The box pleat seen from behind: two visible folds turned toward each other over a hidden face.
    Inverted = "inverted": pressed(INVERTED, flat(2, 1), PatternFace::AsSaid);

    /// An inverted pleat whose folds meet, standing where the panel breaks: at a corner or in the
    /// middle.
    Kick = "kick": pressed(INVERTED, flat(2, 1), PatternFace::FoldsMeet);

    /// A fold stitched down along its root and laid to one side, in front of the panel.
    Tuck = "tuck": PleatMake::Folded(CreasePattern {
        creases: &[valley(0, 0), mountain(1, 0)],
        flat: flat(2, 0),
        face: PatternFace::None,
        held: Held::Stitched,
    });

    /// Two points brought together and stitched, the cloth between them pinched into fingers.
    Pinch = "pinch": PleatMake::Stitched { fingered: true };

    /// Pinched at its root, open above like a cup.
    Goblet = "goblet": PleatMake::Stitched { fingered: false };

    /// A round tube all the way down the heading.
    Cartridge = "cartridge": PleatMake::Stitched { fingered: false };

    /// Cloth drawn up evenly by a thread.
    Gathers = "gathers": PleatMake::Drawn;

    /// Cloth drawn up by a tape into upright folds.
    Pencil = "pencil": PleatMake::Drawn;
}

const INVERTED: &[PatternCrease] = &[mountain(0, 0), valley(1, 0), valley(1, 1), mountain(2, 1)];

/// How a kind of pleat is made.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum PleatMake {
    /// Folded flat at the creases of a pattern.
    Folded(CreasePattern),
    /// Two points are brought together at the heading and stitched, the cloth between them standing
    /// out in front.
    Stitched {
        /// Whether that cloth is folded into fingers.
        fingered: bool,
    },
    /// Drawn up along a thread or a tape.
    Drawn,
}

/// Where the creases of a folded pleat lie, from its left end. A pattern that is not its own mirror
/// image is written as it points to the left.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct CreasePattern {
    /// From left to right, an even number: at every second one the cloth shows its face again.
    pub creases: &'static [PatternCrease],
    /// The flat cloth it uses.
    pub flat: PatternLength,
    /// What there is to say of its face.
    pub face: PatternFace,
    /// How its folds are held.
    pub held: Held,
}

/// A crease of a pattern.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct PatternCrease {
    /// Where it lies.
    pub at: PatternLength,
    /// Which way it is folded.
    pub kind: CreaseKind,
}

/// A length of a pattern: so many depths of the pleat and so many faces.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct PatternLength {
    /// How many depths.
    pub depths: i64,
    /// How many faces.
    pub faces: i64,
}

/// What there is to say of the face of a pleat, hidden or shown.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum PatternFace {
    /// It has none.
    None,
    /// It is as wide as the maker says; unsaid, twice the depth, so that the folds meet.
    AsSaid,
    /// It is always twice the depth: the folds meet.
    FoldsMeet,
}

impl PatternLength {
    /// The length itself.
    #[must_use]
    pub fn of(self, depth: Length, face: Length) -> Length {
        depth * self.depths + face * self.faces
    }

    /// What is left of it without another.
    #[must_use]
    pub const fn less(self, other: Self) -> Self {
        Self {
            depths: self.depths.saturating_sub(other.depths),
            faces: self.faces.saturating_sub(other.faces),
        }
    }
}

impl CreasePattern {
    /// Where the pairs of creases lie between which the cloth is turned over.
    fn turned_over(&self) -> impl Iterator<Item = PatternLength> {
        let pairs = self.creases.chunks_exact(2);
        pairs.filter_map(|pair| match pair {
            [from, to] => Some(to.at.less(from.at)),
            _ => None,
        })
    }

    /// The flat width its folds take up: cloth turned over is taken up twice.
    #[must_use]
    pub fn take_up(&self) -> PatternLength {
        let nothing = PatternLength::default();
        self.turned_over().fold(nothing, |sum, over| PatternLength {
            depths: sum.depths.saturating_add(over.depths.saturating_mul(2)),
            faces: sum.faces.saturating_add(over.faces.saturating_mul(2)),
        })
    }

    /// Whether it lies to one side, so that the maker says to which.
    #[must_use]
    pub fn lies_to_one_side(&self) -> bool {
        let images = self.creases.iter().rev().map(|crease| PatternCrease {
            at: self.flat.less(crease.at),
            ..*crease
        });
        !self.creases.iter().copied().eq(images)
    }

    /// How many of its creases are pressed, and lose cloth in their turns.
    #[must_use]
    pub fn pressed_creases(&self) -> usize {
        match self.held {
            Held::Pressed => self.creases.len(),
            Held::Stitched | Held::Drawn => 0,
        }
    }
}

const fn pressed(
    creases: &'static [PatternCrease],
    flat: PatternLength,
    face: PatternFace,
) -> PleatMake {
    PleatMake::Folded(CreasePattern {
        creases,
        flat,
        face,
        held: Held::Pressed,
    })
}

const fn flat(depths: i64, faces: i64) -> PatternLength {
    PatternLength { depths, faces }
}

const fn valley(depths: i64, faces: i64) -> PatternCrease {
    PatternCrease {
        at: flat(depths, faces),
        kind: CreaseKind::Valley,
    }
}

const fn mountain(depths: i64, faces: i64) -> PatternCrease {
    PatternCrease {
        at: flat(depths, faces),
        kind: CreaseKind::Mountain,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pattern(kind: PleatKind) -> Option<CreasePattern> {
        match kind.make() {
            PleatMake::Folded(pattern) => Some(pattern),
            PleatMake::Stitched { .. } | PleatMake::Drawn => None,
        }
    }

    #[test]
    fn every_word_leads_back_to_its_kind() {
        for &kind in PleatKind::ALL {
            assert_eq!(PleatKind::of_word(kind.word()), Some(kind));
        }
        assert_eq!(PleatKind::of_word("accordion"), None);
    }

    #[test]
    fn creases_lie_in_order_on_the_cloth_of_their_pleat_and_turn_it_back() {
        let (depth, face) = (Length::inches(1), Length::inches(3));
        for pattern in PleatKind::ALL.iter().copied().filter_map(pattern) {
            let at = pattern
                .creases
                .iter()
                .map(|crease| crease.at.of(depth, face));
            let places: Vec<Length> = at.collect();
            assert!(places.is_sorted(), "{pattern:?}");
            assert!(places.len().is_multiple_of(2), "{pattern:?}");
            assert!(places.iter().all(|at| *at <= pattern.flat.of(depth, face)));
        }
    }

    /// Common practice, no source: a knife or a tuck takes up twice its depth, a box, an inverted or a
    /// kick pleat four times, a double box eight times.
    #[test]
    fn take_ups_follow_from_the_creases() {
        let take_ups = [
            (PleatKind::Knife, 2, true),
            (PleatKind::Box, 4, false),
            (PleatKind::DoubleBox, 8, false),
            (PleatKind::Inverted, 4, false),
            (PleatKind::Kick, 4, false),
            (PleatKind::Tuck, 2, true),
        ];
        for (kind, depths, one_sided) in take_ups {
            let pattern = pattern(kind).unwrap();
            assert_eq!(pattern.take_up(), PatternLength { depths, faces: 0 });
            assert_eq!(pattern.lies_to_one_side(), one_sided, "{kind}");
        }
    }
}
