"""The command `furbelow`: its verbs and their exit codes.

Only argparse is loaded before a verb is known, so that help comes at once.
"""

from __future__ import annotations

import argparse
import os
import sys
from importlib import import_module
from typing import Any, Never

from furbelow import __version__
from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE, OUR_BUG, SPEC_AT_FAULT, STOPPED, WRONG_USE
from furbelow.verbs.outlet import outlets

# In the order of the help. Each is a module of its own beside this one.
_VERBS = (
    *("check", "make", "cutting", "why", "fit", "amend", "swatch", "compare"),
    *("words", "explain-code", "start", "preview"),
)

_EPILOG = """\
examples:
  furbelow check specs/larkspur.yaml
  furbelow make specs/larkspur.yaml --size M --out guide
  furbelow make specs/larkspur.yaml --wearer specs/wearers/bo.yaml --set layers=3 --out guide
  furbelow cutting specs/larkspur.yaml --size M --most-sections 1
  furbelow why specs/larkspur.yaml flounce.cut_depth --size M

exit codes: 0 done, 1 the spec is at fault or something can't be written, 2 wrong use, 3 our bug, 130 stopped
"""


def main(arguments: list[str] | None = None) -> Never:
    """Runs one verb and leaves with its exit code."""
    sys.exit(run(sys.argv[1:] if arguments is None else arguments))


def run(arguments: list[str]) -> int:
    """The exit code of one call."""
    with outlets() as answer:
        code = _run(arguments)
        answer.flush()
    return SPEC_AT_FAULT if code == DONE and answer.lost else code


def _run(arguments: list[str]) -> int:
    options = _parser(arguments).parse_args(arguments)
    try:
        code: int = options.verb(options)
    except Unread as unread:
        if unread.said:
            print(f"furbelow: {unread.said}", file=sys.stderr)
        return WRONG_USE if unread.by_call else SPEC_AT_FAULT
    except KeyboardInterrupt:
        print("furbelow: stopped; each file that was written is whole", file=sys.stderr)
        return STOPPED
    except Exception as error:  # a fault of ours must still be told in words
        if options.debug:
            raise
        print(
            f"furbelow: this is our bug, not yours: {type(error).__name__}: {error}\n"
            "  Each file that was written before it is whole. Run the same command with --debug and report what it prints.",
            file=sys.stderr,
        )
        return OUR_BUG
    return code


class _Help(argparse.RawDescriptionHelpFormatter):
    """As wide as the terminal. argparse would load `shutil` to know it, for every parser and whether help is asked or not."""

    def __init__(self, prog: str) -> None:
        try:
            columns = int(os.environ.get("COLUMNS", 0)) or os.get_terminal_size().columns
        except (ValueError, OSError):
            columns = 80
        super().__init__(prog, width=columns - 2)


class _Parser(argparse.ArgumentParser):
    """Of the command, and of each verb."""

    def __init__(self, **told: Any) -> None:
        super().__init__(formatter_class=_Help, **told)


def _parser(arguments: list[str]) -> argparse.ArgumentParser:
    """The parser of the verb that is called; of all verbs where none is, for the help and for slips."""
    common = _Parser(add_help=False)
    common.add_argument("--debug", action="store_true", help="show a traceback for a bug of ours")
    body = _Parser(add_help=False)
    who = body.add_mutually_exclusive_group()
    who.add_argument("--size", metavar="NAME", help="a size named in the spec")
    who.add_argument(
        "--wearer", "--class", dest="wearer", metavar="FILE", help="a file with the measures of one wearer or a class"
    )
    body.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    body.add_argument(
        "--language",
        metavar="CODE",
        help="the language of the guide, such as en; the wearer, room or spec may say it too",
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
    verbs = parser.add_subparsers(title="verbs", required=True, metavar="VERB")
    called = [word for word in arguments if word in _VERBS][:1]
    for verb in called or _VERBS:
        import_module(f"furbelow.verbs.{verb.replace('-', '_')}").add(verbs, common, body)
    return parser
