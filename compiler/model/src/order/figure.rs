//! The figures of a panel that the words of a making method can name.

use crate::closed_set::closed_set;
use crate::{BandEdge, EdgeKind, Layer};

/// A figure of one panel, named in the words of a step.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Figure {
    /// The name of the face cloth.
    Face,
    /// Cut width and length of the face.
    FaceSize,
    /// The name of the lining cloth.
    Lining,
    /// Cut width and length of the lining.
    LiningSize,
    /// The name of the interlining cloth.
    Interlining,
    /// Cut width and length of the interlining.
    InterliningSize,
    /// How much longer the lining is cut than the face's allowances make it.
    LiningLonger,
    /// How much shorter.
    LiningShorter,
    /// How much wider, both sides together.
    LiningWider,
    /// How much narrower, both sides together.
    LiningNarrower,
    /// Width before pleating.
    FlatWidth,
    /// Width as it hangs.
    FinishedWidth,
    /// How far the finished width may be out at worst.
    Tolerance,
    /// Made-up length.
    MadeLength,
    /// From the heading line down.
    Drop,
    /// How far the heading line lies below the made-up top edge.
    HeadingLine,
    /// What an edge of a layer takes beyond the sewn line.
    Edge(Layer, EdgeKind, EdgePart),
    /// The name of the cloth of the bands.
    Band,
    /// Cut width and length of a band.
    BandSize(BandEdge),
    /// Finished depth of a band.
    BandDepth(BandEdge),
    /// Seam allowance where a band is sewn on.
    BandSeam,
    /// How far below its cut top edge a face is folded that lines itself.
    Fold,
    /// How many joins all layers have.
    Joins,
    /// Seam allowance on each side of a join.
    JoinSeam,
    /// Which layer the widths are joined of that the sentence speaks of.
    JoinLayer,
    /// Where this join is sewn, from the left edge of the flat panel.
    JoinPlace,
    /// Width of the fusible tape.
    Tape,
    /// All the tape along the edges.
    TapeLength,
    /// The edge of this length of tape.
    RunEdge,
    /// The corners this length of tape runs between.
    RunEnds,
    /// How long it is.
    RunLength,
    /// Length of the gap to turn through.
    TurningOpening,
    /// Where it starts, from the left edge.
    OpeningStart,
    /// Where it ends, from the left edge.
    OpeningEnd,
    /// The corners to trim, by number.
    Trims,
    /// The corners to snip to, by number.
    Snips,
    /// The corners where hems are mitred, by number.
    Mitres,
    /// The slits to clip along concave curves.
    Clips,
    /// The wedges to cut along convex curves.
    Wedges,
    /// How many pleats.
    Pleats,
    /// Which pleat from the left the sentence speaks of, from 1.
    PleatNumber,
    /// The word for the kind of that pleat.
    PleatKind,
    /// How deep it is.
    PleatDepth,
    /// What to bring where, as the mark list has it.
    PleatFold,
    /// How many strips of tape go behind the folds.
    PleatStrips,
    /// How long each of them is.
    StripLength,
    /// How many rings.
    Rings,
    /// How far apart they are.
    RingSpacing,
    /// How many weights.
    Weights,
    /// The name of the thread.
    Thread,
}

/// What a figure says of an edge.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum EdgePart {
    /// Its seam allowance, where it is sewn.
    Seam,
    /// The depth of its hem, where it is hemmed.
    Hem,
    /// What is turned under before that hem is turned.
    Turn,
}

closed_set! {
    /// What some words are said for, each in turn.
    pub enum Each {
        /// Each join of each layer.
        Join = "join",
        /// Each length of tape, corner to corner.
        TapeRun = "tape run",
        /// Each pleat.
        Pleat = "pleat",
    }
}

impl Figure {
    /// Every figure by its name.
    pub const ALL: &[(Self, &str)] = &[
        (Self::Face, "face"),
        (Self::FaceSize, "face size"),
        (Self::Lining, "lining"),
        (Self::LiningSize, "lining size"),
        (Self::Interlining, "interlining"),
        (Self::InterliningSize, "interlining size"),
        (Self::LiningLonger, "lining longer"),
        (Self::LiningShorter, "lining shorter"),
        (Self::LiningWider, "lining wider"),
        (Self::LiningNarrower, "lining narrower"),
        (Self::Band, "band"),
        (Self::BandSize(BandEdge::Top), "top band size"),
        (Self::BandSize(BandEdge::Left), "side band size"),
        (Self::BandSize(BandEdge::Lower), "lower band size"),
        (Self::BandDepth(BandEdge::Top), "top band"),
        (Self::BandDepth(BandEdge::Left), "side band"),
        (Self::BandDepth(BandEdge::Lower), "lower band"),
        (Self::BandSeam, "band seam"),
        (Self::Fold, "fold"),
        (Self::FlatWidth, "flat width"),
        (Self::FinishedWidth, "finished width"),
        (Self::Tolerance, "tolerance"),
        (Self::MadeLength, "made length"),
        (Self::Drop, "drop"),
        (Self::HeadingLine, "heading line"),
        (face(EdgeKind::Top, EdgePart::Seam), "top seam"),
        (face(EdgeKind::Side, EdgePart::Seam), "side seam"),
        (face(EdgeKind::Lower, EdgePart::Seam), "lower seam"),
        (face(EdgeKind::Top, EdgePart::Hem), "top hem"),
        (face(EdgeKind::Side, EdgePart::Hem), "side hem"),
        (face(EdgeKind::Lower, EdgePart::Hem), "lower hem"),
        (face(EdgeKind::Top, EdgePart::Turn), "top turn"),
        (face(EdgeKind::Side, EdgePart::Turn), "side turn"),
        (face(EdgeKind::Lower, EdgePart::Turn), "lower turn"),
        (lining(EdgeKind::Top, EdgePart::Seam), "lining top seam"),
        (lining(EdgeKind::Side, EdgePart::Seam), "lining side seam"),
        (lining(EdgeKind::Lower, EdgePart::Seam), "lining lower seam"),
        (lining(EdgeKind::Top, EdgePart::Hem), "lining top hem"),
        (lining(EdgeKind::Side, EdgePart::Hem), "lining side hem"),
        (lining(EdgeKind::Lower, EdgePart::Hem), "lining lower hem"),
        (lining(EdgeKind::Top, EdgePart::Turn), "lining top turn"),
        (lining(EdgeKind::Side, EdgePart::Turn), "lining side turn"),
        (lining(EdgeKind::Lower, EdgePart::Turn), "lining lower turn"),
        (Self::Joins, "joins"),
        (Self::JoinSeam, "join seam"),
        (Self::JoinLayer, "join layer"),
        (Self::JoinPlace, "join place"),
        (Self::Tape, "tape"),
        (Self::TapeLength, "tape length"),
        (Self::RunEdge, "run edge"),
        (Self::RunEnds, "run ends"),
        (Self::RunLength, "run length"),
        (Self::TurningOpening, "turning opening"),
        (Self::OpeningStart, "opening start"),
        (Self::OpeningEnd, "opening end"),
        (Self::Trims, "trims"),
        (Self::Snips, "snips"),
        (Self::Mitres, "mitres"),
        (Self::Clips, "clips"),
        (Self::Wedges, "wedges"),
        (Self::Pleats, "pleats"),
        (Self::PleatNumber, "pleat"),
        (Self::PleatKind, "pleat kind"),
        (Self::PleatDepth, "pleat depth"),
        (Self::PleatFold, "pleat fold"),
        (Self::PleatStrips, "pleat strips"),
        (Self::StripLength, "strip length"),
        (Self::Rings, "rings"),
        (Self::RingSpacing, "ring spacing"),
        (Self::Weights, "weights"),
        (Self::Thread, "thread"),
    ];

    /// The figure of this name.
    pub fn from_name(name: &str) -> Option<Self> {
        let named = Self::ALL.iter().find(|(_, known)| *known == name);
        named.map(|(figure, _)| *figure)
    }

    /// The words by which a step names it between curly brackets.
    pub fn name(self) -> &'static str {
        let named = Self::ALL.iter().find(|(figure, _)| *figure == self);
        named.map_or("", |(_, name)| name)
    }

    /// What it is a figure of, where that is not the whole panel.
    pub fn of_each(self) -> Option<Each> {
        match self {
            Self::JoinLayer | Self::JoinPlace => Some(Each::Join),
            Self::RunEdge | Self::RunEnds | Self::RunLength => Some(Each::TapeRun),
            Self::PleatNumber | Self::PleatKind | Self::PleatDepth | Self::PleatFold => {
                Some(Each::Pleat)
            }
            _ => None,
        }
    }
}

const fn face(edge: EdgeKind, part: EdgePart) -> Figure {
    Figure::Edge(Layer::Face, edge, part)
}

const fn lining(edge: EdgeKind, part: EdgePart) -> Figure {
    Figure::Edge(Layer::Lining, edge, part)
}

#[cfg(test)]
mod tests {
    use super::Figure;

    #[test]
    fn every_name_leads_back_to_its_figure() {
        for (figure, name) in Figure::ALL {
            assert_eq!(Figure::from_name(name), Some(*figure), "{name}");
            assert_eq!(figure.name(), *name);
        }
    }
}
