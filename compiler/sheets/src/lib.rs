//! The packet as people read it: plain text sheets.
