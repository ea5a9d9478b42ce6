//! Whatever sheets, drawings and tables are written as, a folder or file for each form of writing.
//!
//! `plain` and `html` write blocks of sheets as they come; `printed` sets them on pages of paper, which
//! are drawings and so what `pdf` writes. `svg`, `pdf` and `dxf` know of drawings and outlines and nothing
//! of sheets.

mod dxf;
pub(crate) mod html;
pub(crate) mod pdf;
pub(crate) mod plain;
pub(crate) mod printed;
pub(crate) mod spreadsheet;
pub(crate) mod svg;

pub(crate) use dxf::dxf;
