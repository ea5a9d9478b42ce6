//! What stands on one page.

use pdf_writer::types::{LineCapStyle, LineJoinStyle};
use pdf_writer::{Content, Name, Settings, Str};
use pelmet_lettering::FontWeight;

use super::file::{POINTS_IN_MILLIMETRE, exact, number};
use super::fonts::{Fonts, font_name};
use crate::drawing::{
    Align, CLEAR_OF_WORDS, Drawing, Element, LetteringRun, Look, PaperPoint, Stroke, look,
};

/// The drawing in PDF's words. Its own millimetres, counted downward, serve as units.
pub(super) fn content(drawing: &Drawing, fonts: &Fonts) -> Vec<u8> {
    let mut content = Content::with_settings(Settings { pretty: false });
    let (points, height) = (exact(POINTS_IN_MILLIMETRE), drawing.height);
    let foot = number(height * POINTS_IN_MILLIMETRE);
    content.transform([points, 0.0, 0.0, -points, 0.0, foot]);
    content.set_line_cap(LineCapStyle::RoundCap);
    content.set_line_join(LineJoinStyle::RoundJoin);
    for element in &drawing.elements {
        write_element(element, fonts, &mut content);
    }
    content.finish().into_vec()
}

fn write_element(element: &Element, fonts: &Fonts, content: &mut Content) {
    match element {
        Element::Path {
            line,
            points,
            closed,
        } => write_path(look(*line), points, *closed, content),
        Element::Words {
            at,
            align,
            size,
            text,
        } => {
            let height = size.millimetres();
            let width = FontWeight::Plain.width(text) * height;
            let start = PaperPoint {
                x: at.x - width * before(*align),
                y: at.y,
            };
            clear(start, (width, height), content);
            let run = LetteringRun {
                text,
                height,
                rise: 0.0,
            };
            write_text(start, FontWeight::Plain, &[run], fonts, content);
        }
        Element::Text {
            at,
            lettering,
            text,
        } => write_text(*at, lettering.weight, &lettering.runs(text), fonts, content),
    }
}

/// The part of a text that stands left of its place.
fn before(align: Align) -> f64 {
    match align {
        Align::Left => 0.0,
        Align::Middle => 0.5,
        Align::Right => 1.0,
    }
}

fn write_path(look: Look, points: &[PaperPoint], closed: bool, content: &mut Content) {
    let Some((first, others)) = points.split_first() else {
        return;
    };
    content.move_to(number(first.x), number(first.y));
    for point in others {
        content.line_to(number(point.x), number(point.y));
    }
    if closed {
        content.close_path();
    }
    if let Some(grey) = look.fill {
        content.set_fill_gray(part_of_white(grey));
    }
    if let Some(stroke) = look.stroke {
        set_stroke(stroke, content);
    }
    match (look.fill, look.stroke) {
        (Some(_), Some(_)) => content.fill_nonzero_and_stroke(),
        (Some(_), None) => content.fill_nonzero(),
        (None, Some(_)) => content.stroke(),
        (None, None) => content.end_path(),
    };
}

fn set_stroke(stroke: Stroke, content: &mut Content) {
    content.set_stroke_gray(part_of_white(stroke.grey));
    content.set_line_width(number(stroke.width));
    content.set_dash_pattern(stroke.dashes.iter().map(|dash| number(*dash)), 0.0);
}

/// Takes away the lines behind words.
fn clear(start: PaperPoint, (width, height): (f64, f64), content: &mut Content) {
    let capital = FontWeight::Plain.metrics().capital / 1000.0 * height;
    content.set_fill_gray(1.0);
    content.rect(
        number(start.x - CLEAR_OF_WORDS),
        number(start.y - capital - CLEAR_OF_WORDS),
        number(width + CLEAR_OF_WORDS * 2.0),
        number(capital + CLEAR_OF_WORDS * 2.0),
    );
    content.fill_nonzero();
}

/// A line of text from its left end.
fn write_text(
    start: PaperPoint,
    weight: FontWeight,
    runs: &[LetteringRun<'_>],
    fonts: &Fonts,
    content: &mut Content,
) {
    content.set_fill_gray(0.0);
    content.begin_text();
    // Letters stand upright on a page whose lengths are counted downward.
    content.set_text_matrix([1.0, 0.0, 0.0, -1.0, number(start.x), number(start.y)]);
    for run in runs {
        content.set_font(Name(font_name(weight)), number(run.height));
        content.set_rise(number(run.rise));
        content.show(Str(&fonts.codes(weight, run.text)));
    }
    content.set_rise(0.0);
    content.end_text();
}

fn part_of_white(grey: u8) -> f32 {
    number(f64::from(grey) / 255.0)
}
