//! What no file may exceed, so that none can wear out the machine that reads it.

/// The largest file that is read, in bytes; whoever loads files asks before reading.
pub const MAXIMUM_FILE_BYTES: usize = 4 * 1024 * 1024;

/// The most words, signs and line ends in one file, comments not counted. What reading takes of
/// memory grows with them, not with bytes.
pub const MAXIMUM_WORDS: usize = 400_000;

/// How deeply brackets, round and curly together, may stand within brackets; every recursive walk
/// over a tree is bounded by it.
pub const MAXIMUM_NESTING: usize = 100;

/// The most signs in one sum.
pub const MAXIMUM_OPERATORS: usize = 200;

/// The most digits on one side of a point or of a fraction.
pub const MAXIMUM_DIGITS: usize = 15;

/// The most diagnostics of reading that are told of one file.
pub const MAXIMUM_DIAGNOSTICS: usize = 100;
