//! Any text is read without a panic, and what can be laid out stays laid out.
#![no_main]

use libfuzzer_sys::fuzz_target;
use pelmet_diagnostics::FileId;
use pelmet_syntax::{FormatRefusal, format, parse};

fuzz_target!(|bytes: &[u8]| {
    let text = String::from_utf8_lossy(bytes);
    let parsed = parse(FileId(0), &text);
    match format(FileId(0), &text) {
        Ok(laid_out) => {
            assert!(
                parsed.diagnostics.is_empty(),
                "a text with mistakes was laid out"
            );
            assert_eq!(
                format(FileId(0), &laid_out).as_ref(),
                Ok(&laid_out),
                "laid out twice"
            );
        }
        Err(FormatRefusal::Diagnostics(diagnostics)) => assert!(!diagnostics.is_empty()),
        Err(FormatRefusal::WouldChange) => panic!("laid out, it would say something else"),
    }
});
