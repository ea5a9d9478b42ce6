//! What panels need beside cloth, and what that weighs.

use pelmet_measure::{Length, Mass};
use pelmet_model::{
    CountedOrder, FastenerOrder, Heading, HowMany, Matter, Need, NeedExtent, NotionKind,
    NotionOrder, NotionWeight, PanelOrder, PleatMatter, StripOrder, StripsMade, TapeOrder,
    ThreadOrder,
};
use pelmet_workroom::{count_along, work};
use proptest::prelude::*;

use crate::sample::{alone, cloth, eighths, exactly, inches, knives, panel, ratio, sound, window};

fn rings(how_many: HowMany) -> CountedOrder {
    CountedOrder {
        name: String::from("brass-ring"),
        how_many,
    }
}

fn of_kind(needs: &[Need], kind: NotionKind) -> Vec<NeedExtent> {
    let of_kind = needs.iter().filter(|need| need.kind == kind);
    of_kind.map(|need| need.extent).collect()
}

#[test]
fn things_stand_no_further_apart_than_asked_and_one_at_each_end() {
    for (edge, apart, count) in [(40, 8, 6), (40, 7, 7), (40, 40, 2), (40, 50, 2), (41, 8, 7)] {
        assert_eq!(
            count_along(HowMany::Apart(inches(apart)), inches(edge)),
            count
        );
    }
    assert_eq!(count_along(HowMany::Each(3), inches(40)), 3);
    assert_eq!(
        count_along(HowMany::Apart(Length::from_nanometres(1)), Length::LARGEST),
        u32::MAX
    );
}

proptest! {
    #[test]
    fn no_space_between_rings_is_wider_than_asked(edge in 1_i64..10_000, apart in 1_i64..500) {
        let (edge, apart) = (eighths(edge), eighths(apart));
        let spaces = count_along(HowMany::Apart(apart), edge) - 1;
        prop_assert!(apart * i64::from(spaces) >= edge);
        prop_assert!(apart * (i64::from(spaces) - 1) < edge);
    }
}

#[test]
fn rings_follow_the_finished_width_and_weights_the_lower_edge() {
    let mut order = panel();
    order.width.fullness = Some(ratio(2, 1));
    order.making.notions.rings = Some(rings(HowMany::Apart(inches(10))));
    order.making.notions.weights = Some(rings(HowMany::Apart(inches(10))));
    let needs = sound(&order).needs;
    assert_eq!(of_kind(&needs, NotionKind::Rings), [NeedExtent::Count(5)]);
    assert_eq!(of_kind(&needs, NotionKind::Weights), [NeedExtent::Count(9)]);
}

#[test]
fn thread_is_so_many_times_what_is_sewn() {
    let mut order = panel();
    order.making.notions.thread = Some(ThreadOrder {
        name: String::from("cotton-thread"),
        times: ratio(5, 2),
    });
    // Around a panel of 40 in x 14 in, 2 1/2 times.
    let needs = sound(&order).needs;
    assert_eq!(
        of_kind(&needs, NotionKind::Thread),
        [NeedExtent::Length(inches(270))]
    );
}

/// A panel with two knife pleats, each 2 in deep, and strips behind their folds.
fn pleated(length: Option<Length>) -> PanelOrder {
    let mut order = panel();
    order.pleats = Some(knives(2, inches(2)));
    order.making.tape = Some(TapeOrder {
        width: eighths(3),
        top: false,
        sides: false,
        lower: true,
        roll: None,
    });
    order.making.notions.pleat_strips = Some(StripOrder {
        behind_each: 2,
        length,
    });
    order
}

#[test]
fn strips_are_as_long_as_the_shallowest_pleat_is_deep() {
    let (made, matters) = alone(&pleated(None), &cloth());
    assert_eq!(matters, []);
    let made = made.unwrap();
    let strips = made.pleat_strips.unwrap();
    assert_eq!((strips.count, strips.length), (4, inches(2)));
    // The lower edge and the strips.
    assert_eq!(
        of_kind(&made.needs, NotionKind::FusibleTape),
        [NeedExtent::Length(inches(48 + 8))]
    );
}

#[test]
fn longer_strips_show() {
    let (_, matters) = alone(&pleated(Some(eighths(17))), &cloth());
    let shows = PleatMatter::StripShows {
        step: 2,
        length: eighths(17),
        depth: inches(2),
    };
    assert_eq!(matters, [Matter::Pleats(shows)]);
    assert_eq!(alone(&pleated(Some(inches(2))), &cloth()).1, []);
}

#[test]
fn strips_need_a_pleat() {
    let mut order = panel();
    order.making.notions.pleat_strips = Some(StripOrder {
        behind_each: 2,
        length: None,
    });
    assert_eq!(sound(&order).pleat_strips, None);
    let strips = StripsMade {
        count: 3,
        length: inches(2),
    };
    assert_eq!(strips.together(), inches(6));
}

#[test]
fn notions_weigh_what_they_state() {
    let grams = |whole: i64| Mass::from_micrograms(whole * 1_000_000);
    let notion = |name: &str, weight| NotionOrder {
        name: name.to_owned(),
        roll: None,
        pack: None,
        price: None,
        weight: Some(weight),
    };
    let mut order = panel();
    order.making.notions.rings = Some(rings(HowMany::Each(4)));
    order.making.notions.thread = Some(ThreadOrder {
        name: String::from("cord"),
        times: ratio(1, 1),
    });
    let mut linen = cloth();
    linen.grams_per_square_metre = Some(ratio(0, 1));
    let mut job = pelmet_model::Job {
        fabrics: vec![linen],
        windows: vec![window(inches(40), vec![order], &[0])],
        ..Default::default()
    };
    let weigh = |job: &pelmet_model::Job| work(job).0.windows[0].weight;
    assert_eq!(weigh(&job), Some(Mass::ZERO));
    job.notions
        .push(notion("brass-ring", NotionWeight::Each(grams(9))));
    assert_eq!(weigh(&job), Some(grams(36)));
    // Around the panel: 108 in, at 10 g for 12 in.
    let per_foot = NotionWeight::PerLength {
        mass: grams(10),
        per: Length::FOOT,
    };
    job.notions.push(notion("cord", per_foot));
    assert_eq!(weigh(&job), Some(grams(36 + 90)));
    // A weight that does not suit how it is used adds nothing.
    job.notions[0].weight = Some(per_foot);
    assert_eq!(weigh(&job), Some(grams(90)));
}

#[test]
fn tape_and_fasteners_are_bought_by_their_width_and_roll() {
    let mut order = pleated(None);
    let roll = Some(Length::YARD * 10);
    order.making.tape.as_mut().unwrap().roll = roll;
    order.heading = Heading::OverRod {
        tail: inches(4),
        fastener: Some(FastenerOrder {
            name: String::from("hook-and-loop"),
            width: inches(1),
            inset: eighths(4),
        }),
    };
    let needs = sound(&order).needs;
    let bought: Vec<_> = needs
        .iter()
        .map(|need| (need.kind, need.width, need.roll))
        .collect();
    assert_eq!(
        bought,
        [
            (NotionKind::FusibleTape, Some(eighths(3)), roll),
            (NotionKind::Fastener, Some(inches(1)), None),
        ]
    );
    // Along the 40 in it hangs wide, half an inch clear of each edge.
    assert_eq!(needs[1].extent, NeedExtent::Length(inches(39)));
}

/// Round a panel of 100 in by 14 in, and down each of its two seams.
#[test]
fn thread_is_needed_for_the_seams_between_widths_too() {
    let mut order = panel();
    order.width = exactly(inches(100));
    order.making.notions.thread = Some(ThreadOrder {
        name: String::from("cotton-thread"),
        times: ratio(1, 1),
    });
    let made = sound(&order);
    assert_eq!(made.pieces[0].joined.as_ref().unwrap().seams.len(), 2);
    let thread = of_kind(&made.needs, NotionKind::Thread);
    assert_eq!(thread, [NeedExtent::Length(inches(228 + 2 * 14))]);
}
