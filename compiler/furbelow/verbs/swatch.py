"""`furbelow swatch`: from test strips to the setting of the pleating attachment, and to the stiffness of a cloth."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from furbelow.verbs.exits import DONE, SPEC_AT_FAULT

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from fractions import Fraction

    from furbelow.order.read_order import OrderReader
    from furbelow.swatch.overhang import Overhang
    from furbelow.swatch.read_swatch import Strip
    from furbelow.verbs.reading import Reader

_EPILOG = """\
examples, after `furbelow start larkspur --from larkspur`:
  furbelow swatch swatches.yaml
  furbelow swatch swatches.yaml --cloth net --ratio 2
  furbelow swatch swatches.yaml --cloth net --into workroom.yaml

how stiff a cloth is, with a ruler and the edge of a table:
  cut a strip 25 mm by 20 cm, lay it square to the edge and a ruler on it;
  push both out until the strip hangs well down, and write under `stiffness`
  how much of it is beyond the edge and how far its tip hangs down
"""


def add(verbs: argparse._SubParsersAction[argparse.ArgumentParser], *parents: argparse.ArgumentParser) -> None:
    parser = verbs.add_parser(
        "swatch",
        parents=parents[:1],
        help="find the setting of the pleating attachment, or how stiff a cloth is, from test strips",
        epilog=_EPILOG,
    )
    parser.add_argument("file", metavar="FILE", help="the strips, cloth by cloth")
    parser.add_argument("--cloth", metavar="NAME", help="only this cloth")
    parser.add_argument("--ratio", metavar="NUMBER", help="the fullness wanted: 2 takes the cloth to half")
    parser.add_argument("--stitch", metavar="LENGTH", help="the stitch to sew with; else that of most strips")
    parser.add_argument("--every", metavar="NUMBER", default="1", help="pleat after so many stitches; else after each")
    parser.add_argument("--into", metavar="WORKROOM", help="write the marks of --cloth into this workroom file")
    parser.add_argument("--format", choices=("text", "json"), default="text", help="how the answer is told")
    parser.set_defaults(verb=_swatch)


def _swatch(options: argparse.Namespace) -> int:
    from pathlib import Path

    from furbelow.swatch.read_swatch import read_swatches
    from furbelow.verbs.reading import Reader

    reader = Reader(options)
    reader.keep(options.file)
    staged = read_swatches(Path(options.file))
    if staged.value is None:
        reader.stop(staged.faults)
    gathered, hung = staged.value
    if options.cloth is not None:
        _known(reader, options, {**gathered, **hung})
        gathered = {name: gathered[name] for name in gathered if name == options.cloth}
        hung = {name: hung[name] for name in hung if name == options.cloth}
    data: dict[str, dict[str, object]] = {}
    sound = _gathered(reader, options, gathered, data)
    sound = _hung(reader, options, hung, data) and sound
    if options.format == "json":
        reader.print_json(data)
    return DONE if sound else SPEC_AT_FAULT


def _known(reader: Reader, options: argparse.Namespace, cloths: Mapping[str, object]) -> None:
    from furbelow.diagnose.fault import Fault
    from furbelow.diagnose.nearest import nearest

    if options.cloth not in cloths:
        near = nearest(options.cloth, cloths)
        help_ = f"did you mean `{near[0]}`?" if near else f"the cloths are {', '.join(cloths)}"
        reader.stop([Fault("FB722", f"{options.file} has no strips of `{options.cloth}`", help=help_)], by_call=True)


def _hung(
    reader: Reader,
    options: argparse.Namespace,
    cloths: Mapping[str, Sequence[Overhang]],
    data: dict[str, dict[str, object]],
) -> bool:
    """How stiff each cloth is; False where one of its strips does not tell it."""
    from furbelow.swatch.overhang import stiffness
    from furbelow.swatch.report import stiffness_data, stiffness_text

    told = {}
    for cloth, strips in cloths.items():
        found = stiffness(strips)
        reader.tell(found.faults)
        if found.value is not None:
            told[cloth] = stiffness_data(found.value)
            if options.format == "text":
                print("\n".join(stiffness_text(cloth, strips, found.value)))
    if cloths:
        data["stiffness"] = {**told}
    return len(told) == len(cloths)


def _gathered(
    reader: Reader,
    options: argparse.Namespace,
    cloths: Mapping[str, Sequence[Strip]],
    data: dict[str, dict[str, object]],
) -> bool:
    """The setting of the attachment for each cloth; False where its strips give none."""
    from collections import Counter
    from pathlib import Path

    from furbelow.diagnose.fault import Fault
    from furbelow.measure.units import LENGTH, PLAIN
    from furbelow.swatch.into_workroom import write_into
    from furbelow.swatch.report import as_data, as_text, workroom_line
    from furbelow.swatch.take_up import setting_for, take_up

    if options.into and len(cloths) != 1:
        headline = f"a workroom file holds the marks of one cloth, and these are strips of {len(cloths)}"
        reader.stop([Fault("FB722", headline, help="say which with --cloth")], by_call=True)
    ratio, every = _amount(reader, "--ratio", options.ratio, PLAIN), _amount(reader, "--every", options.every, PLAIN)
    asked_stitch = _amount(reader, "--stitch", options.stitch, LENGTH)
    assert every is not None
    failed, told = False, {}
    for cloth, strips in cloths.items():
        line = take_up(cloth, strips)
        reader.tell(line.faults)
        if line.value is None:
            failed = True
            continue
        stitch = asked_stitch or Counter(strip.stitch for strip in strips).most_common(1)[0][0]
        setting = None
        if ratio is not None:
            found = setting_for(cloth, line.value, ratio, every, stitch)
            reader.tell(found.faults)
            setting, failed = found.value, failed or found.value is None
        told[cloth] = as_data(line.value, every, stitch, setting)
        if options.format == "text":
            print("\n".join(as_text(cloth, line.value, every, stitch, setting)))
            print(f"  for the workroom file, every stitch: {workroom_line(line.value, stitch)}")
        if options.into:
            written = write_into(Path(options.into), workroom_line(line.value, stitch))
            reader.tell(written.faults)
            failed = failed or written.value is None
            if written.value is not None and options.format == "text":
                print(f"  written into {options.into}")
    if cloths:
        data["cloths"] = {**told}
    return not failed


def _amount(reader: OrderReader, option: str, text: str | None, dims: object) -> Fraction | None:
    from furbelow.diagnose.fault import Fault
    from furbelow.measure.quantity import QuantityFault, parse_quantity
    from furbelow.measure.units import PLAIN

    if text is None:
        return None
    read = parse_quantity(text)
    if isinstance(read, QuantityFault):
        reader.stop([Fault("FB120", f"`{option} {text}`: {read.message}", help=read.help)], by_call=True)
    least = 1 if option in ("--ratio", "--every") else 0
    if read.dims != dims or read.value <= 0 or read.value < least:
        wanted = f"a number of {least} or more" if dims == PLAIN else "a length such as 3 mm"
        reader.stop([Fault("FB121", f"`{option} {text}` is not {wanted}")], by_call=True)
    return read.value
