"""`furbelow explain-code`: what a fault code means, why it matters, an example and a mend."""

from __future__ import annotations

import argparse
import sys

from furbelow.verbs.exits import DONE, WRONG_USE

_EPILOG = """\
examples:
  furbelow explain-code FB304
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("explain-code", parents=parents[:1], help="say what a fault code means", epilog=_EPILOG)
    parser.add_argument("code", metavar="CODE", nargs="?", help="such as FB304; without it, the list of all codes")
    parser.set_defaults(verb=_explain)


def _explain(options: argparse.Namespace) -> int:
    from furbelow.diagnose.code_pages import page
    from furbelow.diagnose.codes import CODES

    if options.code is None:
        print("\n".join(f"{code}  {meaning}" for code, meaning in sorted(CODES.items())))
        return DONE
    code = options.code.strip().upper()
    text = page(code)
    if text is None:
        print(
            f"furbelow: no fault has the code {options.code[:20]!r}; `furbelow explain-code` lists all", file=sys.stderr
        )
        return WRONG_USE
    print(text, end="")
    return DONE
