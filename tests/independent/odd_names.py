"""Reads every file of a packet whose job has odd names, with a reader that is not ours.

The names hold what a format may take for its own: ampersands, angle brackets, quotes, a leading sign
that a spreadsheet takes for a formula, accents, and a very long word. Each file must be whole to its
reader and give the names back. Needs pdftotext (Debian: poppler-utils); everything else is in the
standard library of Python.
"""

import csv
import html.parser
import io
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import xml.etree.ElementTree
import zipfile

from built import pelmet

LONG = "window-" + "very-" * 20 + "long"
TITLE = "=1+1 & <b>'Fenêtre' à ½</b> ]]> %s {{x}} &amp; Łódź"
DESIGN = f"""\
units inches
job "{TITLE}"
currency "<&>"
labour 30 per hour
fabric tÿll-weiß {{ width: 54 in, selvage: 1/2 in, price: 9.50 per yd }}
rod pole {{ length: 40 in, diameter: 1 in }}
make seamed {{ seam: 1/2 in, lining: none, work: cut 10 minutes }}
outline wave half {{
    from (0, drop)
    curve to (width, drop - 3 in) by (width / 2, drop), (width / 2, drop - 3 in)
    up to heading
}}
treatment valance {{
    panel façade-d-été {{
        finished width: 40 in
        drop: 14 in
        outline: wave
        head: over rod, tail 4 in
        make: seamed
        face: tÿll-weiß
    }}
    row: façade-d-été
}}
window fenêtre-à-gauche: valance {{ rod: pole }}
window {LONG}: valance {{ rod: pole }}
"""
NAMES = ["tÿll-weiß", "façade-d-été", "fenêtre-à-gauche", LONG]


class Page(html.parser.HTMLParser):
    """The words and the kinds of element of a page."""

    def __init__(self, text):
        super().__init__()
        self.words, self.elements = [], set()
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        self.elements.add(tag)

    def handle_data(self, data):
        self.words.append(data)


def squeezed(text):
    """A text without its blanks, soft hyphens and the joiners that hold measures together."""
    return re.sub(r"[\s\u00ad\u200b\u2060\ufeff]", "", text)


def page(data):
    read = Page(data.decode())
    assert not read.elements & {"b", "x", "script"}, read.elements
    return "".join(read.words)


def svg(data):
    return "".join(xml.etree.ElementTree.fromstring(data).itertext())


def table(data):
    rows = list(csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")))
    assert len({len(row) for row in rows}) == 1, "rows of one length"
    cells = [cell for row in rows for cell in row]
    for cell in cells:
        is_number = re.fullmatch(r"-?[0-9.]+", cell)
        assert is_number or not cell.startswith(("=", "+", "-", "@")), cell
    return "\n".join(cells)


def workbook(data):
    parts = zipfile.ZipFile(io.BytesIO(data))
    assert parts.testzip() is None
    texts = [svg(parts.read(name)) for name in parts.namelist() if name.endswith(".xml")]
    return "\n".join(texts)


def document(data):
    shown = subprocess.run(["pdftotext", "-", "-"], input=data, capture_output=True, check=True)
    return shown.stdout.decode()


def plotter(data):
    lines = data.decode("ascii").splitlines()
    assert len(lines) % 2 == 0 and lines[-1] == "EOF"
    unescaped = re.sub(r"\\U\+([0-9A-Fa-f]{4})", lambda sign: chr(int(sign[1], 16)), data.decode("ascii"))
    return unescaped


READERS = {
    ".html": page,
    ".svg": svg,
    ".json": lambda data: json.dumps(json.loads(data), ensure_ascii=False),
    ".txt": bytes.decode,
    ".csv": table,
    ".xlsx": workbook,
    ".pdf": document,
    ".dxf": plotter,
}

# The files that hold all the names, and those that hold the title too.
WITH_NAMES = {"packet.html", "packet.json", "packet.pdf", "sheets.txt"}


def main():
    """Prints each file with what of the names it gives back; fails where one is lost."""
    with tempfile.TemporaryDirectory() as folder:
        design = pathlib.Path(folder, "odd.pelmet")
        design.write_text(DESIGN)
        pelmet("build", "--quiet", "--write", "all", design)
        files = sorted(pathlib.Path(folder, "odd.packet").iterdir())
        sound = len({path.suffix for path in files}) >= 4
        for path in files:
            words = squeezed(READERS[path.suffix](path.read_bytes()))
            found = [name for name in NAMES + [TITLE] if squeezed(name) in words]
            wanted = len(NAMES) + 1 if path.name in WITH_NAMES else 1
            sound &= len(found) >= wanted
            print(f"{path.name}: {len(found)} of {len(NAMES) + 1}")
    sys.exit(0 if sound else 1)


if __name__ == "__main__":
    main()
