"""The bill of materials as a CSV file that opens safely in a spreadsheet."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable, Sequence
from decimal import Decimal
from fractions import Fraction
from math import ceil, floor

from furbelow.diagnose.unseen import without_unseen
from furbelow.named import NamedTuple

COLUMNS: tuple[str, ...] = (
    "bom-name",
    "bom-code",
    "bom-consumption",
    "bom-supplier",
    "bom-cost",
    "bom-specification",
    "bom-colour",
    "bom-size",
    "bom-placement",
)
"""The messages of the headings. Source: textileindustry.net, Bill of material (BOM) in the apparel industry."""

# A spreadsheet takes a cell that begins so for a formula and runs it; some pass over what stands before it unseen, and
# take the wide forms for the plain ones. Source: OWASP, CSV Injection.
_FORMULA = re.compile(r"\s*[=+\-@\uff1d\uff0b\uff0d\uff20\u2212]|[\t\r\n]")


class MaterialRow(NamedTuple):
    """One material of one garment.

    consumption: per garment, in `unit` as it is printed ("m", "g", "pieces"). cost: of that consumption, in
    `currency`; None when no price is known.
    """

    name: str
    code: str
    consumption: Fraction
    unit: str
    supplier: str = ""
    cost: Fraction | None = None
    currency: str = ""
    specification: str = ""
    colour: str = ""
    size: str = ""
    placement: str = ""


def materials_csv(rows: Iterable[MaterialRow], headings: Sequence[str], point: str) -> bytes:
    """The rows as CSV: a header with these headings, CRLF line ends, quotes where needed (RFC 4180), UTF-8 without a mark.

    point: the decimal sign. Consumption is rounded up to 1/1000 of its unit, cost to the nearest 1/100, halves up.
    A cell that a spreadsheet would run as a formula gets an apostrophe in front.
    """
    text = io.StringIO(newline="")
    writer = csv.writer(text, lineterminator="\r\n")
    writer.writerow(headings)
    for row in rows:
        writer.writerow([_guarded(cell) for cell in _cells(row, point)])
    return text.getvalue().encode("utf-8")


def _cells(row: MaterialRow, point: str) -> tuple[str, ...]:
    thousandths = Decimal(ceil(row.consumption * 1000)).scaleb(-3).normalize()
    consumption = f"{thousandths:f} {row.unit}".rstrip().replace(".", point)
    if row.cost is None:
        cost = ""
    else:
        cents = Decimal(floor(row.cost * 100 + Fraction(1, 2))).scaleb(-2)
        cost = f"{cents:.2f} {row.currency}".rstrip().replace(".", point)
    return (
        row.name,
        row.code,
        consumption,
        row.supplier,
        cost,
        row.specification,
        row.colour,
        row.size,
        row.placement,
    )


def _guarded(cell: str) -> str:
    cell = "\r".join(map(without_unseen, cell.split("\r")))
    return f"'{cell}" if _FORMULA.match(cell) else cell
