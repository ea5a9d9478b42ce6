//! Where something stands in the texts of one run.

/// One text of a run, by the order in which it was added to [`Sources`](crate::Sources).
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct FileId(pub u32);

/// A half-open range of bytes in one file.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct Span {
    /// The file the bytes stand in.
    pub file: FileId,
    /// The first byte.
    pub start: u32,
    /// The byte after the last one.
    pub end: u32,
}

impl Span {
    /// The bytes from `start` up to, not including, `end`; an `end` before `start` is taken as
    /// `start`, and a position beyond four gigabytes as that.
    pub fn new(file: FileId, start: usize, end: usize) -> Span {
        let start = position(start);
        let end = position(end).max(start);
        Span { file, start, end }
    }

    /// From the first byte of both spans to the last; this span alone if the other is in another
    /// file.
    #[must_use]
    pub fn to(self, other: Span) -> Span {
        if self.file != other.file {
            return self;
        }
        let start = self.start.min(other.start);
        let end = self.end.max(other.end);
        Span { start, end, ..self }
    }

    /// The empty span before the first byte.
    #[must_use]
    pub fn start_of(self) -> Span {
        Span {
            end: self.start,
            ..self
        }
    }

    /// The empty span after the last byte.
    #[must_use]
    pub fn end_of(self) -> Span {
        Span {
            start: self.end,
            ..self
        }
    }

    /// The bytes as a range of positions in the text of the file.
    pub fn range(self) -> std::ops::Range<usize> {
        self.start as usize..self.end as usize
    }
}

/// Positions are kept in 32 bits, since no file may be larger than a few megabytes.
fn position(byte: usize) -> u32 {
    u32::try_from(byte).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILE: FileId = FileId(0);

    #[test]
    fn a_span_never_runs_backwards() {
        assert_eq!(
            Span::new(FILE, 7, 3),
            Span {
                file: FILE,
                start: 7,
                end: 7
            }
        );
    }

    #[test]
    fn a_position_beyond_the_range_is_the_largest() {
        assert_eq!(Span::new(FILE, usize::MAX, usize::MAX).end, u32::MAX);
    }

    #[test]
    fn joining_takes_the_outer_ends_in_either_order() {
        let (left, right) = (Span::new(FILE, 2, 5), Span::new(FILE, 9, 11));
        assert_eq!(left.to(right), Span::new(FILE, 2, 11));
        assert_eq!(right.to(left), Span::new(FILE, 2, 11));
    }

    #[test]
    fn spans_of_two_files_do_not_join() {
        let here = Span::new(FILE, 2, 5);
        assert_eq!(here.to(Span::new(FileId(1), 9, 11)), here);
    }

    #[test]
    fn the_ends_are_empty() {
        let span = Span::new(FILE, 2, 5);
        assert_eq!(span.start_of(), Span::new(FILE, 2, 2));
        assert_eq!(span.end_of(), Span::new(FILE, 5, 5));
    }
}
