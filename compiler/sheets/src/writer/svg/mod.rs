//! A drawing as an SVG file at its true size: one unit is one millimetre.

mod number;

use maud::{Markup, html};
use pelmet_lettering::FontWeight;

use crate::drawing::{
    Align, CLEAR_OF_WORDS, Drawing, Element, Lettering, LineKind, Look, PaperPoint, Stroke, look,
};
use number::number;

/// The whole file. Looks are in its own style sheet and it asks for nothing outside itself.
pub(crate) fn svg(drawing: &Drawing) -> String {
    let drawn = |line: &LineKind| drawing.has(*line);
    let lines: Vec<LineKind> = LineKind::ALL.iter().copied().filter(drawn).collect();
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
    style_of(LineKind::ALL)
}

fn style_of(lines: &[LineKind]) -> String {
    let lines: Vec<String> = lines.iter().map(|line| line_style(*line)).collect();
    format!(
        ".paper {{ fill: #fff }} path {{ stroke-linejoin: round; stroke-linecap: round }} {} \
        text {{ font-family: 'DejaVu Sans', Verdana, sans-serif; fill: #000; stroke: #fff; \
        stroke-width: {}; stroke-linejoin: round; paint-order: stroke }} .set {{ stroke: none }}",
        lines.join(" "),
        number(CLEAR_OF_WORDS * 2.0),
    )
}

fn line_style(line: LineKind) -> String {
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

fn class(line: LineKind) -> &'static str {
    match line {
        LineKind::Waste => "waste",
        LineKind::Flaw => "flaw",
        LineKind::Selvage => "selvage",
        LineKind::Cut => "cut",
        LineKind::Piece => "piece",
        LineKind::Print => "print",
        LineKind::Sewn => "sewn",
        LineKind::Centre => "centre",
        LineKind::Fold => "fold",
        LineKind::FoldAway => "fold-away",
        LineKind::Hidden => "hidden",
        LineKind::Turned => "turned",
        LineKind::Edge => "edge",
        LineKind::Move => "move",
        LineKind::Face => "face",
        LineKind::Lining => "lining",
        LineKind::Opening => "opening",
        LineKind::DrawnUp => "drawn-up",
        LineKind::Support => "support",
        LineKind::Repeat => "repeat",
        LineKind::Measure => "measure",
        LineKind::Top => "top",
        LineKind::Rule => "rule",
        LineKind::Underline => "underline",
        LineKind::Box => "box",
        LineKind::CutEdge => "cut-edge",
        LineKind::Frame => "frame",
        LineKind::Join => "join",
        LineKind::Apart => "apart",
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
        FontWeight::Plain => "normal",
        FontWeight::Bold => "bold",
    }
}

fn path(points: &[PaperPoint], closed: bool) -> String {
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
