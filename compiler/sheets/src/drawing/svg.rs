//! A drawing as an SVG file at its true size: one unit is one millimetre.

use maud::{Markup, html};

use super::number::number;
use super::{Align, Drawing, Element, Line, Point};

/// The whole file. Looks are in its own style sheet and it asks for nothing outside itself.
pub(crate) fn svg(drawing: &Drawing) -> String {
    format!("{}\n", markup(drawing, Some(LOOKS)).into_string())
}

/// The drawing as a part of a page, which has the looks in its own style sheet.
pub(crate) fn inline(drawing: &Drawing) -> Markup {
    markup(drawing, None)
}

fn markup(drawing: &Drawing, looks: Option<&str>) -> Markup {
    let (width, height) = (number(drawing.width), number(drawing.height));
    html! {
        svg xmlns="http://www.w3.org/2000/svg" role="img"
            width={ (width) "mm" } height={ (height) "mm" } viewBox={ "0 0 " (width) " " (height) } {
            title { (drawing.title) }
            desc { (drawing.description) }
            @if let Some(looks) = looks { style { (looks) } }
            rect.paper width=(width) height=(height) {}
            @for element in &drawing.elements { "\n" (element_markup(element)) }
            "\n"
        }
    }
}

/// How each kind of line looks: told apart without colour, on paper and on a screen.
pub(crate) const LOOKS: &str = "\
.paper { fill: #fff } \
path { fill: none; stroke: #000; stroke-width: .25; stroke-linejoin: round; stroke-linecap: round } \
.waste { fill: #ececec; stroke: none } \
.selvage { fill: #c9c9c9; stroke: none } \
.cut { fill: #fff; stroke-width: .45 } \
.face { fill: #fff } \
.lining { fill: #bdbdbd } \
.opening { fill: #f2f2f2; stroke-width: .35; stroke-dasharray: 1.6 1 } \
.support { stroke-width: 1.1 } \
.fold { stroke-dasharray: 3 1 .6 1 } \
.repeat { stroke: #555; stroke-width: .2; stroke-dasharray: .1 1.1 } \
.top { stroke-width: .35 } \
text { font-family: 'DejaVu Sans', Verdana, sans-serif; fill: #000; \
stroke: #fff; stroke-width: .8; stroke-linejoin: round; paint-order: stroke }";

fn element_markup(element: &Element) -> Markup {
    match element {
        Element::Path {
            line,
            points,
            closed,
        } => html! { path class=(class(*line)) d=(path(points, *closed)) {} },
        Element::Words {
            at,
            align,
            size,
            text,
        } => html! {
            text x=(number(at.x)) y=(number(at.y)) font-size=(number(size.millimetres()))
                text-anchor=(anchor(*align)) { (text) }
        },
    }
}

fn class(line: Line) -> &'static str {
    match line {
        Line::Waste => "waste",
        Line::Selvage => "selvage",
        Line::Cut => "cut",
        Line::Fold => "fold",
        Line::Face => "face",
        Line::Lining => "lining",
        Line::Opening => "opening",
        Line::Support => "support",
        Line::Repeat => "repeat",
        Line::Measure => "measure",
        Line::Top => "top",
    }
}

fn anchor(align: Align) -> &'static str {
    match align {
        Align::Left => "start",
        Align::Middle => "middle",
        Align::Right => "end",
    }
}

fn path(points: &[Point], closed: bool) -> String {
    let mut told = String::new();
    for (index, point) in points.iter().enumerate() {
        told.push(if index == 0 { 'M' } else { 'L' });
        told.push_str(&format!("{} {}", number(point.x), number(point.y)));
    }
    if closed {
        told.push('Z');
    }
    told
}
