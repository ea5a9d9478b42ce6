//! The page of one code, as text.

use crate::render::wrapped;
use crate::{Code, Example};

/// The columns of a page.
const WIDTH: usize = 80;

/// What `pelmet explain` prints: the page of a code, its failing example, and the mend.
pub fn explain(code: &Code) -> String {
    let mut text = format!("{} ({})\n", code.slug, code.severity.word());
    for paragraph in code.page.split("\n\n") {
        let words: Vec<&str> = paragraph.split_whitespace().collect();
        text.push('\n');
        text.push_str(&wrapped("", "", &words.join(" "), WIDTH));
    }
    text.push_str("\nFor example:\n\n");
    text.push_str(&shown(code.failing));
    text.push_str("\nPut right:\n\n");
    text.push_str(&shown(code.mend));
    text
}

fn shown(example: Example) -> String {
    match example {
        Example::Text(design) => indented(design),
        Example::Files(files) => {
            let file = |(name, design): &(&str, &str)| format!("  {name}\n{}", indented(design));
            files.iter().map(file).collect::<Vec<_>>().join("\n")
        }
        Example::Made { words, .. } | Example::Told(words) => wrapped("  ", "  ", words, WIDTH),
    }
}

fn indented(design: &str) -> String {
    design
        .lines()
        .map(|line| {
            if line.is_empty() {
                "\n".to_owned()
            } else {
                format!("    {line}\n")
            }
        })
        .collect()
}
