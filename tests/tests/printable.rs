//! Whatever is said in a packet can be printed: what cannot is refused where it stands.

use std::collections::BTreeSet;

use pelmet_lettering::first_not_printable;
use pelmet_packet::Packet;
use pelmet_tests::Memory;

/// A letter of a script that the sheets are not printed in.
const ELSEWHERE: char = '窓';

/// A small job with a name and a text of every kind.
const JOB: &str = r#"
use standard rods, headings
job "Larder"
currency "guilders"
fabric gingham { width: 60 in, weight: 120 g/m2, price: 4 per yd }
notion white-tape { roll: 10 yd, price: 2 per roll }
notion glass-ring { pack: 8, price: 3 per pack, weight: 5 g each }
labour 30 per hour
make hem-it {
    seam: 1/2 in
    lining: none
    tape: 3/8 in wide
    rings: glass-ring, 6 in apart
    work: shear 20 minutes
    steps {
        shear: "Cut {face size} from {face}.", caution shears
        stick: "Press it.", for each tape run "On the {run edge}: {run length}."
    }
}
measure ease = 1 in
treatment curtain(drop) {
    panel front {
        finished width: fill
        drop: drop
        head: pocket-on-rod
        make: hem-it
        face: gingham
    }
    row: front
}
window pantry: curtain { rod: steel-rod(20 in), drop: 12 in }
expect front finished width = 20 in
accept rod-sags: "It is an old rod."
"#;

/// The words of a design, each once.
fn words(design: &str) -> BTreeSet<&str> {
    let words = design.split(|sign: char| !is_of_a_word(sign));
    words
        .filter(|word| word.starts_with(char::is_alphabetic))
        .collect()
}

fn is_of_a_word(sign: char) -> bool {
    sign.is_alphanumeric() || sign == '-'
}

/// The design with a letter put to the end of a word, wherever it stands.
fn lengthened(design: &str, word: &str) -> String {
    let mut changed = String::new();
    for part in design.split_inclusive(|sign: char| !is_of_a_word(sign)) {
        let stem = part.trim_end_matches(|sign: char| !is_of_a_word(sign));
        changed.push_str(stem);
        changed.extend((stem == word).then_some(ELSEWHERE));
        changed.push_str(part.strip_prefix(stem).unwrap_or_default());
    }
    changed
}

fn is_printable(packet: &Packet) -> bool {
    packet
        .to_json()
        .lines()
        .all(|line| first_not_printable(line).is_none())
}

#[test]
fn whatever_is_said_in_a_packet_can_be_printed() {
    let sound = Memory::of(JOB).build();
    assert!(sound.packet.is_some(), "{:?}", sound.diagnostics);
    let mut refused = BTreeSet::new();
    for word in words(JOB) {
        let built = Memory::of(lengthened(JOB, word)).build();
        let mut codes = built.diagnostics.iter().map(|report| report.code.slug);
        if codes.any(|code| code == "sign-not-printed") {
            refused.insert(word);
        }
        assert!(built.packet.as_ref().is_none_or(is_printable), "{word}");
    }
    for given in [
        "Larder",
        "guilders",
        "gingham",
        "glass-ring",
        "shear",
        "Press",
        "pantry",
    ] {
        assert!(refused.contains(given), "{given}");
    }
}
