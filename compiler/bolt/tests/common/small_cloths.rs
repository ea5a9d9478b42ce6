//! Small cloths whose shortest layout is proven: see `tests/independent/shortest_layouts.py`.

#![allow(
    dead_code,
    clippy::allow_attributes,
    reason = "each test file takes what it needs of these"
)]

use pelmet_bolt::{LayoutCloth, LayoutPiece};
use pelmet_measure::Length;

const CLOTHS: &str = include_str!("../../../../tests/independent/small_cloths.txt");
const SHORTEST: &str = include_str!("../../../../tests/independent/shortest_layouts.txt");

/// A cloth, what is cut from it, and the length of its shortest layout; zero where none is proven.
#[derive(Clone, Debug)]
pub struct SmallCloth {
    pub name: String,
    pub cloth: LayoutCloth,
    pub pieces: Vec<LayoutPiece>,
    pub shortest: Length,
}

/// Every cloth, in the order of the files.
pub fn small_cloths() -> Vec<SmallCloth> {
    cloths_in(CLOTHS)
}

/// Every cloth of a text like `tests/independent/small_cloths.txt`.
pub fn cloths_in(text: &str) -> Vec<SmallCloth> {
    let mut cloths: Vec<SmallCloth> = Vec::new();
    for line in text.lines() {
        match line.split(' ').collect::<Vec<_>>()[..] {
            ["cloth", name, _, width, _, gap, _, repeat] => cloths.push(SmallCloth {
                name: name.to_owned(),
                cloth: cloth(millimetres(width), millimetres(gap), millimetres(repeat)),
                pieces: Vec::new(),
                shortest: shortest(name),
            }),
            ["piece", width, length, _, phase] => {
                let pieces = cloths.last_mut().map(|cloth| &mut cloth.pieces);
                pieces
                    .into_iter()
                    .for_each(|pieces| pieces.push(piece(width, length, phase)));
            }
            _ => {}
        }
    }
    cloths
}

fn cloth(usable_width: Length, gap: Length, repeat: Length) -> LayoutCloth {
    LayoutCloth {
        usable_width,
        gap,
        repeat_along: Some(repeat).filter(|repeat| repeat.is_positive()),
        repeat_across: None,
        half_drop: false,
        one_way: true,
        bolt_length: None,
        buying_step: Length::MILLIMETRE,
        flaws: Vec::new(),
    }
}

fn piece(width: &str, length: &str, phase: &str) -> LayoutPiece {
    LayoutPiece {
        width: millimetres(width),
        length: millimetres(length),
        quantity: 1,
        phase_along: (phase != "-").then(|| millimetres(phase)),
        phase_across: None,
        outline: None,
        on_fold: false,
    }
}

fn shortest(name: &str) -> Length {
    let mut proven = SHORTEST.lines().filter_map(|line| line.split_once(' '));
    let found = proven.find(|(of, _)| *of == name);
    found.map_or(Length::ZERO, |(_, length)| millimetres(length))
}

fn millimetres(text: &str) -> Length {
    text.parse().map_or(Length::ZERO, Length::millimetres)
}
