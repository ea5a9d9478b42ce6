//! The bands of a panel.

use pelmet_model::{BandEdge as EdgeMade, BandMade, BandSeam as SeamMade};

use super::printer::Printer;
use pelmet_packet::{BandEdge, BandSeam, EdgeBand};

pub(crate) fn bands(made: &[BandMade], printer: &Printer<'_>) -> Vec<EdgeBand> {
    made.iter().map(|made| band(made, printer)).collect()
}

/// The edge a band lies along, in words.
pub(crate) fn edge_word(edge: EdgeMade) -> &'static str {
    match edge {
        EdgeMade::Top => "at top",
        EdgeMade::Left => "at left side",
        EdgeMade::Lower => "at lower edge",
        EdgeMade::Right => "at right side",
    }
}

fn band(made: &BandMade, printer: &Printer<'_>) -> EdgeBand {
    EdgeBand {
        edge: match made.edge {
            EdgeMade::Top => BandEdge::Top,
            EdgeMade::Left => BandEdge::Left,
            EdgeMade::Lower => BandEdge::Lower,
            EdgeMade::Right => BandEdge::Right,
        },
        depth: printer.plain(made.depth),
        seams: made.seams.iter().map(|made| seam(made, printer)).collect(),
    }
}

fn seam(made: &SeamMade, printer: &Printer<'_>) -> BandSeam {
    let between = made.between.iter();
    BandSeam {
        from: printer.place(made.from.across, made.from.down),
        between: between
            .map(|point| printer.place(point.across, point.down))
            .collect(),
        to: printer.place(made.to.across, made.to.down),
        length: printer.mark(made.length),
    }
}
