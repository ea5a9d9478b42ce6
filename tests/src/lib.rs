//! Everything the project promises, held to it: literate cases, references, the command line.
