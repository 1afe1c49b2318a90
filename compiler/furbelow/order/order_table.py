"""A table of orders, for a shop: each row names the spec that it is made by, and a size of it or the measures of a body.

All that a roster may have stands in it too. A row whose spec can't be read is told and left out; the others go on.
"""

from __future__ import annotations

from collections.abc import Mapping

from furbelow.diagnose.fault import Fault, Label, Span
from furbelow.garment.spec import Spec, Word, Written
from furbelow.garment.wearer import Wearer
from furbelow.order.order import Order
from furbelow.order.read_order import Asked, OrderReader, beside, those_only
from furbelow.order.unread import Unread
from furbelow.s2_solve.body import size_body


def table_orders(reader: OrderReader, asked: Asked) -> list[Order]:
    """One order a row, in the order of the table.

    Fails: as a roster does; FB150 for a table without a column `spec`, FB151 for a row that names none or tells its
    body twice, FB165 for a spec that does not lie beside the table, FB214 for a size that its spec has not.
    """
    from furbelow.s1_read.read_wearers import read_wearers
    from furbelow.s1_read.roster import OF_AN_ORDER, known_of

    if asked.size is not None or asked.wearer is not None:
        said = f"{asked.spec} is a table of orders and says for whom each is: leave --size and --wearer out"
        raise Unread(by_call=True, said=said)
    choices, room, by_call = (
        reader.choices(asked.choices),
        reader.workroom(asked.workroom),
        reader.language(asked.language),
    )
    reader.keep(asked.spec)
    specs = _specs(reader, asked.spec)
    staged = read_wearers(asked.spec, known_of([each for each in specs.values() if each], OF_AN_ORDER))
    if staged.value is None:
        reader.stop(staged.faults)
    reader.tell(staged.faults)
    told: dict[tuple[str, str | None], Spec] = {}  # by the file and the language that is meant
    orders: list[Order] = []
    for each in those_only(staged.value, asked.only, asked.spec):
        if each.spec is None:
            reader.tell([Fault("FB151", f"the row of {each.name} names no spec", Label(each.span))])
            continue
        spec = specs.get(each.spec.text)
        if spec is None:
            continue  # why, is told
        if isinstance(body := _body(each, spec), Fault):
            reader.tell([body])
            continue
        works_in = room if each.workroom is None else reader.own_workroom(each.workroom)
        meant = by_call or each.language or works_in.language
        key = (spec.file, meant and meant.text)
        if key not in told:
            told[key] = reader.in_language(spec, meant)
        measures, own = body
        orders.append(
            Order(told[key], each.name, measures, {**own, **choices}, works_in, number=each.number, notes=each.notes)
        )
    if not orders:
        raise Unread(by_call=False)
    return orders


def _specs(reader: OrderReader, table: str) -> dict[str, Spec | None]:
    """The specs that the rows name, by what they write; nothing for one that can't be read. Each is read once."""
    from furbelow.s1_read.roster import SPEC, words_in
    from furbelow.s1_read.source import read_bytes

    _, content = read_bytes(table)
    if content.value is None:
        reader.stop(content.faults)
    named = words_in(content.value, table, SPEC)
    if named is None:
        said = "the table has no column `spec`, which says what each row is made by"
        help_ = "write the file of the garment in it, as it lies beside the table; for a class give --class FILE behind the spec"
        reader.stop([Fault("FB150", said, Label(Span.at_start(table)), help=help_)])
    found: dict[str, Spec | None] = {}
    for word in named:
        if word.text not in found:
            found[word.text] = _spec(reader, word)
        elif found[word.text] is None:
            reader.tell([_unread(word)])
    return found


def _spec(reader: OrderReader, word: Word) -> Spec | None:
    path = beside(word, "spec")
    if isinstance(path, Fault):
        reader.tell([path])
        return None
    spec, faults = reader.spec_and_faults(path)
    reader.tell(faults)
    if spec is None:
        reader.tell([_unread(word)])
    return spec


def _unread(word: Word) -> Fault:
    return Fault("FB151", f"the spec of this row, {word.text[:80]}, can't be read", Label(word.span))


def _body(each: Wearer, spec: Spec) -> tuple[Mapping[str, Written], Mapping[str, Written]] | Fault:
    """The measures and the choices of a row: of a size, or its own."""
    told = {**each.body, **each.choices}
    # A name may be a measure of one spec and a choice of another; a choice of others only is told when it is solved.
    choices = {
        name: written
        for name, written in told.items()
        if name in spec.choices or (name in each.choices and name not in spec.body)
    }
    measures = {name: written for name, written in told.items() if name not in choices}
    if each.size is None:
        return measures, choices
    if twice := next((name for name in measures if name in spec.body), None):
        said = f"the row of {each.name} tells the size {each.size.text[:20]}, and `{twice}` too"
        return Fault("FB151", said, Label(measures[twice].span), help="leave one of the two out")
    sized = size_body(spec, each.size.text)
    if sized.value is None:
        return sized.faults[0]._replace(primary=Label(each.size.span))
    return sized.value, choices
