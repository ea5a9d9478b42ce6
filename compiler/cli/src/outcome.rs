//! How a command ends.

use std::process::ExitCode;

/// How a command ends; the worst comes last.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Default, Debug)]
pub enum Outcome {
    /// All is sound.
    #[default]
    Sound,
    /// A design has errors, or is not as it was asked to be.
    Errors,
    /// The command could not be carried out: files, arguments.
    NotCarriedOut,
}

impl Outcome {
    /// Lets the worse of the two stand.
    pub fn worsen(&mut self, other: Outcome) {
        *self = (*self).max(other);
    }
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> ExitCode {
        ExitCode::from(match outcome {
            Outcome::Sound => 0,
            Outcome::Errors => 1,
            Outcome::NotCarriedOut => 2,
        })
    }
}
