"""Puts printed templates together again with a reader of another maker, pypdf, and holds them to the packet.

Pages are laid side by side by the letters of their register marks alone. Then every point of the
cutting and the sewn line must lie where the packet has it, nothing may be drawn where it has nothing,
and the two marks of a join must agree. On every page both bars must have their length, and no level or
upright line may run along the frame. Story sticks are put together in the same way, and hold every
fold of the mark list. Nothing may be out by more than 0.01 mm. A file that is one part in a hundred too
small shows that the check bites. Needs the PyPI package pypdf, and cargo.
"""

import json
import math
import re
import sys

import pypdf
from built import HERE, designs, packet
from printed_pages import PAPERS, POINT_OF_MILLIMETRE, faults
from pypdf.generic import ContentStream

MOST = 0.01
BARS = {"100 mm": 100.0, "4 in": 101.6}
BAR_MOST = 0.001
# How lines are told apart: their width, and their dashes.
CUT, SEWN, FOLD, FRAME = (0.45, ()), (0.25, (2, 1)), (0.25, (3, 1, 0.6, 1)), (0.15, ())
CLEAR = 3.0


class Page:
    """What is drawn on a page, in millimetres from its left upper corner."""

    def __init__(self, page, reader, scale):
        self.paths = []
        self.words = []
        height = float(page.mediabox.height)

        def place(x, y, matrix):
            a, b, c, d, e, f = matrix
            left, up = a * x + c * y + e, b * x + d * y + f
            return (left / POINT_OF_MILLIMETRE * scale, (height - up) / POINT_OF_MILLIMETRE * scale)

        matrix, points, closed, width, dashes = (1, 0, 0, 1, 0, 0), [], False, 0, ()
        for operands, operator in ContentStream(page.get_contents(), reader).operations:
            numbers = [float(it) for it in operands] if operator in (b"cm", b"m", b"l", b"w") else []
            if operator == b"cm":
                matrix = numbers
            elif operator == b"m":
                points, closed = [place(*numbers, matrix)], False
            elif operator == b"l":
                points.append(place(*numbers, matrix))
            elif operator == b"h":
                closed = True
            elif operator == b"w":
                width = round(numbers[0], 3)
            elif operator == b"d":
                dashes = tuple(round(float(it), 3) for it in operands[0])
            elif operator in (b"S", b"s", b"B", b"b"):
                self.paths.append(((width, dashes), points, closed or operator in (b"s", b"b")))
                points = []

        def word(text, outer, inner, font, size):
            if text.strip():
                self.words.append((text.strip(), place(inner[4], inner[5], outer)))

        page.extract_text(visitor_text=word)

    def of(self, look):
        return [points for its, points, _ in self.paths if its == look]

    def lengths(self):
        """The lengths of level lines."""
        for _, points, _ in self.paths:
            if len(points) == 2 and abs(points[0][1] - points[1][1]) < BAR_MOST:
                yield abs(points[1][0] - points[0][0])

    def letters(self):
        """The register marks: the letter beside every ring, and its middle."""
        found = {}
        for _, points, closed in self.paths:
            if closed and len(points) == 32:
                middle = (sum(x for x, _ in points) / 32, sum(y for _, y in points) / 32)
                letters = [it for it in self.words if re.fullmatch("[a-z]+", it[0])]
                found[min(letters, key=lambda it: math.dist(it[1], middle))[0]] = middle
        return found


def moved(points, by):
    return [(x + by[0], y + by[1]) for x, y in points]


def laid_together(pages):
    """How far each page is moved so that marks with one letter lie on one another, and the faults."""
    letters = [page.letters() for page in pages]
    by, found = {0: (0.0, 0.0)}, []
    waiting = [0]
    while waiting:
        here = waiting.pop()
        for other, marks in enumerate(letters):
            shared = sorted(letters[here].keys() & marks.keys())
            if other == here or not shared:
                continue
            if len(shared) != 2:
                found.append(f"{len(shared)} marks are shared")
            ways = [
                (letters[here][it][0] - marks[it][0] + by[here][0], letters[here][it][1] - marks[it][1] + by[here][1])
                for it in shared
            ]
            if any(math.dist(ways[0], way) > MOST for way in ways):
                found.append(f"the marks {shared} do not agree: {ways}")
            if other not in by:
                by[other] = ways[0]
                waiting.append(other)
    if len(by) != len(pages):
        found.append("the pages do not hang together")
    return by, found


def line_of(piece, which):
    points = [(point["at"]["across"]["mm"], point["at"]["down"]["mm"]) for point in piece[which]]
    return points if piece["outline_from"] == "fold" else points + points[:1]


def distance(point, line):
    """How far a point lies from a line from point to point."""
    least = math.inf
    for (x0, y0), (x1, y1) in zip(line, line[1:]):
        dx, dy = x1 - x0, y1 - y0
        square = dx * dx + dy * dy
        part = 0 if square == 0 else min(1, max(0, ((point[0] - x0) * dx + (point[1] - y0) * dy) / square))
        least = min(least, math.dist(point, (x0 + dx * part, y0 + dy * part)))
    return least


def compared(pages, by, piece):
    """What is wrong with the lines of a template that is put together."""
    together = {
        look: [moved(points, by[number]) for number, page in enumerate(pages) for points in page.of(look)]
        for look in (CUT, SEWN)
    }
    drawn = [point for points in together[CUT] for point in points]
    wanted = line_of(piece, "outline")
    # The template has no corner of its own: its left upper one is laid on the packet's.
    corner = [min(it[axis] for it in wanted) - min(it[axis] for it in drawn) for axis in (0, 1)]
    worst = 0.0
    for look, which in ((CUT, "outline"), (SEWN, "sewn")):
        line = line_of(piece, which)
        lines = [moved(points, corner) for points in together[look]]
        if which == "sewn":
            lines, off = without_joins(lines, piece)
            worst = max(worst, off)
        for point in line:
            worst = max(worst, min(math.dist(point, it) for points in lines for it in points))
        for points in lines:
            worst = max([worst] + [distance(point, line) for point in points])
    yield worst, "" if worst <= MOST else f"a line is {worst:.3f} mm off"


def without_joins(lines, piece):
    """The lines that are no seam between two widths, and how far such a seam is off at most."""
    seams = [seam["from_cut_edge"]["mm"] for seam in (piece["joined"] or {"seams": []})["seams"]]
    is_of = lambda points, seam: all(abs(x - seam) <= MOST for x, _ in points)
    off = 0.0
    for seam in seams:
        drawn = [abs(x - seam) for points in lines if is_of(points, seam) for x, _ in points]
        off = max([off, *drawn]) if drawn else math.inf
    return [points for points in lines if not any(is_of(points, seam) for seam in seams)], off


def along_frames(page):
    """Level and upright lines that lie too near to an edge of the frame."""
    frames = [points for look, points, closed in page.paths if look == FRAME and closed]
    (x0, y0), _, (x1, y1), _ = frames[0]
    for look in (CUT, SEWN, FOLD):
        for points in page.of(look):
            for (ax, ay), (bx, by) in zip(points, points[1:]):
                if abs(ax - bx) < MOST and min(abs(ax - x0), abs(ax - x1)) < CLEAR - MOST and abs(ay - by) > MOST:
                    yield f"a line runs along the frame at {ax:.2f}"
                if abs(ay - by) < MOST and min(abs(ay - y0), abs(ay - y1)) < CLEAR - MOST and abs(ax - bx) > MOST:
                    yield f"a line runs along the frame at {ay:.2f}"


def piece_of(words, packet):
    """The piece that a map tells of: `Cut 2 × wing face of kelp-stripe, window bay`."""
    told = re.search(r"Cut \d+ × (.+?) of (\S+), window (\S+?)[.,;]", words)
    label, cloth, name = told.groups()
    window = next(window for window in packet["windows"] if window["name"] == name)
    pieces = (piece for panel in window["panels"] for piece in panel["pieces"])
    return next(piece for piece in pieces if piece["label"] == label and piece["cloth"] == cloth)


def check_stick(pages, title, packet):
    """Puts a story stick together by the letters of its strips, and holds it to the folds of its panel."""
    strips = []
    for page in pages:
        for frame in (points for look, points, closed in page.paths if look == FRAME and closed):
            (x0, y0), _, (x1, y1), _ = frame
            inside = lambda point: x0 - 1 <= point[0] <= x1 + 1 and y0 - MOST <= point[1] <= y1 + MOST
            strips.append(([it for it in page.paths if all(map(inside, it[1]))], [it for it in page.words if inside(it[1])]))
    # Strips come in order, and each shares one letter with the next.
    offset, before, folds, left = 0.0, {}, set(), None
    for paths, words in strips:
        crosses = [points for look, points, _ in paths if look == (0.25, ()) and is_level(points, 6.0)]
        letters = {}
        for points in crosses:
            middle = ((points[0][0] + points[1][0]) / 2, points[0][1])
            single = [it for it in words if re.fullmatch("[a-z]{1,2}", it[0])]
            letters[min(single, key=lambda it: math.dist(it[1], middle))[0]] = middle[0]
        shared = letters.keys() & before.keys()
        if before:
            (letter,) = shared
            offset = before[letter] - letters[letter]
        before = {letter: x + offset for letter, x in letters.items()}
        for look, points, _ in paths:
            upright = len(points) == 2 and abs(points[0][0] - points[1][0]) < MOST
            if look == FOLD and upright:
                folds.add(points[0][0] + offset)
            if look == CUT and upright and left is None:
                left = points[0][0] + offset
    # A title names its panel, and windows only where there are few.
    panels = [panel for window in packet["windows"] for panel in window["panels"]]
    panels = [panel for panel in panels if re.match(rf"Story stick \d+: {re.escape(panel['name'])}(, |$)", title)]
    off = [off_by(panel, [fold - left for fold in folds]) for panel in panels]
    if not off or min(off) > MOST:
        yield f"{title}: folds are off by {off}"


def off_by(panel, folds):
    """How far a fold of the mark list of a panel is off at most."""
    wanted = [mark["from_left"]["mm"] for mark in panel["marks"] if mark["kind"] == "fold"]
    # Both ways, so that neither has a fold that the other lacks; stitched pleats have none.
    each = [min((abs(fold - place) for fold in folds), default=math.inf) for place in wanted]
    back = [min((abs(fold - place) for place in wanted), default=math.inf) for fold in folds]
    return max([0.0, *each, *back])


def is_level(points, length):
    return len(points) == 2 and abs(points[0][1] - points[1][1]) < MOST and abs(points[1][0] - points[0][0] - length) < MOST


def check_file(path, packet, scale=1.0):
    """The faults of the templates of a packet, and how far a line is off at most."""
    reader = pypdf.PdfReader(path, strict=True)
    pages = [Page(page, reader, scale) for page in reader.pages]
    found, worst = [], 0.0
    for number, page in enumerate(pages, 1):
        told = {text for text, _ in page.words}
        for words, length in BARS.items():
            if words not in told or not any(abs(length - it) <= BAR_MOST for it in page.lengths()):
                found.append(f"page {number} has no bar of {words}")
    starts = [(item.title, reader.get_destination_page_number(item)) for item in reader.outline]
    for (title, start), end in zip(starts, [start for _, start in starts[1:]] + [len(pages)]):
        if title.startswith("Story stick"):
            found += check_stick(pages[start:end], title, packet)
            continue
        words = " ".join(text for text, _ in pages[start].words)
        tiles = pages[start + 1 : end]
        by, apart = laid_together(tiles)
        found += [f"{title}: {it}" for it in apart]
        for page in tiles:
            found += [f"{title}: {it}" for it in along_frames(page)]
        if not apart:
            for off, fault in compared(tiles, by, piece_of(words, packet)):
                worst = max(worst, off)
                found += [f"{title}: {fault}"] if fault else []
    return found, worst, len(pages)


def check(design, paper):
    """Prints what is found wrong with the templates of a design; whether nothing is."""
    path = packet(design, paper) / "templates.pdf"
    job = json.loads(path.with_name("packet.json").read_text())
    found, worst, pages = check_file(path, job)
    found += faults(path, paper, f"Templates: {job['title']}")
    if not check_file(path, job, 0.99)[0]:
        found.append("a file that is too small is not told from a good one")
    print(f"{design.name}, {paper}: {pages} pages, lines within {worst:.4f} mm, {'; '.join(found) or 'sound'}")
    return not found


def main():
    sound = [check(design, paper) for design in [*designs(), HERE / "halved.pelmet"] for paper in PAPERS]
    sys.exit(0 if all(sound) else 1)


if __name__ == "__main__":
    main()
