//! Letters of a weight and a size, and the runs that a line of them is set in.

use pelmet_lettering::FontWeight;

use crate::text::fractions::{TextPart, parts};

/// What a text is set in.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Lettering {
    pub(crate) weight: FontWeight,
    /// The height of a line of type, in millimetres.
    pub(crate) height: f64,
}

/// A part of a line that is set in one size at one height.
#[derive(PartialEq, Debug)]
pub(crate) struct LetteringRun<'a> {
    pub(crate) text: &'a str,
    /// The height of its type, in millimetres.
    pub(crate) height: f64,
    /// How far above the line it stands, in millimetres.
    pub(crate) rise: f64,
}

/// How large the numbers of a fraction are, and how far the upper one is raised, of the height of the
/// text: two of them with their stroke reach as high as a capital.
const FRACTION_SIZE: f64 = 0.72;
const FRACTION_RISE: f64 = 0.26;

impl Lettering {
    /// Letters of so many millimetres in the usual weight.
    pub(crate) const fn plain(height: f64) -> Self {
        Self {
            weight: FontWeight::Plain,
            height,
        }
    }

    /// The same in the heavy weight, for what is looked for first.
    pub(crate) const fn bold(height: f64) -> Self {
        Self {
            weight: FontWeight::Bold,
            height,
        }
    }

    /// The width of a text on one line, in millimetres.
    pub(crate) fn width(self, text: &str) -> f64 {
        let runs = self.runs(text);
        let width = |run: &LetteringRun<'_>| self.weight.width(run.text) * run.height;
        runs.iter().map(width).sum()
    }

    /// The text, or as much of its beginning as there is room for on so many millimetres.
    pub(crate) fn shortened(self, text: &str, width: f64) -> String {
        const REST: &str = "…";
        if self.width(text) <= width {
            return text.to_owned();
        }
        let mut shortened = String::new();
        let mut used = self.width(REST);
        for sign in text.chars() {
            used += self.width(sign.encode_utf8(&mut [0; 4]));
            if used > width {
                break;
            }
            shortened.push(sign);
        }
        shortened.push_str(REST);
        shortened
    }

    /// The runs of a text: the numbers of a fraction are small, and the upper one is raised.
    pub(crate) fn runs(self, text: &str) -> Vec<LetteringRun<'_>> {
        let run = |text, size, rise| LetteringRun {
            text,
            height: self.height * size,
            rise: self.height * rise,
        };
        let set = |part| match part {
            TextPart::Plain(text) => vec![run(text, 1.0, 0.0)],
            TextPart::Fraction(over, under) => vec![
                run(over, FRACTION_SIZE, FRACTION_RISE),
                run("/", 1.0, 0.0),
                run(under, FRACTION_SIZE, 0.0),
            ],
        };
        parts(text).into_iter().flat_map(set).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Lettering;

    #[test]
    fn a_fraction_is_narrower_than_its_signs_and_nothing_is_lost() {
        let lettering = Lettering::plain(10.0);
        let signs = lettering.weight.width("15 1/2 in") * 10.0;
        assert!(lettering.width("15 1/2 in") < signs);
        let texts: Vec<&str> = lettering
            .runs("15 1/2 in")
            .iter()
            .map(|run| run.text)
            .collect();
        assert_eq!(texts, ["15 ", "1", "/", "2", " in"]);
    }
}
