"""`furbelow why`: say where a number comes from."""

from __future__ import annotations

import argparse

from furbelow.verbs.reading import DONE, SPEC_AT_FAULT, WRONG_USE, Reader


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser("why", parents=parents, help="say where a number comes from")
    parser.add_argument("spec", metavar="SPEC")
    parser.add_argument("name", metavar="NAME", help="such as flounce.cut_depth, or weight")
    parser.add_argument("--format", choices=("text", "markdown", "json"), default="text")
    parser.set_defaults(verb=_why)


def _why(options: argparse.Namespace) -> int:
    import json

    from furbelow.order.chain import solved
    from furbelow.s2_solve.why import as_data, as_markdown, as_text, why

    reader = Reader()
    order = reader.orders(options, first_only=True)[0]
    numbers = solved(order)
    if numbers.value is None:
        reader.tell(numbers.faults)
        return SPEC_AT_FAULT
    found = numbers.value
    if options.name not in found.values:
        # What is only known of the finished garment: its weight, its hems. It has to be rehearsed for that.
        from furbelow.order.chain import prove
        from furbelow.s3_rehearse.finished_garment import reasons_of

        proved = prove(order)
        if proved.value is not None:
            found = found._replace(values={**reasons_of(proved.value.run), **found.values})
    reason = why(found, options.name)
    if reason.value is None:
        reader.tell(reason.faults)
        return WRONG_USE
    if options.format == "json":
        print(json.dumps(as_data(reason.value), indent=2, ensure_ascii=False))
    else:
        print((as_markdown if options.format == "markdown" else as_text)(reason.value))
    return DONE
