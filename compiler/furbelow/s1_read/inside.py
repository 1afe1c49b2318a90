"""Whether what a file names beside itself lies in its own folder: nothing of a spec or a room reaches out of it."""

from __future__ import annotations

import os


def is_inside(path: str, folder: str) -> bool:
    """Whether the path, links followed, lies in the folder or in one within it."""
    place, tree = os.path.realpath(path), os.path.realpath(folder)
    return place == tree or place.startswith(tree.rstrip(os.sep) + os.sep)
