//! When layouts are searched for, who is told of it, and what comes of a search that is broken off.
//! What a search costs is counted in steps, never in time.

#![expect(clippy::panic, reason = "a test stops at the first broken promise")]

use std::ops::ControlFlow;

use pelmet_design::{Project, ReadFinding};
use pelmet_diagnostics::Diagnostic;
use pelmet_driver::{
    Built, ClothsAsked, Search, Stage, build, build_with, check_with, compare_cloths,
};
use pelmet_packet::Cloth;

/// Panels of many sizes on one printed cloth, whose layout no bound meets.
#[derive(Copy, Clone)]
struct Swags<'a> {
    /// Further properties of the cloth.
    cloth: &'a str,
    /// What the first panel is, and how wide that makes it.
    first: (&'a str, u32),
    /// What is expected of it, if anything.
    expected: Option<&'a str>,
}

const PLAIN: Swags<'_> = Swags {
    cloth: "",
    first: ("flat width: 33 in", 31),
    expected: None,
};

const WHERE_IT_SAVES: Swags<'_> = Swags {
    cloth: ", railroad: where it saves",
    ..PLAIN
};

/// Upright, its first panel has a seam that no pleat hides; lying along, it has none.
const SEAM_OR_NONE: Swags<'_> = Swags {
    first: ("flat width: 64 in", 62),
    ..WHERE_IT_SAVES
};

/// The other panels: width and drop.
const OTHERS: [(u32, u32); 5] = [(23, 22), (19, 13), (37, 26), (12, 31), (27, 19)];

impl Project for Swags<'_> {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        assert_eq!(path, "job.pelmet");
        Ok(self.text().into_bytes())
    }
}

impl<'a> Swags<'a> {
    fn text(&self) -> String {
        let cloth = self.cloth;
        let expected = self.expected.map(|line| format!("expect {line}\n"));
        let (first, first_width) = self.first;
        let panel = |(width, drop): (u32, u32)| {
            format!(
                "    panel p{width} like plain {{ finished width: {width} in, drop: {drop} in }}\n"
            )
        };
        format!(
            "\
units inches
fabric chintz {{ width: 54 in, repeat: 11 in along, way: one-way, price: 10 per yd{cloth} }}
rod pole {{ length: {rod} in, diameter: 1 in }}
make seamed {{ seam: 1/2 in, lining: none }}
pleats narrow {{ rest, knife 1 in toward centre, rest }}
panel plain {{ head: over rod, tail 4 in, make: seamed, face: chintz }}
treatment swags {{
    panel first like plain {{ drop: 17 in, pleats: narrow, {first} }}
{others}    row: first{row}
}}
window bay: swags {{ rod: pole }}
window nook: swags {{ rod: pole }}
{lines}",
            lines = expected.unwrap_or_default(),
            rod = OTHERS
                .iter()
                .fold(first_width, |sum, (width, _)| sum.saturating_add(*width)),
            others = OTHERS
                .map(panel)
                .concat()
                .replace("like first", "like plain"),
            row = OTHERS.map(|(width, _)| format!(", p{width}")).concat(),
        )
    }

    fn expecting(self, line: &'a str) -> Swags<'a> {
        let expected = Some(line);
        Swags { expected, ..self }
    }

    fn built(&self) -> Built {
        build("job.pelmet", self)
    }

    /// What a check tells, and the most steps it spent on a search.
    fn checked(&self) -> (Vec<Diagnostic>, u64) {
        let mut steps = 0;
        let mut count = |search: &Search<'_>| {
            // Told of as soon as it begins, it has spent nothing yet.
            steps = steps.max(search.progress.spent.max(1));
            ControlFlow::Continue(())
        };
        let checked = check_with("job.pelmet", self, &mut count);
        (checked.diagnostics, steps)
    }

    /// What is built where every search is ended as soon as it begins, and what each was for.
    fn broken_off(&self, effort: u32) -> (Built, Vec<Stage>) {
        let mut told = Vec::new();
        let mut stopping = |search: &Search<'_>| {
            assert_eq!(search.cloth, "chintz");
            told.push(search.stage);
            ControlFlow::Break(())
        };
        let built = build_with(effort, "job.pelmet", self, &mut stopping);
        (built, told)
    }
}

fn slugs(diagnostics: &[Diagnostic]) -> Vec<&'static str> {
    diagnostics.iter().map(|found| found.code.slug).collect()
}

fn only_cloth(built: &Built) -> &Cloth {
    let packet = built.packet.as_ref();
    let packet = packet.unwrap_or_else(|| panic!("{:#?}", built.diagnostics));
    match &packet.cloths[..] {
        [cloth] => cloth,
        _ => panic!("one cloth is cut"),
    }
}

#[test]
fn a_search_for_a_layout_may_be_broken_off() {
    let (built, told) = PLAIN.broken_off(1);
    let cloth = only_cloth(&built);
    assert!(cloth.search_stopped);
    assert_eq!(cloth.piece_count, 12);
    assert_eq!(told, [Stage::Laying]);
    let whole = PLAIN.built();
    assert!(!only_cloth(&whole).search_stopped);
    assert!(only_cloth(&whole).bought.mm < cloth.bought.mm);
}

#[test]
fn the_ways_to_lay_are_compared_before_the_eyes_of_whoever_watches() {
    let (built, told) = WHERE_IT_SAVES.broken_off(1);
    assert_eq!(told, [Stage::Comparing; 3]);
    let cloth = only_cloth(&built);
    assert!(cloth.search_stopped);
    assert_eq!(cloth.ways_compared.len(), 3);
    assert!(!only_cloth(&WHERE_IT_SAVES.built()).search_stopped);
}

#[test]
fn more_effort_is_spent_on_the_way_that_is_taken_alone() {
    let (_, told) = WHERE_IT_SAVES.broken_off(2);
    let [ways @ .., last] = &told[..] else {
        panic!("nothing was searched")
    };
    assert_eq!((ways, last), (&[Stage::Comparing; 3][..], &Stage::Laying));
}

#[test]
fn a_comparison_that_was_broken_off_is_told_though_the_layout_was_not() {
    let mut comparing = |search: &Search<'_>| match search.stage {
        Stage::Comparing => ControlFlow::Break(()),
        Stage::Laying => ControlFlow::Continue(()),
    };
    let built = build_with(2, "job.pelmet", &WHERE_IT_SAVES, &mut comparing);
    assert!(only_cloth(&built).search_stopped);
}

#[test]
fn a_check_that_could_tell_nothing_of_a_layout_searches_for_none() {
    for swags in [
        PLAIN,
        WHERE_IT_SAVES,
        WHERE_IT_SAVES.expecting("bay p23 finished width = 23 in"),
    ] {
        let (found, steps) = swags.checked();
        assert_eq!(slugs(&found), Vec::<&str>::new(), "{found:#?}");
        assert_eq!(steps, 0);
    }
}

/// The packet meets what is expected, and so does the check: without a search more would be bought.
#[test]
fn a_check_searches_for_what_is_expected() {
    for (swags, sizes) in [
        (PLAIN, &["chintz cost", "job cost", "job quote"][..]),
        (WHERE_IT_SAVES, &["job cost"]),
    ] {
        let built = swags.built();
        let cost = only_cloth(&built).cost.as_ref();
        let cost = cost.unwrap_or_else(|| panic!("the cloth has a price"));
        for size in sizes {
            let line = format!("{size} at most {}", cost.text);
            let (found, steps) = swags.expecting(&line).checked();
            assert_eq!(slugs(&found), Vec::<&str>::new(), "{line}: {found:#?}");
            assert!(steps > 0, "{line}");
        }
    }
}

#[test]
fn a_check_searches_where_a_report_hangs_on_the_way_a_cloth_is_laid() {
    let (found, steps) = SEAM_OR_NONE.checked();
    assert!(steps > 0, "{found:#?}");
    assert_eq!(found, SEAM_OR_NONE.built().diagnostics);
    let upright = Swags {
        cloth: "",
        ..SEAM_OR_NONE
    };
    assert_ne!(
        upright.checked().0,
        Swags {
            cloth: ", railroad: yes",
            ..SEAM_OR_NONE
        }
        .checked()
        .0
    );
}

/// It is decided as for the packet, before the cloth is compared with what it is not.
#[test]
fn a_cloth_that_saves_lying_along_is_not_compared_with_itself_lying_along() {
    for (swags, trials) in [
        (PLAIN, &["as it is", "repeat: none", "railroad: always"][..]),
        (WHERE_IT_SAVES, &["as it is", "repeat: none"]),
    ] {
        let compared = compare_cloths("job.pelmet", &swags, &ClothsAsked::default());
        let cloths = compared.comparison.map(|comparison| comparison.cloths);
        let told = cloths.into_iter().flatten().flat_map(|cloth| cloth.trials);
        let told: Vec<String> = told.map(|trial| trial.what).collect();
        assert_eq!(told, trials);
    }
}
