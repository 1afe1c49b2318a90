"""The files that furbelow reads about itself: schemas and templates.

In a checkout they lie beside the package; in an installed wheel inside it, as `_schemas` and `_templates`.
"""

from __future__ import annotations

from importlib.resources import files
from importlib.resources.abc import Traversable
from pathlib import Path


def schema(name: str) -> Traversable:
    """The schema file of that name."""
    return _folder("schemas").joinpath(name)


def template(name: str) -> Traversable:
    """The template file of that name; folders in it are parted by `/`."""
    return _folder("templates").joinpath(name)


def _folder(name: str) -> Traversable:
    package = files("compiler")
    shipped = package.joinpath(f"_{name}")
    if shipped.is_dir():
        return shipped
    # An editable install or a bare checkout: the folder stands beside the package.
    return Path(str(package)).parent / name
