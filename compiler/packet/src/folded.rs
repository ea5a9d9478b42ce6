//! A panel with its pleats laid: layer upon layer, and what is seen from the front.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::{Place, Run};

/// A panel with its pleats laid. Places are measured from the left end of the finished width and
/// from the made-up top edge.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct FoldedPanel {
    /// All the room it takes across: more than the finished width where a fold hangs out past an
    /// edge.
    pub extent: Run,
    /// Every stretch that has cloth, from the back of the stack to the front: drawn in this order,
    /// each over those before it, they are the panel as it hangs.
    pub layers: Vec<FoldedLayer>,
    /// What is seen from the front; `null` where more lies over one another than is followed.
    pub seen: Option<FoldedEdge>,
}

/// One stretch with its pleats laid.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct FoldedLayer {
    /// Number of the stretch, from the left on the flat panel, from 1.
    pub stretch: u32,
    /// Its place in the stack, 0 at the back.
    pub height: u32,
    /// Whether it shows its face; otherwise it is turned over and shows the lining, or the wrong side
    /// of the face where there is none.
    pub face_up: bool,
    /// Its closed outlines; several where the outline leaves the stretch in parts.
    pub outlines: Vec<Vec<Place>>,
}

/// The lower edge with the pleats laid, and where the lining shows.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct FoldedEdge {
    /// The lower edge of all that hangs, from left to right: of the cloth that reaches farthest
    /// down, in front or behind.
    pub lower_edge: Vec<Place>,
    /// Its lowest point, the leftmost of several.
    pub lowest: Option<Place>,
    /// Its highest point, the leftmost of several.
    pub highest: Option<Place>,
    /// Where the lining shows, from left to right; of a panel without one, the wrong side of the face.
    pub lining: Vec<LiningSeen>,
}

/// A place where the lining of a turned-over stretch shows.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct LiningSeen {
    /// Number of the stretch.
    pub stretch: u32,
    /// The finished positions over which it shows.
    pub across: Run,
    /// From the highest point of what shows to the lowest.
    pub down: Run,
}
