//! A rod under what hangs from it.

use pelmet_measure::{Length, System};
use pelmet_model::{Material, Rod, RodChecked, RodUnknown};
use pelmet_packet::{Bending, Load, Measure, RodCheck, Stiffness};
use pelmet_workroom::GRAVITY;

use super::printer::Printer;

pub(crate) fn rod_check(rod: &Rod, checked: &RodChecked, printer: &Printer<'_>) -> RodCheck {
    RodCheck {
        material: stiffness(checked.material),
        brackets: checked.brackets,
        brackets_stated: rod.brackets.is_some(),
        span: printer.mark(checked.span),
        rod_weight: printer.weight(checked.rod_weight),
        load: load(checked.newtons_per_metre, printer),
        bending: bending(checked.newton_metres, printer),
        sag: sag(checked.sag, printer),
        sag_limit: printer.plain(checked.limit),
        sag_limit_stated: rod.sag_limit.is_some(),
        widest_spacing: printer.mark(checked.spacing),
        brackets_enough: checked.brackets_enough,
    }
}

/// Why a rod could not be checked, in words.
pub(crate) fn not_checked(rod: &Rod, unknown: RodUnknown) -> String {
    match (unknown, &rod.material) {
        (RodUnknown::Weight, _) => String::from("what hangs from it is not known"),
        (RodUnknown::OneBracket, _) => String::from("it has one bracket, and so no span"),
        (RodUnknown::Material, None) => String::from("its material is not stated"),
        (RodUnknown::Material, Some(material)) => {
            format!("how stiff {material} is, is not known here")
        }
    }
}

fn stiffness(material: &Material) -> Stiffness {
    let (least, most) = material.million_psi;
    Stiffness {
        name: material.name.to_owned(),
        least_million_psi: least,
        most_million_psi: most,
        source: material.source.to_owned(),
    }
}

fn load(newtons_per_metre: f64, printer: &Printer<'_>) -> Load {
    let kilograms_per_metre = newtons_per_metre / GRAVITY;
    let text = match printer.style.system {
        System::Metric => format!("{kilograms_per_metre:.2} kg per m"),
        System::Inches => {
            let pounds_per_foot = kilograms_per_metre / KILOGRAMS_IN_A_POUND * METRES_IN_A_FOOT;
            format!("{pounds_per_foot:.2} lb per ft")
        }
    };
    Load {
        newtons_per_metre,
        text,
    }
}

fn bending(newton_metres: f64, printer: &Printer<'_>) -> Bending {
    let text = match printer.style.system {
        System::Metric => format!("{newton_metres:.2} N m"),
        System::Inches => format!(
            "{:.1} inch-pounds",
            newton_metres / NEWTON_METRES_IN_AN_INCH_POUND
        ),
    };
    Bending {
        newton_metres,
        text,
    }
}

/// Rounded up to the step of a mark, so that a sag beyond its limit never reads like the limit. One
/// too small to be measured is told as such.
fn sag(sag: Length, printer: &Printer<'_>) -> Measure {
    let step = printer.style.mark_step;
    let mut printed = printer.mark(sag);
    printed.text = if sag < step {
        format!("under {}", printer.plain(step).text)
    } else {
        printer.plain(sag.round_up_to(step)).text
    };
    printed
}

/// NIST SP 811, appendix B.8.
const KILOGRAMS_IN_A_POUND: f64 = 0.453_592_37;
const METRES_IN_A_FOOT: f64 = 0.3048;
const NEWTON_METRES_IN_AN_INCH_POUND: f64 = KILOGRAMS_IN_A_POUND * GRAVITY * 0.0254;
