//! The making method: what is added at the edges, and what holds the layers together.

use pelmet_measure::Length;

use crate::{EdgeKind, Layer, MakingNotions, MakingStep, WorkStep};

/// How a panel is made up.
#[derive(Clone, PartialEq, Debug)]
pub struct Making {
    /// The name the maker gave it.
    pub name: String,
    /// The face's own allowances.
    pub face: LayerMaking,
    /// The interlining's own; `None` for a method without interlining.
    pub interlining: Option<LayerMaking>,
    /// The lining's own; `None` for a method without lining.
    pub lining: Option<LayerMaking>,
    /// Whether the face lines itself: it is cut twice as long, folded at the lower edge and comes up
    /// behind. Such a method has no lining.
    pub self_lined: bool,
    /// The bands along its edges; `None` for a method without any.
    pub band: Option<BandOrder>,
    /// Whether the hems of the sides and of the lower edge are mitred where they meet.
    pub mitred: bool,
    /// Seam allowance of an edge that has none of its own.
    pub seam: Length,
    /// Seam allowance where two widths of cloth are joined, each side.
    pub join: Length,
    /// Fusible tape along the edges.
    pub tape: Option<TapeOrder>,
    /// Length of the gap left in the top seam to turn the panel right side out.
    pub turning_opening: Option<Length>,
    /// How thick a stack of the panel's layers may be where pleats lie; `None` sets no limit.
    pub stack: Option<Length>,
    /// What it takes beside cloth and the tape along its edges.
    pub notions: MakingNotions,
    /// The work on one panel, step by step.
    pub work: Vec<WorkStep>,
    /// What is done, in working order and in the maker's own words.
    pub steps: Vec<MakingStep>,
}

impl Making {
    /// What a layer gets; `None` for a layer the method does not make.
    #[must_use]
    pub fn layer(&self, layer: Layer) -> Option<&LayerMaking> {
        match layer {
            Layer::Face => Some(&self.face),
            Layer::Interlining => self.interlining.as_ref(),
            Layer::Lining => self.lining.as_ref(),
            Layer::Band(_) => self.band.map(|_| &self.face),
        }
    }
}

impl Making {
    /// How far the cut face reaches beyond the sewn side, less where a band takes its place.
    pub fn beyond_sides(&self) -> Length {
        let edges = self.face.edges;
        let bands = self.band.filter(|band| !band.laid_on);
        let depth = bands.and_then(|band| band.sides);
        depth.map_or(edges.sides.total(), |depth| edges.band.total() - depth)
    }
}

/// What one layer gets beyond the sewn outline.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct LayerMaking {
    /// Allowance by edge.
    pub edges: EdgeAllowances,
    /// Added to the cut length, at the top edge (negative: shorter).
    pub longer: Length,
    /// Added to the cut width, half at each side (negative: narrower).
    pub wider: Length,
}

/// An allowance for each kind of edge.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct EdgeAllowances {
    /// The made-up top edge.
    pub top: Allowance,
    /// The side edges.
    pub sides: Allowance,
    /// Everything below: level, stepped or shaped.
    pub lower: Allowance,
    /// Where a band is sewn on.
    pub band: Allowance,
}

impl EdgeAllowances {
    /// The same allowance everywhere.
    #[must_use]
    pub fn all(allowance: Allowance) -> Self {
        Self {
            top: allowance,
            sides: allowance,
            lower: allowance,
            band: allowance,
        }
    }

    /// The allowance of a kind of edge.
    #[must_use]
    pub fn of(self, kind: EdgeKind) -> Allowance {
        match kind {
            EdgeKind::Top => self.top,
            EdgeKind::Side => self.sides,
            EdgeKind::Lower => self.lower,
            EdgeKind::Band => self.band,
        }
    }
}

/// What an edge needs beyond its sewn line.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Allowance {
    /// Sewn to another layer with this much beyond the sewn line, and turned.
    Seam(Length),
    /// A hem folded once, its raw edge turned under by `turn`.
    SingleHem {
        /// Depth of the finished hem.
        depth: Length,
        /// The raw edge turned under.
        turn: Length,
    },
    /// A hem folded twice by its whole depth.
    DoubleHem(Length),
}

impl Allowance {
    /// The cloth it takes beyond the sewn line.
    pub fn total(self) -> Length {
        match self {
            Self::Seam(width) => width,
            Self::SingleHem { depth, turn } => depth + turn,
            Self::DoubleHem(depth) => depth * 2,
        }
    }

    /// How deep the finished hem is; `None` for a seam, and for a hem of no depth.
    #[must_use]
    pub fn hem_depth(self) -> Option<Length> {
        match self {
            Self::Seam(_) => None,
            Self::SingleHem { depth, .. } | Self::DoubleHem(depth) => Some(depth),
        }
        .filter(|depth| depth.is_positive())
    }
}

/// Fusible tape along the edges of a panel.
#[derive(Clone, PartialEq, Debug)]
pub struct TapeOrder {
    /// Width of the tape.
    pub width: Length,
    /// Whether the top edge is taped.
    pub top: bool,
    /// Whether the sides are taped.
    pub sides: bool,
    /// Whether the lower edge is taped.
    pub lower: bool,
    /// Length of one roll; `None` where the tape is bought by length.
    pub roll: Option<Length>,
}

/// The bands of a making method.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct BandOrder {
    /// Finished depth along the top; `None` for no band there.
    pub top: Option<Length>,
    /// Finished depth along the sides.
    pub sides: Option<Length>,
    /// Finished depth along the lower edge.
    pub lower: Option<Length>,
    /// Whether they are laid on the face, which then stays whole under them.
    pub laid_on: bool,
}

impl BandOrder {
    /// How deep the band along a kind of edge is; nothing where there is none.
    #[must_use]
    pub fn depth(self, kind: EdgeKind) -> Length {
        let depth = match kind {
            EdgeKind::Top => self.top,
            EdgeKind::Side => self.sides,
            EdgeKind::Lower => self.lower,
            EdgeKind::Band => None,
        };
        depth.unwrap_or_default()
    }
}
