"""The files that furbelow reads about itself: schemas, templates and demos.

In a checkout they lie beside the package; in an installed wheel inside it, as `_schemas`, `_templates` and `_specs`.
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

# A wheel is unpacked when it is installed, so these are plain files; importlib.resources would say the same and takes
# longer to load than a spec to read.
_PACKAGE = Path(__file__).resolve().parent


def schema(name: str) -> Path:
    """The schema file of that name."""
    return _folder("schemas") / name


def template(name: str) -> Path:
    """The template file of that name; folders in it are parted by `/`."""
    return _folder("templates") / name


def languages() -> tuple[str, ...]:
    """The languages that guides can be written in: each is a folder of messages."""
    return tuple(sorted(path.name for path in template("words").iterdir() if path.is_dir()))


def words_files(language: str) -> tuple[str, ...]:
    """The files of messages of a language, without their ending."""
    return tuple(sorted(path.stem for path in template(f"words/{language}").glob("*.ftl")))


def demo(name: str) -> Path:
    """The demo file of that name: a spec, or a file in a folder beside it; `""` for the folder of the specs."""
    return _folder("specs") / name


@cache  # fifty files of words are looked for in one guide
def _folder(name: str) -> Path:
    shipped = _PACKAGE / f"_{name}"
    # In an editable install the folder stands at the top of the checkout, beside the source root.
    return shipped if shipped.is_dir() else _PACKAGE.parents[1] / name
