//! The mitred corners of a panel.

use pelmet_model::{MitreMade, MitrePointMade};
use pelmet_packet::{Mitre, MitrePoint};

use super::count::ordinal;
use super::printer::Printer;

pub(crate) fn mitres(made: &[MitreMade], printer: &Printer<'_>) -> Vec<Mitre> {
    made.iter().map(|made| mitre(made, printer)).collect()
}

fn mitre(made: &MitreMade, printer: &Printer<'_>) -> Mitre {
    Mitre {
        corner: ordinal(made.corner),
        line: made.line.iter().map(|at| point(*at, printer)).collect(),
        length: printer.mark(made.length),
        kept: printer.plain(made.kept),
    }
}

fn point(made: MitrePointMade, printer: &Printer<'_>) -> MitrePoint {
    MitrePoint {
        place: made.place,
        in_from_side: printer.mark(made.in_from_side),
        up_from_lower: printer.mark(made.up_from_lower),
    }
}
