"""Reads the outlines of the examples, opened out at their true size, with readers of other makers.

DXF files are read strictly and audited by ezdxf: no error, no fix; the layers, closed lines, and both
lines of every piece where the packet has them, arcs included; every word comes back as it was. SVG files
are parsed by xmllint and drawn by resvg and by librsvg: as large as they say, and not blank. Files that
are bad on purpose show that the checks bite. Needs the PyPI packages ezdxf, resvg-py and pillow,
libxml2-utils, librsvg2-bin, and cargo.
"""

import io
import json
import math
import pathlib
import re
import subprocess
import sys
import tempfile

import ezdxf
import ezdxf.path
import resvg_py
from built import HERE, designs, packet
from ezdxf.lldxf.encoding import decode_dxf_unicode
from PIL import Image, ImageStat

LAYERS = {"CUT", "SEW", "MARKS", "TEXT"}
# How far a point of the packet may lie from the line, where an arc may be cut off between two of its
# points; and the line from the straight ones between those points, from which an arc swells.
MOST = 0.02
MOST_SWELL = 0.05
# How far an arc may be parted from its own straight lines here.
ARC_STEP = 0.001
# The reader puts cubic curves in place of an arc; with one for each quarter of a circle they would swell
# from it by 0.03 percent of its radius, which is more than is asked of the line.
CURVES_OF_AN_ARC = 8
MILLIMETRES_IN_INCH = 25.4


def opened(piece, which):
    """The points of a line of a whole piece, from its left edge, counted upward."""
    points = [(point["at"]["across"]["mm"], point["at"]["down"]["mm"]) for point in piece[which]]
    if piece["outline_from"] == "fold":
        points += [(-x, y) for x, y in reversed(points)]
        points = [(x + piece["draw_width"]["mm"], y) for x, y in points]
    return [(x, piece["cut_length"]["mm"] - y) for x, y in points]


def distance(point, line):
    """How far a point lies from a closed line."""
    least = math.inf
    for (x0, y0), (x1, y1) in zip(line, line[1:] + line[:1]):
        dx, dy = x1 - x0, y1 - y0
        square = dx * dx + dy * dy
        part = 0 if square == 0 else min(1, max(0, ((point[0] - x0) * dx + (point[1] - y0) * dy) / square))
        least = min(least, math.dist(point, (x0 + dx * part, y0 + dy * part)))
    return least


def drawn_line(polyline):
    """The points of a line as the reader draws it, arcs included."""
    path = ezdxf.path.make_path(polyline, segments=CURVES_OF_AN_ARC)
    return [(point.x, point.y) for point in path.flattening(ARC_STEP)]


def around(line):
    return sum(math.dist(one, other) for one, other in zip(line, line[1:] + line[:1]))


def alike(packet):
    """One piece with its panel for each outline, in the order of their files."""
    seen = []
    for window in packet["windows"]:
        for panel in window["panels"]:
            for piece in panel["pieces"]:
                keys = ("outline", "sewn", "outline_from", "railroaded", "folded_at", "joined")
                lines = [piece[key] for key in keys]
                if lines not in (other for other, *_ in seen):
                    seen.append((lines, piece, panel))
    return [(piece, panel) for _, piece, panel in seen]


def dxf_faults(path, piece, panel):
    """What is wrong with a DXF file, and how far its lines are off at most."""
    try:
        document = ezdxf.readfile(path)
    except (ezdxf.DXFError, ValueError) as error:
        return [f"it cannot be read: {error}"], 0.0
    audit = document.audit()
    found = [f"audit: {it.message}" for it in [*audit.errors, *audit.fixes]]
    names = {layer.dxf.name for layer in document.layers}
    if document.dxfversion != "AC1009" or not LAYERS <= names:
        found.append(f"it is of {document.dxfversion} with the layers {names}")
    if "millimetres" not in path.read_text().splitlines()[1]:
        found.append("it does not say its unit")
    worst = 0.0
    for layer, which in (("CUT", "outline"), ("SEW", "sewn")):
        lines = list(document.modelspace().query(f'POLYLINE[layer=="{layer}"]'))
        if len(lines) != 1 or not lines[0].is_closed:
            found.append(f"no one closed line in {layer}")
            continue
        drawn = drawn_line(lines[0])
        wanted = opened(piece, which)
        off = max(distance(point, drawn) for point in wanted)
        swell = max(distance(point, wanted) for point in drawn)
        worst = max(worst, off)
        if off > MOST or swell > MOST_SWELL:
            found.append(f"{layer} is off by {off:.3f} mm and swells by {swell:.3f} mm")
        if abs(around(drawn) - around(wanted)) > 1.0:
            found.append(f"{layer} is {around(drawn):.2f} mm long, not {around(wanted):.2f}")
    # The packet knows the true length of the sewn line, where it is the panel's own and does not shrink.
    if piece["shrinkage"] is None and not panel["bands"] and piece["folded_at"] is None:
        true = sum(corner["edge_length"]["mm"] for corner in panel["outline"])
        for sewn in document.modelspace().query('POLYLINE[layer=="SEW"]'):
            told = around(drawn_line(sewn))
            if abs(told - true) > 0.1:
                found.append(f"the sewn line is {told:.3f} mm long, not {true:.3f}")
    texts = [decode_dxf_unicode(it.plain_text()) for it in document.modelspace().query("TEXT")]
    if not any(piece["label"] in text and piece["cloth"] in text for text in texts):
        found.append(f"{piece['label']} of {piece['cloth']} is not told: {texts}")
    return found, worst


def svg_faults(path):
    """What is wrong with an SVG file."""
    text = path.read_text()
    parsed = subprocess.run(["xmllint", "--noout", path], capture_output=True, text=True)
    if parsed.returncode:
        return [f"xmllint: {parsed.stderr.splitlines()[0]}"]
    found = []
    if re.search(r"(?<![\d.])-0(?![\d.])|NaN|inf\b", text):
        found.append("a number is not one")
    width, height = map(float, re.search(r'width="([\d.]+)mm" height="([\d.]+)mm"', text).groups())
    # One dot for a millimetre.
    by_resvg = bytes(resvg_py.svg_to_bytes(svg_string=text, dpi=MILLIMETRES_IN_INCH))
    by_librsvg = subprocess.run(
        ["rsvg-convert", "--dpi-x", "25.4", "--dpi-y", "25.4", path], capture_output=True, check=True
    ).stdout
    for reader, picture in (("resvg", by_resvg), ("librsvg", by_librsvg)):
        image = Image.open(io.BytesIO(picture)).convert("RGBA")
        image = Image.alpha_composite(Image.new("RGBA", image.size, "white"), image).convert("L")
        if max(abs(image.width - width), abs(image.height - height)) > 1.0:
            found.append(f"{reader} draws it {image.size}, not {width} x {height}")
        if ImageStat.Stat(image).stddev[0] < 1.0:
            found.append(f"{reader} draws nothing")
    return found


def check(design):
    """Prints what is found wrong with the outlines of a design; whether nothing is."""
    folder = packet(design)
    pieces = alike(json.loads((folder / "packet.json").read_text()))
    number = lambda path: int(path.name.split("-")[1])
    plots = sorted(folder.glob("outline-*.dxf"), key=number)
    found, worst = [], 0.0
    if len(plots) != len(pieces) or len(plots) != len(list(folder.glob("outline-*.svg"))):
        found.append(f"{len(plots)} outlines for {len(pieces)} shapes")
    for path, (piece, panel) in zip(plots, pieces):
        faults, off = dxf_faults(path, piece, panel)
        worst = max(worst, off)
        found += [f"{path.name}: {it}" for it in faults]
    drawings = sorted(folder.glob("*.svg"))
    for path in drawings:
        found += [f"{path.name}: {it}" for it in svg_faults(path)]
    with tempfile.TemporaryDirectory() as scratch:
        found += untold(pathlib.Path(scratch), plots[0], *pieces[0])
    print(f"{design.name}: {len(plots)} outlines within {worst:.4f} mm, {len(drawings)} drawings, {'; '.join(found) or 'sound'}")
    return not found


def untold(folder, plot, piece, panel):
    """Faults on purpose that are not found."""
    good = plot.read_text()
    bad = folder / "bad.dxf"
    changes = {
        "a line that is not closed": ("\n 70\n1\n", "\n 70\n0\n"),
        "a layer that is gone": ("\nSEW\n", "\nCUT\n"),
        "an entity that is none": ("\nSEQEND\n", "\nSEQUEL\n"),
    }
    for what, (here, instead) in changes.items():
        bad.write_text(good.replace(here, instead))
        if bad.read_text() == good or not dxf_faults(bad, piece, panel)[0]:
            yield f"{what} is not found"
    blank = folder / "blank.svg"
    blank.write_text('<svg xmlns="http://www.w3.org/2000/svg" width="20mm" height="20mm" viewBox="0 0 20 20"/>')
    broken = folder / "broken.svg"
    broken.write_text("<svg><path></svg>")
    for path in (blank, broken):
        if not svg_faults(path):
            yield f"{path.name} is not found"


def main():
    sound = [check(design) for design in [*designs(), HERE / "halved.pelmet"]]
    sys.exit(0 if all(sound) else 1)


if __name__ == "__main__":
    main()
