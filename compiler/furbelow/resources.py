"""The files that furbelow reads about itself: schemas, templates and demos.

In a checkout they lie beside the package; in an installed wheel inside it, as `_schemas`, `_templates` and `_specs`.
"""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from pathlib import Path

# A wheel is unpacked when it is installed, so these are plain files; importlib.resources would say the same and takes
# longer to load than a spec to read.
_PACKAGE = os.path.dirname(os.path.abspath(__file__))


def schema(name: str) -> Path:
    """The schema file of that name."""
    return _path("schemas", name)


def schema_text(name: str) -> str:
    """What stands in the schema file of that name; without `pathlib`, which takes longer to load than a schema to read."""
    with open(os.path.join(_folder("schemas"), name), encoding="utf-8") as file:
        return file.read()


def template(name: str) -> Path:
    """The template file of that name; folders in it are parted by `/`."""
    return _path("templates", name)


def languages() -> tuple[str, ...]:
    """The languages that guides can be written in: each is a folder of messages."""
    folder = os.path.join(_folder("templates"), "words")
    return tuple(sorted(name for name in os.listdir(folder) if os.path.isdir(os.path.join(folder, name))))


def words_files(language: str) -> tuple[str, ...]:
    """The files of messages of a language, without their ending."""
    folder = os.path.join(_folder("templates"), "words", language)
    return tuple(sorted(name.removesuffix(".ftl") for name in os.listdir(folder) if name.endswith(".ftl")))


def demo(name: str) -> Path:
    """The demo file of that name: a spec, or a file in a folder beside it; `""` for the folder of the specs."""
    return _path("specs", name)


def _path(folder: str, name: str) -> Path:
    from pathlib import Path

    return Path(_folder(folder)) / name


def _folder(name: str) -> str:
    shipped = os.path.join(_PACKAGE, f"_{name}")
    # In an editable install the folder stands at the top of the checkout, beside the source root.
    return shipped if os.path.isdir(shipped) else os.path.join(_PACKAGE, "..", "..", name)
