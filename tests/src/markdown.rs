//! The fenced blocks of a text in Markdown.

/// The fence of a block.
const FENCE: &str = "```";

/// A fenced block.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Block<'t> {
    /// What stands behind the opening fence: `pelmet error=unit-missing`.
    pub info: &'t str,
    /// The line of the opening fence, one-based.
    pub line: usize,
    /// What stands between the fences, line ends included.
    pub text: String,
}

impl Block<'_> {
    /// Whether the block is in this language.
    pub fn is(&self, language: &str) -> bool {
        self.info.split_whitespace().next() == Some(language)
    }

    /// What the block says behind `name=`.
    pub fn value(&self, name: &str) -> Option<&str> {
        self.info
            .split_whitespace()
            .find_map(|word| word.strip_prefix(name)?.strip_prefix('='))
    }
}

/// The fenced blocks of a text, in order; fences stand at the beginning of a line.
pub fn blocks(text: &str) -> Vec<Block<'_>> {
    let mut blocks: Vec<Block> = Vec::new();
    let mut open = false;
    for (line, number) in text.lines().zip(1..) {
        match (line.strip_prefix(FENCE), blocks.last_mut()) {
            (Some(""), _) if open => open = false,
            (Some(info), _) if !open => {
                blocks.push(Block {
                    info,
                    line: number,
                    text: String::new(),
                });
                open = true;
            }
            (_, Some(block)) if open => {
                block.text.push_str(line);
                block.text.push('\n');
            }
            _ => {}
        }
    }
    blocks
}

#[cfg(test)]
mod tests {
    use super::blocks;

    #[test]
    fn blocks_are_found_with_their_words_and_lines() {
        let text = "prose\n```pelmet error=name-twice\na\n\nb\n```\nmore\n```\nc\n```\n";
        let found = blocks(text);
        let told: Vec<(&str, usize, &str)> = found
            .iter()
            .map(|block| (block.info, block.line, block.text.as_str()))
            .collect();
        assert_eq!(
            told,
            [("pelmet error=name-twice", 2, "a\n\nb\n"), ("", 8, "c\n")]
        );
        assert_eq!(found[0].value("error"), Some("name-twice"));
        assert_eq!(found[0].value("file"), None);
        assert!(found[0].is("pelmet") && !found[0].is("pelm") && !found[1].is("pelmet"));
    }
}
