//! What holds of the templates of every example, on either paper.

use pelmet_packet::Packet;

use super::axis::CLEAR;
use super::grid::Grid;
use super::lines::Lines;
use super::sheet::Sheet;
use super::stick::sticks;
use super::{Which, book, tile};
use crate::drawing::tests::{packets, points};
use crate::drawing::{Align, Drawing, Element, Line, Point, at, width_of};
use crate::outlines::{Outline, outlines};
use crate::paper::Paper;

/// Places that are the same but for how floating point rounds.
const SAME: f64 = 1e-9;

fn with_every_grid(check: impl Fn(&Outline<'_>, &Lines, &Grid)) {
    for packet in packets() {
        for outline in outlines(&packet) {
            let lines = Lines::of(&outline);
            for paper in Paper::ALL {
                let grid = Grid::over(&lines.all(), paper).unwrap();
                check(&outline, &lines, &grid);
            }
        }
    }
}

fn pages(packet: &Packet) -> Vec<Drawing> {
    let each = Paper::ALL.map(|paper| book(packet, Which::Shaped, paper, 2000).pages);
    each.concat()
}

fn is_near(one: Point, other: Point) -> bool {
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
                let drawn: Vec<Point> = drawn.flat_map(element_points).collect();
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

fn element_points(element: &Element) -> Vec<Point> {
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

/// Letters of the same line of type are as high as they are; so much of it keeps two lines apart.
const LINE: f64 = 0.8;

#[test]
fn no_words_of_a_story_stick_lie_on_others() {
    for packet in packets() {
        for (stick, paper) in sticks(&packet.windows)
            .iter()
            .flat_map(|stick| Paper::ALL.map(|paper| (stick, paper)))
        {
            for page in stick.pages("Story stick", Sheet::on_its_side(paper)) {
                let boxes: Vec<(&str, [f64; 4])> =
                    page.elements.iter().filter_map(words_box).collect();
                for (index, (text, one)) in boxes.iter().enumerate() {
                    for (other_text, other) in boxes.iter().skip(index + 1) {
                        let apart = one[2] <= other[0]
                            || other[2] <= one[0]
                            || one[3] <= other[1]
                            || other[3] <= one[1];
                        assert!(apart, "{text} and {other_text}");
                    }
                }
            }
        }
    }
}

/// The left, upper, right and lower end of words.
fn words_box(element: &Element) -> Option<(&str, [f64; 4])> {
    let Element::Words {
        at,
        align,
        size,
        text,
    } = element
    else {
        return None;
    };
    let width = width_of(text, *size);
    let left = match align {
        Align::Left => at.x,
        Align::Middle => at.x - width / 2.0,
        Align::Right => at.x - width,
    };
    let top = at.y - size.millimetres() * LINE;
    Some((text, [left, top, left + width, at.y]))
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

#[test]
fn both_bars_are_on_every_page_at_their_length() {
    for page in packets().iter().flat_map(pages) {
        for (length, told) in [(100.0, "100 mm"), (101.6, "4 in")] {
            let bar = page.elements.iter().any(|element| match element {
                Element::Path {
                    line: Line::Measure,
                    points,
                    ..
                } => match points.as_slice() {
                    [from, to] => is_near(at(to.x - from.x, to.y - from.y), at(length, 0.0)),
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
        for Point { x, y } in points(&page) {
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
            book(&packet, Which::Shaped, Paper::A4, 2000),
            book(&packet, Which::All, Paper::A4, 2000),
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
        let whole = book(&packet, Which::All, Paper::Letter, 2000);
        let short = book(&packet, Which::All, Paper::Letter, 20);
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
