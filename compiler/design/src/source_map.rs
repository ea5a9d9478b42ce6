//! The source map: the way back from each part of a job to its text.
//!
//! What a place is kept for is a value, so that a place that is asked for under a wrong name does not
//! compile; one that was not written is `None`, and whoever asks says what to point at instead.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{FileId, Span};
use pelmet_model::{Figure, LayerKind, SupportKind};

use crate::closed_sets::ClosedSet;

/// Where each part of a job was written; windows and cloths by their index in the job.
#[derive(Clone, Debug, Default)]
pub struct SourceMap {
    /// The name of each cloth.
    pub fabrics: Vec<Span>,
    /// The windows.
    pub windows: Vec<WindowSource>,
    /// The files of the standard library, in which no maker mends anything.
    pub library: BTreeSet<FileId>,
}

/// Where an item was written: its name, and the values of its properties.
#[derive(Clone, Debug)]
pub struct ItemSource<Key> {
    /// Its name.
    pub name: Span,
    /// The value of each property that was written.
    pub properties: BTreeMap<Key, Span>,
}

/// Where a window was written.
#[derive(Clone, Debug)]
pub struct WindowSource {
    /// Its name and its properties, those of its treatment (row, over joins) included.
    pub item: ItemSource<WindowKey>,
    /// Its panels, by their index in the window.
    pub panels: Vec<PanelSource>,
}

/// Where a panel was written.
#[derive(Clone, Debug)]
pub struct PanelSource {
    /// Its name and its properties.
    pub item: ItemSource<PanelKey>,
    /// The written steps of its pleat rule, by their number.
    pub pleat_steps: Vec<Span>,
    /// The written steps of its outline, by their number.
    pub outline_steps: Vec<Span>,
    /// Where each number of the heading was written.
    pub heading: BTreeMap<HeadingKey, Span>,
    /// Where each line of the making method was written.
    pub making: BTreeMap<MakingKey, Span>,
    /// The steps of its making method, each with its sentences.
    pub making_steps: Vec<Vec<SentencePlace>>,
}

/// Where the words of a making step stand.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct SentencePlace {
    /// The words, with their quotes.
    pub words: Span,
    /// The figures named in them, each with the place of its name.
    pub figures: Vec<(Figure, Span)>,
}

impl<Key: Copy + Ord> ItemSource<Key> {
    /// Whether a property was written.
    #[must_use]
    pub fn states(&self, key: Key) -> bool {
        self.properties.contains_key(&key)
    }

    /// Where the value of a property was written, if it was.
    #[must_use]
    pub fn property(&self, key: Key) -> Option<Span> {
        self.properties.get(&key).copied()
    }

    /// Where the value of a property was written, or else the item's name.
    #[must_use]
    pub fn property_or_name(&self, key: Key) -> Span {
        self.property(key).unwrap_or(self.name)
    }
}

/// Makes the keys of the properties of one kind of item, each with the property's own word.
macro_rules! keys {
    ($(#[$of_set:meta])* $set:ident { $($key:ident = $word:literal,)+ }) => {
        $(#[$of_set])*
        #[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
        pub enum $set {
            $(
                #[doc = concat!("`", $word, "`.")]
                $key,
            )+
        }

        impl ClosedSet for $set {
            const ALL: &'static [Self] = &[$(Self::$key),+];

            fn word(self) -> &'static str {
                match self {
                    $(Self::$key => $word,)+
                }
            }
        }

        impl $set {
            /// The property as it is written.
            #[must_use]
            pub fn word(self) -> &'static str {
                ClosedSet::word(self)
            }
        }
    };
}

keys! {
    /// The properties of a window that a diagnostic may point at.
    WindowKey {
        Rod = "rod",
        Board = "board",
        Returns = "returns",
        Overlap = "overlap",
        Row = "row",
        OverJoins = "over joins",
        Motif = "motif",
    }
}

keys! {
    /// The properties of a panel that a diagnostic may point at.
    PanelKey {
        FinishedWidth = "finished width",
        FlatWidth = "flat width",
        CutWidth = "cut width",
        Fullness = "fullness",
        Drop = "drop",
        Outline = "outline",
        Pleats = "pleats",
        Heading = "head",
        Making = "make",
        Face = "face",
        Interlining = "interlining",
        Lining = "lining",
        Band = "band",
        Covers = "covers",
        Cut = "cut",
    }
}

keys! {
    /// The properties of a heading that a diagnostic may point at.
    HeadingKey {
        Above = "above",
        Ease = "ease",
        Fastener = "fastener",
        Lap = "lap",
        Pocket = "pocket",
        Tail = "tail",
        Turn = "turn",
    }
}

keys! {
    /// The properties of a making method that a diagnostic may point at.
    MakingKey {
        Lining = "lining",
        Band = "band",
        Corners = "corners",
        TurningOpening = "turning opening",
        Stack = "stack",
        PleatStrips = "pleat strips",
    }
}

impl WindowKey {
    /// The property that names what a window hangs from.
    pub(crate) const fn of_support(support: SupportKind) -> Self {
        match support {
            SupportKind::Rod => Self::Rod,
            SupportKind::Board => Self::Board,
        }
    }
}

impl PanelKey {
    /// The property that names the cloth of a layer.
    #[must_use]
    pub const fn of_layer(layer: LayerKind) -> Self {
        match layer {
            LayerKind::Face => Self::Face,
            LayerKind::Interlining => Self::Interlining,
            LayerKind::Lining => Self::Lining,
            LayerKind::Band => Self::Band,
        }
    }

    /// Whether its value is a length that may follow from another written elsewhere.
    pub(crate) const fn is_size(self) -> bool {
        match self {
            Self::Drop | Self::FinishedWidth | Self::FlatWidth | Self::CutWidth => true,
            Self::Fullness
            | Self::Outline
            | Self::Pleats
            | Self::Heading
            | Self::Making
            | Self::Face
            | Self::Interlining
            | Self::Lining
            | Self::Band
            | Self::Covers
            | Self::Cut => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::kind::Kind;

    /// A key that is no property would never be found, and what is told would point elsewhere.
    #[test]
    fn every_key_is_a_property() {
        fn all_of<Key: ClosedSet>(kinds: &[Kind]) {
            for key in Key::ALL {
                let is_property = |kind: &Kind| kind.property(key.word()).is_some();
                assert!(kinds.iter().any(is_property), "{}", key.word());
            }
        }
        all_of::<WindowKey>(&[Kind::Window, Kind::Treatment]);
        all_of::<PanelKey>(&[Kind::Panel]);
        all_of::<HeadingKey>(&[Kind::Heading]);
        all_of::<MakingKey>(&[Kind::Make]);
    }
}
