"""Prints the strip packing problems of E. Hopper and B. C. H. Turton as cloths to lay.

    pip install hyperpack==1.3
    python3 hopper_turton.py | cargo run --release -p pelmet-bolt --example lay_cloths

("An empirical investigation of meta-heuristic and heuristic algorithms for a 2D packing problem",
European Journal of Operational Research 128, 2001.) The pieces of each fill a strip of the length
that is printed, so that their area gives the optimum. They are read from the PyPI package hyperpack
and not kept here.
"""

from importlib import import_module

DATA = "hyperpack.benchmarks.datasets.hopper_and_turton_2000"

for number in range(1, 8):
    data = import_module(f"{DATA}.C{number}")
    strip = data.containers["container_0"]
    for letter in "abc":
        print(f"cloth C{number}{letter} width {strip['W']} gap 0 repeat 0")
        for piece in getattr(data, f"items_{letter}").values():
            print(f"piece {piece['w']} {piece['l']} phase -")
