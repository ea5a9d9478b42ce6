//! What holds of the templates of every example, on either paper.

use super::grid::TileGrid;
use super::lines::TemplateLines;
use super::tile;
use crate::drawing::{Element, PaperPoint, at};
use crate::examples::packets;
use crate::paper::Paper;
use crate::true_size::outlines::{SharedOutline, outlines};
use crate::true_size::page::CLEAR;

/// Places that are the same but for how floating point rounds.
const SAME: f64 = 1e-9;

fn with_every_grid(check: impl Fn(&SharedOutline<'_>, &TemplateLines, &TileGrid)) {
    for packet in packets() {
        for outline in outlines(&packet) {
            let lines = TemplateLines::of(&outline);
            for paper in Paper::ALL {
                let grid = TileGrid::over(&lines.all(), paper).unwrap();
                check(&outline, &lines, &grid);
            }
        }
    }
}

fn is_near(one: PaperPoint, other: PaperPoint) -> bool {
    (one.x - other.x).abs() < SAME && (one.y - other.y).abs() < SAME
}

#[test]
fn every_point_of_a_line_is_on_a_page_at_its_place() {
    with_every_grid(|outline, lines, grid| {
        let window = grid.sheet.window();
        for tile in grid.tiles() {
            let mut page = grid.sheet.page("", "");
            tile::draw(grid, tile, lines, &[], &mut page);
            let frame = grid.frame(tile);
            for (line, points) in &lines.drawn {
                let drawn = page.elements.iter().filter(|element| element.is_of(*line));
                let drawn: Vec<PaperPoint> = drawn.flat_map(element_points).collect();
                for point in points.iter().filter(|point| grid.home(**point) == tile) {
                    let place = at(
                        point.x - frame.left + window.left,
                        point.y - frame.top + window.top,
                    );
                    let found = drawn.iter().any(|drawn| is_near(*drawn, place));
                    assert!(found, "{point:?} of {}", outline.piece.label);
                    assert!(grid.printed.contains(&tile));
                }
            }
        }
    });
}

fn element_points(element: &Element) -> Vec<PaperPoint> {
    match element {
        Element::Path { points, .. } => points.clone(),
        Element::Words { .. } | Element::Text { .. } => vec![],
    }
}

#[test]
fn no_level_or_upright_line_runs_along_the_edge_of_a_tile() {
    with_every_grid(|outline, lines, grid| {
        let sides = lines.drawn.iter();
        let sides = sides.flat_map(|(_, line)| line.iter().zip(line.iter().skip(1)));
        for (from, to) in sides {
            for tile in grid.tiles() {
                let frame = grid.frame(tile);
                let (upright, level) = ((from.x - to.x).abs() < SAME, (from.y - to.y).abs() < SAME);
                for edge in [frame.left, frame.right()] {
                    let clear = !upright || (from.x - edge).abs() >= CLEAR - SAME;
                    assert!(clear, "{} at {edge}", outline.piece.label);
                }
                for edge in [frame.top, frame.bottom()] {
                    let clear = !level || (from.y - edge).abs() >= CLEAR - SAME;
                    assert!(clear, "{} at {edge}", outline.piece.label);
                }
            }
        }
    });
}

#[test]
fn a_blank_page_would_show_nothing_that_no_other_shows() {
    with_every_grid(|outline, lines, grid| {
        let sides = lines.drawn.iter();
        let sides = sides.flat_map(|(_, line)| line.iter().zip(line.iter().skip(1)));
        for (from, to) in sides {
            let steps = (to.x - from.x).hypot(to.y - from.y).ceil();
            let parts = std::iter::successors(Some(0.0), |part| Some(part + 1.0 / steps));
            for part in parts.take_while(|part| *part <= 1.0) {
                let point = at(
                    from.x + (to.x - from.x) * part,
                    from.y + (to.y - from.y) * part,
                );
                let shown = grid.printed.iter().any(|tile| {
                    let frame = grid.frame(*tile);
                    (frame.left..=frame.right()).contains(&point.x)
                        && (frame.top..=frame.bottom()).contains(&point.y)
                });
                assert!(shown, "{point:?} of {}", outline.piece.label);
            }
        }
    });
}

#[test]
fn neighbours_share_two_register_marks_which_both_of_them_show() {
    with_every_grid(|outline, lines, grid| {
        let registers = tile::registers(grid, lines);
        let mut letters: Vec<&str> = registers.iter().map(|of| of.letter.as_str()).collect();
        letters.sort_unstable();
        letters.dedup();
        assert_eq!(letters.len(), registers.len());
        for tile in &grid.printed {
            for next in [tile.right(), tile.below()] {
                let shared = registers.iter().filter(|of| of.tiles == [*tile, next]);
                let expected = if grid.printed.contains(&next) { 2 } else { 0 };
                assert_eq!(shared.clone().count(), expected, "{}", outline.piece.label);
                for register in shared {
                    for tile in register.tiles {
                        let frame = grid.frame(tile);
                        let (x, y) = (register.at.x - frame.left, register.at.y - frame.top);
                        assert!((5.0..frame.width - 5.0).contains(&x), "{x}");
                        assert!((5.0..frame.height - 5.0).contains(&y), "{y}");
                    }
                }
            }
        }
    });
}

/// Every page is reached from every other over its joins, so that a template hangs together.
#[test]
fn the_pages_of_a_template_hang_together() {
    with_every_grid(|outline, _, grid| {
        let mut reached: Vec<_> = grid.printed.first().copied().into_iter().collect();
        let mut index = 0;
        while let Some(tile) = reached.get(index).copied() {
            for next in grid.printed.iter().copied() {
                let joined = [tile.right(), tile.below()].contains(&next)
                    || [next.right(), next.below()].contains(&tile);
                if joined && !reached.contains(&next) {
                    reached.push(next);
                }
            }
            index += 1;
        }
        assert_eq!(reached.len(), grid.printed.len(), "{}", outline.piece.label);
    });
}
