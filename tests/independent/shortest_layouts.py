"""Proves the shortest layout of each cloth of small_cloths.txt with a general constraint solver.

OR-tools CP-SAT (https://developers.google.com/optimization) places every piece at a whole
millimetre, no two over each other, each one that is held on a line of the repeat. What is printed is checked in beside this file,
and compiler/bolt/tests/proven.rs holds our own layouts and bounds to it.
"""

import pathlib
import sys

from ortools.sat.python import cp_model

SECONDS = 120.0
CLOTHS = pathlib.Path(__file__).with_name("small_cloths.txt")


def cloths():
    for line in CLOTHS.read_text().splitlines():
        words = line.split()
        if words[0] == "cloth":
            pieces = []
            yield words[1], int(words[3]), int(words[5]), int(words[7]), pieces
        else:
            phase = None if words[4] == "-" else int(words[4])
            pieces.append((int(words[1]), int(words[2]), phase))


def shortest(width, gap, repeat, pieces):
    model = cp_model.CpModel()
    most = sum(length + gap + repeat for _, length, _ in pieces)
    across_taken, along_taken, ends = [], [], []
    for wide, long, phase in pieces:
        across = model.new_int_var(0, width - wide, "")
        along = model.new_int_var(0, most, "")
        if phase is not None:
            line = model.new_int_var(0, most // repeat + 1, "")
            model.add(along + phase == line * repeat)
        across_taken.append(model.new_fixed_size_interval_var(across, wide + gap, ""))
        along_taken.append(model.new_fixed_size_interval_var(along, long + gap, ""))
        ends.append(along + long)
    model.add_no_overlap_2d(across_taken, along_taken)
    model.add_cumulative(along_taken, [wide + gap for wide, _, _ in pieces], width + gap)
    end = model.new_int_var(0, most + repeat, "")
    model.add_max_equality(end, ends)
    model.minimize(end)
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = SECONDS
    solver.parameters.num_workers = 2
    solver.parameters.random_seed = 1
    if solver.solve(model) != cp_model.OPTIMAL:
        sys.exit("not proven in time")
    return int(solver.objective_value)


# The pieces of a cloth are all read once the next one begins.
for name, *cloth in list(cloths()):
    print(name, shortest(*cloth))
