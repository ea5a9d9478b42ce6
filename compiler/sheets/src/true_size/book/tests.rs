//! What holds of the files of templates of every example, on either paper.

use pelmet_packet::Packet;

use super::{TemplatesOf, book};
use crate::drawing::{Drawing, Element, LineKind, PaperPoint};
use crate::examples::packets;
use crate::paper::Paper;
use crate::to_scale::tests::points;
use crate::true_size::outlines::outlines;

fn pages(packet: &Packet) -> Vec<Drawing> {
    let each = Paper::ALL.map(|paper| book(packet, TemplatesOf::Shaped, paper, 2000).pages);
    each.concat()
}

/// Whether a line from one point to another is level and so long.
fn is_level(from: PaperPoint, to: PaperPoint, length: f64) -> bool {
    (to.x - from.x - length).abs() < 1e-9 && (to.y - from.y).abs() < 1e-9
}

#[test]
fn both_bars_are_on_every_page_at_their_length() {
    for page in packets().iter().flat_map(pages) {
        for (length, told) in [(100.0, "100 mm"), (101.6, "4 in")] {
            let bar = page.elements.iter().any(|element| match element {
                Element::Path {
                    line: LineKind::Measure,
                    points,
                    ..
                } => match points.as_slice() {
                    [from, to] => is_level(*from, *to, length),
                    _ => false,
                },
                _ => false,
            });
            let is_told = page.elements.iter().any(|element| match element {
                Element::Words { text, .. } => text == told,
                Element::Path { .. } | Element::Text { .. } => false,
            });
            assert!(bar && is_told, "{told} on {}", page.title);
        }
    }
}

#[test]
fn everything_lies_on_the_paper() {
    for page in packets().iter().flat_map(pages) {
        for PaperPoint { x, y } in points(&page) {
            assert!((0.0..=page.width).contains(&x), "{x} in {}", page.title);
            assert!((0.0..=page.height).contains(&y), "{y} in {}", page.title);
        }
    }
}

#[test]
fn every_piece_has_a_template_or_is_to_be_measured() {
    for packet in packets() {
        let pieces = packet.windows.iter().flat_map(|window| &window.panels);
        let pieces = pieces.flat_map(|panel| &panel.pieces).count();
        let told = outlines(&packet)
            .iter()
            .map(|outline| outline.pieces.len())
            .sum::<usize>();
        assert_eq!(told, pieces);
        let (shaped, all) = (
            book(&packet, TemplatesOf::Shaped, Paper::A4, 2000),
            book(&packet, TemplatesOf::All, Paper::A4, 2000),
        );
        assert_eq!(
            shaped.templates.len() + shaped.measured.len(),
            outlines(&packet).len()
        );
        assert_eq!(
            (all.templates.len(), all.measured.len()),
            (outlines(&packet).len(), 0)
        );
    }
}

#[test]
fn what_finds_no_room_in_the_file_is_listed() {
    for packet in packets() {
        let whole = book(&packet, TemplatesOf::All, Paper::Letter, 2000);
        let short = book(&packet, TemplatesOf::All, Paper::Letter, 20);
        assert!(short.pages.len() < whole.pages.len());
        assert!(!short.left_out.is_empty());
        let told = short.templates.len() + short.left_out.len();
        assert_eq!(told, whole.templates.len());
        let words = short.pages.iter().flat_map(|page| &page.elements);
        let mut words = words.filter_map(|element| match element {
            Element::Text { text, .. } => Some(text.as_str()),
            _ => None,
        });
        assert!(words.any(|text| text.contains("This job has more than")));
    }
}
