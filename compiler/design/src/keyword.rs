//! The words that begin a step or a line of a sheet, and how each goes on.

use pelmet_measure::System;
use pelmet_model::{CautionKind, Each, Start, TowardOrder};

use crate::closed_sets::{Drawn, WordSet};
use crate::form::FormPart::{
    AnyOf, Count, Figure, Length, LibraryFile, Number, OneOf, Percentage, Perhaps, Point, Range,
    Subject, Sum, Text, Warning, Words,
};
use crate::form::{Form, FormPart, Takes};
use crate::kind::Kind;
use crate::read::Size;

/// A word that begins a step of an outline or of a pleat rule, or a line at the edge of a sheet.
#[derive(Copy, Clone, Debug)]
pub struct Keyword {
    /// The word.
    pub word: &'static str,
    /// How the step or the line can be written, this word included.
    pub takes: Takes,
    /// How what stands behind its separator can be written; nothing where it has none.
    pub value: Takes,
}

const fn keyword(word: &'static str, takes: Takes) -> Keyword {
    Keyword {
        word,
        takes,
        value: Takes::NOTHING,
    }
}

/// A keyword that alone makes the whole step or line, but for what `first` says of it.
const fn alone(word: &'static str, first: &'static [Form]) -> Keyword {
    keyword(word, Takes::one(first))
}

/// How much of a panel an outline draws.
pub(crate) const OUTLINE_MANNER: Takes = Takes::one(&[&[OneOf(WordSet::of::<Drawn>())]]);

/// From where a pleat rule is read, and whether the other half is the mirror image.
pub(crate) const PLEAT_MANNER: Takes =
    Takes::each(&[&[OneOf(WordSet::of::<Start>())], &[Words(MIRRORED)]]);

/// The word for a pleat rule of which the other half is the mirror image.
pub(crate) const MIRRORED: &str = "mirrored";

/// The steps of an outline.
pub(crate) const OUTLINE_STEPS: &[Keyword] = &[
    alone("from", &[&[Words("from"), Point]]),
    alone("to", &[&[Words("to"), Point]]),
    alone("across", &[&[Words("across"), Length]]),
    alone("back", &[&[Words("back"), Length]]),
    alone("down", &[&[Words("down"), Length]]),
    alone("up", &[&[Words("up"), Length], &[Words("up to heading")]]),
    alone(
        "arc",
        &[
            &[Words("arc to"), Point, Words("through"), Point],
            &[Words("arc to"), Point, Words("bulge"), Length, SWELLS],
            &[Words("arc to"), Point, Words("radius"), Length, SWELLS],
            &[Words("arc to"), Point, Words("starting level")],
            &[Words("arc to"), Point, Words("ending level")],
        ],
    ),
    keyword(
        "curve",
        Takes::both(
            &[&[Words("curve to"), Point, Words("by"), Point]],
            &[&[Point]],
        ),
    ),
    keyword(
        "scallops",
        Takes::both(
            &[&[Words("scallops to"), Point]],
            &[
                &[Count, Words("of them")],
                &[Words("about"), Length, Perhaps(&[Words("wide")])],
                &[Length, Perhaps(&[Words("deep")])],
                &[Words("inward")],
            ],
        ),
    ),
    keyword(
        "notch",
        Takes::both(
            &[&[Words("notch at"), Point]],
            &[
                &[Length, Words("wide")],
                &[Length, Words("deep")],
                &[Words("square")],
            ],
        ),
    ),
];

const SWELLS: FormPart = Perhaps(&[AnyOf(&["inward", "outward"])]);

/// Where the first fold of a pleat lies.
const FOLD_AT: Form = &[Words("fold at"), Length];
const FOLD_ON: Form = &[Words("fold"), Length, Words("on")];
const FACE: Form = &[Words("face"), Range];
const DEEP: FormPart = Perhaps(&[Words("deep")]);
const TOWARD: FormPart = OneOf(WordSet::of::<TowardOrder>());
const GATHERED_BY: FormPart = Perhaps(&[Number, Perhaps(&[Words("times")])]);
const GATHERED_TO: FormPart = Perhaps(&[Words("to"), Range]);

/// The steps of a pleat rule.
pub(crate) const PLEAT_STEPS: &[Keyword] = &[
    alone("margin", &[&[Words("margin"), Range]]),
    alone("space", &[&[Words("space"), Range]]),
    alone("rest", &[&[Words("rest")]]),
    keyword(
        "knife",
        Takes::first(
            &[&[Words("knife"), Range, DEEP, Words("toward"), TOWARD]],
            &[FOLD_AT, FOLD_ON],
        ),
    ),
    keyword(
        "box",
        Takes::first(&[&[Words("box"), Range, DEEP]], &[FACE, FOLD_AT, FOLD_ON]),
    ),
    keyword(
        "double",
        Takes::first(
            &[&[Words("double box"), Range, DEEP]],
            &[FACE, FOLD_AT, FOLD_ON],
        ),
    ),
    keyword(
        "inverted",
        Takes::first(
            &[&[Words("inverted"), Range, DEEP]],
            &[FACE, FOLD_AT, FOLD_ON],
        ),
    ),
    keyword(
        "kick",
        Takes::first(&[&[Words("kick"), Range, DEEP]], &[FOLD_AT, FOLD_ON]),
    ),
    keyword(
        "tuck",
        Takes::first(
            &[&[Words("tuck"), Range, DEEP, Words("toward"), TOWARD]],
            &[FOLD_AT, FOLD_ON],
        ),
    ),
    keyword(
        "pinch",
        Takes::first(
            &[&[Words("pinch"), Range]],
            &[&[Words("fingers"), Count], FACE, FOLD_AT, FOLD_ON],
        ),
    ),
    keyword(
        "goblet",
        Takes::first(&[&[Words("goblet"), Range]], &[FACE, FOLD_AT, FOLD_ON]),
    ),
    keyword(
        "cartridge",
        Takes::first(&[&[Words("cartridge"), Range]], &[FACE, FOLD_AT, FOLD_ON]),
    ),
    alone("gathers", &[&[Words("gathers"), GATHERED_BY, GATHERED_TO]]),
    alone("pencil", &[&[Words("pencil"), GATHERED_BY, GATHERED_TO]]),
    alone(
        "repeat",
        &[
            &[Words("repeat")],
            &[Words("repeat"), Count, Perhaps(&[Words("times")])],
            &[
                Words("repeat"),
                Count,
                Words("to"),
                Count,
                Perhaps(&[Words("times")]),
            ],
        ],
    ),
];

/// Whether a word begins a step of such an item.
pub(crate) fn is_step(kind: Kind, word: &str) -> bool {
    kind.steps().iter().any(|step| step.word == word)
}

/// The lines at the edge of a sheet that are no items.
pub const LINES: &[Keyword] = &[
    alone(
        "units",
        &[&[Words("units"), OneOf(WordSet::of::<System>())]],
    ),
    alone("cut", &[&[Words("cut to"), Length]]),
    alone("mark", &[&[Words("mark to"), Length]]),
    alone("job", &[&[Words("job"), Text]]),
    alone("currency", &[&[Words("currency"), Text]]),
    alone("labour", &[&[Words("labour"), Number, Words("per hour")]]),
    alone("markup", &[&[Words("markup"), Percentage]]),
    keyword(
        "use",
        Takes::first(&[&[Words("use standard"), LibraryFile]], &[&[LibraryFile]])
            .or(&[&[Words("use"), Text], &[Words("use standard")]]),
    ),
    Keyword {
        word: "expect",
        takes: Takes::one(&[
            &[Words("expect"), Subject, SIZE],
            &[Words("expect"), Subject, SIZE, Words("at most"), Sum],
            &[Words("expect"), Subject, SIZE, Words("at least"), Sum],
            &[Words("expect"), Subject, SIZE, Sum, Words("to"), Sum],
        ]),
        value: Takes::one(&[&[Sum, Perhaps(&[Words("within"), Sum])]]),
    },
    Keyword {
        word: "accept",
        takes: Takes::one(&[&[Words("accept"), Warning]]),
        value: Takes::one(&[&[Text]]),
    },
];

const SIZE: FormPart = OneOf(WordSet::of::<Size>());

/// What a step of a making method says. Behind a caution a word alone is one more.
pub const WORK_STEP: Takes = Takes::first(
    &[&[Text], WHEN, WHEN_NO, FOR_EACH, CAUTIONED],
    &[&[Text], WHEN, WHEN_NO, FOR_EACH, CAUTIONED, &[CAUTION]],
);

const WHEN: Form = &[Words("when"), Figure, Text];
const WHEN_NO: Form = &[Words("when no"), Figure, Text];
const FOR_EACH: Form = &[Words("for each"), OneOf(WordSet::of::<Each>()), Text];
const CAUTIONED: Form = &[Words("caution"), CAUTION];
const CAUTION: FormPart = OneOf(WordSet::of::<CautionKind>());
