//! The bands of a panel.

use pelmet_model::{BandMade, BandSeamMade};
use pelmet_packet::{BandSeam, EdgeBand};

use super::printer::Printer;

pub(crate) fn bands(made: &[BandMade], printer: &Printer<'_>) -> Vec<EdgeBand> {
    made.iter().map(|made| band(made, printer)).collect()
}

fn band(made: &BandMade, printer: &Printer<'_>) -> EdgeBand {
    EdgeBand {
        edge: made.edge,
        depth: printer.plain(made.depth),
        seams: made.seams.iter().map(|made| seam(made, printer)).collect(),
    }
}

fn seam(made: &BandSeamMade, printer: &Printer<'_>) -> BandSeam {
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
