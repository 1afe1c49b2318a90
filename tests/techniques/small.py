"""Small garments for the tests of techniques: a few pieces and steps, read, solved and rehearsed as any spec is."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from furbelow.diagnose.fault import Fault
from furbelow.garment.bench import Bench, laid_out
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.solved import Solved
from furbelow.garment.technique import Performed
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import solved
from furbelow.order.order import Order
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s3_rehearse.rehearse import rehearse
from furbelow.s3_rehearse.run import Run
from furbelow.s6_write.words.said_step import SaidStep
from furbelow.techniques import technique_of

from tests.said import said

INCH = Fraction("25.4")

MATERIALS = """\
  lawn: {kind: cloth, fibre: cotton, width: 140 cm, weight: 80 g/m2, ravels: yes}
  denim: {kind: cloth, fibre: cotton, width: 140 cm, weight: 340 g/m2, ravels: yes}
  net: {kind: cloth, fibre: nylon, width: 140 cm, weight: 25 g/m2, ravels: no, right side: no}
  tape: {kind: trim, width: 16 mm, about: seam tape}
  thin_tape: {kind: trim, width: 6 mm}
  beading: {kind: trim, width: 25 mm, about: beading lace}
  ribbon: {kind: trim, width: 10 mm, about: satin ribbon}
  cord: {kind: trim, width: 5 mm, about: cotton cord}
  bone: {kind: bone, width: 7 mm, about: covered boning}
  elastic: {kind: elastic, width: 20 mm, stretch: 100%}
  fine_elastic: {kind: elastic, width: 1 mm, stretch: 150%, about: elastic thread}
"""


def spec_text(
    pieces: str,
    steps: str,
    *,
    over: str = "hip_girth",
    units: str = "metric",
    worn: str = "",
    own: str = "",
    materials: str = "",
    hips: str = "104 cm",
) -> str:
    """A spec in YAML. pieces and steps: its rows as a maker writes them, one a line; own: further sections; materials: further ones."""
    return f"""\
furbelow: 1
title: Small test garment
units: {units}
rounding: 0 mm
body:
  waist_girth: {{from: 40 cm, to: 140 cm}}
  hip_girth: {{from: 40 cm, to: 150 cm}}
sizes:
  M: {{waist_girth: 78 cm, hip_girth: {hips}}}
worn: {{from: waist, over: {over}, ease: 5 cm, held by: the test{worn}}}
materials:
{MATERIALS}{materials}pieces:
{indented(pieces)}
steps:
{indented(steps)}
{own}"""


def indented(rows: str) -> str:
    return "\n".join(f"  {row.strip()}" for row in rows.strip().splitlines())


@dataclass(frozen=True)
class Worked:
    """What became of a small garment: its numbers, the steps as carried out, and all faults that are no warnings."""

    solved: Solved
    performed: Sequence[Performed]
    bench: Bench
    faults: Sequence[Fault]
    warnings: Sequence[Fault]
    room: Workroom

    @property
    def codes(self) -> list[str]:
        return [fault.code for fault in self.faults]

    def tellings(self) -> list[SaidStep]:
        say = Phrasing(self.solved, self.room)
        return [said(done, say) for done in self.performed]

    def words(self) -> str:
        """All that the guide says, one sentence list a line."""
        return "\n".join(
            " ".join(
                [told.title, told.aim, *(t for _, t in told.cautions)]
                + [part for a in told.actions for part in (a.text, a.check, a.tolerance, a.remedy)]
            )
            for told in self.tellings()
        )


def work(
    pieces: str,
    steps: str,
    *,
    room: Workroom | None = None,
    over: str = "hip_girth",
    units: str = "metric",
    worn: str = "",
    own: str = "",
    materials: str = "",
    hips: str = "104 cm",
) -> Worked:
    """The garment worked for size M at a home table. Fails the test where the spec can't be read or solved."""
    text = spec_text(pieces, steps, over=over, units=units, worn=worn, own=own, materials=materials, hips=hips)
    room = room or Workroom()
    read = read_spec(("small.yaml", text.encode()))
    assert read.value is not None, [fault.headline for fault in read.faults]
    body = size_body(read.value, "M")
    assert body.value is not None
    numbers = solved(Order(read.value, "size M", body.value, {}, room))
    assert numbers.value is not None, [fault.headline for fault in numbers.faults]
    assert numbers.ok, [fault.headline for fault in numbers.faults]
    rehearsed = rehearse(numbers.value, room, technique_of)
    if rehearsed.value is not None:
        run = rehearsed.value.run
    else:
        bench, performed = laid_out(numbers.value), []
        for step in numbers.value.steps:
            done = technique_of(step.written).perform(bench, step, numbers.value, room)
            performed.append(done)
            bench = done.after
            if done.refused:
                break
        run = Run(numbers.value, room, tuple(performed), bench)
    faults = [fault for fault in rehearsed.faults if fault.is_error]
    warnings = [fault for fault in rehearsed.faults if not fault.is_error]
    worked = Worked(numbers.value, run.performed, run.final, faults, warnings, room)
    if rehearsed.value is not None:
        told_well(worked)
    return worked


def sound(pieces: str, steps: str, **how: object) -> Worked:
    """A garment that must be sound: every proof holds."""
    worked = work(pieces, steps, **how)  # type: ignore[arg-type]
    assert not worked.faults, [f"{fault.code} {fault.headline}" for fault in worked.faults]
    return worked


def refused(code: str, pieces: str, steps: str, **how: object) -> Fault:
    """The one fault that a garment must be refused for."""
    worked = work(pieces, steps, **how)  # type: ignore[arg-type]
    assert worked.codes == [code], [f"{fault.code} {fault.headline}" for fault in worked.faults]
    fault = worked.faults[0]
    assert fault.help
    assert fault.headline[0] in "`0123456789" or fault.headline[0].islower() or fault.headline.startswith("French")
    assert not fault.headline.endswith(".")
    return fault


def told_well(worked: Worked) -> None:
    """Every sentence of the guide is one: it begins and ends as sentences do, and no place in it stayed empty."""
    for told in worked.tellings():
        assert told.title
        assert told.title[0].isupper()
        for action in told.actions:
            assert re.match(r"[A-Z]", action.text), action.text
            assert re.search(r"[.]$", action.text), action.text
            for each in (action.text, action.check, action.tolerance, action.remedy, told.aim):
                assert not re.search(r"None|Fraction|\{|\}|  | ,|\.\.", each), each
            if action.tolerance:
                assert action.check, action.text
                assert action.remedy, action.text
