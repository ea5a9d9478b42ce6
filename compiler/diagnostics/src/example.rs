//! The shapes that many examples share.

/// A whole design of one window with one panel, `front`: only what an example is about is given,
/// in this order, and everything else is sound.
macro_rules! one_window {
    (
        $(fabric: $fabric:literal,)?
        $(rod: $rod:literal,)?
        $(make: $make:literal,)?
        $(items: $items:literal,)?
        panel: [$($line:literal),+ $(,)?],
        $(head: $head:literal,)?
        $(others: $others:literal,)?
        $(row: $row:literal,)?
        $(window: $window:literal,)?
    ) => {
        $crate::Example::Text(concat!(
            "units inches\n",
            "fabric sailcloth { ", $crate::example::given!($($fabric)?, "width: 54 in"), " }\n",
            "rod pole { ", $crate::example::given!($($rod)?, "length: 40 in, diameter: 1 in"), " }\n",
            "make seamed { ", $crate::example::given!($($make)?, "seam: 1/2 in, lining: none"), " }\n",
            $($items,)?
            "treatment valance {\n",
            "    panel front {\n",
            $("        ", $line, "\n",)+
            "        head: ", $crate::example::given!($($head)?, "over rod, tail 4 in"), "\n",
            "        make: seamed\n",
            "        face: sailcloth\n",
            "    }\n",
            $("    ", $others, "\n",)?
            "    row: ", $crate::example::given!($($row)?, "front"), "\n",
            "}\n",
            "window kitchen: valance { opening: 36 in x 40 in, ",
            $crate::example::given!($($window)?, "rod: pole"),
            " }\n",
        ))
    };
}

/// What is given, or else what is usual.
macro_rules! given {
    (, $usual:literal) => {
        $usual
    };
    ($given:literal, $usual:literal) => {
        $given
    };
}

/// A sound job whose windows come from this list.
macro_rules! windows_from {
    ($list:literal) => {
        $crate::Example::Files(&[
            ("job.pelmet", $crate::example::JOB_OF_A_LIST),
            ("windows.csv", $list),
        ])
    };
}

/// The job of [`windows_from`].
pub(crate) const JOB_OF_A_LIST: &str = "\
fabric calico { width: 45 in }
rod pole(length) { length: length, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment curtain(drop) {
    panel front {
        finished width: fill
        drop: drop
        head: over rod, tail 3 in
        make: seamed
        face: calico
    }
    row: front
}
windows from \"windows.csv\": curtain
";

pub(crate) use {given, one_window, windows_from};
