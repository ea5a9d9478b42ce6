//! Sheets as one page for a browser.

use pelmet_sheets::{PacketChoice, SHEETS, sheet_word};

use crate::{page, reading_room};

/// Names are the maker's own, and a title may hold anything that is text.
#[test]
fn whatever_a_job_is_called_the_page_stays_whole() {
    let mut packet = reading_room();
    packet.title = String::from("<script>alert(1)</script> & \"Fenêtres\" 🪡");
    let html = page(&packet, &PacketChoice::default());
    assert!(
        html.contains("<title>&lt;script&gt;alert(1)&lt;/script&gt; &amp; "),
        "{html}"
    );
    assert!(!html.contains("<script"));
    for sheet in SHEETS {
        let anchor = sheet_word(*sheet);
        assert!(html.contains(&format!("href=\"#{anchor}\"")), "{anchor}");
        assert!(
            html.contains(&format!("<section id=\"{anchor}\"")),
            "{anchor}"
        );
    }
}

#[test]
fn the_page_asks_for_nothing_outside_itself() {
    let html = page(&reading_room(), &PacketChoice::default());
    for asks in [" src=", "url(", "@import", "<link", "<iframe"] {
        assert!(!html.contains(asks), "{asks}");
    }
    let addresses = html.matches("http").count();
    assert_eq!(
        addresses,
        html.matches("http://www.w3.org/2000/svg").count()
    );
}
