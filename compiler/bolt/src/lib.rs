//! Placing pieces on the cloth, the bound no layout can beat, and the independent checker.
