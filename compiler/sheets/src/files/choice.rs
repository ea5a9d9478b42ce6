//! What is written of a packet, and on what paper.

use pelmet_packet::{Packet, SheetKind};

use super::form::{FORMS, PacketForm};
use crate::paper::Paper;
use crate::sheet::SHEETS;

/// What is written of a packet. None of it changes what a packet says.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PacketChoice {
    /// The forms that are written, in the order of [`FORMS`].
    pub forms: Vec<&'static PacketForm>,
    /// Which sheets, in every form that is made of sheets. `packet.json` is always whole.
    pub sheets: Vec<SheetKind>,
    /// On what paper; nothing for the usual one.
    pub paper: Option<Paper>,
}

impl PacketChoice {
    /// The paper for a packet: the one chosen, else the usual one of its house.
    pub fn paper_for(&self, packet: &Packet) -> Paper {
        self.paper.unwrap_or_else(|| Paper::usual(&packet.units))
    }
}

impl Default for PacketChoice {
    /// Every sheet in the usual forms, on the usual paper.
    fn default() -> Self {
        Self {
            forms: FORMS.iter().filter(|form| form.usual).collect(),
            sheets: SHEETS.to_vec(),
            paper: None,
        }
    }
}
