"""From saving the spec to the new guide on the screen, and from moving a choice to its picture, in the real browser.

    python -m tests.benchmarks.preview --saves 30 --moves 40

The time runs from the moment the file is written until the browser has laid out and painted the guide of that save. Of
three saves one has another title, one another length (which most of the drawings show), one a step more or less.
A move sets one control of the choices to another of its values, and ends when picture and numbers are painted.
"""

from __future__ import annotations

import argparse
import os
import re
import shutil
import statistics
import tempfile
import time
from pathlib import Path

from playwright.sync_api import Page, sync_playwright

from tests.preview.running import SPECS, running

# The page itself notes when it has painted each guide; its clock counts from the same epoch as ours.
WATCHING = """() => { window.painted = {}; new MutationObserver(() => {
    const guide = document.body.dataset.guide;
    requestAnimationFrame(() => requestAnimationFrame(() => {
        window.painted[guide] ??= performance.timeOrigin + performance.now(); }));
}).observe(document.body, { attributes: true, attributeFilter: ["data-guide"] }); }"""


KINDS = ("another title", "another length", "a step less or more")


def saved(text: str, number: int) -> str:
    """The spec as it stands after so many saves: each changes one kind of thing, in turn."""
    titles, lengths, steps = ((number + 2 - kind) // 3 for kind in range(3))
    # A title in several languages has its English first.
    text = re.sub(r"(?m)^(title:|  en:) .*$", rf"\1 Save {titles}", text, count=1)
    text = re.sub(
        r"(?m)(?<= (?:length|.depth): )[0-9]+(?= cm$)", lambda found: str(int(found[0]) + lengths % 5), text, count=1
    )
    return re.sub(r"  - press: .*\n", "", text, count=1) if steps % 2 else text


# A move, and how long until the answer to it is painted, in ms.
MOVE = """async ([at, share]) => {
    const control = document.querySelectorAll("#controls input, #controls select")[at];
    const before = Number(document.body.dataset.tried), start = performance.now();
    if (control.matches("select")) {
        control.selectedIndex = Math.floor(share * control.length);
        control.dispatchEvent(new Event("change"));
    } else {
        control.value = Math.round(share * control.max);
        control.dispatchEvent(new Event("input"));
    }
    while (Number(document.body.dataset.tried) === before) await new Promise(requestAnimationFrame);
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    return performance.now() - start;
}"""


def moved(page: Page, moves: int) -> list[float]:
    """The times of so many moves, in seconds: each control in turn, to values all over its range."""
    page.wait_for_selector("body[data-tried]")
    controls = page.locator("#controls input, #controls select").count()
    # The golden ratio comes near every share of a range, and never twice to the same.
    shares = [(number * 0.6180339887) % 1 for number in range(1, moves + 1)]
    return [page.evaluate(MOVE, [number % controls, share]) / 1000 for number, share in enumerate(shares)]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--saves", type=int, default=60)
    parser.add_argument("--moves", type=int, default=40)
    parser.add_argument("--spec", default="larkspur")
    told = parser.parse_args()
    text = (SPECS / f"{told.spec}.yaml").read_text(encoding="utf-8")
    chromium = os.environ.get("FURBELOW_CHROMIUM") or shutil.which("chromium")
    took: dict[str, list[float]] = {kind: [] for kind in KINDS}
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        spec, beside = Path(folder) / "spec.yaml", Path(folder) / "new.yaml"
        spec.write_text(text, encoding="utf-8")
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox", "--disable-gpu"])
        with running(spec) as (_, port):
            page = browser.new_page()
            page.goto(f"http://127.0.0.1:{port}/")
            page.wait_for_selector("body[data-guide='1']")
            page.evaluate(WATCHING)
            moves = moved(page, told.moves)
            for number in range(1, told.saves + 1):
                time.sleep(0.2)
                beside.write_text(saved(text, number), encoding="utf-8")
                start = time.time()
                beside.replace(spec)
                page.wait_for_function("guide => window.painted[guide]", arg=number + 1)
                painted = page.evaluate("guide => window.painted[guide]", number + 1)
                took[KINDS[(number - 1) % 3]].append(painted / 1000 - start)
        browser.close()
    print(
        f"saves and moves of {told.spec}, load of the machine {os.getloadavg()[0]:.1f} on {os.cpu_count()} processors"
    )
    for kind, times in (
        *took.items(),
        ("all saves", [each for kind_took in took.values() for each in kind_took]),
        ("a move", moves),
    ):
        times.sort()
        print(
            f"  {kind:20} {len(times):3}: median {statistics.median(times):.3f} s, 95 of 100 within"
            f" {times[max(0, -(-len(times) * 95 // 100) - 1)]:.3f} s, fastest {times[0]:.3f} s, slowest {times[-1]:.3f} s,"
            f" within 0.3 s {sum(each <= 0.3 for each in times)}"
        )


if __name__ == "__main__":
    main()
