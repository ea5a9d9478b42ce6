//! A window that hangs from a rod and from a board.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "rod-and-board",
    severity: Severity::Error,
    page: "\
A treatment hangs from one thing: its heading is made for a rod or for a board, and its row is
measured along that one.

Keep the one it hangs from. Make a second window for a second treatment over the same opening.
",
    failing: Example::Text(
        "\
board shelf { length: 40 in, depth: 4 in }
fabric calico { width: 45 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: 12 in
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
window porch: valance { rod: pole, board: shelf }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: 12 in
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
window porch: valance { rod: pole }
",
    ),
};

/// A window names both a rod and a board.
pub struct RodAndBoard<'a> {
    /// Where the window names a board, which is told first.
    pub board: Span,
    /// Where it names a rod.
    pub rod: Span,
    /// What the window is called.
    pub name: &'a str,
}

impl From<RodAndBoard<'_>> for Diagnostic {
    fn from(told: RodAndBoard<'_>) -> Diagnostic {
        let RodAndBoard { board, rod, name } = told;
        CODE.report(format!(
            "the window `{name}` hangs from a rod and from a board"
        ))
        .label(board, "a board is named here")
        .label(rod, "and a rod here")
        .help("keep one of them; a second treatment over the same opening is a window of its own")
    }
}
