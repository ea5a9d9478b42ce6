"""Deals out the small cloths of small_cloths.txt: run it to see how they came about.

    python3 small_cloths.py > small_cloths.txt

A cloth is a line `cloth NAME width W gap G repeat R` (a repeat of 0 is none), and after it a line
`piece W L phase P` for each piece (a phase of `-` leaves it free). All numbers are millimetres, and
whole centimetres but for the gap.
"""

import random


def cloth(dice, name, pieces, held):
    width = dice.randrange(90, 145, 5) * 10
    gap = dice.choice([0, 6])
    repeat = dice.randrange(16, 65, 4) * 10 if held else 0
    print(f"cloth {name} width {width} gap {gap} repeat {repeat}")
    for _ in range(pieces):
        wide, long = dice.randrange(15, 80) * 10, dice.randrange(20, 100) * 10
        free = dice.random() >= held
        phase = "-" if free else dice.choice([0, 0, repeat // 4, repeat // 2])
        print(f"piece {wide} {long} phase {phase}")


dice = random.Random(1)
for kind, held, most in [("plain", 0, 9), ("matched", 1, 10), ("mixed", 0.5, 10)]:
    for pieces in range(5, most + 1):
        for turn in "abc":
            cloth(dice, f"{kind}-{pieces}{turn}", pieces, held)
