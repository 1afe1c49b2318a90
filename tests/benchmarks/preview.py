"""From saving the spec to the new guide on the screen, in the real browser.

    python -m tests.benchmarks.preview --saves 30

The time runs from the moment the file is written until the browser has laid out and painted the page with the new title.
"""

from __future__ import annotations

import argparse
import os
import shutil
import statistics
import tempfile
import time
from pathlib import Path

from playwright.sync_api import sync_playwright

from tests.preview.running import SPECS, running


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--saves", type=int, default=30)
    parser.add_argument("--spec", default="larkspur")
    told = parser.parse_args()
    text = (SPECS / f"{told.spec}.yaml").read_text(encoding="utf-8")
    title = next(line for line in text.splitlines() if line.startswith("title: "))
    chromium = os.environ.get("FURBELOW_CHROMIUM") or shutil.which("chromium")
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as playwright:
        spec = Path(folder) / "spec.yaml"
        spec.write_text(text, encoding="utf-8")
        browser = playwright.chromium.launch(executable_path=chromium, args=["--no-sandbox", "--disable-gpu"])
        with running(spec) as (_, port):
            page = browser.new_page()
            page.goto(f"http://127.0.0.1:{port}/")
            page.wait_for_selector("body[data-guide='1']")
            # The page itself notes when it has painted each guide; its clock counts from the same epoch as ours.
            page.evaluate(
                """() => { window.painted = {}; new MutationObserver(() => {
                    const guide = document.body.dataset.guide;
                    requestAnimationFrame(() => requestAnimationFrame(() => {
                        window.painted[guide] ??= performance.timeOrigin + performance.now(); }));
                }).observe(document.body, { attributes: true, attributeFilter: ["data-guide"] }); }"""
            )
            took = []
            for number in range(2, told.saves + 2):
                time.sleep(0.2)
                saved = time.time()
                spec.write_text(text.replace(title, f"title: Save {number}"), encoding="utf-8")
                page.wait_for_function("saved => Object.values(window.painted).some(at => at > saved)", arg=saved * 1000)
                took.append(max(page.evaluate("() => Object.values(window.painted)")) / 1000 - saved)
        browser.close()
    took.sort()
    print(
        f"{len(took)} saves of {told.spec}: median {statistics.median(took):.3f} s,"
        f" fastest {took[0]:.3f} s, slowest {took[-1]:.3f} s, within 0.3 s {sum(each <= 0.3 for each in took)}"
    )


if __name__ == "__main__":
    main()
