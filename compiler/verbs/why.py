"""`furbelow why`: say where a number comes from."""

from __future__ import annotations

import argparse

from compiler.verbs.reading import DONE, SPEC_AT_FAULT, WRONG_USE, Reader


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("why", parents=parents, help="say where a number comes from")
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("name", metavar="NAME", help="such as flounce.cut_depth, or weight")
    parser.add_argument("--format", choices=("text", "markdown", "json"), default="text")
    parser.set_defaults(verb=_why)


def _why(told: argparse.Namespace) -> int:
    import json

    from compiler.pipeline import solved
    from compiler.s2_solve.why import as_data, as_markdown, as_text, why

    reader = Reader()
    order = reader.orders(told, first_only=True)[0]
    numbers = solved(order)
    if numbers.value is None:
        reader.tell(numbers.faults)
        return SPEC_AT_FAULT
    found = numbers.value
    if told.name not in found.values:
        # What is only known of the finished garment: its weight, its hems. It has to be rehearsed for that.
        from compiler.pipeline import prove
        from compiler.s3_rehearse.whole import reasons_of

        proved = prove(order)
        if proved.value is not None:
            found = found._replace(values={**reasons_of(proved.value.run), **found.values})
    reason = why(found, told.name)
    if reason.value is None:
        reader.tell(reason.faults)
        return WRONG_USE
    if told.format == "json":
        print(json.dumps(as_data(reason.value), indent=2, ensure_ascii=False))
    else:
        print((as_markdown if told.format == "markdown" else as_text)(reason.value))
    return DONE
