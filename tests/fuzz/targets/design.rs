//! Any text is compiled without a panic: it gives a packet or says why not, and all of it is
//! written, in every form.
#![no_main]

use libfuzzer_sys::fuzz_target;
use pelmet_diagnostics::{Severity, render};
use pelmet_sheets::{FORMS, PacketChoice, files};
use pelmet_tests::Memory;

fuzz_target!(|bytes: &[u8]| {
    let built = Memory::of_files([
        ("main.pelmet", bytes),
        (
            "styles/house.pelmet",
            b"use standard\nuse \"../main.pelmet\"\n",
        ),
        ("list.csv", bytes),
    ])
    .build();
    let reports = &built.diagnostics;
    let errors = reports
        .iter()
        .any(|report| report.severity == Severity::Error);
    assert_eq!(built.packet.is_some(), !errors, "a packet or an error");
    let _ = render::plain(reports, &built.sources);
    let _ = render::human(reports, &built.sources, render::HumanOptions::default());
    let _ = render::json(reports, &built.sources);
    if let Some(packet) = &built.packet {
        let every = PacketChoice {
            forms: FORMS.iter().collect(),
            ..PacketChoice::default()
        };
        let _ = files(packet, &every);
    }
});
