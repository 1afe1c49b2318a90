"""The work for one pupil, in two parts: planned alone, and, once all are cut together, the guide written.

Each part is a function of what is handed to it and of nothing else, so it may run in a process of its own: what is handed
over and back is small, and each process unpacks a spec once. A spec goes whole, with the files that it is built on and its
pictures; what the workroom names is read where the work is done.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from itertools import count
from pickle import HIGHEST_PROTOCOL, dumps, loads

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.spec import Spec, Written
from furbelow.garment.workroom import Workroom
from furbelow.named import NamedTuple
from furbelow.order.chain import Planned, guide_of, plan_proved, planned_from_pile, prove, ready_for
from furbelow.order.content_key import key_of_room, named_by
from furbelow.order.order import Order
from furbelow.order.shelf import Shelf
from furbelow.order.whose import whose
from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.solve import Prepared
from furbelow.s3_rehearse.run import Rehearsal
from furbelow.s4_cut.cut import Cutting
from furbelow.s4_cut.plan_cache import PLANS_FILE, KeptPlans
from furbelow.s5_buy.class_cutting import Garment
from furbelow.s5_buy.shopping import ShoppingList
from furbelow.s6_write.folder import SetKind
from furbelow.s6_write.give_back import give_back
from furbelow.s6_write.guide.cautions import general_cautions
from furbelow.s6_write.guide.guide import Caution, Guide, SizeBeside
from furbelow.s6_write.guide.in_languages import languages_beside
from furbelow.s6_write.guide.unmeasured import unmeasured
from furbelow.s6_write.guide.worked import Worked, worked_of
from furbelow.s6_write.pages.files import files_of, guide_files
from furbelow.s6_write.pages.look import look_of
from furbelow.s6_write.pages.unset_letters import unset_letters
from furbelow.s6_write.words.words import Words


class Sent(NamedTuple):
    """An order with its spec packed. room_files: what the workroom names and whoever works must have; see `key_of_room`."""

    spec: bytes
    wearer: str
    body: Mapping[str, Written]
    choices: Mapping[str, Written]
    room: Workroom
    size: str
    number: int
    room_files: str


def sent(order: Order, language: str = "") -> Sent:
    """language: of the maker's texts; that of the order where none is given."""
    spec = order.spec
    return Sent(
        _packed(spec, language or spec.language),
        order.wearer,
        order.body,
        order.choices,
        order.room,
        order.size,
        order.number,
        key_of_room(order.room),
    )


def _packed(spec: Spec, language: str) -> bytes:
    """The spec as it is sent, with its texts in this language."""
    key = (id(spec), language)
    if key not in _packed_specs:
        while len(_packed_specs) >= _SPECS:
            del _packed_specs[next(iter(_packed_specs))]
        told = spec
        if language != spec.language:
            read = read_spec((spec.file, spec.source.encode()), language=language).value
            assert read is not None  # it was read before
            told = read
        _packed_specs[key] = (spec, dumps(told, HIGHEST_PROTOCOL))
    return _packed_specs[key][1]


# By the identity of the spec, which is kept so that no other one can take it.
_packed_specs: dict[tuple[int, str], tuple[Spec, bytes]] = {}


class HowMade(NamedTuple):
    """with_pdf: whether PDF files are written. with_measures: whether pages may tell measures of a body.

    with_data: whether each guide is written as Markdown with its drawings and as JSON too. languages: see `make_guide`.
    """

    with_pdf: bool = True
    with_measures: bool = True
    with_data: bool = True
    languages: tuple[str, ...] = ()


class ToPlan(NamedTuple):
    """kept: the cutting plans of an earlier run."""

    order: Sent
    kept: bytes


class PlannedPupil(NamedTuple):
    """garment: None where it can't be made, and the faults say why. plans: to be kept for the next run."""

    garment: Garment | None
    faults: tuple[Fault, ...]
    plans: bytes = b""
    cautions: tuple[Caution, ...] = ()  # of the cutting of all


class Asked(NamedTuple):
    """share: of the cutting for all; None for who cuts alone. plans: those that planning her alone has found.

    work: of the guide that an earlier run made from just this, where there is one.
    """

    order: Sent
    how: HowMade
    shelf: Shelf
    made_from: str
    plans: bytes
    share: Cutting | None
    beside: tuple[SizeBeside, ...] = ()  # of a size: all sizes whose guides are made
    work: tuple[Worked, ...] = ()


class WrittenPupil(NamedTuple):
    """files: their names; none where the guide was kept out, and the faults say why. shopping: with the joins of the share."""

    files: tuple[str, ...]
    faults: tuple[Fault, ...]
    shopping: ShoppingList | None = None
    made_from: str = ""
    unchanged: bool = False
    work: tuple[Worked, ...] = ()  # for the plan of lessons


def plan_pupil(to_plan: ToPlan) -> PlannedPupil:
    """The garment proved and planned as if made alone."""
    if elsewhere := _elsewhere(to_plan.order):
        return PlannedPupil(None, (elsewhere,))
    order, ready = _received(to_plan.order)
    plans = KeptPlans(to_plan.kept)
    proved = prove(order, ready)
    if len(_proved) < _HANDED_ON:
        _proved[order.number] = (to_plan.order, proved)
    planned = plan_proved(proved, plans.planner)
    if planned.value is None:
        return PlannedPupil(None, planned.faults)
    rehearsal, cutting, shopping = planned.value
    words = Words(order.spec.language, Phrasing(rehearsal.solved, order.room))
    cautions = tuple(each for each in general_cautions(rehearsal, words) if each.kind in ("blade", "flame"))
    garment = Garment(rehearsal.solved.pieces, cutting, shopping)
    return PlannedPupil(garment, planned.faults, plans.as_file(), cautions)


class MadePupil(NamedTuple):
    """What is known of a guide once it is made. files: its own by name; None where they are not to be put anywhere."""

    written: WrittenPupil
    files: Mapping[str, bytes] | None


def write_pupil(asked: Asked) -> WrittenPupil:
    """The guide of one pupil on the shelf; where it stands there already, made from just this, it is left."""
    return put_pupil(asked, made_pupil(asked))


def put_pupil(asked: Asked, made: MadePupil) -> WrittenPupil:
    """What was made, put on the shelf."""
    if made.files is None:
        return made.written
    kept_out = asked.shelf.put(made.files, SetKind.GUIDE, asked.made_from)
    faults = (*made.written.faults, *kept_out)
    return made.written._replace(files=() if kept_out else tuple(made.files), faults=faults)


def made_pupil(asked: Asked) -> MadePupil:
    """The files of the guide of one pupil, with nothing written: a function of what is asked, wherever it is called."""
    if elsewhere := _elsewhere(asked.order):
        return MadePupil(WrittenPupil((), (elsewhere,)), None)
    if next(_begun) % _HELD == 0:
        give_back()
    planned = _planned(asked)
    found = planned.value
    if found is None:
        return MadePupil(WrittenPupil((), planned.faults), None)
    if asked.work and (files := asked.shelf.stands(asked.made_from)) is not None:
        standing = WrittenPupil(files, (), found.shopping, asked.made_from, unchanged=True, work=asked.work)
        return MadePupil(standing, None)
    order, _ = _received(asked.order)
    pile = order.number if asked.share else 0
    guide = guide_of(found, whose(order), pile=pile)
    work = tuple(worked_of(found.rehearsal, found.shopping, guide, found.cutting, pile)) if not asked.beside else ()
    about = WrittenPupil((), (), found.shopping, asked.made_from, work=work)
    if (files := asked.shelf.stands(asked.made_from)) is not None:
        return MadePupil(about._replace(files=files, unchanged=True), None)
    made = pupil_files(asked, order, found, guide)
    return MadePupil(about._replace(faults=made.faults), made.value)


def _planned(asked: Asked) -> Staged[Planned]:
    """The garment as it is cut: alone, or from her share of the cutting for all."""
    order, ready = _received(asked.order)
    earlier, proved = _proved.pop(order.number, (None, None))
    if proved is None or earlier != asked.order:
        proved = prove(order, ready)
    if asked.share is None:
        return plan_proved(proved, KeptPlans(asked.plans).planner)
    return Staged(None, proved.faults) if proved.value is None else planned_from_pile(proved.value, asked.share)


def pupil_files(asked: Asked, order: Order, found: Planned, guide: Guide) -> Staged[Mapping[str, bytes]]:
    """The files of a guide by name. The faults are those of writing; planning has told its own."""
    page = f"{asked.shelf.folder.name}/guide.html"
    guide = replace(
        guide,
        of_person=not order.size,
        beside=asked.beside,
        index="../index.html" if asked.beside else "",
        languages=languages_beside(order.spec.language, asked.how.languages, page),
    )
    if not asked.how.with_measures:
        guide = unmeasured(guide, order.spec)
    look, with_pdf = look_of(order.room), asked.how.with_pdf
    faults = unset_letters(guide, order.spec, look and look.font, with_pdf=with_pdf)
    if has_errors(faults):
        return Staged(None, faults)
    if asked.share is None:
        files = files_of(guide, *found, with_pdf=with_pdf, with_data=asked.how.with_data)
    else:
        words = Words(guide.language, Phrasing(found.rehearsal.solved, order.room, found.cutting.joins))
        files = guide_files(guide, words, look, with_pdf=with_pdf, with_data=asked.how.with_data)
    return Staged({**files, PLANS_FILE: asked.plans}, faults)


def _received(of: Sent) -> tuple[Order, Prepared]:
    spec = _spec(of.spec)
    order = Order(spec, of.wearer, of.body, of.choices, of.room, of.size, of.number)
    key = (of.spec, of.room.rounding)
    if key not in _ready:
        while len(_ready) >= _SPECS:
            del _ready[next(iter(_ready))]
        _ready[key] = ready_for(order)
    return order, _ready[key]


_HANDED_ON = 30  # proofs that are kept until the guides are written: some 10 MB
_proved: dict[int, tuple[Sent, Staged[Rehearsal]]] = {}  # in this process, by the number of the order
_HELD = 15  # guides whose memory is given back together
_begun = count(1)  # guides in this process
_SPECS = 16  # that are kept as they were unpacked, for a table of orders goes to and fro between them
_ready: dict[tuple[bytes, Fraction | None], Prepared] = {}


@lru_cache(maxsize=_SPECS)
def _spec(packed: bytes) -> Spec:
    told: Spec = loads(packed)
    return told


def _elsewhere(of: Sent) -> Fault | None:
    """FB660 where what the workroom names, or the program itself, is not here as it was where the order came from."""
    if of.room_files == key_of_room(of.room):
        return None
    from socket import gethostname

    named = ", ".join(named_by(of.room)) or "furbelow itself"
    headline = f"a worker on {gethostname()} has other files than this machine: {named}"
    help_ = "put the same files under the same path there, and the same furbelow, and run again"
    return Fault("FB660", headline, help=help_)
