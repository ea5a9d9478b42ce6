//! Jobs of any size, made and not kept.

use std::fmt::Write;

/// A job of so many windows, no two alike.
///
/// The thousand windows that are measured make nine thousand lines.
pub fn generated_job(windows: usize) -> String {
    let mut text = HOUSE_STYLE.to_owned();
    for number in 0..windows {
        // Writing to a text cannot fail.
        let _ = window(&mut text, number);
    }
    text
}

fn window(text: &mut String, number: usize) -> std::fmt::Result {
    let rod = number.wrapping_rem(9).saturating_add(44);
    let drop = number.wrapping_rem(7).saturating_add(13);
    let cloth = if number.is_multiple_of(3) {
        "leaf-print"
    } else {
        "dot-print"
    };
    write!(
        text,
        "
# The window numbered {number}, measured on the spot.
window window-{number}: row-of-three {{
    opening: {} in x 48 in
    rod: steel-rod({rod} 1/2 in), top at 84 in
    drop: {drop} 3/8 in
    face: {cloth}
    lining: plain-lining
}}
",
        rod.saturating_sub(8)
    )
}

const HOUSE_STYLE: &str = "\
use standard

job \"A thousand windows\"
units inches

fabric leaf-print { width: 54 in, selvage: 1/2 in, way: one-way, gap: 1/4 in }
fabric dot-print like leaf-print { way: any }
fabric plain-lining { width: 58 in, selvage: 1/2 in, gap: 1/4 in }

treatment row-of-three(drop, face, lining) {
    panel wing like wing(drop, face, lining) { finished width: 14 in }
    panel bib like bib(drop, face, lining) {
        finished width: fill
        outline: stepped(2 1/4 in, 1 1/4 in)
    }
    row: wing, bib, wing
}
";
