//! The maker's own words with the figures of one panel.

use pelmet_diagnostics::{counted, listed};
use pelmet_model::{
    CautionKind, EdgeKind, FigureValue, PartMade, PieceMade, SentenceMade, StepMade,
};

use super::bench::Bench;
use super::draft::{Added, Draft, together};
use super::fold::fold_of;
use crate::assemble::outline;

/// A step of the making method. What is said for each of several things stands by itself, the
/// other sentences one behind the other.
pub(super) fn draft(bench: Bench<'_>, step: &StepMade) -> Draft {
    let runs = step
        .sentences
        .chunk_by(|one, other| !one.one_of_each && !other.one_of_each);
    let words = runs.map(|run| {
        let sentences = run.iter().map(|sentence| words(bench, sentence));
        together(sentences)
    });
    Draft::new(&step.name, words.collect(), &step.cautions)
}

/// The step that stands for the steps a method does not say.
pub(super) fn unsaid(bench: Bench<'_>) -> Draft {
    let made = bench.hung.made;
    let making = &bench.hung.order.making;
    let words = format!(
        "The making method `{}` has no steps: cut the panel by its cut sheet and make it up in \
         your own way, {} wide and {} long.",
        making.name,
        bench.mark(made.flat),
        bench.mark(made.made_length),
    );
    let cautions: &[CautionKind] = if making.tape.is_some() {
        &[
            CautionKind::Shears,
            CautionKind::ScrapTest,
            CautionKind::HotIron,
            CautionKind::PressCloth,
            CautionKind::LetItCool,
            CautionKind::TapeMaker,
        ]
    } else {
        &[CautionKind::Shears, CautionKind::Needle]
    };
    Draft::added(Added::MakeUp, vec![words], cautions)
}

fn words(bench: Bench<'_>, sentence: &SentenceMade) -> String {
    let parts = sentence.parts.iter().map(|part| match part {
        PartMade::Words(words) => words.clone(),
        PartMade::Value(value) => figure(bench, value),
    });
    parts.collect()
}

fn figure(bench: Bench<'_>, value: &FigureValue) -> String {
    let printer = bench.printer;
    let made = bench.hung.made;
    match value {
        FigureValue::Name(name) => name.clone(),
        FigureValue::Cut(length) => printer.cut(*length).text,
        FigureValue::Mark(length) => printer.mark(*length).text,
        FigureValue::Stated(length) => printer.plain(*length).text,
        FigureValue::Piece(index) => {
            let piece = made.pieces.get(*index);
            piece.map_or_else(String::new, |piece| size(bench, piece))
        }
        FigureValue::Count(count, what) => counted(*count, what.word()),
        FigureValue::Number(number) => number.to_string(),
        FigureValue::Corners(corners) => corners_in_words(corners),
        FigureValue::Layer(layer) => layer.word().to_owned(),
        FigureValue::Edge(edge) => String::from(match edge {
            EdgeKind::Top => "top edge",
            EdgeKind::Side => "side",
            EdgeKind::Lower => "lower edge",
            EdgeKind::Band => "seam of a band",
        }),
        FigureValue::RunEnds(index) => run_ends(bench, *index),
        FigureValue::PleatFold(index) => {
            let pleat = made.pleating.pleats.get(*index);
            pleat.map_or_else(String::new, |pleat| fold_of(bench, pleat))
        }
    }
}

/// The size to cut, with what the shears must know beside it.
fn size(bench: Bench<'_>, piece: &PieceMade) -> String {
    let printer = bench.printer;
    let (width, length) = (piece.cut_width, piece.cut_length);
    let size = format!("{} x {}", printer.cut(width).text, printer.cut(length).text);
    let strips = piece.joined.as_ref().map(|joined| joined.strips.len());
    match (piece.on_fold, strips) {
        (true, _) => {
            let half = printer.cut(width.divided(2)).text;
            format!("{size} (on the fold: draw it {half} wide)")
        }
        (false, Some(strips)) => format!("{size} (joined from {strips} strips)"),
        (false, None) => size,
    }
}

fn corners_in_words(corners: &[usize]) -> String {
    let numbers: Vec<String> = corners.iter().map(usize::to_string).collect();
    let noun = if corners.len() == 1 {
        "corner"
    } else {
        "corners"
    };
    format!("{noun} {}", listed(&numbers, "and"))
}

fn run_ends(bench: Bench<'_>, index: usize) -> String {
    let made = bench.hung.made;
    let ends = made.tape.get(index).and_then(|run| {
        let corner = |at| outline::corner_at(&made.shape, at);
        Some((corner(run.from)?, corner(run.to)?))
    });
    ends.map_or_else(
        || String::from("its whole length"),
        |(from, to)| format!("corner {from} to corner {to}"),
    )
}
