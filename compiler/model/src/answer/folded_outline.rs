//! A pleated panel as it hangs, and what is seen of it from the front.

use pelmet_measure::Length;

use crate::Point;

/// A pleated panel as it hangs, layer upon layer.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct FoldedOutline {
    /// Every stretch that has cloth, from the back of the stack to the front.
    pub layers: Vec<LayerFolded>,
    /// What is seen of them; `None` where more lies over one another than is followed.
    pub elevation: Option<Elevation>,
}

/// One stretch of a pleated panel where it hangs.
#[derive(Clone, PartialEq, Debug)]
pub struct LayerFolded {
    /// The stretch, by index in [`crate::Folding::stretches`].
    pub stretch: usize,
    /// Its place in the stack, 0 at the back.
    pub height: usize,
    /// Whether it shows its face; otherwise it is turned over, and shows the lining.
    pub face_up: bool,
    /// Its closed outlines: `across` from the left end of the finished width, `down` from the
    /// made-up top edge. There are several where the outline leaves the stretch in parts.
    pub parts: Vec<Vec<Point>>,
}

/// A pleated panel seen from the front, measured as its layers are.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Elevation {
    /// The lower edge of all that hangs, from left to right: in front or behind, whichever reaches
    /// farther down.
    pub lower_edge: Vec<Point>,
    /// Where the lining shows, from left to right.
    pub lining: Vec<LiningShown>,
}

/// A place where the lining of a turned-over stretch shows.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct LiningShown {
    /// Left and right end of what shows.
    pub across: (Length, Length),
    /// The highest and lowest points of what shows.
    pub down: (Length, Length),
    /// The stretch, by index in [`crate::Folding::stretches`].
    pub stretch: usize,
}

impl Elevation {
    /// The lowest point of the lower edge, the leftmost of several.
    pub fn lowest(&self) -> Option<Point> {
        let points = self.lower_edge.iter().rev();
        points.max_by_key(|point| point.down).copied()
    }

    /// The highest point of the lower edge, the leftmost of several.
    pub fn highest(&self) -> Option<Point> {
        let points = self.lower_edge.iter();
        points.min_by_key(|point| point.down).copied()
    }
}
