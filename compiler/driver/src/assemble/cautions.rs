//! What can hurt someone or spoil the work: the usual cautions (common practice, no source, but
//! where one is named). Each has its words here and nowhere else.
//!
//! They defer to whoever made the tape and the rod, to the local code and to licensed people, and
//! give no assurance.

use std::collections::BTreeSet;

use pelmet_model::{CautionKind, Job, PanelOrder, SupportOrder};

use pelmet_packet::{Caution, SheetKind, Window};

/// The cautions of a job: those of the steps of its windows, and those of its sheets.
pub(crate) fn cautions(job: &Job, windows: &[Window]) -> Vec<Caution> {
    let panels = windows.iter().flat_map(|window| &window.panels);
    let steps = panels.flat_map(|panel| &panel.making_order);
    let of_steps: BTreeSet<&String> = steps.flat_map(|step| &step.cautions).collect();
    let all = CautionKind::ALL.iter().map(|kind| Caution {
        name: kind.word().to_owned(),
        text: words(*kind).to_owned(),
        sheets: sheets(*kind, job),
    });
    all.filter(|caution| !caution.sheets.is_empty() || of_steps.contains(&caution.name))
        .collect()
}

/// The sheets that have a caution at their end, beside the steps that have it.
fn sheets(kind: CautionKind, job: &Job) -> Vec<SheetKind> {
    let panels = || job.windows.iter().flat_map(|window| &window.panels);
    let fused = panels().any(|panel: &PanelOrder| panel.making.tape.is_some());
    let on_rod = job
        .windows
        .iter()
        .any(|window| matches!(window.support, SupportOrder::Rod(_)));
    let sheet = match kind {
        CautionKind::Shears => Some(SheetKind::CutSheet),
        CautionKind::ScrapTest
        | CautionKind::HotIron
        | CautionKind::PressCloth
        | CautionKind::LetItCool
        | CautionKind::TapeMaker => fused.then_some(SheetKind::Notions),
        CautionKind::RodRating => on_rod.then_some(SheetKind::RodCheck),
        CautionKind::Ladder
        | CautionKind::Fixing
        | CautionKind::Heat
        | CautionKind::Cords
        | CautionKind::PublicRoom => Some(SheetKind::Checks),
        CautionKind::Needle | CautionKind::SmallParts => None,
    };
    sheet.into_iter().collect()
}

fn words(kind: CautionKind) -> &'static str {
    match kind {
        CautionKind::Shears => {
            "Shears and rotary blades are sharp: cut away from your hand and close them when you \
             put them down. Measure twice; cloth once cut does not come back."
        }
        CautionKind::Needle => {
            "Keep fingers clear of a running needle and switch the machine off to thread it. Count \
             the pins in and out; one that is left in hurts whoever finds it."
        }
        CautionKind::ScrapTest => {
            "Try it first on a scrap of the same cloth, face and back: heat, tape and chalk can \
             shrink, scorch, melt or mark it for good."
        }
        CautionKind::HotIron => {
            "A hot iron burns skin and cloth. Keep hands and cord clear of it, mind the steam, and \
             never leave it standing hot and alone."
        }
        CautionKind::PressCloth => {
            "Lay a press cloth between iron and work, and press with a dry iron unless the maker \
             of cloth or tape says otherwise. Lift the iron and set it down; do not slide it."
        }
        CautionKind::LetItCool => {
            "Let each stretch cool flat before you move it: hot cloth burns fingers, warm adhesive \
             gives way, and a warm fold sets where it does not belong."
        }
        CautionKind::TapeMaker => {
            "Heat, steam and pressing time are those the maker of the adhesive states; where they \
             differ from this sheet, follow the maker."
        }
        CautionKind::SmallParts => {
            "Rings and weights can be swallowed: keep them from small children and sew weights in \
             so that they cannot come out. Wash your hands after handling lead."
        }
        CautionKind::RodRating => {
            "Weight, load, bending and sag are estimates. What the rod, its brackets and their \
             anchors may carry is for their makers to say, and what the wall holds for a competent \
             person; nothing here vouches for either."
        }
        CautionKind::Ladder => {
            "Work from a ladder that stands firm, with someone by, and never reach out beyond its \
             sides."
        }
        CautionKind::Fixing => {
            "Fixing into a wall or ceiling is for a competent person, into sound structure, clear \
             of cables and pipes, by the instructions of the makers of rod, board and anchors."
        }
        CautionKind::Heat => {
            "Keep cloth well clear of heaters, lamps and open flame, also when a draught moves it."
        }
        // 16 CFR part 1260, as published: accessible operating cords over 8 in are the hazard.
        CautionKind::Cords => {
            "A cord can strangle a small child. In window coverings made to order 16 CFR part 1260 \
             names operating cords longer than 8 in within reach as the hazard: hang this without \
             a cord, and follow the local rules where there are others."
        }
        CautionKind::PublicRoom => {
            "In a public room the local fire code decides which cloths may hang, and a laboratory \
             whether they pass. Ask before buying; nothing here says that a cloth resists flame."
        }
    }
}
