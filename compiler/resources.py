"""The files that furbelow reads about itself: schemas and templates.

In a checkout they lie beside the package; in an installed wheel inside it, as `_schemas` and `_templates`.
"""

from __future__ import annotations

from pathlib import Path

# A wheel is unpacked when it is installed, so these are plain files; importlib.resources would say the same and takes
# longer to load than a spec to read.
_PACKAGE = Path(__file__).parent


def schema(name: str) -> Path:
    """The schema file of that name."""
    return _folder("schemas") / name


def template(name: str) -> Path:
    """The template file of that name; folders in it are parted by `/`."""
    return _folder("templates") / name


def _folder(name: str) -> Path:
    shipped = _PACKAGE / f"_{name}"
    # In an editable install or a bare checkout the folder stands beside the package.
    return shipped if shipped.is_dir() else _PACKAGE.parent / name
