"""The packets of the examples, for the readers beside this file.

Each is built when it is first asked for, in every form that a reader reads. Where the variable PELMET_BUILT
names a folder they are kept there, so that several readers share them, and what is there is not built
again: give a new folder for a new build. Run by itself, this file builds every example. Needs cargo.
"""

import functools
import os
import pathlib
import subprocess
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[1]
# For each paper what is read of it; the usual paper is the one that the design's own measures call for.
FORMS = {
    "usual": "usual,text,drawings,outlines,dxf,csv,xlsx",
    "letter": "pdf,templates,text,json",
    "a4": "pdf,templates,text,json",
}


def pelmet(*words):
    """What the command line prints."""
    command = ["cargo", "run", "--quiet", "--locked", "--", *map(str, words)]
    return subprocess.run(command, cwd=ROOT, stdout=subprocess.PIPE, text=True, check=True).stdout


def designs():
    """The main file of every example."""
    return sorted(ROOT.glob("examples/*/*.pelmet"))


@functools.cache
def scratch():
    """A folder that is gone once the reader has ended."""
    return tempfile.TemporaryDirectory()


def packet(design, paper="usual"):
    """The folder with the packet of a design for a paper."""
    folder = pathlib.Path(os.environ.get("PELMET_BUILT") or scratch().name, paper, design.stem)
    if not folder.exists():
        folder.parent.mkdir(exist_ok=True)
        chosen = [] if paper == "usual" else ["--paper", paper]
        pelmet("build", "--quiet", "--write", FORMS[paper], *chosen, "--out", folder, design)
    return folder


def main():
    """Builds every example for every paper."""
    for paper in FORMS:
        for design in designs():
            packet(design, paper)


if __name__ == "__main__":
    main()
