"""Holds the packets of the examples to the published schema with an independent validator.

Faults planted in a copy of a packet must be found: a member too few, one too many, a number as text,
a word that is none of the known ones, another form. Needs the PyPI package check-jsonschema, and cargo.
"""

import copy
import json
import pathlib
import subprocess
import sys
import tempfile

import built

SCHEMA = built.ROOT / "compiler/packet/packet.schema.json"


def told(*arguments):
    """What the validator says of something, by its exit status and its words."""
    command = [sys.executable, "-m", "check_jsonschema", *map(str, arguments)]
    done = subprocess.run(command, capture_output=True, text=True)
    return done.returncode, done.stdout + done.stderr


def without(packet, *path):
    del parent(packet, path)[path[-1]]


def with_value(packet, value, *path):
    parent(packet, path)[path[-1]] = value


def parent(packet, path):
    for step in path[:-1]:
        packet = packet[step]
    return packet


FIRST = ("windows", 0, "panels", 0)
FAULTS = {
    "no title": lambda packet: without(packet, "title"),
    "no drop": lambda packet: without(packet, *FIRST, "drop"),
    "another form": lambda packet: with_value(packet, "pelmet-packet/0", "format"),
    "a length as text": lambda packet: with_value(packet, "84 in", *FIRST, "drop", "mm"),
    "half a panel": lambda packet: with_value(packet, 0.5, *FIRST, "quantity"),
    "fewer than none": lambda packet: with_value(packet, -1, *FIRST, "quantity"),
    "an unknown layer": lambda packet: with_value(packet, "fur", *FIRST, "pieces", 0, "layer"),
    "panels not in a list": lambda packet: with_value(packet, {}, "windows", 0, "panels"),
}


def main():
    """Prints what was held to the schema; fails where a packet breaks it or a fault does not."""
    status, words = told("--check-metaschema", SCHEMA)
    if status:
        sys.exit(words)
    packets = [built.packet(design) / "packet.json" for design in built.designs()]
    status, words = told("--schemafile", SCHEMA, *packets)
    if status or not packets:
        sys.exit(words or "no packets")
    whole = json.loads(packets[0].read_text())
    with tempfile.TemporaryDirectory() as folder:
        for name, plant in FAULTS.items():
            packet = copy.deepcopy(whole)
            plant(packet)
            path = pathlib.Path(folder, "packet.json")
            path.write_text(json.dumps(packet))
            status, _ = told("--schemafile", SCHEMA, path)
            if status != 1:
                sys.exit(f"a packet with a fault was taken: {name}")
    print(f"{len(packets)} packets hold to the schema, {len(FAULTS)} faults do not")


if __name__ == "__main__":
    sys.exit(main())
