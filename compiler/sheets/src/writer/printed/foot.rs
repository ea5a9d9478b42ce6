//! The foot of every page: the job, the sheet, and which page of how many.

use super::pages::SIDE;
use crate::drawing::{Drawing, Element, Lettering, LineKind, at};

const FOOT: Lettering = Lettering::plain(2.9);
/// How far its letters and the line above them stand from the lower end of the page.
const LETTERS: f64 = 8.0;
const RULE: f64 = 12.5;

/// Writes the foot of each page; what a page is called is what stands on it.
pub(super) fn print(job: &str, pages: &mut [Drawing]) {
    let count = pages.len();
    for (index, page) in pages.iter_mut().enumerate() {
        let number = format!("page {} of {count}", index.saturating_add(1));
        print_page(job, &number, page);
    }
}

fn print_page(job: &str, number: &str, page: &mut Drawing) {
    let (left, right) = (SIDE, page.width - SIDE);
    let (rule, letters) = (page.height - RULE, page.height - LETTERS);
    page.line(LineKind::Rule, [at(left, rule), at(right, rule)]);
    let ends = right - FOOT.width(number);
    let what = if page.title.is_empty() {
        job.to_owned()
    } else {
        format!("{}  ·  {job}", page.title)
    };
    let what = FOOT.shortened(&what, ends - left - 6.0);
    for (x, text) in [(left, what), (ends, number.to_owned())] {
        page.elements.push(Element::Text {
            at: at(x, letters),
            lettering: FOOT,
            text,
        });
    }
}
