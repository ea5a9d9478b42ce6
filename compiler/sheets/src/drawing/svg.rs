//! A drawing as an SVG file at its true size: one unit is one millimetre.

use maud::{Markup, html};
use pelmet_lettering::Weight;

use super::looks::{CLEAR_OF_WORDS, Look, Stroke, look};
use super::number::number;
use super::{Align, Drawing, Element, Lettering, Line, Point};

/// The whole file. Looks are in its own style sheet and it asks for nothing outside itself.
pub(crate) fn svg(drawing: &Drawing) -> String {
    let drawn = |line: &Line| drawing.elements.iter().any(|element| element.is_of(*line));
    let lines: Vec<Line> = Line::ALL.iter().copied().filter(drawn).collect();
    format!(
        "{}\n",
        markup(drawing, Some(&style_of(&lines))).into_string()
    )
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

/// The style sheet of drawings: the look of each kind of line, and of words.
pub(crate) fn style() -> String {
    style_of(Line::ALL)
}

fn style_of(lines: &[Line]) -> String {
    let lines: Vec<String> = lines.iter().map(|line| line_style(*line)).collect();
    format!(
        ".paper {{ fill: #fff }} path {{ stroke-linejoin: round; stroke-linecap: round }} {} \
        text {{ font-family: 'DejaVu Sans', Verdana, sans-serif; fill: #000; stroke: #fff; \
        stroke-width: {}; stroke-linejoin: round; paint-order: stroke }} .set {{ stroke: none }}",
        lines.join(" "),
        number(CLEAR_OF_WORDS * 2.0),
    )
}

fn line_style(line: Line) -> String {
    let Look { fill, stroke } = look(line);
    let fill = fill.map_or_else(|| String::from("none"), grey);
    let stroke = stroke.map_or_else(|| String::from("stroke: none"), stroke_style);
    format!(".{} {{ fill: {fill}; {stroke} }}", class(line))
}

fn stroke_style(stroke: Stroke) -> String {
    let dashes: Vec<String> = stroke.dashes.iter().map(|dash| number(*dash)).collect();
    let dashes = match dashes.as_slice() {
        [] => String::new(),
        dashes => format!("; stroke-dasharray: {}", dashes.join(" ")),
    };
    format!(
        "stroke: {}; stroke-width: {}{dashes}",
        grey(stroke.grey),
        number(stroke.width),
    )
}

fn grey(grey: u8) -> String {
    format!("#{grey:02x}{grey:02x}{grey:02x}")
}

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
        Element::Text {
            at,
            lettering,
            text,
        } => html! {
            text.set x=(number(at.x)) y=(number(at.y)) font-size=(number(lettering.height))
                font-weight=(weight(*lettering)) { (text) }
        },
    }
}

fn class(line: Line) -> &'static str {
    match line {
        Line::Waste => "waste",
        Line::Flaw => "flaw",
        Line::Selvage => "selvage",
        Line::Cut => "cut",
        Line::Piece => "piece",
        Line::Print => "print",
        Line::Sewn => "sewn",
        Line::Centre => "centre",
        Line::Fold => "fold",
        Line::FoldAway => "fold-away",
        Line::Hidden => "hidden",
        Line::Turned => "turned",
        Line::Edge => "edge",
        Line::Move => "move",
        Line::Face => "face",
        Line::Lining => "lining",
        Line::Opening => "opening",
        Line::DrawnUp => "drawn-up",
        Line::Support => "support",
        Line::Repeat => "repeat",
        Line::Measure => "measure",
        Line::Top => "top",
        Line::Rule => "rule",
        Line::Underline => "underline",
        Line::Box => "box",
        Line::CutEdge => "cut-edge",
        Line::Frame => "frame",
        Line::Join => "join",
        Line::Apart => "apart",
    }
}

fn anchor(align: Align) -> &'static str {
    match align {
        Align::Left => "start",
        Align::Middle => "middle",
        Align::Right => "end",
    }
}

fn weight(lettering: Lettering) -> &'static str {
    match lettering.weight {
        Weight::Plain => "normal",
        Weight::Bold => "bold",
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
