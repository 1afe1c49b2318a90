"""Whether a tree is as its schema asks.

A sound tree is told by the quick walk in shape.py; the full validator, and the wording of what it finds, are
loaded only for a tree that is not.
"""

from __future__ import annotations

import json
from functools import cache

from furbelow import resources
from furbelow.diagnose.fault import Fault
from furbelow.s1_read.schema_walk import Schema, fits
from furbelow.s1_read.yaml_tree import Tree, to_plain


@cache
def load_schema(name: str) -> Schema:
    """The schema file of that name."""
    schema: Schema = json.loads(resources.schema(name).read_text(encoding="utf-8"))
    return schema


def schema_faults(tree: Tree, schema: Schema, *, in_full: bool = False) -> tuple[Fault, ...]:
    """Every way in which the tree is not as the schema asks.

    in_full: ask the full validator even where the quick walk finds nothing.
    Fails: FB130 to FB137.
    """
    plain = to_plain(tree)
    if fits(plain, schema) and not in_full:
        return ()
    from furbelow.s1_read.schema_report import reported

    return reported(tree, plain, schema)
