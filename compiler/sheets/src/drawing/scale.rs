//! How much smaller than the cloth a drawing shows it, and the bar that says so.

use pelmet_packet::Measure;

use super::elements::Drawing;
use super::line_kind::LineKind;
use super::point::at;
use super::text_size::{Align, TextSize};

/// The paper that a drawing may take, so that it fits a sheet of Letter or A4 with its margins, in
/// millimetres.
pub(crate) const PAGE_WIDTH: f64 = 180.0;
pub(crate) const PAGE_HEIGHT: f64 = 240.0;

/// How long the bar is on the paper.
const BAR: f64 = 100.0;

/// A scale: so many millimetres of cloth are one of the drawing.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Scale {
    /// Millimetres of cloth in one of the drawing.
    pub(crate) ratio: f64,
    /// How much cloth the bar is, in words.
    bar: &'static str,
}

/// The scales there are, the largest drawing first.
pub(crate) const SCALES: [Scale; 8] = [
    Scale::new(1.0, "100 mm (3 15/16 in)"),
    Scale::new(2.0, "200 mm (7 7/8 in)"),
    Scale::new(5.0, "500 mm (19 11/16 in)"),
    Scale::new(10.0, "1000 mm (39 3/8 in)"),
    Scale::new(15.0, "1500 mm (59 1/16 in)"),
    Scale::new(20.0, "2000 mm (78 3/4 in)"),
    Scale::new(30.0, "3000 mm (118 1/8 in)"),
    Scale::new(50.0, "5000 mm (196 7/8 in)"),
];

impl Scale {
    const fn new(ratio: f64, bar: &'static str) -> Self {
        Self { ratio, bar }
    }

    /// The largest drawing for which something holds; the smallest where it holds for none.
    pub(crate) fn largest(holds: impl Fn(Scale) -> bool) -> Scale {
        let [.., smallest] = SCALES;
        SCALES
            .into_iter()
            .find(|scale| holds(*scale))
            .unwrap_or(smallest)
    }

    /// The smallest drawing for which something holds; the largest where it holds for none.
    pub(crate) fn smallest(holds: impl Fn(Scale) -> bool) -> Scale {
        let [largest, ..] = SCALES;
        let mut scales = SCALES.into_iter().rev();
        scales.find(|scale| holds(*scale)).unwrap_or(largest)
    }

    /// A length of cloth on the paper.
    pub(crate) fn paper(self, length: &Measure) -> f64 {
        length.mm / self.ratio
    }

    /// A bar to read lengths by, its left end at a place; gives where what is said below it ends.
    pub(crate) fn draw_bar(self, drawing: &mut Drawing, (x, y): (f64, f64)) -> f64 {
        let ends = [
            at(x, y - 1.5),
            at(x, y),
            at(x + BAR, y),
            at(x + BAR, y - 1.5),
        ];
        drawing.line(LineKind::Measure, ends);
        let told = format!("1 : {}; this bar is {} of cloth", self.ratio, self.bar);
        let below = y + TextSize::Small.millimetres() * 1.4;
        drawing.words(at(x, below), Align::Left, TextSize::Small, told);
        below
    }
}

#[cfg(test)]
mod tests {
    use super::{BAR, SCALES, Scale};

    #[test]
    fn the_bar_is_as_long_as_it_says() {
        for scale in SCALES {
            let (millimetres, inches) = scale.bar.split_once(" mm (").unwrap();
            let off = millimetres.parse::<f64>().unwrap() - BAR * scale.ratio;
            assert!(off.abs() < 1e-9, "{off} mm in {}", scale.bar);
            let (whole, fraction) = inches
                .strip_suffix(" in)")
                .unwrap()
                .split_once(' ')
                .unwrap();
            let (over, under) = fraction.split_once('/').unwrap();
            let [whole, over, under] =
                [whole, over, under].map(|number| number.parse::<f64>().unwrap());
            let off = (whole + over / under) * 25.4 - BAR * scale.ratio;
            assert!(off.abs() <= 25.4 / 32.0, "{off} mm in {}", scale.bar);
        }
    }

    #[test]
    fn a_scale_is_the_first_that_will_do_or_else_the_last() {
        let [largest, .., smallest] = SCALES;
        let one_tenth = |scale: Scale| 900.0 / scale.ratio <= 90.0;
        assert!(one_tenth(Scale::largest(one_tenth)));
        assert!((Scale::largest(one_tenth).ratio - 10.0).abs() < 1e-9);
        assert_eq!(Scale::largest(|_| false), smallest);
        assert_eq!(Scale::smallest(|_| true), smallest);
        assert_eq!(Scale::smallest(|_| false), largest);
    }
}
