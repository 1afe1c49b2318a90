"""A guide made by hand, long enough to show every part of a page. Its numbers are invented and add up."""

from __future__ import annotations

from dataclasses import fields, is_dataclass, replace
from typing import cast

from furbelow.s6_write.guide.guide import (
    Caution,
    CutLine,
    Fact,
    Figure,
    Guide,
    GuideStep,
    MaterialLine,
    Operation,
    Part,
    ProofLine,
    Reason,
    Tool,
)

_FRAME = (
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" width="{width}" height="{height}" '
    'font-family="Source Sans 3" font-size="14"><rect width="{width}" height="{height}" fill="#ffffff"/>{inside}</svg>'
)


def _svg(width: int, height: int, inside: str) -> str:
    return _FRAME.format(width=width, height=height, inside=inside)


def _strip(key: str, words: str, caption: str) -> Figure:
    inside = (
        '<rect x="20" y="40" width="360" height="70" fill="#f3ece0" stroke="#222222" stroke-width="1.5"/>'
        '<path d="M20 52H380" stroke="#222222" stroke-width="1.5" stroke-dasharray="7 4" fill="none"/>'
        f'<text x="200" y="82" text-anchor="middle" fill="#222222">{words}</text>'
        '<path d="M20 130H380M20 125V135M380 125V135" stroke="#222222" stroke-width="1" fill="none"/>'
        '<text x="200" y="148" text-anchor="middle" fill="#222222">602 cm</text>'
    )
    return Figure(key, _svg(400, 160, inside), f"A strip marked {words}, 602 cm long.", caption)


_CUTTING = Figure(
    "cutting-net",
    _svg(
        600,
        360,
        '<rect x="60" y="30" width="500" height="280" fill="#ffffff" stroke="#222222" stroke-width="2"/>'
        + "".join(
            f'<rect x="60" y="{30 + 70 * row}" width="500" height="70" fill="{fill}" stroke="#222222"/>'
            f'<text x="310" y="{70 + 70 * row}" text-anchor="middle" fill="#222222">{letter}</text>'
            for row, (letter, fill) in enumerate(
                (("A1", "#f3ece0"), ("A2", "#f3ece0"), ("B1", "#dfe9e2"), ("B2", "#dfe9e2"))
            )
        )
        + '<text x="310" y="340" text-anchor="middle" fill="#222222">140 cm of cloth, folded</text>',
    ),
    "The net folded once along its length, with four lanes marked A1, A2, B1 and B2 from the fold.",
    "Net: fold the cloth once, lay the tapes, and cut along each line.",
)

_WHOLE = Figure(
    "whole",
    _svg(
        400,
        300,
        '<path d="M150 30H250L290 120H110Z" fill="#f3ece0" stroke="#222222" stroke-width="2"/>'
        '<path d="M110 120H290L370 270Q200 300 30 270Z" fill="#dfe9e2" stroke="#222222" stroke-width="2"/>'
        '<text x="200" y="85" text-anchor="middle" fill="#222222">15 cm</text>'
        '<text x="200" y="205" text-anchor="middle" fill="#222222">23.5 cm</text>',
    ),
    "The finished underskirt: a waistband, an upper tier of 15 cm and a flounce of 23.5 cm.",
    "The finished underskirt.",
)

_SUM = "finished length + allowance at the start + allowance at the end = 600 cm + 1 cm + 1 cm = 602 cm"

_REASONS = (
    Reason("waist_height", "waist height", "104 cm", "a body measure", "104 cm", "104 cm", "", "", ""),
    Reason(
        "skirt_length",
        "skirt length",
        "41.5 cm",
        "waist height ÷ 2.6 = 104 cm ÷ 2.6",
        "waist_height / 2.6",
        "104 cm / 2.6",
        "cut size rounded up to 5 mm: 42.6 cm becomes 43 cm; finished 41.1 cm becomes 41.5 cm",
        "line 26 of larkspur.yaml",
        "",
        ("waist_height",),
    ),
    Reason(
        "upper.length",
        "finished length of the upper tier",
        "300 cm",
        "written on line 69 of larkspur.yaml",
        "300 cm",
        "300 cm",
        "",
        "line 69 of larkspur.yaml",
        "",
    ),
    Reason(
        "fullness", "fullness", "2", "a choice, line 25 of larkspur.yaml", "2", "2", "", "line 25 of larkspur.yaml", ""
    ),
    Reason(
        "flounce.length",
        "finished length of the flounce",
        "600 cm",
        "finished length of the upper tier × fullness = 300 cm × 2 = 600 cm",
        "upper.length * fullness",
        "300 cm * 2",
        "",
        "line 76 of larkspur.yaml",
        "",
        ("upper.length", "fullness"),
    ),
    Reason(
        "flounce.cut_length",
        "cut length of the flounce",
        "602 cm",
        _SUM,
        "flounce.length + flounce.start_takes + flounce.end_takes",
        "600 cm + 1 cm + 1 cm",
        "",
        "",
        "",
        ("flounce.length", "flounce.start_takes", "flounce.end_takes"),
    ),
    *(
        Reason(
            f"flounce.{end}_takes",
            f"allowance at the {end} of the flounce",
            "1 cm",
            "the seam of “Close the upper tier to a ring”",
            "step 3.seam",
            "1 cm",
            "",
            "line 97 of larkspur.yaml",
            "join-upper",
            ("step 3.seam",),
        )
        for end in ("start", "end")
    ),
    Reason(
        "step 3.seam",
        "seam",
        "1 cm",
        "written for “Close the upper tier to a ring” as 10 mm on line 97 of larkspur.yaml",
        "10 mm",
        "10 mm",
        "",
        "line 97 of larkspur.yaml",
        "join-upper",
    ),
)

GUIDE = Guide(
    title="Larkspur dancing underskirt",
    wearer="size M",
    about=(
        "A very full net underskirt for the village theatre's dancers.\n\n"
        "- each layer is a *long* flounce\n- gathered to a **short** upper tier"
    ),
    facts=(
        Fact("skirt_length", "Finished length", "41.5 cm", "waist height 104 cm less knee height 46 cm less 16.5 cm"),
        Fact("upper.length", "Upper tier, round", "300 cm", "given"),
        Fact("flounce.length", "Flounce, round", "600 cm", "300 cm × 2"),
        Fact("waistband.length", "Waistband, round", "156 cm", "2 × waist girth of 78 cm"),
    ),
    cautions=(
        Caution("flame", "Net catches fire and burns fast. Keep the skirt from candles, stoves and stage flame."),
        Caution("needle", "Take each pin out before the needle comes to it. Count the pins in and out."),
        Caution("trip", "Walk the stage stairs once in the skirt before the dance."),
    ),
    tools=(
        Tool("Sewing machine", "lockstitch foot, needle of size 70"),
        Tool("Overlocker", "three threads, for the seam edges"),
        Tool("80 pins", "one every 2 cm where net is gathered"),
    ),
    materials=(
        MaterialLine("net", "soft nylon dress net, 140 cm wide", "5.4 m", "5.36 m", "upper tier, flounce", "9.72 EUR"),
        MaterialLine("edging", "satin ribbon edging, 15 mm", "13 m", "12.04 m", "bottom of the flounce", "5.85 EUR"),
        MaterialLine("elastic", "woven waistband elastic, 25 mm", "0.7 m", "65 cm", "waistband", "0.84 EUR"),
    ),
    cutting=(
        CutLine("A", "upper tier", "net", "2", "302 cm", "17 cm", "300 × 15 cm", "from 3 lengths, seams of 1 cm"),
        CutLine(
            "B",
            "flounce",
            "net",
            "2",
            "602 cm",
            "25 cm",
            "600 × 23.5 cm",
            "from 5 lengths, seams of 1 cm",
            ("flounce.length", "flounce.cut_length"),
        ),
        CutLine("C", "waistband", "satin", "1", "158 cm", "8 cm", "156 × 3 cm", ""),
    ),
    key=(),
    cut=(
        Operation(
            "cut-net",
            "A",
            "Cut the net",
            "",
            "",
            (),
            (_CUTTING,),
            (
                GuideStep(
                    1,
                    "Fold the net once along its length and lay it flat on the table.",
                    "both edges lie together",
                    "5 mm",
                    "lift the top half and lay it again; do not pull",
                ),
                GuideStep(2, "Lay tapes at 17 cm, 34 cm, 59 cm and 84 cm from the fold and cut along them."),
            ),
            "",
            "",
        ),
    ),
    parts=(
        Part(
            "Net layers",
            (
                Operation(
                    "join-upper",
                    "B",
                    "Close the upper tier to a ring",
                    "Each upper tier is a ring of 300 cm.",
                    "10 minutes",
                    (),
                    (_strip("join-upper-after", "A", "The ends lie on each other."),),
                    (
                        GuideStep(1, "Lay the two short ends of A on each other and pin.", copies=2),
                        GuideStep(
                            2,
                            "Sew 1 cm from the edge with a stitch of 2 mm. Sew three stitches back at each end.",
                            "the ring measures 300 cm",
                            "1 cm",
                            "take the seam out and sew it anew",
                            copies=2,
                        ),
                    ),
                    "Net has no right side: the trim decides which side is out.",
                    "",
                    all_of_it="Make both. Each sentence with two boxes is done on one, then on the other.",
                ),
                Operation(
                    "gather-flounce",
                    "C",
                    "Gather the flounce",
                    "The top of each flounce is drawn in to 300 cm.",
                    "40 minutes",
                    (Caution("needle", "Keep your fingers behind the foot when you guide the net."),),
                    (
                        replace(_strip("gather-before", "B", "Two rows, 5 mm apart, with long tails."), shows=(1,)),
                        replace(_strip("gather-after", "B drawn in", "Drawn in to half its length."), shows=(2,)),
                    ),
                    (
                        GuideStep(
                            1, "Sew two rows along the top, 5 mm and 10 mm from the edge, in the longest stitch."
                        ),
                        GuideStep(
                            2,
                            "Draw both lower threads until the edge is as long as the upper tier.",
                            "the edge measures 300 cm",
                            "up to 11 cm short: ease it in; over 15 cm: let it out",
                            "loosen the threads and share the gathers again",
                        ),
                    ),
                    "",
                    "A good place to stop and put the work away.",
                    ("upper.length",),
                ),
            ),
        ),
        Part(
            "Waist",
            (
                Operation(
                    "insert-elastic",
                    "D",
                    "Thread the elastic",
                    "The band holds at a waist of 78 cm.",
                    "15 minutes",
                    (),
                    (),
                    (
                        GuideStep(1, "Cut 65 cm of elastic."),
                        GuideStep(
                            2,
                            "Thread it through the gap of 5 cm and sew the ends 2 cm over each other.",
                            "the elastic is not twisted",
                            "",
                            "turn the ends once and try again",
                        ),
                    ),
                    "",
                    "A good place to stop and put the work away.",
                ),
            ),
        ),
    ),
    proofs=(
        ProofLine("The skirt passes over the hips.", "The band is 156 cm round; the hips with ease are 109 cm."),
        ProofLine("The lengths match at every seam.", "600 cm is gathered to 300 cm, twice as full."),
    ),
    notes="Cut the net on a smooth table: it catches on rough wood.",
    overview=_WHOLE,
    rounding="5 mm",
    content_key="a1b2c3d4e5f6",
    reasons=_REASONS,
)


def with_text_everywhere(text: str) -> Guide:
    """The sample with `text` put behind every text that can come from a spec, a workroom or a wearer."""
    probed = cast(Guide, _probed(GUIDE, text))
    return replace(probed, content_key=GUIDE.content_key, language=GUIDE.language)


def without_tips(guide: Guide) -> Guide:
    """The guide without what its maker wrote at the steps, which is Markdown and not plain text."""

    def bare(operations: tuple[Operation, ...]) -> tuple[Operation, ...]:
        return tuple(replace(operation, tip="") for operation in operations)

    parts = tuple(replace(part, operations=bare(part.operations)) for part in guide.parts)
    return replace(guide, cut=bare(guide.cut), parts=parts)


def _probed(value: object, text: str) -> object:
    if isinstance(value, str):
        return f"{value} {text}"
    if isinstance(value, tuple):
        return tuple(_probed(part, text) for part in value)
    if is_dataclass(value) and not isinstance(value, type):
        # Keys, kinds and drawings are furbelow's own.
        own = {"kind", "svg", "operation", "letter", "paper"}
        own |= set() if isinstance(value, Guide) else {"key"}
        return replace(
            value,
            **{f.name: _probed(getattr(value, f.name), text) for f in fields(value) if f.name not in own},
        )
    return value


def many_figures() -> Guide:
    """A long guide whose figures are of many heights, so that page ends fall everywhere."""
    operations = []
    for index in range(24):
        height = 120 + (index * 83) % 420
        drawn = Figure(
            f"tall-{index}",
            _svg(
                400,
                height,
                f'<rect x="10" y="10" width="380" height="{height - 20}" fill="#f3ece0" stroke="#222222"/>'
                '<text x="200" y="26" text-anchor="middle" fill="#222222">top</text>'
                f'<text x="200" y="{height - 16}" text-anchor="middle" fill="#222222">bottom {index}</text>',
            ),
            f"A piece, number {index}.",
            f"Piece {index}.",
        )
        steps = []
        for number in range(1, 2 + index % 5):
            steps.append(
                GuideStep(
                    number, f"Sew seam {number}. " + "Keep the edges level. " * (index % 7), "level", "2 mm", "undo"
                )
            )
        operations.append(
            Operation(
                f"seam-{index}",
                f"S{index}.",
                f"Seam {index}",
                "",
                "",
                (),
                (drawn,) * (1 + index % 3 // 2),
                tuple(steps),
                "",
                "",
            )
        )
    return replace(GUIDE, parts=(Part("Seams", tuple(operations)),))
