//! How many rings or weights an edge takes.

use pelmet_measure::Length;
use pelmet_model::HowMany;

/// How many that is along an edge of this length: one at each end, and as many between as keep no two
/// further apart than asked.
pub fn count_along(how_many: HowMany, edge: Length) -> u32 {
    match how_many {
        HowMany::Each(count) => count,
        HowMany::Apart(apart) => {
            let spaces = edge.round_up_to(apart).ratio_to(apart);
            let spaces = spaces.and_then(|spaces| u32::try_from(spaces.to_integer()).ok());
            spaces.unwrap_or(u32::MAX).saturating_add(1)
        }
    }
}
