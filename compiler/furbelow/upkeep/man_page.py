"""The manual page, from the same parsers as `--help`.

`python -m furbelow.upkeep.reference` writes it to templates/furbelow.1; the wheel brings it to share/man/man1.
Source of the macros: man(7), groff 1.23.
"""

from __future__ import annotations

import argparse
import re
from collections.abc import Iterator
from pathlib import Path

from furbelow import __version__
from furbelow.verbs.command import parser_for

PAGE = Path(__file__).parents[3] / "templates" / "furbelow.1"

_ENVIRONMENT = {
    "NO_COLOR": "faults are told without colours",
    "FORCE_COLOR": "faults are told in colours, into a file too",
    "SOURCE_DATE_EPOCH": "the time that stands in PDF files, in seconds since 1970",
}


def man_page() -> str:
    parser = parser_for([])
    return "\n".join(_lines(parser)) + "\n"


def _lines(parser: argparse.ArgumentParser) -> Iterator[str]:
    yield '.\\" Written by `python -m furbelow.upkeep.reference`; change the parsers of the verbs, not this page.'
    yield f'.TH FURBELOW 1 "" "furbelow {__version__}" "User commands"'
    yield ".SH NAME"
    yield f"furbelow \\- {_said(str(parser.description)[0].lower() + str(parser.description)[1:].rstrip('.'))}"
    yield ".SH SYNOPSIS"
    yield ".B furbelow"
    yield "\\fIVERB\\fR [\\fIOPTION\\fR ...] [\\fIFILE\\fR ...]"
    yield ".SH OPTIONS"
    verbs = None
    for action in parser._actions:
        if isinstance(action, argparse._SubParsersAction):
            verbs = action
        else:
            yield from _option(action)
    assert verbs is not None
    yield ".SH VERBS"
    for told in verbs._choices_actions:
        yield from _verb(told.dest, str(told.help), verbs.choices[told.dest], parser)
    yield ".SH ENVIRONMENT"
    for name, what in _ENVIRONMENT.items():
        yield from (".TP", f".B {name}", _said(what))
    yield ".SH EXAMPLES AND EXIT STATUS"
    yield from _as_it_stands(str(parser.epilog))


def _verb(name: str, help_: str, parser: argparse.ArgumentParser, of_all: argparse.ArgumentParser) -> Iterator[str]:
    common = {option for action in of_all._actions for option in action.option_strings}
    yield f'.SS "furbelow {_said(name)}"'
    yield _said(f"{help_[0].upper()}{help_[1:]}.")
    for action in parser._actions:
        if common.isdisjoint(action.option_strings):
            yield from _option(action)
    yield ".PP"
    yield from _as_it_stands(str(parser.epilog))


def _option(action: argparse.Action) -> Iterator[str]:
    """One option or argument with its help."""
    yield ".TP"
    value = "" if action.nargs == 0 else f" \\fI{_said(_value(action))}\\fR"
    if action.option_strings:
        yield ", ".join(f"\\fB{_said(each)}\\fR{value}" for each in action.option_strings)
    else:
        yield value.strip()
    yield _said(str(action.help))


def _value(action: argparse.Action) -> str:
    if isinstance(action.metavar, str):
        return action.metavar
    return "|".join(map(str, action.choices)) if action.choices else action.dest.upper()


def _as_it_stands(text: str) -> Iterator[str]:
    yield from (".nf", *(_said(line) for line in text.strip("\n").split("\n")), ".fi")


def _said(text: str) -> str:
    """Text in which nothing is taken for a macro, and a hyphen can be copied into a shell."""
    return re.sub(r"^([.'])", r"\\&\1", text.replace("\\", "\\e").replace("-", "\\-"))
