//! Closed sets of the trade: an enum whose values each have one word.

/// Makes an enum of a closed set, each value with its word.
///
/// From one list come the values, every one of them in order (`ALL`), the word of each (`word`), the way
/// back from a word (`of_word`), and the form of the set in a packet: the name of the value in small
/// letters with underscores. So a value can neither be left out of a list nor be called two things.
macro_rules! closed_set {
    (
        $(#[$of_set:meta])*
        pub enum $set:ident {
            $($(#[$of_value:meta])* $value:ident = $word:literal,)+
        }
    ) => {
        $(#[$of_set])*
        #[derive(
            Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug,
            serde::Serialize, serde::Deserialize, schemars::JsonSchema,
        )]
        #[serde(rename_all = "snake_case")]
        pub enum $set {
            $($(#[$of_value])* $value,)+
        }

        impl $set {
            /// Every one of them.
            pub const ALL: &[Self] = &[$(Self::$value),+];

            /// Its word.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self {
                    $(Self::$value => $word,)+
                }
            }

            /// The one that a word names.
            #[must_use]
            pub fn of_word(word: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|one| one.word() == word)
            }
        }

        impl std::fmt::Display for $set {
            fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                formatter.write_str(self.word())
            }
        }
    };
}

pub(crate) use closed_set;
