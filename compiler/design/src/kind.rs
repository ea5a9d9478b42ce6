//! The kinds of item, and the properties each can have.
//!
//! These tables are the one list of keys: reading, suggestions, "what to add" and the reference
//! are all checked against them.

/// A kind of item that can be named.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Kind {
    /// A cloth.
    Fabric,
    /// A round rod.
    Rod,
    /// A board.
    Board,
    /// Something bought beside cloth.
    Notion,
    /// How a panel hangs.
    Heading,
    /// A making method.
    Make,
    /// An outline.
    Outline,
    /// A pleat rule.
    Pleats,
    /// A panel.
    Panel,
    /// A treatment.
    Treatment,
    /// A window.
    Window,
    /// A named value.
    Measure,
}

/// A property an item can have.
#[derive(Copy, Clone, Debug)]
pub struct Property {
    /// Its key as written.
    pub key: &'static str,
    /// What it can be, in words.
    pub takes: &'static str,
    /// A line that would do, for help; `NAME` stands for the name of an item.
    pub example: &'static str,
    /// Whether every item of the kind needs it.
    pub needed: bool,
}

const fn needs(key: &'static str, takes: &'static str, example: &'static str) -> Property {
    Property {
        key,
        takes,
        example,
        needed: true,
    }
}

const fn may(key: &'static str, takes: &'static str, example: &'static str) -> Property {
    Property {
        key,
        takes,
        example,
        needed: false,
    }
}

impl Kind {
    /// Every kind.
    pub const ALL: &[Self] = &[
        Self::Fabric,
        Self::Rod,
        Self::Board,
        Self::Notion,
        Self::Heading,
        Self::Make,
        Self::Outline,
        Self::Pleats,
        Self::Panel,
        Self::Treatment,
        Self::Window,
        Self::Measure,
    ];

    /// The word an item of this kind begins with.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fabric => "fabric",
            Self::Rod => "rod",
            Self::Board => "board",
            Self::Notion => "notion",
            Self::Heading => "heading",
            Self::Make => "make",
            Self::Outline => "outline",
            Self::Pleats => "pleats",
            Self::Panel => "panel",
            Self::Treatment => "treatment",
            Self::Window => "window",
            Self::Measure => "measure",
        }
    }

    /// What it is called in a sentence.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            Self::Make => "making method",
            Self::Pleats => "pleat rule",
            _ => self.word(),
        }
    }

    /// The kind whose items begin with this word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.word() == word)
    }

    /// The properties an item of this kind can have, in the order the reference gives them. A
    /// window also has the parameters of its treatment.
    #[must_use]
    pub fn properties(self) -> &'static [Property] {
        match self {
            Self::Fabric => FABRIC,
            Self::Rod => ROD,
            Self::Board => BOARD,
            Self::Notion => NOTION,
            Self::Heading => HEADING,
            Self::Make => MAKE,
            Self::Outline | Self::Measure => &[],
            Self::Pleats => PLEATS,
            Self::Panel => PANEL,
            Self::Treatment => TREATMENT,
            Self::Window => WINDOW,
        }
    }

    /// The property with this key.
    #[must_use]
    pub fn property(self, key: &str) -> Option<&'static Property> {
        self.properties()
            .iter()
            .find(|property| property.key == key)
    }
}

const LENGTH: &str = "a length";

const FABRIC: &[Property] = &[
    needs("width", LENGTH, "width: 54 in"),
    may("selvage", LENGTH, "selvage: 1/2 in"),
    may(
        "repeat",
        "lengths along and across, or `none`",
        "repeat: 12 in along, 9 in across",
    ),
    may(
        "print begins",
        "a length `from left edge`, or `none`",
        "print begins: 2 in from left edge",
    ),
    may("way", "`one-way` or `any`", "way: one-way"),
    may(
        "railroad",
        "`no`, `yes`, `where it saves` or `always`",
        "railroad: yes",
    ),
    may("gap", LENGTH, "gap: 1/4 in"),
    may("bolt", LENGTH, "bolt: 40 yd"),
    may(
        "flaws",
        "stretches of the bolt, or `none`",
        "flaws: 3 yd to 3 yd 8 in",
    ),
    may("shrinkage", "a percentage", "shrinkage: 3 %"),
    may("weight", "a weight for its area", "weight: 210 g/m2"),
    may("thickness", LENGTH, "thickness: 0.4 mm"),
    may("price", "money for a length", "price: 14.50 per yd"),
];

const ROD: &[Property] = &[
    needs("length", LENGTH, "length: 72 in"),
    needs("diameter", LENGTH, "diameter: 1 in"),
    may("projection", LENGTH, "projection: 3 in"),
    may("wall", LENGTH, "wall: 1.2 mm"),
    may("material", "words", "material: brass"),
    may("brackets", "a count", "brackets: 3"),
    may("sag limit", LENGTH, "sag limit: 1/8 in"),
];

const BOARD: &[Property] = &[
    needs("length", LENGTH, "length: 72 in"),
    needs("depth", LENGTH, "depth: 4 in"),
    may("thickness", LENGTH, "thickness: 3/4 in"),
];

const NOTION: &[Property] = &[
    may("roll", LENGTH, "roll: 25 yd"),
    may("pack", "a count", "pack: 10"),
    may(
        "price",
        "money for a length, a roll, a pack or one",
        "price: 6.50 per roll",
    ),
    may(
        "weight",
        "a weight for a length or for one",
        "weight: 12 g each",
    ),
];

const HEADING: &[Property] = &[
    needs(
        "hang",
        "`over rod`, `rod pocket`, `on board` or `plain`",
        "hang: over rod",
    ),
    may("tail", LENGTH, "tail: 4 in"),
    may("pocket", LENGTH, "pocket: 2 in"),
    may("ease", LENGTH, "ease: 1/2 in"),
    may("above", LENGTH, "above: 1 in"),
    may("turn", LENGTH, "turn: 1/2 in"),
    may("lap", LENGTH, "lap: 3 in"),
    may(
        "fastener",
        "a name and a width",
        "fastener: hook-and-loop 3/4 in wide",
    ),
];

const MAKE: &[Property] = &[
    needs("seam", LENGTH, "seam: 3/8 in"),
    may("top", "an allowance", "top: 1/2 in"),
    may("sides", "an allowance", "sides: double hem 1 in"),
    may(
        "lower edge",
        "an allowance",
        "lower edge: hem 2 in, turn 1/2 in",
    ),
    may(
        "lining",
        "`none`, `self`, `as face`, or how much longer and wider",
        "lining: 3/8 in longer, 1/4 in wider",
    ),
    may(
        "interlining",
        "`none`, `as face`, or how much longer and wider",
        "interlining: as face",
    ),
    may("lining top", "an allowance", "lining top: 1/2 in"),
    may("lining sides", "an allowance", "lining sides: 1/2 in"),
    may(
        "lining lower edge",
        "an allowance",
        "lining lower edge: hem 1 in, turn 1/2 in",
    ),
    may("interlining top", "an allowance", "interlining top: 0 in"),
    may(
        "interlining sides",
        "an allowance",
        "interlining sides: 0 in",
    ),
    may(
        "interlining lower edge",
        "an allowance",
        "interlining lower edge: 0 in",
    ),
    may("corners", "`mitred` or `square`", "corners: mitred"),
    may(
        "band",
        "how deep it is at which edges",
        "band: 3 in at lower edge",
    ),
    may("join", LENGTH, "join: 1/2 in"),
    may("tape", "a width", "tape: 3/8 in wide"),
    may("tape roll", LENGTH, "tape roll: 25 yd"),
    may(
        "pleat strips",
        "a count, then perhaps a length",
        "pleat strips: 2 behind each fold",
    ),
    may("thread", "a notion", "thread: cotton-thread, 3 times"),
    may(
        "rings",
        "a notion, and how many",
        "rings: brass-ring, 6 in apart",
    ),
    may(
        "weights",
        "a notion, and how many",
        "weights: lead-weight, 2 each panel",
    ),
    may(
        "work",
        "steps with their minutes",
        "work: cut 20 minutes, pleat 3 minutes per pleat",
    ),
    may("turning opening", LENGTH, "turning opening: 6 in at top"),
    may("stack", "`at most` a length", "stack: at most 1/4 in"),
];

const PLEATS: &[Property] = &[
    may("layers", "`at most` a count", "layers: at most 5"),
    may(
        "print",
        "`spaces follow` or `depths follow`",
        "print: spaces follow",
    ),
    may("folding error", LENGTH, "folding error: 1/32 in"),
    may(
        "turn of cloth",
        "a length for each crease, or `none`",
        "turn of cloth: none",
    ),
];

const PANEL: &[Property] = &[
    may(
        "finished width",
        "a length, or `fill`",
        "finished width: 18 in",
    ),
    may("flat width", LENGTH, "flat width: 28 in"),
    may("cut width", LENGTH, "cut width: 29 in"),
    may(
        "fullness",
        "how many times the finished width",
        "fullness: 2 1/2 times",
    ),
    needs("drop", LENGTH, "drop: 16 in"),
    may("outline", "an outline", "outline: NAME"),
    may("pleats", "a pleat rule, or `none`", "pleats: NAME"),
    needs("head", "a heading", "head: over rod, tail 4 in"),
    needs("make", "a making method", "make: NAME"),
    needs("face", "a fabric", "face: NAME"),
    may("interlining", "a fabric, or `none`", "interlining: NAME"),
    may("lining", "a fabric, or `none`", "lining: NAME"),
    may("band", "a fabric, or `none`", "band: NAME"),
    may("covers", "a length", "covers: 1 1/2 in each side"),
    may("cut", "`on fold` or `open`", "cut: on fold"),
];

const TREATMENT: &[Property] = &[
    needs("row", "panels from left to right", "row: NAME, NAME"),
    may("over joins", "panels", "over joins: NAME"),
    may("overlap", LENGTH, "overlap: 1 in"),
    may("returns", LENGTH, "returns: 3 in"),
];

const WINDOW: &[Property] = &[
    may(
        "opening",
        "a size, width x height",
        "opening: 64 in x 52 in",
    ),
    may("rod", "a rod", "rod: NAME, top at 86 in"),
    may("board", "a board", "board: NAME, top at 86 in"),
    may(
        "motif",
        "a panel and a height",
        "motif: centred on NAME, 8 in below heading",
    ),
    may("public room", "`yes` or `no`", "public room: yes"),
];

#[cfg(test)]
mod tests {
    use super::Kind;

    #[test]
    fn every_example_begins_with_its_key_and_no_key_stands_twice() {
        for kind in Kind::ALL {
            let mut keys: Vec<&str> = Vec::new();
            for property in kind.properties() {
                assert!(property.example.starts_with(&format!("{}: ", property.key)));
                assert!(!keys.contains(&property.key), "{}", property.key);
                keys.push(property.key);
            }
        }
    }

    #[test]
    fn every_word_leads_back_to_its_kind() {
        for kind in Kind::ALL {
            assert_eq!(Kind::from_word(kind.word()), Some(*kind));
        }
    }
}
