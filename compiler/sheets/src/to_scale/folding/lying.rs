//! How the stretches of a folded panel lie over one another, run by run.

use pelmet_packet::{Panel, Run, Seen, Stretch};

/// Runs narrower than this, in millimetres of cloth, are rounding.
const ROUNDING: f64 = 0.05;

/// A stretch, and where its parts come to lie once the pleats are laid.
pub(crate) struct LyingStretch<'a> {
    /// Its number, from the left on the flat panel, from 1.
    pub(crate) number: u32,
    pub(crate) stretch: &'a Stretch,
    /// Its finished positions part by part, left to right.
    pub(crate) parts: Vec<LyingPart>,
}

/// A part of a stretch that has as many layers beneath it all along.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct LyingPart {
    /// Finished positions, in millimetres.
    pub(crate) from: f64,
    pub(crate) to: f64,
    /// How many layers lie beneath it.
    pub(crate) beneath: u32,
    /// Whether nothing lies over it.
    pub(crate) seen: bool,
}

impl LyingPart {
    pub(crate) fn width(&self) -> f64 {
        self.to - self.from
    }
}

/// The stretches of a panel, as each lies on those before it.
pub(crate) fn lying(panel: &Panel) -> Vec<LyingStretch<'_>> {
    let stretches = &panel.stretches;
    (1_u32..)
        .zip(stretches)
        .map(|(number, stretch)| LyingStretch {
            number,
            stretch,
            parts: if stretch.drawn_up {
                drawn_up(stretch)
            } else {
                parts(stretch, stretches)
            },
        })
        .collect()
}

impl LyingStretch<'_> {
    /// The flat position of a finished one, in millimetres.
    pub(crate) fn flat(&self, finished: f64) -> f64 {
        carried(finished, &self.stretch.finished, &self.stretch.flat)
    }

    /// The finished position of a flat one, in millimetres.
    pub(crate) fn finished(&self, flat: f64) -> f64 {
        carried(flat, &self.stretch.flat, &self.stretch.finished)
    }
}

/// A position of one run on another that it comes to lie on.
fn carried(position: f64, from: &Run, to: &Run) -> f64 {
    let length = from.to.mm - from.from.mm;
    if length.abs() < ROUNDING {
        return to.from.mm;
    }
    to.from.mm + (to.to.mm - to.from.mm) * (position - from.from.mm) / length
}

/// The finished positions of a stretch, the left end first.
fn span(stretch: &Stretch) -> (f64, f64) {
    let Run { from, to } = &stretch.finished;
    (from.mm.min(to.mm), from.mm.max(to.mm))
}

/// Cloth drawn up stands out from all that lies flat.
fn drawn_up(stretch: &Stretch) -> Vec<LyingPart> {
    let (from, to) = span(stretch);
    vec![LyingPart {
        from,
        to,
        beneath: 0,
        seen: stretch.seen != Seen::Hidden,
    }]
}

/// A stretch that lies flat, parted wherever another begins or ends.
fn parts(stretch: &Stretch, all: &[Stretch]) -> Vec<LyingPart> {
    let (left, right) = span(stretch);
    let others: Vec<(&Stretch, (f64, f64))> = all
        .iter()
        .map(|other| (other, span(other)))
        .filter(|(_, (from, to))| *from < right - ROUNDING && *to > left + ROUNDING)
        .collect();
    let mut ends: Vec<f64> = others
        .iter()
        .flat_map(|(_, (from, to))| [*from, *to])
        .filter(|end| *end > left + ROUNDING && *end < right - ROUNDING)
        .chain([left, right])
        .collect();
    ends.sort_by(f64::total_cmp);
    ends.dedup_by(|next, end| *next - *end < ROUNDING);
    // Between two neighbouring ends nothing changes, so that one place in the middle tells for all of it.
    let mut parts: Vec<LyingPart> = Vec::new();
    for (from, to) in ends.iter().zip(ends.iter().skip(1)) {
        let middle = (from + to) / 2.0;
        let over = |(_, (from, to)): &&(&Stretch, (f64, f64))| *from < middle && middle < *to;
        let here = || others.iter().filter(over).map(|(other, _)| other.height);
        let beneath = here().filter(|height| *height < stretch.height).count();
        let part = LyingPart {
            from: *from,
            to: *to,
            beneath: u32::try_from(beneath).unwrap_or(u32::MAX),
            seen: stretch.seen != Seen::Hidden && here().all(|height| height <= stretch.height),
        };
        match parts.last_mut() {
            Some(last) if (last.beneath, last.seen) == (part.beneath, part.seen) => {
                last.to = part.to;
            }
            _ => parts.push(part),
        }
    }
    parts
}

#[cfg(test)]
mod tests {
    use pelmet_packet::Panel;

    use super::{LyingPart, lying};
    use crate::examples::packets;

    fn bib() -> Panel {
        let windows = packets().into_iter().flat_map(|packet| packet.windows);
        let mut panels = windows.flat_map(|window| window.panels);
        panels.find(|panel| panel.name == "bib").unwrap()
    }

    /// The first knife pleat of the bib: 2 5/16 in of the first stretch, of which the last 1 1/4 in lie
    /// over two layers.
    #[test]
    fn a_knife_pleat_lies_in_three_layers() {
        let panel = bib();
        let lying = lying(&panel);
        let parts = |number: usize| lying[number].parts.clone();
        let (fold, root) = (2.3125 * 25.4, 1.0625 * 25.4);
        let part = |from, to, beneath, seen| LyingPart {
            from,
            to,
            beneath,
            seen,
        };
        for (told, parts) in [
            (
                vec![part(0.0, root, 0, true), part(root, fold, 2, true)],
                parts(0),
            ),
            (vec![part(root, fold, 1, false)], parts(1)),
        ] {
            assert_eq!(told.len(), parts.len());
            for (told, part) in told.iter().zip(parts) {
                assert!((told.from - part.from).abs() < 1.0 && (told.to - part.to).abs() < 1.0);
                assert_eq!((told.beneath, told.seen), (part.beneath, part.seen));
            }
        }
    }

    /// Wherever the packet counts layers, so many stretches lie there, one on each place of the stack.
    #[test]
    fn the_parts_are_the_layers_of_the_packet() {
        let panel = bib();
        let lying = lying(&panel);
        for layers in &panel.layers {
            let middle = (layers.finished.from.mm + layers.finished.to.mm) / 2.0;
            let parts = lying.iter().flat_map(|it| &it.parts);
            let here = parts.filter(|part| part.from < middle && middle < part.to);
            let mut beneath: Vec<u32> = here.map(|part| part.beneath).collect();
            beneath.sort_unstable();
            assert_eq!(
                beneath,
                (0..layers.layers).collect::<Vec<u32>>(),
                "at {middle}"
            );
        }
    }
}
