//! Every table of a packet.

use pelmet_packet::Packet;

use super::cell_table::CellTable;
use super::{buying, cuts, marks};

/// The tables, in the order of the sheets of a workbook.
pub(crate) fn tables(packet: &Packet) -> [CellTable; 3] {
    [
        buying::table_of(packet),
        cuts::table_of(packet),
        marks::table_of(packet),
    ]
}
