"""Reads the tables of the examples back, as a spreadsheet would, and holds them to the packet.

The comma-separated files are read by Python's own reader, the workbook by openpyxl. Every number in
them is the packet's, every cost a formula that comes to what the packet says, and no text is a formula.
A second run gives the same bytes. Needs the PyPI package openpyxl, and cargo.
"""

import csv
import decimal
import io
import json
import pathlib
import re
import sys
import tempfile

import openpyxl
from built import designs, packet, pelmet

FORMULA = re.compile("^[=+\\-@\t\r\n＝＋－＠]")
UNITS = {"in": 25.4, "yd": 914.4, "m": 1000.0, "mm": 1.0}
CELL = re.compile(r"(?:(\w+)!)?([A-Z]+[0-9]+)")


def in_folder(folder):
    """The files that are read here of a packet, by name."""
    paths = sorted(pathlib.Path(folder).iterdir())
    return {path.name: path.read_bytes() for path in paths if path.suffix in (".csv", ".xlsx", ".json")}


def made_again(design):
    """The files of a second run."""
    with tempfile.TemporaryDirectory() as folder:
        pelmet("build", "--quiet", "--write", "csv,xlsx,json", "--out", folder, design)
        return in_folder(folder)


def rows(contents, name):
    """The rows of a file by their headings."""
    text = contents.decode("utf-8-sig")
    assert text.endswith("\r\n"), f"{name} ends in no line end"
    assert "\n" not in text.replace("\r\n", ""), f"{name} has a bare line end"
    table = list(csv.reader(io.StringIO(text, newline=""), strict=True))
    for row in table:
        assert len(row) == len(table[0]), f"{name}: {row}"
        for cell in row:
            is_number = re.fullmatch(r"-?[0-9]+(\.[0-9]+)?", cell)
            assert is_number or not FORMULA.match(cell), f"{name}: {cell} would be run"
    return [dict(zip(table[0], row)) for row in table[1:]]


def is_length(row, heading, measure):
    """A length is printed as in the packet, and its decimals come to the packet's millimetres."""
    if measure is None:
        assert row[heading] == "", f"{heading}: {row[heading]}"
        return
    assert row[heading].lstrip("'") == measure["text"], f"{heading}: {row[heading]}"
    told = [unit for unit in UNITS if f"{heading} ({unit})" in row]
    assert "mm" in told
    for unit in told:
        millimetres = float(row[f"{heading} ({unit})"]) * UNITS[unit]
        assert abs(millimetres - measure["mm"]) <= 0.001, f"{heading} ({unit})"


def panels(packet):
    return [(window, panel) for window in packet["windows"] for panel in window["panels"]]


def check_cuts(table, packet):
    pieces = [(window, panel, it) for window, panel in panels(packet) for it in panel["pieces"]]
    assert len(table) == len(pieces)
    for row, (window, panel, piece) in zip(table, pieces):
        names = (row["Window"], row["Panel"], row["Piece"], row["Cloth"])
        assert names == (window["name"], panel["name"], piece["label"], piece["cloth"])
        assert int(row["Quantity"]) == piece["quantity"]
        is_length(row, "Cut width", piece["cut_width"])
        is_length(row, "Cut length", piece["cut_length"])
        is_length(row, "Draw width", piece["draw_width"])


def check_marks(table, packet):
    marks = [(panel, mark) for _, panel in panels(packet) for mark in panel["marks"]]
    assert len(table) == len(marks)
    for row, (panel, mark) in zip(table, marks):
        assert (row["Panel"], int(row["Number"])) == (panel["name"], mark["number"])
        is_length(row, "From left edge", mark["from_left"])
        is_length(row, "From centre", mark["from_centre"])
        is_length(row, "Down", mark["down"])
        fold = mark["fold"] or {}
        is_length(row, "Brought to, from left edge", fold.get("brought_to_from_left"))


def lines(packet):
    """The lines of the quote by kind and name."""
    quote = packet["quote"] or {"lines": []}
    return {(line["kind"], line["name"]): line for line in quote["lines"]}


def check_buying(table, packet):
    bought = [("cloth", it) for it in packet["cloths"]]
    bought += [("notion", it) for it in packet["notions"]]
    assert len(table) == len(bought)
    for row, (kind, it) in zip(table, bought):
        assert (row["For"], row["What"]) == (kind, it["name"])
        length = it["bought"] if kind == "cloth" else it["bought"]["length"]
        is_length(row, "Length to buy", length)
        line = lines(packet).get((kind, it["name"]))
        cost = next(row[heading] for heading in row if heading.startswith("Cost"))
        assert cost == (f"{line['cost']['amount']:.2f}" if line else "")


def value(book, sheet, place):
    """What a cell comes to, by the formulas written here: SUM, ROUND, products, sums and references."""
    content = book[sheet][place].value
    if not isinstance(content, str) or not content.startswith("="):
        return decimal.Decimal(repr(content))
    formula = content[1:]
    summed = re.fullmatch(r"SUM\((\w+):(\w+)\)", formula)
    if summed:
        cells = [cell for row in book[sheet][summed[1] : summed[2]] for cell in row]
        return sum(value(book, sheet, cell.coordinate) for cell in cells)
    rounded = re.fullmatch(r"ROUND\((.*),2\)", formula)
    expression = rounded[1] if rounded else formula
    assert re.fullmatch(r"[A-Za-z0-9!*/+]+", expression), formula
    terms = CELL.sub(lambda it: f"value(book, {it[1] or sheet!r}, {it[2]!r})", expression)
    terms = re.sub(r"(?<![\w'])([0-9]+)(?![\w'])", r"decimal.Decimal(\1)", terms)
    amount = eval(terms, {"value": value, "book": book, "decimal": decimal})
    cent = decimal.Decimal("0.01")
    return amount.quantize(cent, decimal.ROUND_HALF_UP) if rounded else amount


def check_workbook(contents, files, packet):
    formulas = openpyxl.load_workbook(io.BytesIO(contents))
    shown = openpyxl.load_workbook(io.BytesIO(contents), data_only=True)
    assert formulas.sheetnames[0] == "buying" and set(formulas.sheetnames) >= {"cuts", "marks"}
    for sheet in formulas:
        for cell in (cell for row in sheet.iter_rows() for cell in row):
            if cell.data_type == "f":
                heading = sheet.cell(1, cell.column).value
                assert heading.startswith("Cost"), f"{sheet.title}!{cell.coordinate} is a formula"
                told = decimal.Decimal(repr(shown[sheet.title][cell.coordinate].value))
                off = abs(value(formulas, sheet.title, cell.coordinate) - told)
                assert off <= decimal.Decimal("0.01"), f"{sheet.title}!{cell.coordinate}: {off}"
    # The same cells as the comma-separated files have.
    for name in ["buying", "cuts", "marks"]:
        table = list(csv.reader(io.StringIO(files[f"{name}.csv"].decode("utf-8-sig"), newline="")))
        for told, row in zip(table, shown[name].iter_rows(values_only=True), strict=True):
            for one, other in zip(told, row, strict=True):
                if isinstance(other, (int, float)):
                    assert abs(float(one) - other) < 0.005, f"{name}: {one} and {other}"
                else:
                    assert one.removeprefix("'") == (other or ""), f"{name}: {one} and {other}"
    if packet["quote"]:
        last = shown["quote"].max_row
        total = shown["quote"].cell(last, 7).value
        assert abs(total - packet["quote"]["total"]["amount"]) < 0.005, total
    return sum(cell.data_type == "f" for sheet in formulas for row in sheet.iter_rows() for cell in row)


def bites(table, packet):
    """A number that is off by a sixteenth of an inch is found."""
    table[0] = dict(table[0], **{"Cut width (mm)": repr(float(table[0]["Cut width (mm)"]) + 1.5875)})
    try:
        check_cuts(table, packet)
    except AssertionError:
        return
    sys.exit("a wrong number was not found")


def main():
    """Prints what was read of each example; fails where anything differs."""
    for design in designs():
        files = in_folder(packet(design))
        assert files == made_again(design), f"{design.stem}: two runs differ"
        job = json.loads(files["packet.json"])
        tables = {name: rows(files[f"{name}.csv"], name) for name in ["buying", "cuts", "marks"]}
        check_buying(tables["buying"], job)
        check_cuts(tables["cuts"], job)
        check_marks(tables["marks"], job)
        bites(tables["cuts"], job)
        formulas = check_workbook(files["packet.xlsx"], files, job)
        counts = ", ".join(f"{len(table)} {name}" for name, table in tables.items())
        print(f"{design.stem}: {counts}; {formulas} formulas")


if __name__ == "__main__":
    sys.exit(main())
