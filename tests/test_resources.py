"""The files that furbelow reads about itself are found, in a checkout and in an installed package."""

from __future__ import annotations

from pathlib import Path

import pytest
from furbelow import resources


@pytest.mark.parametrize(
    "name", ["guide.html.j2", "guide.css", "guide.js", "guide.md.j2", "guide.typ", "sheet.typ", "fonts/letters.txt"]
)
def test_a_template_is_found_in_the_checkout(name: str) -> None:
    assert resources.template(name).is_file()


def test_every_font_has_its_licence_beside_it() -> None:
    fonts = [Path(str(file)) for file in resources.template("fonts").iterdir()]
    for font in fonts:
        if font.suffix == ".ttf":
            licence = font.with_name(font.stem.partition("-")[0] + "-OFL.txt")
            assert "SIL Open Font License, Version 1.1" in licence.read_text(encoding="utf-8")


def test_the_shipped_fonts_are_small() -> None:
    """Less than a mebibyte and a quarter: house rule."""
    assert sum(Path(str(file)).stat().st_size for file in resources.template("fonts").iterdir()) < 1.25 * 1024 * 1024


def test_in_an_installed_package_the_folders_lie_inside(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    package = tmp_path / "furbelow"
    for folder in ("_schemas", "_templates"):
        (package / folder).mkdir(parents=True)
    (package / "_templates" / "guide.css").write_text("installed")
    (package / "_schemas" / "garment.schema.json").write_text("{}")
    monkeypatch.setattr(resources, "_PACKAGE", package)
    monkeypatch.setattr(resources, "_folder", resources._folder.__wrapped__)  # not what was found before
    assert resources.template("guide.css").read_text() == "installed"
    assert resources.schema("garment.schema.json").read_text() == "{}"
