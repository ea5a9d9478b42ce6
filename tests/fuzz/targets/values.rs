//! Any value is read without a panic, and its places lie within the text.
#![no_main]

use libfuzzer_sys::fuzz_target;
use pelmet_diagnostics::{FileId, Span};
use pelmet_syntax::parse_value;

fuzz_target!(|bytes: &[u8]| {
    let text = String::from_utf8_lossy(bytes);
    let whole = Span::new(FileId(0), 0, text.len());
    let (value, mistakes) = parse_value(FileId(0), &text, whole);
    if let Some(value) = value {
        assert!(
            text.get(value.span.range()).is_some(),
            "a place outside the text"
        );
    }
    for label in mistakes.iter().flat_map(|mistake| &mistake.labels) {
        assert!(
            text.get(label.span.range()).is_some(),
            "a place outside the text"
        );
    }
});
