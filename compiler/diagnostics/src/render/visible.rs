//! Text that cannot play tricks on the one who reads it.

/// Stands for a character that changes how others are shown.
const REPLACEMENT: char = '\u{fffd}';

/// The text with every character that would not show, or would move others, replaced by one that
/// shows; a tab stays, and the number of characters stays the same.
pub(super) fn visible(text: &str) -> String {
    text.chars().map(visible_character).collect()
}

/// The text on one line: like [`visible`], with blanks for tabs and ends of lines.
pub(super) fn visible_line(text: &str) -> String {
    let on_one_line = |character| {
        if matches!(character, '\t' | '\n') {
            ' '
        } else {
            character
        }
    };
    text.chars()
        .map(on_one_line)
        .map(visible_character)
        .collect()
}

fn visible_character(character: char) -> char {
    match character {
        '\t' => '\t',
        '\u{0}'..='\u{1f}' => control_picture(character),
        '\u{7f}' => '␡',
        '\u{80}'..='\u{9f}' => REPLACEMENT,
        // Marks that have no width or turn the direction of what follows.
        '\u{200b}'..='\u{200f}'
        | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{2069}'
        | '\u{feff}' => REPLACEMENT,
        shown => shown,
    }
}

/// Unicode has a small picture of every control character, in their order from U+2400 on.
fn control_picture(control: char) -> char {
    let picture = u32::from(control).saturating_add(0x2400);
    char::from_u32(picture).unwrap_or(REPLACEMENT)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_show_is_replaced_one_for_one() {
        for (text, shown) in [
            ("plain é 絹 ½", "plain é 絹 ½"),
            ("bell\u{7}", "bell␇"),
            ("\u{1b}[31mred", "␛[31mred"),
            ("tab\tstays", "tab\tstays"),
            ("\u{202e}drawkcab", "\u{fffd}drawkcab"),
            ("delete\u{7f}", "delete␡"),
        ] {
            assert_eq!(visible(text), shown);
            assert_eq!(visible(text).chars().count(), text.chars().count());
        }
    }

    #[test]
    fn one_line_stays_one_line() {
        assert_eq!(visible_line("two\nlines\tand\r\n"), "two lines and␍ ");
    }
}
