//! Whole sheets: their trees, and how the formatter lays them out.

#![expect(clippy::disallowed_methods, reason = "the sheets are files")]

use std::fs;

use pelmet_diagnostics::FileId;
use pelmet_syntax::{format, parse};

#[test]
fn trees() {
    insta::glob!("sheets/*.pelmet", |path| {
        let parsed = parse(FileId(0), &fs::read_to_string(path).unwrap());
        assert_eq!(parsed.diagnostics, []);
        insta::assert_snapshot!(parsed.file.dump());
    });
}

#[test]
fn layouts() {
    insta::glob!("sheets/*.pelmet", |path| {
        let laid_out = format(FileId(0), &fs::read_to_string(path).unwrap()).unwrap();
        assert_eq!(format(FileId(0), &laid_out).as_ref(), Ok(&laid_out));
        insta::assert_snapshot!(laid_out);
    });
}
