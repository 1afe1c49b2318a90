"""`furbelow explain-code`: what a fault code means, why it matters, an example and a mend."""

from __future__ import annotations

import argparse

from furbelow.order.unread import Unread
from furbelow.verbs.exits import DONE

_EPILOG = """\
examples:
  furbelow explain-code FB304
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("explain-code", parents=parents[:1], help="say what a fault code means", epilog=_EPILOG)
    parser.add_argument("code", metavar="CODE", nargs="?", help="such as FB304; without it, the list of all codes")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_explain)


def _explain(options: argparse.Namespace) -> int:
    from furbelow.diagnose.code_pages import page
    from furbelow.diagnose.codes import CODES

    code = None if options.code is None else options.code.strip().upper()
    text = "" if code is None else page(code)
    if text is None:
        said = f"no fault has the code {options.code[:20]!r}; `furbelow explain-code` lists all"
        raise Unread(by_call=True, said=said)
    told = dict(sorted(CODES.items())) if code is None else {code: CODES[code]}
    if options.format == "json":
        from furbelow.verbs.reading import Reader

        Reader(options).print_json({"codes": told, **({"page": text} if text else {})})
    elif text:
        print(text, end="")
    else:
        print("\n".join(f"{each}  {meaning}" for each, meaning in told.items()))
    return DONE
