"""How to cut a section of lanes: the cloth drawn over tapes on the table, slit along them, and each lane cut up."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import takewhile

from furbelow.garment.limits import is_net
from furbelow.garment.message import Length, One, Own, Part, Supply, Things, Value, Values, flag
from furbelow.garment.tolerance import CUT_OFF
from furbelow.s4_cut.cut import Cutting
from furbelow.s4_cut.marks import as_taped_before, by_ruler, from_far_side, is_taped, table_marks, turned
from furbelow.s4_cut.plan import CuttingPlan, Lane, Section, tag_of
from furbelow.s4_cut.uncuttable import table_of
from furbelow.s6_write.words.said_step import SaidAction, said_action
from furbelow.s6_write.words.words import Words

TAPES = (  # the messages that say where the tapes lie
    "cutting-tapes-across-anew",
    "cutting-tapes-across",
    "cutting-tapes-along-anew",
    "cutting-tapes-along",
)
LANES_A_BREATH = 4  # more lanes in one sentence are not kept in mind
_LAYERS = ("flat", "fold", "upper", "under")


def lane_steps(
    cutting: Cutting, plan: CuttingPlan, number: int, cloth: str, words: Words, *, begun: bool
) -> tuple[list[SaidAction], list[SaidAction]]:
    """Laying section `number` of the cloth over the tapes, and cutting it. cloth: its name in the spec; begun: some of it is cut
    already, by another page."""
    section, net = plan.sections[number - 1], flag(is_net(words.say.solved, cloth))
    if strip := by_ruler(plan, section):
        long = section.lanes[0].used if section.across else section.lanes[0].depth
        cut: Values = {
            "number": number,
            "length": Length(long, "cut"),
            "piece": Own(tag_of(strip, cutting.marks)),
            "off": Length(CUT_OFF, "off"),
            "net": net,
        }
        return [], [said_action("cutting-strip-off", cut, words)]
    tapes = [Length(mark.distance, "cut") for mark in table_marks(section)]
    turns = turned(plan, section)
    from_end = section.across and not turns
    along = plan.usable_width if turns else section.length
    beyond = along > table_of(words.say.room) and not from_end
    values: Values = {
        "cloth": Supply(cloth),
        "net": net,
        "beyond": flag(beyond),
        "tapes": Things(tuple(tapes)),
        "from": One("end" if from_end else "edge", ("end", "edge")),
        "tape-off": Length(CUT_OFF / 2, "off"),
        "lanes": sum(1 for lane in section.lanes if not from_far_side(lane)),
    }
    again = begun or number > 1 or _taped_before(cutting, cloth)
    if as_taped_before(plan, number):
        tape = "cutting-tapes-stay"
    elif from_end:
        tape = "cutting-tapes-across-anew" if again else "cutting-tapes-across"
    else:
        tape = "cutting-tapes-along-anew" if again else "cutting-tapes-along"
    if section.across:
        opened = "cutting-draw-turned-open" if turns else "cutting-draw-across-open"
        flat = "cutting-draw-turned" if turns else "cutting-draw-across"
        draw = opened if plan.folded else flat
    else:
        at_selvedge = any(lane.selvedge and not from_far_side(lane) for lane in section.lanes)
        flat = "cutting-draw-along-kept" if at_selvedge else "cutting-draw-along"
        draw = "cutting-draw-along-folded" if plan.folded else flat
    slit = said_action("cutting-slit-beyond" if beyond else "cutting-slit", values, words)
    if tapes:
        laid, slits = [said_action(tape, values, words), said_action(draw, values, words)], [slit]
    else:  # only lanes at the selvedges of folded cloth
        laid, slits = [said_action("cutting-draw-no-tapes", values, words)], []
    at_fold = [at for at, lane in enumerate(section.lanes, 1) if lane.layer in ("upper", "under") and not lane.offset]
    fold = [said_action("cutting-slit-fold", {"lanes": Things(tuple(at_fold))}, words)] if at_fold else []
    return laid, [
        *slits,
        *_far_slits(section, net, words),
        *fold,
        *_lanes(section, cutting.marks, words),
        *_kept(section, cutting, words),
    ]


def _taped_before(cutting: Cutting, cloth: str) -> bool:
    """Whether tapes lie on the table from a cloth that is cut before this one."""
    before = takewhile(lambda name: name != cloth, cutting.sheets)
    plans = [sheet.plan for name in before for sheet in cutting.sheets[name]]
    return any(is_taped(plan, section) for plan in plans for section in plan.sections)


def _far_slits(section: Section, net: One, words: Words) -> Iterator[SaidAction]:
    """Lanes at selvedges that lie at the far side of the table are measured from there."""
    far = [(at, lane) for at, lane in enumerate(section.lanes, 1) if from_far_side(lane) and lane.offset]
    for depth in dict.fromkeys(lane.depth for _, lane in far):
        lanes = tuple(at for at, lane in far if lane.depth == depth)
        values: Values = {
            "lanes": Things(lanes),
            "depth": Length(depth, "cut"),
            "folded": flag(far[0][1].layer != "flat"),
            "net": net,
            "off": Length(CUT_OFF, "off"),
        }
        yield said_action("cutting-slit-selvedge", values, words)


def _kept(section: Section, cutting: Cutting, words: Words) -> Iterator[SaidAction]:
    """Which edges the selvedges are that stay on; of a piece that is nobody's any more it is of no matter."""
    cut = [each for lane in section.lanes if lane.selvedge for each in lane.segments]
    for side in ("top", "bottom"):
        kept = tuple(Own(tag_of(each, cutting.marks)) for each in cut if cutting.selvedges.get(each.strip) == side)
        if kept:
            values: Values = {"pieces": Things(kept), "edge": One(side, ("top", "bottom"))}
            yield said_action("cutting-selvedge-stays", values, words)


def _lanes(section: Section, marks: Mapping[str, str], words: Words) -> Iterator[SaidAction]:
    lanes = list(enumerate(section.lanes, 1))
    # Lanes that are pieces as they come off the table are told together, a few in a breath.
    plain = [(at, lane) for at, lane in lanes if lane.layer == "flat" and lane.segments and _whole(section, lane)]
    if len(plain) > 1:
        breaths = -(-len(plain) // LANES_A_BREATH)
        for breath in range(breaths):
            some = plain[len(plain) * breath // breaths : len(plain) * (breath + 1) // breaths]
            named = (
                Part("cutting-lane-named", {"lane": at, "piece": Own(tag_of(lane.segments[0], marks))})
                for at, lane in some
            )
            yield said_action("cutting-lanes-whole", {"lanes": Things(tuple(named), "clauses")}, words)
        lanes = [each for each in lanes if each not in plain]
    for at, lane in lanes:
        values: dict[str, Value] = {"lane": at, "depth": Length(lane.depth, "cut"), "layer": One(lane.layer, _LAYERS)}
        if not lane.segments:
            yield said_action("cutting-lane-over", values, words)
        elif _whole(section, lane):
            yield said_action("cutting-lane-whole", {**values, "piece": Own(tag_of(lane.segments[0], marks))}, words)
        else:
            cuts = tuple(
                Part("cutting-length-for", {"length": Length(each.length, "cut"), "piece": Own(tag_of(each, marks))})
                for each in lane.segments
            )
            yield said_action("cutting-lane", {**values, "cuts": Things(cuts)}, words)


def _whole(section: Section, lane: Lane) -> bool:
    return not section.across and [segment.length for segment in lane.segments] == [section.length]
