"""The command `furbelow`: its verbs and their exit codes.

Only argparse is loaded before a verb is known, so that help comes at once.
"""

from __future__ import annotations

import argparse
import sys
from typing import Never

from compiler import __version__
from compiler.verbs import amend, check, compare, explain_code, fit, make, preview, start, swatch, why
from compiler.verbs.reading import DONE, OUR_BUG, WRONG_USE, Stop

_VERBS = (check, make, why, fit, amend, swatch, compare, explain_code, start, preview)

_EPILOG = """\
examples:
  furbelow check specs/larkspur.yaml
  furbelow make specs/larkspur.yaml --size M --out guide
  furbelow make specs/larkspur.yaml --wearer specs/wearers/bo.yaml --set layers=3 --out guide
  furbelow why specs/larkspur.yaml flounce.cut_depth --size M

exit codes: 0 done, 1 the spec is at fault, 2 wrong use, 3 our bug
"""


def main(arguments: list[str] | None = None) -> Never:
    """Runs one verb and leaves with its exit code."""
    sys.exit(run(sys.argv[1:] if arguments is None else arguments))


def run(arguments: list[str]) -> int:
    """The exit code of one call."""
    told = _parser().parse_args(arguments)
    try:
        code: int = told.verb(told)
    except Stop as stop:
        return stop.code
    except BrokenPipeError:
        return DONE
    except KeyboardInterrupt:
        print("furbelow: stopped; nothing half written", file=sys.stderr)
        return WRONG_USE
    except Exception as error:  # a fault of ours must still be told in words
        if told.debug:
            raise
        print(
            f"furbelow: this is our bug, not yours: {type(error).__name__}: {error}\n"
            "  Nothing was written. Run the same command with --debug and report what it prints.",
            file=sys.stderr,
        )
        return OUR_BUG
    return code


def _parser() -> argparse.ArgumentParser:
    common = argparse.ArgumentParser(add_help=False)
    common.add_argument("--debug", action="store_true", help="show a traceback for a bug of ours")
    body = argparse.ArgumentParser(add_help=False)
    who = body.add_mutually_exclusive_group()
    who.add_argument("--size", metavar="NAME", help="a size named in the spec")
    who.add_argument(
        "--wearer", "--class", dest="wearer", metavar="FILE", help="a file with the measures of one wearer or a class"
    )
    body.add_argument("--workroom", metavar="FILE", help="a file with the machines, habits and prices of the room")
    body.add_argument(
        "--set", metavar="CHOICE=VALUE", action="append", default=[], dest="choices", help="make a choice"
    )

    parser = argparse.ArgumentParser(
        prog="furbelow",
        description="From a garment spec to the guide that someone sews from.",
        epilog=_EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        parents=[common],
    )
    parser.add_argument("--version", action="version", version=f"furbelow {__version__}")
    verbs = parser.add_subparsers(title="verbs", required=True, metavar="VERB")
    for verb in _VERBS:
        verb.add(verbs, common, body)
    return parser
