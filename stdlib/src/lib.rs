//! The standard library, written in the language and embedded here.
