//! What holds of every file.

use super::pdf;
use crate::drawing::{Bookmark, Drawing, PrintedFile};
use crate::to_scale::tests::drawings;

fn file(title: &str) -> Vec<u8> {
    let bookmarks = vec![Bookmark {
        title: String::from("Fenêtre"),
        page: 1,
    }];
    pdf(&PrintedFile {
        title: title.to_owned(),
        pages: drawings(),
        bookmarks,
    })
}

fn holds(file: &[u8], part: &str) -> bool {
    file.windows(part.len())
        .any(|bytes| bytes == part.as_bytes())
}

#[test]
fn the_same_drawings_give_the_same_bytes_and_no_date() {
    let file = file("Drawings");
    assert_eq!(file, self::file("Drawings"));
    assert!(!holds(&file, "Date"));
}

#[test]
fn a_page_is_exactly_as_large_as_its_drawing() {
    let letter = Drawing {
        title: String::new(),
        description: String::new(),
        width: 215.9,
        height: 279.4,
        elements: Vec::new(),
    };
    let file = pdf(&PrintedFile {
        title: String::from("Letter"),
        pages: vec![letter],
        bookmarks: Vec::new(),
    });
    assert!(holds(&file, "/MediaBox[0 0 612 792]"));
    assert!(holds(&file, "/PrintScaling/None"));
    assert!(holds(&file, "/Lang(en)"));
}
