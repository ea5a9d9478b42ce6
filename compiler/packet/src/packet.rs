//! The packet value: what a job says to buy, cut, mark, fold and check.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::{
    Amount, Caution, Cloth, ExpectationMet, Measure, Note, Notion, Quote, Warning, Weight, Window,
};

/// The version of the packet's form, the value of [`Packet::format`].
pub const FORMAT: &str = "pelmet-packet/1";

/// Everything one job emits, computed once; every sheet is a view of it.
///
/// A length is an object of two: `mm`, decimal millimetres exact to the nanometre, and `text`, as
/// the workroom prints it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Packet {
    /// The form of this packet and its version: `pelmet-packet/1`.
    #[schemars(extend("const" = FORMAT))]
    pub format: String,
    /// The title of the job.
    pub title: String,
    /// How lengths and money are written here.
    pub units: Units,
    /// The cloths to buy, by name, each with its layout on the bolt.
    pub cloths: Vec<Cloth>,
    /// What the cloths of the job cost together, where every one of them has a price.
    pub cloth_cost: Option<Amount>,
    /// What everything that is made weighs, where every cloth of it states its weight.
    pub weight: Option<Weight>,
    /// What to buy beside cloth, all panels together.
    pub notions: Vec<Notion>,
    /// What the job costs to make and what is asked for it, where anything in it has a price.
    pub quote: Option<Quote>,
    /// The windows by name, numbers in names by their value.
    pub windows: Vec<Window>,
    /// What will probably disappoint, accepted or not.
    pub warnings: Vec<Warning>,
    /// What was assumed where the design is silent.
    pub notes: Vec<Note>,
    /// What the design expects of itself and how it came out; all of it is met.
    pub expectations: Vec<ExpectationMet>,
    /// What can hurt someone or spoil the work, each for the sheets and steps it belongs to.
    pub cautions: Vec<Caution>,
}

impl Packet {
    /// The whole packet as JSON, laid out for people to compare; it ends in a newline.
    pub fn to_json(&self) -> String {
        // Nothing in a packet can fail to be written: its keys are fixed and its numbers finite.
        let json = serde_json::to_string_pretty(self).unwrap_or_default();
        format!("{json}\n")
    }

    /// Reads a packet that [`to_json`](Packet::to_json) has written.
    ///
    /// # Errors
    ///
    /// Says in words why it is none, or none of this [`FORMAT`].
    pub fn from_json(json: &[u8]) -> Result<Packet, String> {
        let packet: Packet = serde_json::from_slice(json).map_err(|error| error.to_string())?;
        if packet.format == FORMAT {
            Ok(packet)
        } else {
            Err(format!(
                "it is of the form `{}`, and `{FORMAT}` is read",
                packet.format
            ))
        }
    }
}

/// How lengths and money are written.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Units {
    /// In which lengths and weights are written.
    pub system: SystemOfUnits,
    /// Cuts are rounded up to a multiple of this.
    pub cut_to: Measure,
    /// Marks are rounded to the nearest multiple of this.
    pub mark_to: Measure,
    /// Cloth is bought in multiples of this.
    pub buy_to: Measure,
    /// The currency prices are stated in, as the maker writes it.
    pub currency: Option<String>,
}

/// The units a workroom measures in.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum SystemOfUnits {
    /// Inches and yards.
    Inches,
    /// Millimetres and metres.
    Metric,
}
