//! Lines of a text, broken where the paper ends.

use super::lettering::Lettering;
use crate::text::held_together::held_together;

/// The lines of a text, none wider than `width` millimetres as long as one sign has room. Measures are
/// never parted; a word too long for a line is broken where the line ends.
pub(crate) fn lines(text: &str, lettering: Lettering, width: f64) -> Vec<String> {
    let mut lines = LinesFilled {
        lettering,
        width,
        done: Vec::new(),
        line: String::new(),
        used: 0.0,
    };
    for word in held_together(text).split(' ') {
        lines.add(word);
    }
    lines.done.push(lines.line);
    lines.done
}

/// The width of the longest part of a text that is better not broken.
pub(crate) fn longest_word(text: &str, lettering: Lettering) -> f64 {
    let words = held_together(text);
    words
        .split(' ')
        .map(|word| lettering.width(word))
        .fold(0.0, f64::max)
}

/// Lines that are filled word by word.
struct LinesFilled {
    lettering: Lettering,
    width: f64,
    done: Vec<String>,
    /// The line that is being filled, and how much of its width is used.
    line: String,
    used: f64,
}

impl LinesFilled {
    fn add(&mut self, word: &str) {
        let (blank, width) = (self.lettering.width(" "), self.lettering.width(word));
        if !self.line.is_empty() && self.used + blank + width > self.width {
            self.end();
        }
        if !self.line.is_empty() {
            self.line.push(' ');
            self.used += blank;
        }
        if self.used + width > self.width {
            self.add_in_parts(word);
        } else {
            self.line.push_str(word);
            self.used += width;
        }
    }

    fn add_in_parts(&mut self, word: &str) {
        for sign in word.chars() {
            let width = self.lettering.width(sign.encode_utf8(&mut [0; 4]));
            if self.used + width > self.width && !self.line.is_empty() {
                self.end();
            }
            self.line.push(sign);
            self.used += width;
        }
    }

    fn end(&mut self) {
        self.done.push(std::mem::take(&mut self.line));
        self.used = 0.0;
    }
}

#[cfg(test)]
mod tests {
    use super::lines;
    use crate::drawing::lettering::Lettering;

    const TEXT: &str = "Fold 15 1/2 in from the left edge, then press; \
        Donaudampfschifffahrtsgesellschaftskapitänskajütenfenster stays whole";

    #[test]
    fn no_line_is_too_wide_and_no_word_is_lost() {
        let lettering = Lettering::plain(3.5);
        for width in 8..200 {
            let width = f64::from(width);
            let lines = lines(TEXT, lettering, width);
            assert!(
                lines
                    .iter()
                    .all(|line| lettering.width(line) <= width + 1e-9),
                "{width}: {lines:?}"
            );
            let together = lines.concat().replace(['\u{a0}', ' '], "");
            assert_eq!(together, TEXT.replace(' ', ""));
        }
    }

    #[test]
    fn a_measure_stays_on_one_line() {
        let lettering = Lettering::plain(3.5);
        for width in 25..200 {
            let lines = lines(TEXT, lettering, f64::from(width));
            assert!(
                lines
                    .iter()
                    .any(|line| line.contains("15\u{a0}1/2\u{a0}in")),
                "{lines:?}"
            );
        }
    }
}
