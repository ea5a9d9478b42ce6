//! What can hurt someone or spoil the work: the usual cautions (common practice, no source).
//!
//! They defer to whoever made the tape and the rod, to the local code and to licensed people, and
//! give no assurance.

use pelmet_workroom::{Job, PanelOrder, Support};

use crate::packet::{Caution, SheetKind};

/// The cautions of a job, each for the sheet it belongs to.
pub(crate) fn cautions(job: &Job) -> Vec<Caution> {
    let panels = || job.windows.iter().flat_map(|window| &window.panels);
    let fused = panels().any(|panel: &PanelOrder| panel.making.tape.is_some());
    let on_rod = job
        .windows
        .iter()
        .any(|window| matches!(window.support, Support::Rod(_)));
    let mut cautions = vec![SHEARS.caution()];
    cautions.extend(fused.then(|| HOT_IRON.caution()));
    cautions.extend(fused.then(|| ADHESIVE.caution()));
    cautions.push(LADDER.caution());
    cautions.extend(on_rod.then(|| ROD_RATING.caution()));
    cautions.extend([HEAT, CORDS, PUBLIC_ROOMS].iter().map(Words::caution));
    cautions
}

/// A caution before it is written out.
struct Words {
    sheet: SheetKind,
    about: &'static str,
    text: &'static str,
}

impl Words {
    fn caution(&self) -> Caution {
        Caution {
            sheet: self.sheet,
            about: self.about.to_owned(),
            text: self.text.to_owned(),
        }
    }
}

const SHEARS: Words = Words {
    sheet: SheetKind::CutSheet,
    about: "shears",
    text: "Shears and rotary blades are sharp: cut away from your hand and close them when you put \
        them down. Measure twice; cloth once cut does not come back.",
};

const HOT_IRON: Words = Words {
    sheet: SheetKind::Notions,
    about: "hot iron",
    text: "A hot iron burns skin and cloth. Fuse a scrap of the same cloth first, use a press \
        cloth, let each run cool before it is moved, and never leave the iron standing alone.",
};

const ADHESIVE: Words = Words {
    sheet: SheetKind::Notions,
    about: "fusing",
    text: "Heat, steam and pressing time are those the maker of the adhesive states; where they \
        differ from this sheet, follow the maker.",
};

const LADDER: Words = Words {
    sheet: SheetKind::Checks,
    about: "ladder and wall",
    text: "Work from a ladder that stands firm, with someone by. Fixing into a wall is for a \
        competent person, into sound structure, clear of cables and pipes.",
};

const ROD_RATING: Words = Words {
    sheet: SheetKind::RodCheck,
    about: "rod",
    text: "Weight, load, bending and sag are estimates. What the rod, its brackets and their \
        anchors may carry is for their makers to say, and what the wall holds for a competent \
        person; nothing here vouches for either.",
};

const HEAT: Words = Words {
    sheet: SheetKind::Checks,
    about: "heaters and lamps",
    text: "Keep cloth well clear of heaters, lamps and open flame, also when a draught moves it.",
};

const CORDS: Words = Words {
    sheet: SheetKind::Checks,
    about: "cords",
    text: "A loop of cord can strangle a child: keep every cord out of reach of small children or \
        do without.",
};

const PUBLIC_ROOMS: Words = Words {
    sheet: SheetKind::Checks,
    about: "public rooms",
    text: "In a public room the local fire code decides which cloths may hang; ask before buying.",
};
