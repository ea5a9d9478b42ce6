"""Asks an accessibility checker (axe-core) what it finds on the pages of the examples, and on one of
what changed.

Each page is shown by Chromium in light and 600 pixels wide, and in dark and wide; nothing may be found,
and nothing may be asked for beside the page itself. A page that is bad on purpose shows that the checker
bites. Needs the PyPI package axe-core-python, for its copy of the checker, Chromium, and cargo.
"""

import concurrent.futures
import json
import pathlib
import subprocess
import sys
import tempfile

import axe_core_python
from built import designs, packet, pelmet

CHECKER = pathlib.Path(axe_core_python.__file__).with_name("axe.min.js").read_text()
CHROMIUM = [
    "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    "--virtual-time-budget=20000", "--dump-dom",
]
LOOKS = {
    "light": [],
    "dark": ["--blink-settings=preferredColorScheme=0"],
}
# The checker takes a minute for a long page, so each look is seen at one width, two at a time.
VIEWS = [("light", 600), ("dark", 1200)]
RUN = """
<script>CHECKER</script>
<script>
axe.run().then(found => {
    const told = {
        found: found.violations.map(one => one.id + " x" + one.nodes.length),
        dark: matchMedia("(prefers-color-scheme: dark)").matches,
        asked: performance.getEntriesByType("resource").length,
        wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    };
    document.documentElement.innerHTML = "<pre>" + JSON.stringify(told) + "</pre>";
});
</script>
"""
BAD = "<!doctype html><html><body><img src='data:,'><p style='color:#ccc;background:#fff'>Pale"


def told(page, look, width):
    """What the checker finds on a page."""
    page += RUN.replace("CHECKER", CHECKER.replace("</script", "<\\/script"))
    with tempfile.TemporaryDirectory() as folder:
        path = pathlib.Path(folder, "page.html")
        path.write_text(page)
        command = CHROMIUM + LOOKS[look] + [
            f"--user-data-dir={folder}/profile", f"--window-size={width},900", f"file://{path}"
        ]
        shown = subprocess.run(command, capture_output=True, text=True, check=True).stdout
    return json.loads(shown[shown.index("<pre>") + 5 : shown.index("</pre>")])


def pages():
    """Every page to look at: the packets of the examples, and what changed from one to another."""
    packets = [packet(design) for design in designs()]
    for folder in packets:
        yield folder.name, (folder / "packet.html").read_text()
    yield "what changed", pelmet("changes", "--write", "html", *packets[:2])


def main():
    """Prints each page with what is found on it; fails where anything is."""
    bad = told(BAD, "light", 1200)["found"]
    print(f"a bad page: {', '.join(bad)}")
    sound = len(bad) >= 3
    views = [(name, page, *view) for name, page in pages() for view in VIEWS]
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        answers = pool.map(lambda view: told(*view[1:]), views)
        for (name, _, look, width), answer in zip(views, answers):
            expected = {"found": [], "dark": look == "dark", "asked": 0, "wider": 0}
            sound &= answer == expected
            print(f"{name}, {look}, {width}: {answer}", flush=True)
    sys.exit(0 if sound else 1)


if __name__ == "__main__":
    main()
