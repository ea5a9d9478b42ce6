//! From text to syntax tree, and back through the formatter.
