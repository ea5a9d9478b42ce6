//! Lengths, quantities, units and fractions: exact, checked and printed as a workroom writes them.
