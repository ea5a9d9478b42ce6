//! The elevations of the examples.

use super::{ABOVE, LEFT, elevation};
use crate::drawing::{Element, LineKind, PAGE_HEIGHT, PAGE_WIDTH};
use crate::examples::{garden_door, packets};

#[test]
fn every_elevation_fits_a_page() {
    for window in packets().iter().flat_map(|packet| &packet.windows) {
        let drawing = elevation(window);
        let fits = |width, height| drawing.width <= width && drawing.height <= height;
        let fits = fits(PAGE_WIDTH, PAGE_HEIGHT) || fits(PAGE_HEIGHT, PAGE_WIDTH);
        assert!(
            fits,
            "{}: {} x {}",
            window.name, drawing.width, drawing.height
        );
    }
}

#[test]
fn the_seam_of_a_band_is_drawn_through_its_points() {
    let packet = garden_door();
    let window = packet.windows.iter().find(|window| window.name == "bench");
    let window = window.unwrap();
    let drawing = elevation(window);
    let seams = drawing.elements.iter().filter_map(|it| match it {
        Element::Path {
            line: LineKind::Sewn,
            points,
            ..
        } => Some(points),
        _ => None,
    });
    let seams: Vec<_> = seams.collect();
    let panel = &window.panels[0];
    let band = &panel.bands[0];
    // Two panels alike, and one more seam explains the line.
    assert_eq!(seams.len(), 2 * band.seams.len() + 1);
    let ratio = 15.0;
    let [first, ..] = seams.as_slice() else {
        panic!("no seams")
    };
    let seam = &band.seams[0];
    assert_eq!(first.len(), seam.between.len() + 2);
    for (point, place) in first[1..].iter().zip(&seam.between) {
        let across = LEFT + place.across.mm / ratio;
        let down = ABOVE + (place.down.mm - panel.heading_depth.mm) / ratio;
        assert!((point.x - across).abs() < 1e-6 && (point.y - down).abs() < 1e-6);
    }
}

#[test]
fn rod_row_drop_and_opening_are_told() {
    for window in packets().iter().flat_map(|packet| &packet.windows) {
        let drawing = elevation(window);
        let told = |text: &str| {
            let mut elements = drawing.elements.iter();
            let found =
                elements.any(|it| matches!(it, Element::Words { text: told, .. } if told == text));
            assert!(found, "{text} in {}", drawing.title);
        };
        told(&format!("row {}", window.row.covered.text));
        told(&window.panels[0].drop.text);
        let opening = window.opening.as_ref().unwrap();
        told(&format!("opening {}", opening.width.text));
        told(&opening.length.text);
        let support = &window.support;
        let mut elements = drawing.elements.iter();
        assert!(elements.any(|it| matches!(it, Element::Words { text, .. }
            if text.ends_with(&format!("{} {}", support.name, support.length.text)))));
    }
}
