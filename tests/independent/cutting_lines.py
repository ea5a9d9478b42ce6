"""Holds the cutting lines of the garden room to an independent reader.

Each outline is drawn again from its own formula, point by point and far more finely than the
compiler draws it, and grown by its allowance with shapely (https://shapely.readthedocs.io). No
point of a sewn or cutting line may lie farther than 0.1 mm from the line drawn here, in either
direction; lengths and areas must agree as closely. What is printed is checked in beside this file.
Needs the PyPI package shapely, and cargo.
"""

import json
import math

from built import ROOT, packet
from shapely import LinearRing, Polygon, hausdorff_distance

INCH = 25.4
ALLOWANCE = INCH / 2
MOST_MILLIMETRES = 0.1
STEPS = 2000

DESIGN = ROOT / "examples/garden-room/garden-room.pelmet"


def arc(start, end, bulge):
    """An arc by how far it swells downward from the line, by the circle through three points."""
    (x0, y0), (x1, y1) = start, end
    chord = math.dist(start, end)
    across, down = (x1 - x0) / chord, (y1 - y0) / chord
    middle = ((x0 + x1) / 2 - down * bulge, (y0 + y1) / 2 + across * bulge)
    centre = circumcentre(start, middle, end)
    return around(centre, start, middle, end)


def level_arc(start, end):
    """An arc that is level where it starts: its centre stands above or below the start."""
    (x0, y0), (x1, y1) = start, end
    radius = ((x1 - x0) ** 2 + (y1 - y0) ** 2) / (2 * (y1 - y0))
    centre = (x0, y0 + radius)
    turn = math.atan2(x1 - x0, radius - (y1 - y0)) if radius > 0 else math.atan2(x1 - x0, y1 - y0 - radius)
    sign = -1 if radius > 0 else 1
    return [
        (centre[0] + abs(radius) * math.sin(turn * i / STEPS), centre[1] + sign * abs(radius) * math.cos(turn * i / STEPS))
        for i in range(STEPS + 1)
    ]


def circumcentre(a, b, c):
    d = 2 * (a[0] * (b[1] - c[1]) + b[0] * (c[1] - a[1]) + c[0] * (a[1] - b[1]))
    squares = [p[0] ** 2 + p[1] ** 2 for p in (a, b, c)]
    x = squares[0] * (b[1] - c[1]) + squares[1] * (c[1] - a[1]) + squares[2] * (a[1] - b[1])
    y = squares[0] * (c[0] - b[0]) + squares[1] * (a[0] - c[0]) + squares[2] * (b[0] - a[0])
    return (x / d, y / d)


def around(centre, start, middle, end):
    def angle(point):
        return math.atan2(point[1] - centre[1], point[0] - centre[0])

    def nearest(angle_to, from_angle):
        return from_angle + math.remainder(angle_to - from_angle, 2 * math.pi)

    first = angle(start)
    half = nearest(angle(middle), first)
    last = nearest(angle(end), half)
    radius = math.dist(centre, start)
    angles = [first + (last - first) * i / STEPS for i in range(STEPS + 1)]
    return [(centre[0] + radius * math.cos(a), centre[1] + radius * math.sin(a)) for a in angles]


def cubic(start, first, second, end):
    def at(t):
        weights = ((1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t**2, t**3)
        points = (start, first, second, end)
        return tuple(sum(w * p[axis] for w, p in zip(weights, points)) for axis in (0, 1))

    return [at(i / STEPS) for i in range(STEPS + 1)]


def mirrored(half):
    """A half from the fold outward, as the whole from left to right."""
    return [(-x, y) for x, y in reversed(half)] + half


def scalloped(width, drop):
    deep, count, half = 2 * INCH, 3, width / 2
    level = drop - deep
    cusps = [half * i / count for i in range(count + 1)]
    line = [p for a, b in zip(cusps, cusps[1:]) for p in arc((a, level), (b, level), deep)]
    return from_left(mirrored(line), width)


def arched(width, drop):
    rise, tab, half = 4 * INCH, 2 * INCH, width / 2
    return from_left(mirrored(level_arc((0, drop - rise), (half - tab, drop)) + [(half, drop)]), width)


def tide(width, drop):
    rise, half = 4 * INCH, width / 2
    line = cubic((0, drop), (half / 2, drop), (half / 2, drop - rise), (half, drop - rise))
    return from_left(mirrored(line), width)


def swag(width, drop):
    return from_left(mirrored(level_arc((0, drop), (width / 2, drop - 5 * INCH))), width)


def cascade(width, drop):
    tail, rake, hollow = 3 * INCH, 8 * INCH, 2 * INCH
    return [(0, drop)] + arc((tail, drop), (width, drop - rake), -hollow)


def from_left(line, width):
    return [(x + width / 2, y) for x, y in line]


OUTLINES = {"scalloped": scalloped, "arched": arched, "tide": tide, "swag": swag, "cascade": cascade}


def place(at):
    return (at["across"]["mm"], at["down"]["mm"])


def sewn_line(panel):
    points = []
    for corner in panel["outline"]:
        points.append(place(corner["at"]))
        points.extend(place(at) for at in (corner["curve"] or {"between": []})["between"])
    return points


def apart(one, other):
    return hausdorff_distance(LinearRing(one), LinearRing(other), densify=0.01)


def check(panel):
    width, drop = panel["flat_width"]["mm"], panel["drop"]["mm"]
    heading = panel["heading_depth"]["mm"]
    below = [(x, y + heading) for x, y in OUTLINES[panel["name"]](width, drop)]
    drawn = Polygon([(0, 0), *below, (width, 0)])
    grown = drawn.buffer(ALLOWANCE, join_style="mitre", mitre_limit=3)
    cutting = [(x - ALLOWANCE, y - ALLOWANCE) for x, y in map(lambda p: place(p["at"]), panel["pieces"][0]["outline"])]
    lengths = sum(corner["edge_length"]["mm"] for corner in panel["outline"])
    off = {
        "sewn line": apart(sewn_line(panel), drawn.exterior.coords),
        "cutting line": apart(cutting, grown.exterior.coords),
        "length around": abs(lengths - drawn.exterior.length),
        # As if all that is too much or too little lay in a strip along the line.
        "area": abs(Polygon(cutting).area - grown.area) / grown.exterior.length,
    }
    for what, millimetres in off.items():
        assert millimetres <= MOST_MILLIMETRES, f"{panel['name']}: {what} is {millimetres} mm off"
    worst = ", ".join(f"{what} within {math.ceil(value * 50) / 50:.2f} mm" for what, value in off.items())
    return f"{panel['name']}: {worst}"


def main():
    packet_json = packet(DESIGN) / "packet.json"
    panels = json.loads(packet_json.read_text())["windows"][0]["panels"]
    assert {panel["name"] for panel in panels} == set(OUTLINES)
    for panel in panels:
        print(check(panel))


if __name__ == "__main__":
    main()
