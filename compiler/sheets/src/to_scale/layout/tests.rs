use pelmet_packet::{Cloth, Measure};

use super::layout;
use super::stretch::{AfterStretch, BoltStretch, stretches};
use super::stretch_drawn::LEFT;
use crate::drawing::{Align, Drawing, Element, LineKind, PAGE_HEIGHT, PAGE_WIDTH, TextSize};
use crate::examples::packets;

fn cloths() -> impl Iterator<Item = Cloth> {
    packets().into_iter().flat_map(|packet| packet.cloths)
}

/// A cloth of the examples with its pieces and cuts far apart along the bolt.
fn long_cloth() -> Cloth {
    let mut cloth = cloths().max_by_key(|cloth| cloth.placed.len()).unwrap();
    let stretched = |length: &mut Measure, by: f64| length.mm *= by;
    for piece in &mut cloth.placed {
        stretched(&mut piece.along, 4.0);
        piece.outline.clear();
    }
    for band in &mut cloth.bands {
        stretched(&mut band.from, 4.0);
        stretched(&mut band.to, 4.0);
    }
    for bolt in &mut cloth.bolts {
        stretched(&mut bolt.bought, 4.0);
    }
    cloth
}

fn told(drawings: &[Drawing], number: usize) -> usize {
    let elements = drawings.iter().flat_map(|drawing| &drawing.elements);
    let is_number = |element: &&Element| match element {
        Element::Words { text, size, .. } => {
            *text == number.to_string() && *size != TextSize::Small
        }
        Element::Path { .. } | Element::Text { .. } => false,
    };
    elements.filter(is_number).count()
}

#[test]
fn every_drawing_fits_a_page() {
    for cloth in cloths().chain([long_cloth()]) {
        for drawing in layout(&cloth) {
            assert!(drawing.width <= PAGE_WIDTH, "{}", drawing.title);
            assert!(drawing.height <= PAGE_HEIGHT, "{}", drawing.title);
        }
    }
}

/// One more cut in each drawing explains the line.
#[test]
fn every_piece_is_drawn_once_and_told_by_its_number() {
    for cloth in cloths() {
        let drawings = layout(&cloth);
        let elements = drawings.iter().flat_map(|drawing| &drawing.elements);
        let cuts = elements
            .filter(|element| element.is_of(LineKind::Cut))
            .count();
        assert_eq!(cuts, cloth.placed.len() + drawings.len(), "{}", cloth.name);
        for number in 1..=cloth.placed.len() {
            assert_eq!(told(&drawings, number), 1, "{number} of {}", cloth.name);
        }
    }
}

#[test]
fn the_places_of_cuts_do_not_lie_on_one_another() {
    for drawing in cloths().flat_map(|cloth| layout(&cloth)) {
        let places = drawing.elements.iter().filter_map(|element| match element {
            Element::Words { at, align, .. } if *align == Align::Right && at.x < LEFT => Some(at.y),
            _ => None,
        });
        let places: Vec<f64> = places.collect();
        for (one, next) in places.iter().zip(places.iter().skip(1)) {
            assert!(next - one >= TextSize::Plain.millimetres(), "{places:?}");
        }
    }
}

#[test]
fn a_long_bolt_is_drawn_in_stretches_without_a_gap() {
    let cloth = long_cloth();
    let longest = 1000.0;
    let stretches = stretches(&cloth, longest);
    assert!(stretches.len() > 2);
    let mut before: Option<BoltStretch> = None;
    for stretch in stretches {
        assert!(stretch.length() <= longest + 1e-9);
        match before {
            Some(before) if before.bolt == stretch.bolt => {
                assert!((before.to - stretch.from).abs() < 1e-9);
                assert_eq!(before.then, AfterStretch::More);
            }
            _ => assert!(stretch.from.abs() < 1e-9),
        }
        before = Some(stretch);
    }
    assert_ne!(before.unwrap().then, AfterStretch::More);
}

/// Where a cut straight across is near enough no piece is parted.
#[test]
fn stretches_end_at_cuts() {
    let cloth = long_cloth();
    let drawings = layout(&cloth);
    assert!(drawings.len() > 1);
    let parted = |drawing: &Drawing| drawing.has(LineKind::Piece);
    assert!(!drawings.iter().any(parted));
}

/// Pieces longer than a page are drawn in parts, and each part says which piece it is.
#[test]
fn a_piece_longer_than_a_page_is_drawn_in_parts() {
    let mut cloth = long_cloth();
    cloth.placed.truncate(1);
    cloth.bands.truncate(1);
    cloth.bolts.truncate(1);
    cloth.placed[0].along.mm = 0.0;
    cloth.placed[0].length.mm = 9000.0;
    (cloth.bands[0].from.mm, cloth.bands[0].to.mm) = (0.0, 9000.0);
    cloth.bolts[0].bought.mm = 9100.0;
    let drawings = layout(&cloth);
    assert_eq!(drawings.len(), 3);
    assert_eq!(told(&drawings, 1), 3);
    for drawing in &drawings {
        assert!(drawing.has(LineKind::Piece));
    }
}
