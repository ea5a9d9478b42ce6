"""Reads the printed sheets of the examples with readers of other makers: pypdf and poppler.

Every page is exactly as large as its paper, or larger for a drawing that is; the file asks to be
printed without scaling; its letters are embedded, only those that are used, and every word of the
sheets can be read out again. A file that is bad on purpose shows that the check bites. Needs the PyPI
package pypdf, poppler-utils, and cargo.
"""

import pathlib
import re
import subprocess
import sys
import tempfile
import unicodedata

import pypdf
from built import designs, packet

# Points: an inch has 72 of them, and 25.4 millimetres.
PAPERS = {"letter": (612.0, 792.0), "a4": (210 / 25.4 * 72, 297 / 25.4 * 72)}
POINT_OF_MILLIMETRE = 72 / 25.4
# Names as people have them, one accent typed as a letter of its own.
ODD = """
use standard
job "Fene\u0302tres d'Élise & <Žižkov>: 15 ½ × ⅞, Ελληνικά, Кириллица"
fabric tÿll-weiß { width: 54 in }
make ourlet { seam: 1/2 in, lining: none }
treatment rideau(drop) {
    panel fenêtre { finished width: fill, drop: drop, head: folded-over-rod, make: ourlet, face: tÿll-weiß }
    row: fenêtre
}
window ølga: rideau { opening: 36 in x 40 in, rod: steel-rod(40 in), drop: 12 5/8 in }
"""
SUBSET = re.compile(r"/[A-Z]{6}\+DejaVuSans(-Bold)?")


def fonts(reader):
    """Every font of every page."""
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            yield font.get_object()


def faults(path, paper, job):
    """What is wrong with a file as a whole, one line each."""
    reader = pypdf.PdfReader(path, strict=True)
    catalog = reader.trailer["/Root"]
    if catalog["/ViewerPreferences"].get("/PrintScaling") != "/None":
        yield "it lets a printer scale it"
    if catalog["/Lang"] != "en" or reader.metadata.title != job:
        yield "it does not say what it is"
    if {"/CreationDate", "/ModDate"} & reader.metadata.keys():
        yield "it holds a date"
    width, height = PAPERS[paper]
    for number, page in enumerate(reader.pages, 1):
        sides = float(page.mediabox.width), float(page.mediabox.height)
        off = max(abs(sides[0] - width), abs(sides[1] - height))
        turned = max(abs(sides[0] - height), abs(sides[1] - width))
        larger = sides[0] > width or sides[1] > height
        if min(off, turned) > 0.001 * POINT_OF_MILLIMETRE and not larger:
            yield f"page {number} is {sides}"
    for font in fonts(reader):
        letters = font["/DescendantFonts"][0]
        if not SUBSET.fullmatch(font["/BaseFont"]) or "/FontFile2" not in letters["/FontDescriptor"]:
            yield f"{font['/BaseFont']} is not a part of the typeface, or not in the file"
        if "/ToUnicode" not in font:
            yield f"{font['/BaseFont']} cannot be read out"


def words(text):
    return set(unicodedata.normalize("NFC", text).replace("\u00a0", " ").split())


def unread(path, sheets):
    """The words of the sheets that a reader does not find on the pages."""
    # Titles are asked for by their names alone: a sheet that says one sentence has none of its own.
    sheets = re.sub(r"^([^:\n]+): .*\n=+$", r"\1", sheets, flags=re.MULTILINE)
    sheets = re.sub(r"^(Panel \S+): ", r"\1 ", sheets, flags=re.MULTILINE)
    ruled = re.compile(r"[-=]+")
    wanted = {word for word in words(sheets) if not ruled.fullmatch(word)}
    # Steps and entries begin with other signs on paper.
    wanted -= {"-", "^", "|"}
    by_poppler = subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, text=True, check=True)
    pages = pypdf.PdfReader(path).pages
    by_pypdf = "\n".join(page.extract_text() for page in pages)
    yield from sorted(wanted - words(by_poppler.stdout))
    yield from sorted(wanted - words(by_pypdf))


def check(design, paper):
    """Prints what is found wrong with the printed sheets of a design; whether nothing is."""
    path = packet(design, paper) / "packet.pdf"
    sheets = path.with_name("sheets.txt").read_text()
    job = re.search(r'^job "(.*)"', design.read_text(), re.MULTILINE)[1]
    found = list(faults(path, paper, job)) + [f"unread: {word}" for word in unread(path, sheets)]
    with tempfile.TemporaryDirectory() as folder:
        bad = pathlib.Path(folder, "bad.pdf")
        bad.write_bytes(path.read_bytes().replace(b"/PrintScaling/None", b"/PrintScaling/Some"))
        if not list(faults(bad, paper, job)):
            found.append("a bad file is not told from a good one")
    pages = len(pypdf.PdfReader(path).pages)
    print(f"{design.stem}, {paper}: {pages} pages, {'; '.join(found) or 'sound'}")
    return not found


def main():
    with tempfile.TemporaryDirectory() as folder:
        odd = pathlib.Path(folder, "odd-words.pelmet")
        odd.write_text(ODD)
        sound = [check(design, paper) for design in [*designs(), odd] for paper in PAPERS]
    sys.exit(0 if all(sound) else 1)


if __name__ == "__main__":
    main()
