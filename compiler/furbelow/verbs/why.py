"""`furbelow why`: say where a number comes from."""

from __future__ import annotations

import argparse

from furbelow.verbs.exits import DONE

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow why larkspur.yaml flounce.cut_depth --size M
  furbelow why larkspur.yaml weight --size M
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("why", parents=parents, help="say where a number comes from", epilog=_EPILOG)
    parser.add_argument("spec", metavar="SPEC", help="the file of the garment")
    parser.add_argument("name", metavar="NAME", help="such as flounce.cut_depth, or weight")
    parser.add_argument("--format", choices=("text", "markdown", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_why)


def _why(options: argparse.Namespace) -> int:
    from furbelow.order.explained import explained
    from furbelow.s2_solve.why import why
    from furbelow.s6_write.pages.why_text import WhyText
    from furbelow.verbs.reading import Reader, asked

    reader = Reader(options)
    order = reader.one_order(asked(options))
    numbers = explained(order, options.name)
    if numbers.value is None:
        reader.stop(numbers.faults)
    reason = why(numbers.value, options.name)
    if reason.value is None:
        reader.stop(reason.faults, by_call=True)
    told = WhyText(numbers.value, order.room)
    if options.format == "json":
        reader.print_json(told.data(reason.value))
    else:
        print(told.markdown(reason.value) if options.format == "markdown" else told.text(reason.value))
    return DONE
