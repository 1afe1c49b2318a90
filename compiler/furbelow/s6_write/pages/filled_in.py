"""A template filled in, and let go."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:  # loaded by who fills the first template in
    from jinja2 import Environment
    from jinja2.runtime import Context


def filled_in(pages: Environment, name: str, /, **values: object) -> str:
    """The text of a template with these values, none of which is kept.

    A macro holds the context of its template, which holds the macro: with every page its guide would go round in a circle, and
    stay in memory until Python looks for circles. pages: from `compiled_templates`, whose contexts list themselves.
    """
    contexts: list[Context] = []
    try:
        return pages.get_template(name).render(**values, contexts=contexts)
    finally:
        while contexts:
            contexts.pop().vars.clear()
