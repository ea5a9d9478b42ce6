//! The properties of each kind of item, and how the value of each can be written.
//!
//! These tables are the one list of keys and choices: reading, suggestions, "what to add", the table
//! of references and the reference of the language are all checked against them.

use pelmet_model::{Cut, Follow, Railroad, Way};

use crate::closed_sets::{Corners, Difference, Hang, PanelEdge, RepeatDirection, WordSet};
use crate::form::FormPart::{
    AnyOf, Count, Length, Name, Number, OneOf, OwnWords, Panel, Percentage, Perhaps, Range,
    StepName, Times, Unit, Weight, WeightOfArea, Words,
};
use crate::form::{Form, FormPart, Takes};
use crate::kind::Kind;

/// A property an item can have.
#[derive(Copy, Clone, Debug)]
pub struct Property {
    /// Its key as written.
    pub key: &'static str,
    /// How its value can be written.
    pub takes: Takes,
    /// A line that would do, for help; `NAME` stands for the name of an item.
    pub example: &'static str,
    /// Whether every item of the kind needs it.
    pub needed: bool,
}

const fn needs(key: &'static str, takes: Takes, example: &'static str) -> Property {
    Property {
        key,
        takes,
        example,
        needed: true,
    }
}

const fn may(key: &'static str, takes: Takes, example: &'static str) -> Property {
    Property {
        key,
        takes,
        example,
        needed: false,
    }
}

impl Kind {
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

const NONE: Form = &[Words("none")];
const LENGTH: Takes = Takes::one(&[&[Length]]);
const COUNT: Takes = Takes::one(&[&[Count]]);

const FABRIC: &[Property] = &[
    needs("width", LENGTH, "width: 54 in"),
    may("selvage", LENGTH, "selvage: 1/2 in"),
    may(
        "repeat",
        Takes::each(&[
            &[Length, OneOf(WordSet::of::<RepeatDirection>())],
            &[Words("half-drop")],
        ])
        .or(&[NONE]),
        "repeat: 12 in along, 9 in across",
    ),
    may(
        "print begins",
        Takes::one(&[&[Length, Words("from left edge")], NONE]),
        "print begins: 2 in from left edge",
    ),
    may(
        "way",
        Takes::one(&[&[OneOf(WordSet::of::<Way>())]]),
        "way: one-way",
    ),
    may(
        "railroad",
        Takes::one(&[&[OneOf(WordSet::of::<Railroad>())]]),
        "railroad: yes",
    ),
    may("gap", LENGTH, "gap: 1/4 in"),
    may("bolt", LENGTH, "bolt: 40 yd"),
    may(
        "flaws",
        Takes::each(&[&[
            Length,
            Words("to"),
            Length,
            Perhaps(&[Words("across"), Length, Words("to"), Length]),
            Perhaps(&[Words("on bolt"), Count]),
        ]])
        .or(&[NONE]),
        "flaws: 3 yd to 3 yd 8 in",
    ),
    may("shrinkage", Takes::one(&[&[Percentage]]), "shrinkage: 3 %"),
    may("weight", Takes::one(&[&[WeightOfArea]]), "weight: 210 g/m2"),
    may("thickness", LENGTH, "thickness: 0.4 mm"),
    may(
        "price",
        Takes::one(&[&[Number, Words("per"), Unit]]),
        "price: 14.50 per yd",
    ),
];

const ROD: &[Property] = &[
    needs("length", LENGTH, "length: 72 in"),
    needs("diameter", LENGTH, "diameter: 1 in"),
    may("projection", LENGTH, "projection: 3 in"),
    may("wall", LENGTH, "wall: 1.2 mm"),
    may("material", Takes::one(&[&[OwnWords]]), "material: brass"),
    may("brackets", COUNT, "brackets: 3"),
    may("sag limit", LENGTH, "sag limit: 1/8 in"),
];

const BOARD: &[Property] = &[
    needs("length", LENGTH, "length: 72 in"),
    needs("depth", LENGTH, "depth: 4 in"),
    may("thickness", LENGTH, "thickness: 3/4 in"),
];

const NOTION: &[Property] = &[
    may("roll", LENGTH, "roll: 25 yd"),
    may("pack", COUNT, "pack: 10"),
    may(
        "price",
        Takes::one(&[
            &[Number, Words("per"), Unit],
            &[Number, Words("per roll")],
            &[Number, Words("per pack")],
            &[Number, Words("each")],
        ]),
        "price: 6.50 per roll",
    ),
    may(
        "weight",
        Takes::one(&[&[Weight, Words("per"), Unit], &[Weight, Words("each")]]),
        "weight: 12 g each",
    ),
];

const HEADING: &[Property] = &[
    needs(
        "hang",
        Takes::one(&[&[OneOf(WordSet::of::<Hang>())]]),
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
        Takes::first(
            &[&[Name(Kind::Notion), Length, Perhaps(&[Words("wide")])]],
            &[&[Length, Perhaps(&[Words("clear")])]],
        ),
        "fastener: hook-and-loop 3/4 in wide",
    ),
];

const ALLOWANCE: Takes = Takes::first(&[&[Words("hem"), Length]], &[&[Words("turn"), Length]])
    .or(&[&[Length], &[Words("double hem"), Length]]);

/// A notion, and how many of it.
const COUNTED: Takes = Takes::both(
    &[&[Name(Kind::Notion)]],
    &[
        &[Count, Perhaps(&[Words("each panel")])],
        &[Length, Words("apart")],
    ],
);

const LAYER_AS_FACE: Form = &[Words("as face")];
const LAYER_DIFFERENT: Form = &[Length, OneOf(WordSet::of::<Difference>())];

const MAKE: &[Property] = &[
    needs("seam", LENGTH, "seam: 3/8 in"),
    may("top", ALLOWANCE, "top: 1/2 in"),
    may("sides", ALLOWANCE, "sides: double hem 1 in"),
    may("lower edge", ALLOWANCE, "lower edge: hem 2 in, turn 1/2 in"),
    may(
        "lining",
        Takes::each(&[LAYER_AS_FACE, LAYER_DIFFERENT]).or(&[NONE, &[Words("self")]]),
        "lining: 3/8 in longer, 1/4 in wider",
    ),
    may(
        "interlining",
        Takes::each(&[LAYER_AS_FACE, LAYER_DIFFERENT]).or(&[NONE]),
        "interlining: as face",
    ),
    may("lining top", ALLOWANCE, "lining top: 1/2 in"),
    may("lining sides", ALLOWANCE, "lining sides: 1/2 in"),
    may(
        "lining lower edge",
        ALLOWANCE,
        "lining lower edge: hem 1 in, turn 1/2 in",
    ),
    may("interlining top", ALLOWANCE, "interlining top: 0 in"),
    may("interlining sides", ALLOWANCE, "interlining sides: 0 in"),
    may(
        "interlining lower edge",
        ALLOWANCE,
        "interlining lower edge: 0 in",
    ),
    may(
        "corners",
        Takes::one(&[&[OneOf(WordSet::of::<Corners>())]]),
        "corners: mitred",
    ),
    may(
        "band",
        Takes::each(&[
            &[Length, Words("at"), OneOf(WordSet::of::<PanelEdge>())],
            &[Words("laid on face")],
        ])
        .or(&[NONE]),
        "band: 3 in at lower edge",
    ),
    may("join", LENGTH, "join: 1/2 in"),
    may(
        "tape",
        Takes::first(
            &[&[Length, Perhaps(&[Words("wide")])]],
            &[&[Words("on"), OneOf(WordSet::of::<PanelEdge>())]],
        ),
        "tape: 3/8 in wide",
    ),
    may("tape roll", LENGTH, "tape roll: 25 yd"),
    may(
        "pleat strips",
        Takes::first(
            &[&[Count, Perhaps(&[Words("behind each fold")])]],
            &[&[Length, Perhaps(&[Words("long")])]],
        ),
        "pleat strips: 2 behind each fold",
    ),
    may(
        "thread",
        Takes::first(
            &[&[Name(Kind::Notion)]],
            &[&[Number, Perhaps(&[Words("times")])]],
        ),
        "thread: cotton-thread, 3 times",
    ),
    may("rings", COUNTED, "rings: brass-ring, 6 in apart"),
    may("weights", COUNTED, "weights: lead-weight, 2 each panel"),
    may(
        "work",
        Takes::each(&[
            &[StepName, Number, MINUTES, Perhaps(&[Words("per panel")])],
            &[StepName, Number, MINUTES, Words("per pleat")],
        ]),
        "work: cut 20 minutes, pleat 3 minutes per pleat",
    ),
    may(
        "turning opening",
        Takes::one(&[&[Length, Perhaps(&[Words("at top")])]]),
        "turning opening: 6 in at top",
    ),
    may(
        "stack",
        Takes::one(&[&[Perhaps(&[Words("at most")]), Length]]),
        "stack: at most 1/4 in",
    ),
];

const MINUTES: FormPart = AnyOf(&["minutes", "minute"]);

const PLEATS: &[Property] = &[
    may(
        "layers",
        Takes::one(&[&[Perhaps(&[Words("at most")]), Count]]),
        "layers: at most 5",
    ),
    may(
        "print",
        Takes::one(&[&[OneOf(WordSet::of::<Follow>())]]),
        "print: spaces follow",
    ),
    may("folding error", LENGTH, "folding error: 1/32 in"),
    may(
        "turn of cloth",
        Takes::one(&[&[Length, Perhaps(&[Words("each crease")])], NONE]),
        "turn of cloth: none",
    ),
];

const FABRIC_OR_NONE: Takes = Takes::one(&[&[Name(Kind::Fabric)], NONE]);

const PANEL: &[Property] = &[
    may(
        "finished width",
        Takes::one(&[
            &[Length],
            &[Words("fill")],
            &[Words("fill"), Range],
            &[Words("fill at least"), Length],
            &[Words("fill at most"), Length],
        ]),
        "finished width: 18 in",
    ),
    may("flat width", LENGTH, "flat width: 28 in"),
    may("cut width", LENGTH, "cut width: 29 in"),
    may(
        "fullness",
        Takes::one(&[
            &[Number, Perhaps(&[Words("times")])],
            &[Percentage, Words("of finished width")],
            &[Percentage, Words("added")],
        ]),
        "fullness: 2 1/2 times",
    ),
    needs("drop", LENGTH, "drop: 16 in"),
    may(
        "outline",
        Takes::one(&[&[Name(Kind::Outline)]]),
        "outline: NAME",
    ),
    may(
        "pleats",
        Takes::one(&[&[Name(Kind::Pleats)], NONE]),
        "pleats: NAME",
    ),
    needs(
        "head",
        Takes::first(
            &[&[OneOf(WordSet::of::<Hang>())]],
            &[
                &[Words("tail"), Length],
                &[Words("pocket"), Length],
                &[Words("ease"), Length],
                &[Words("above"), Length],
                &[Words("turn"), Length],
                &[Words("lap"), Length],
                &[
                    Words("fastener"),
                    Name(Kind::Notion),
                    Length,
                    Perhaps(&[Words("wide")]),
                ],
            ],
        )
        .or(&[&[Name(Kind::Heading)]]),
        "head: over rod, tail 4 in",
    ),
    needs("make", Takes::one(&[&[Name(Kind::Make)]]), "make: NAME"),
    needs("face", Takes::one(&[&[Name(Kind::Fabric)]]), "face: NAME"),
    may("interlining", FABRIC_OR_NONE, "interlining: NAME"),
    may("lining", FABRIC_OR_NONE, "lining: NAME"),
    may("band", FABRIC_OR_NONE, "band: NAME"),
    may(
        "covers",
        Takes::one(&[&[Length, Perhaps(&[Words("each side")])]]),
        "covers: 1 1/2 in each side",
    ),
    may(
        "cut",
        Takes::one(&[&[OneOf(WordSet::of::<Cut>())]]),
        "cut: on fold",
    ),
];

const TREATMENT: &[Property] = &[
    needs("row", Takes::each(&[&[Panel]]), "row: NAME, NAME"),
    may("over joins", Takes::each(&[&[Panel]]), "over joins: NAME"),
    may("overlap", LENGTH, "overlap: 1 in"),
    may("returns", LENGTH, "returns: 3 in"),
];

const TOP_AT: &[Form] = &[&[Words("top at"), Length]];

const WINDOW: &[Property] = &[
    may(
        "opening",
        Takes::one(&[&[Length, Times, Length]]),
        "opening: 64 in x 52 in",
    ),
    may(
        "rod",
        Takes::first(&[&[Name(Kind::Rod)]], TOP_AT),
        "rod: NAME, top at 86 in",
    ),
    may(
        "board",
        Takes::first(&[&[Name(Kind::Board)]], TOP_AT),
        "board: NAME, top at 86 in",
    ),
    may(
        "motif",
        Takes::both(
            &[&[Words("centred on"), Panel]],
            &[&[
                Perhaps(&[Words("at")]),
                Length,
                Perhaps(&[Words("below heading")]),
            ]],
        ),
        "motif: centred on NAME, 8 in below heading",
    ),
    may(
        "public room",
        Takes::one(&[&[OneOf(WordSet::of::<bool>())]]),
        "public room: yes",
    ),
];

#[cfg(test)]
mod tests {
    use crate::kind::Kind;

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
}
