//! The words that begin a step or a line of a sheet, and how each goes on.

use pelmet_measure::System;
use pelmet_model::{
    CautionKind, CreasePattern, Each, PatternFace, PleatKind, PleatMake, Start, TowardOrder,
};

use crate::closed_sets::{Drawn, WordSet};
use crate::form::FormPart::{
    AnyOf, Count, Figure, Length, LibraryFile, Number, OneOf, Path, Percentage, Perhaps, Point,
    Range, Sentence, Subject, Sum, Text, Warning, Words,
};
use crate::form::{Form, FormPart, Takes};
use crate::kind::Kind;
use crate::size::Size;

/// What begins a step of an outline or of a pleat rule, or a line at the edge of a sheet.
#[derive(Copy, Clone, Debug)]
pub struct Keyword {
    /// Its word, or words.
    pub word: &'static str,
    /// How what stands behind it can be written.
    pub takes: Takes,
    /// How what stands behind the separator can be written; nothing where there is none.
    pub value: Takes,
}

impl Keyword {
    const fn new(word: &'static str, takes: Takes) -> Self {
        Self {
            word,
            takes,
            value: Takes::NOTHING,
        }
    }

    /// A word with what these forms say of it, and no more.
    const fn one(word: &'static str, forms: &'static [Form]) -> Self {
        Self::new(word, Takes::one(forms))
    }

    /// The word it begins with.
    pub(crate) fn first_word(self) -> &'static str {
        self.word.split(' ').next().unwrap_or(self.word)
    }
}

impl Kind {
    /// The steps that an item of this kind is drawn or done by. Any step of an outline may end with
    /// `as` and a name for the corner where it ends.
    #[must_use]
    pub fn steps(self) -> Vec<Keyword> {
        match self {
            Self::Outline => OUTLINE_STEPS.to_vec(),
            Self::Pleats => {
                let pleats = PleatKind::ALL.iter().copied().map(pleat);
                let plain = PLAIN_STEPS.iter().copied();
                plain.chain(pleats).chain([REPEAT]).collect()
            }
            Self::Fabric
            | Self::Rod
            | Self::Board
            | Self::Notion
            | Self::Heading
            | Self::Make
            | Self::Panel
            | Self::Treatment
            | Self::Window
            | Self::Measure => Vec::new(),
        }
    }

    /// What can be said behind the name of an item of this kind of how it is drawn.
    #[must_use]
    pub fn manner(self) -> Takes {
        match self {
            Self::Outline => OUTLINE_MANNER,
            Self::Pleats => PLEAT_MANNER,
            Self::Fabric
            | Self::Rod
            | Self::Board
            | Self::Notion
            | Self::Heading
            | Self::Make
            | Self::Panel
            | Self::Treatment
            | Self::Window
            | Self::Measure => Takes::NOTHING,
        }
    }

    /// Whether a word begins a step of an item of this kind.
    pub(crate) fn has_step(self, word: &str) -> bool {
        self.steps().iter().any(|step| step.first_word() == word)
    }
}

/// How much of a panel an outline draws.
const OUTLINE_MANNER: Takes = Takes::one(&[&[OneOf(WordSet::of::<Drawn>())]]);

/// From where a pleat rule is read, and whether the other half is the mirror image.
const PLEAT_MANNER: Takes = Takes::each(&[&[OneOf(WordSet::of::<Start>())], &[Words(MIRRORED)]]);

/// The word for a pleat rule of which the other half is the mirror image.
pub(crate) const MIRRORED: &str = "mirrored";

const OUTLINE_STEPS: &[Keyword] = &[
    Keyword::one("from", &[&[Point]]),
    Keyword::one("to", &[&[Point]]),
    Keyword::one("across", &[&[Length]]),
    Keyword::one("back", &[&[Length]]),
    Keyword::one("down", &[&[Length]]),
    Keyword::one("up", &[&[Length], &[Words("to heading")]]),
    Keyword::one(
        "arc",
        &[
            &[Words("to"), Point, Words("through"), Point],
            &[Words("to"), Point, Words("bulge"), Length, SWELLS],
            &[Words("to"), Point, Words("radius"), Length, SWELLS],
            &[Words("to"), Point, Words("starting level")],
            &[Words("to"), Point, Words("ending level")],
        ],
    ),
    Keyword::new(
        "curve",
        Takes::both(&[&[Words("to"), Point, Words("by"), Point]], &[&[Point]]),
    ),
    Keyword::new(
        "scallops",
        Takes::both(
            &[&[Words("to"), Point]],
            &[
                &[Count, Words("of them")],
                &[Words("about"), Length, Perhaps(&[Words("wide")])],
                &[Length, Perhaps(&[Words("deep")])],
                &[Words("inward")],
            ],
        ),
    ),
    Keyword::new(
        "notch",
        Takes::both(
            &[&[Words("at"), Point]],
            &[
                &[Length, Words("wide")],
                &[Length, Words("deep")],
                &[Words("square")],
            ],
        ),
    ),
];

const SWELLS: FormPart = Perhaps(&[AnyOf(&["inward", "outward"])]);

/// The steps of a pleat rule that are no pleats.
const PLAIN_STEPS: &[Keyword] = &[
    Keyword::one("margin", &[&[Range]]),
    Keyword::one("space", &[&[Range]]),
    Keyword::one("rest", &[&[]]),
];

/// Steps made several times over.
const REPEAT: Keyword = Keyword::one(
    "repeat",
    &[
        &[],
        &[Count, Perhaps(&[Words("times")])],
        &[Count, Words("to"), Count, Perhaps(&[Words("times")])],
    ],
);

/// The step that asks for a pleat of this kind.
fn pleat(kind: PleatKind) -> Keyword {
    let takes = match kind.make() {
        PleatMake::Folded(pattern) => folded(&pattern),
        PleatMake::Stitched { fingered: true } => {
            Takes::first(&[&[Range]], &[FINGERS, FACE, FOLD_AT, FOLD_ON])
        }
        PleatMake::Stitched { fingered: false } => {
            Takes::first(&[&[Range]], &[FACE, FOLD_AT, FOLD_ON])
        }
        PleatMake::Drawn => Takes::one(&[&[DRAWN_BY, DRAWN_TO]]),
    };
    Keyword::new(kind.word(), takes)
}

/// What a folded pleat can say of the way it lies and of its face.
fn folded(pattern: &CreasePattern) -> Takes {
    let has_face = pattern.face == PatternFace::AsSaid;
    match (pattern.lies_to_one_side(), has_face) {
        (false, false) => Takes::first(&[DEPTH], &[FOLD_AT, FOLD_ON]),
        (false, true) => Takes::first(&[DEPTH], &[FACE, FOLD_AT, FOLD_ON]),
        (true, false) => Takes::first(&[DEPTH_AND_WAY], &[FOLD_AT, FOLD_ON]),
        (true, true) => Takes::first(&[DEPTH_AND_WAY], &[FACE, FOLD_AT, FOLD_ON]),
    }
}

const DEPTH: Form = &[Range, DEEP];
const DEPTH_AND_WAY: Form = &[
    Range,
    DEEP,
    Words("toward"),
    OneOf(WordSet::of::<TowardOrder>()),
];
const DEEP: FormPart = Perhaps(&[Words("deep")]);
const FACE: Form = &[Words("face"), Range];
const FINGERS: Form = &[Words("fingers"), Count];
/// Where the first fold lies on the flat cloth.
const FOLD_AT: Form = &[Words("fold at"), Length];
const FOLD_ON: Form = &[Words("fold"), Length, Words("on")];
/// How far cloth is drawn up.
const DRAWN_BY: FormPart = Perhaps(&[Number, Perhaps(&[Words("times")])]);
const DRAWN_TO: FormPart = Perhaps(&[Words("to"), Range]);

/// The lines at the edge of a sheet that are no items.
pub const LINES: &[Keyword] = &[
    Keyword::one("units", &[&[OneOf(WordSet::of::<System>())]]),
    Keyword::one("cut", &[&[Words("to"), Length]]),
    Keyword::one("mark", &[&[Words("to"), Length]]),
    Keyword::one("job", &[&[Text]]),
    Keyword::one("currency", &[&[Text]]),
    Keyword::one("labour", &[&[Number, Words("per hour")]]),
    Keyword::one("markup", &[&[Percentage]]),
    Keyword::new(
        "use",
        Takes::first(&[&[Words("standard"), LibraryFile]], &[&[LibraryFile]])
            .or(&[&[Path], &[Words("standard")]]),
    ),
    Keyword {
        word: "expect",
        takes: Takes::one(&[
            &[Subject, SIZE],
            &[Subject, SIZE, Words("at most"), Sum],
            &[Subject, SIZE, Words("at least"), Sum],
            &[Subject, SIZE, Sum, Words("to"), Sum],
        ]),
        value: Takes::one(&[&[Sum, Perhaps(&[Words("within"), Sum])]]),
    },
    Keyword {
        word: "accept",
        takes: Takes::one(&[&[Warning]]),
        value: Takes::one(&[&[Text]]),
    },
];

const SIZE: FormPart = OneOf(WordSet::of::<Size>());

/// What a step of a making method says. Behind a caution a word alone is one more.
pub const WORK_STEP: Takes = Takes::first(
    &[&[Sentence], WHEN, WHEN_NO, FOR_EACH, CAUTIONED],
    &[&[Sentence], WHEN, WHEN_NO, FOR_EACH, CAUTIONED, &[CAUTION]],
);

const WHEN: Form = &[Words("when"), Figure, Sentence];
const WHEN_NO: Form = &[Words("when no"), Figure, Sentence];
const FOR_EACH: Form = &[Words("for each"), OneOf(WordSet::of::<Each>()), Sentence];
const CAUTIONED: Form = &[Words("caution"), CAUTION];
const CAUTION: FormPart = OneOf(WordSet::of::<CautionKind>());
