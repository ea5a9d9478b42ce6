//! Findings in the pieces and the heading.

use pelmet_measure::{Length, Ratio};

use crate::closed_set::closed_set;
use crate::{FastenerOrder, Figure, Layer, SupportKind};

/// Findings in pieces and heading.
#[derive(Clone, PartialEq, Debug)]
pub enum PieceMatter {
    /// A panel has no width: none given, nothing to fill.
    NoWidth,
    /// Two of flat, finished, cut width and fullness disagree.
    WidthsDisagree {
        /// One.
        first: PanelMeasure,
        /// What the first comes to.
        first_length: Length,
        /// The other.
        second: PanelMeasure,
        /// What the second comes to.
        second_length: Length,
    },
    /// A size came out at zero or less.
    NothingLeft {
        /// Which size.
        size: PanelMeasure,
        /// What it came out at.
        length: Length,
    },
    /// A sum went past the largest length.
    TooLarge {
        /// Which size.
        size: PanelMeasure,
    },
    /// The words of a step name a figure that the panel has not.
    FigureAbsent {
        /// The step of the making method, by index.
        step: usize,
        /// The sentence of the step, by index.
        sentence: usize,
        /// The figure named there.
        figure: Figure,
    },
    /// The flat width is to be less than the finished one, and cloth cannot be drawn apart.
    FullnessUnderOne {
        /// Flat width over finished width, as ordered.
        fullness: Ratio,
    },
    /// A heading for a rod on a board, or the other way round.
    HeadingNeedsOther {
        /// What the heading needs.
        needs: SupportKind,
    },
    /// The drop is less than half the rod.
    DropTooShort {
        /// As ordered.
        drop: Length,
        /// The least that makes sense.
        least: Length,
    },
    /// The pocket is too small for the rod: a flat pocket of depth f takes a rod of diameter d only if 2f >= pi*d.
    PocketTooSmall {
        /// Depth of the pocket.
        pocket: Length,
        /// The least that takes the rod.
        least: Length,
    },
    /// The fastener is wider than the tail that carries it.
    FastenerWiderThanTail {
        /// As ordered.
        fastener: FastenerOrder,
        /// Length of the tail, from the middle of the rod down the back.
        tail: Length,
    },
    /// The tail is as long as the drop or longer and would show below.
    TailShows {
        /// Length of the tail, from the middle of the rod down the back.
        tail: Length,
        /// The drop as ordered, from the heading line down.
        drop: Length,
    },
    /// The turning opening does not fit in the top edge.
    OpeningTooWide {
        /// As ordered.
        opening: Length,
        /// The top edge.
        edge: Length,
    },
    /// A piece is longer than the bolt.
    LongerThanBolt {
        /// The layer it is cut for.
        layer: Layer,
        /// Its length, allowances and shrinkage included.
        cut_length: Length,
        /// The longest continuous length to be had.
        bolt: Length,
    },
    /// The usable width leaves nothing after selvages or join allowances.
    ClothTooNarrow {
        /// The layer that needs it.
        layer: Layer,
        /// Width of the cloth between its selvages.
        usable: Length,
        /// What a strip needs at the least.
        needed: Length,
    },
    /// A seam between widths lies where it is seen.
    SeamShows {
        /// The layer whose piece is joined there.
        layer: Layer,
        /// Flat position of the seam from the left edge.
        at: Length,
        /// The nearest flat position that a pleat hides; `None` where none hides any.
        hidden_at: Option<Length>,
    },
    /// A panel is cut on the fold, but its two halves are not alike.
    HalvesDiffer,
    /// The motif is to lie below the lower edge.
    MotifBelowDrop {
        /// How far below the heading line it is to lie.
        below_heading: Length,
        /// The panel's drop.
        drop: Length,
    },
    /// The middle of the panel, where the motif is to lie, is hidden by a pleat.
    MotifHidden {
        /// Flat position of the middle from the left edge.
        at: Length,
        /// The flat cloth that is hidden there, from and to.
        hidden: (Length, Length),
    },
    /// Where pleats lie, the layers are together thicker than the method allows.
    StackTooThick {
        /// How many layers of the panel lie there.
        layers: u32,
        /// How thick one of them is.
        layer: Length,
        /// What the method allows.
        limit: Length,
    },
    /// The method limits a stack of cloth that does not say how thick it is.
    ThicknessMissing {
        /// The layer cut from that cloth.
        layer: Layer,
        /// What the method allows.
        limit: Length,
    },
    /// More strips than the limit.
    TooManyWidths {
        /// The layer whose piece takes them.
        layer: Layer,
        /// The most widths one piece may be joined from.
        limit: u32,
    },
}

closed_set! {
    /// The measures of a panel that can come out wrong.
    pub enum PanelMeasure {
        /// As it hangs.
        FinishedWidth = "finished width",
        /// Before pleating.
        FlatWidth = "flat width",
        /// Before pleating, by what is left of a stated cut width.
        FlatWidthByCut = "flat width that the cut width leaves",
        /// Before pleating, by a stated fullness.
        FlatWidthByFullness = "flat width that the fullness makes",
        /// Of a piece, across.
        CutWidth = "cut width",
        /// Of a piece, down.
        CutLength = "cut length",
        /// From the heading line down.
        Drop = "drop",
        /// Of the strip that fastens its heading.
        FastenerLength = "fastener length",
    }
}
