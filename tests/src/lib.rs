//! Everything the project promises, held to it.
//!
//! The promises stand in `tests/`, one file each; what they share is here. `cases/` holds literate
//! cases, `fuzz/` what is run on random texts, `benches/` what is measured and not tested.

mod generated;
mod markdown;
mod memory;
mod repository;
mod shuffled;

pub use generated::generated_job;
pub use markdown::{Block, blocks};
pub use memory::{Memory, is_sound};
pub use repository::{
    designs_below, files_below, is_update, path, project_at, read, read_bytes, write,
};
pub use shuffled::shuffled;
