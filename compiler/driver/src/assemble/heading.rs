//! How a panel hangs, in words, and how far its drop can be corrected.

use pelmet_measure::Length;
use pelmet_model::{FastenerOrder, Heading};
use pelmet_packet::HangRange;

use super::printer::Printer;

/// The heading in words.
pub(crate) fn in_words(heading: &Heading, printer: &Printer<'_>) -> String {
    let text = |length| printer.style.plain(length);
    match heading {
        Heading::OverRod { tail, fastener } => {
            format!(
                "over the rod, tail {}{}",
                text(*tail),
                held_by(fastener.as_ref(), printer)
            )
        }
        Heading::RodPocket {
            pocket,
            ease,
            above,
            turn,
        } => {
            let pocket = match pocket {
                Some(pocket) => format!("in a rod pocket {} deep", text(*pocket)),
                None => format!(
                    "in a rod pocket, half round the rod and {} ease",
                    text(*ease)
                ),
            };
            format!(
                "{pocket}{}{}",
                and(*above, "frill above", printer),
                and(*turn, "turned under", printer)
            )
        }
        Heading::OnBoard { lap, fastener } => {
            let lap = match lap {
                Some(lap) => format!("lapped back {}", text(*lap)),
                None => String::from("lapped back its whole depth"),
            };
            format!("on the board, {lap}{}", held_by(fastener.as_ref(), printer))
        }
        Heading::Plain => String::from("from its own top edge"),
    }
}

/// How far the drop can be corrected once the panel hangs; `None` where nothing can be shifted.
///
/// A fastener may be set off its mate by half its width either way and still hold (common
/// practice, no source). On a board the panel moves as far as the strip. Over a rod tail and front
/// make a loop with the strip at its end: what the shift adds to the loop is shared by its two
/// sides, so that the panel moves by half of it. Letting the panel down draws in the tail or lap,
/// which must still carry the whole fastener.
pub(crate) fn hang_range(
    heading: &Heading,
    drop: Length,
    printer: &Printer<'_>,
) -> Option<HangRange> {
    let (behind, fastener, share) = match heading {
        Heading::OverRod { tail, fastener } => (Some(*tail), fastener.as_ref()?, 2),
        Heading::OnBoard { lap, fastener } => (*lap, fastener.as_ref()?, 1),
        Heading::RodPocket { .. } | Heading::Plain => return None,
    };
    let moves = fastener.width.divided(2).divided(share);
    let let_down = behind.map_or(moves, |behind| {
        moves.min((behind - fastener.width).max(Length::ZERO))
    });
    Some(HangRange {
        shortest: printer.mark(drop - moves),
        longest: printer.mark(drop + let_down),
    })
}

fn held_by(fastener: Option<&FastenerOrder>, printer: &Printer<'_>) -> String {
    fastener.map_or_else(String::new, |fastener| {
        format!(
            ", held by {} {}",
            printer.style.plain(fastener.width),
            fastener.name
        )
    })
}

fn and(length: Length, what: &str, printer: &Printer<'_>) -> String {
    if length.is_zero() {
        String::new()
    } else {
        format!(", {} {what}", printer.style.plain(length))
    }
}
