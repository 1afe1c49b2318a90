"""The command `furbelow`: its verbs and their exit codes.

Only argparse is loaded before a verb is known, so that help comes at once.
"""

from __future__ import annotations

import argparse
import gc
import os
import sys
from contextlib import suppress
from functools import partial
from importlib import import_module
from typing import Any, Never

from furbelow import __version__
from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE, OUR_BUG, SPEC_AT_FAULT, STOPPED, WRONG_USE
from furbelow.verbs.outlet import outlets

# In the order of the help. Each is a module of its own beside this one.
_VERBS = (
    *("check", "make", "cutting", "why", "fit", "amend", "swatch", "compare"),
    *("words", "explain-code", "start", "fmt", "preview"),
)

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow check larkspur.yaml
  furbelow make larkspur.yaml --size M --out guide
  furbelow make larkspur.yaml --wearer class.yaml --set layers=3 --out class
  furbelow cutting larkspur.yaml --size M --most-sections 1
  furbelow why larkspur.yaml flounce.cut_depth --size M

exit codes: 0 done, 1 the spec is at fault or something can't be written, 2 wrong use, 3 our bug, 130 stopped
"""


def main(arguments: list[str] | None = None) -> Never:
    """Runs one verb and leaves with its exit code."""
    # A call makes values that live until it ends, and hardly a circle, so these are looked for when there are twice as many
    # values as in a class of thirty.
    gc.set_threshold(500_000, 50, 50)
    code = run(sys.argv[1:] if arguments is None else arguments)
    gc.freeze()  # or Python would look for circles twice as it ends, to free memory that is given back anyway
    sys.exit(code)


def run(arguments: list[str]) -> int:
    """The exit code of one call."""
    with outlets() as answer:
        parser = parser_for(arguments)
        if "_ARGCOMPLETE" in os.environ:  # a shell asks how the line may go on
            _complete(parser)
        options = parser.parse_args(arguments)
        code, said = _run(options)
        if said:
            print(f"furbelow: {said}", file=sys.stderr)
        if getattr(options, "format", "") == "json" and not answer.used:
            from furbelow.diagnose.report_json import render_json

            # Who asked for JSON gets it, however early the verb ended.
            print(render_json(getattr(options, "told", ()), {"verb": options.called, "said": said}), end="")
        answer.flush()
    return SPEC_AT_FAULT if code == DONE and answer.lost else code


def _run(options: argparse.Namespace) -> tuple[int, str]:
    """The exit code, and what is to be said of it beyond the faults that are told already."""
    try:
        code: int = options.verb(options)
    except Unread as unread:
        return WRONG_USE if unread.by_call else SPEC_AT_FAULT, unread.said
    except KeyboardInterrupt:
        return STOPPED, "stopped; each file that was written is whole"
    except Exception as error:  # a fault of ours must still be told in words
        if getattr(options, "debug", False):
            raise
        told = f"this is our bug, not yours: {type(error).__name__}: {error}"
        return (
            OUR_BUG,
            f"{told}\n  Each file that was written before it is whole. Run the same command with --debug and report what it prints.",
        )
    return code, ""


def _complete(parser: argparse.ArgumentParser) -> None:
    """Answers the shell and ends, where `furbelow[completion]` is installed."""
    with suppress(ImportError):
        from argcomplete import autocomplete

        autocomplete(parser)


_FORMATTER = argparse.RawDescriptionHelpFormatter


class _Parser(argparse.ArgumentParser):
    """Of the command, and of each verb.

    argparse makes a formatter for every option, to check it, and each asks how wide the terminal is, by a module that is
    heavy to load. So only help and usage get one that asks.
    """

    def __init__(self, **told: Any) -> None:
        super().__init__(formatter_class=partial(_FORMATTER, width=80), **told)

    def format_help(self) -> str:
        self.formatter_class = _FORMATTER
        return super().format_help()

    def format_usage(self) -> str:
        self.formatter_class = _FORMATTER
        return super().format_usage()


def parser_for(arguments: list[str]) -> argparse.ArgumentParser:
    """The parser of the verb that is called; of all verbs where none is, for help, slips and the manual page."""
    common = _Parser(add_help=False)
    # Without a default, or that of the verb would undo what stands before the verb.
    common.add_argument(
        "--debug", action="store_true", default=argparse.SUPPRESS, help="show a traceback for a bug of ours"
    )
    body = _Parser(add_help=False)
    who = body.add_mutually_exclusive_group()
    who.add_argument("--size", metavar="NAME", help="a size named in the spec")
    who.add_argument(
        "--wearer", "--class", dest="wearer", metavar="FILE", help="a file with the measures of one wearer or a class"
    )
    body.add_argument(
        "--only", metavar="NAME", action="append", default=[], help="this wearer of a class; may be given several times"
    )
    body.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    body.add_argument(
        "--language",
        metavar="CODE",
        help="the language of the guide, such as en; the wearer, room or spec may say it too; `make` takes several, as en,de",
    )
    body.add_argument(
        "--set", metavar="CHOICE=VALUE", action="append", default=[], dest="choices", help="make a choice"
    )

    parser = _Parser(
        prog="furbelow",
        description="From a garment spec to the guide that someone sews from.",
        epilog=_EPILOG,
        parents=[common],
    )
    parser.add_argument("--version", action="version", version=f"furbelow {__version__}")
    verbs = parser.add_subparsers(title="verbs", dest="called", required=True, metavar="VERB")
    called = [word for word in arguments if word in _VERBS][:1]
    for verb in called or _VERBS:
        import_module(f"furbelow.verbs.{verb.replace('-', '_')}").add(verbs, common, body)
    return parser
