"""A real browser for the pages: Debian's Chromium, and axe-core from npm.

Where they are: FURBELOW_CHROMIUM or `chromium` on the path; FURBELOW_AXE or `node_modules/axe-core/axe.min.js` in the
checkout. Where one is missing these tests are skipped, but not in CI.
"""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

expect.set_options(timeout=20_000)  # ms: a test is not at fault because the machine is busy

_QUIET = (
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)


def _found(path: str | Path | None, what: str) -> Path:
    if path is not None and Path(path).is_file():
        return Path(path)
    if os.environ.get("CI"):
        pytest.fail(f"{what} is not here")
    pytest.skip(f"{what} is not here")


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    chromium = _found(os.environ.get("FURBELOW_CHROMIUM") or shutil.which("chromium"), "chromium")
    with sync_playwright() as playwright:
        opened = playwright.chromium.launch(executable_path=chromium, args=list(_QUIET))
        yield opened
        opened.close()


@pytest.fixture(scope="session")
def axe() -> str:
    """The source of axe-core, to be run in a page."""
    beside = Path(__file__).parents[2] / "node_modules" / "axe-core" / "axe.min.js"
    return _found(os.environ.get("FURBELOW_AXE") or beside, "axe-core").read_text(encoding="utf-8")


@dataclass
class Watched:
    """A page, with all that it said, asked for or did on its own."""

    page: Page
    said: list[str] = field(default_factory=list)
    asked: list[str] = field(default_factory=list)
    refused: list[str | None] = field(default_factory=list)
    dialogs: list[str] = field(default_factory=list)


def watched(context: BrowserContext, file: Path) -> Watched:
    """Opens a file and notes every console line, error, request and dialog."""
    page = context.new_page()
    seen = Watched(page)
    page.on("console", lambda line: seen.said.append(line.text))
    page.on("pageerror", lambda error: seen.said.append(str(error)))
    page.on("request", lambda request: seen.asked.append(request.url))
    page.on("requestfailed", lambda request: seen.refused.append(request.failure))

    def dismissed(dialog: object) -> None:
        seen.dialogs.append(str(dialog))

    page.on("dialog", dismissed)
    page.add_init_script("window.hacks = 0; window.hacked = () => { window.hacks += 1; };")
    page.goto(file.as_uri())
    return seen
