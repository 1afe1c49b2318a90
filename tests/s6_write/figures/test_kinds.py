"""What each kind of figure shows, against the garment and against the sentences of the guide."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from furbelow.garment.phrasing import Phrasing
from furbelow.garment.technique import Performed, facts_of
from furbelow.s6_write.figures import figures_for, overview
from furbelow.s6_write.figures.language import ACCENT, ELASTIC, RIGHT_SIDE
from furbelow.s6_write.figures.numbers import Numbers
from furbelow.s6_write.guide.guide import Figure
from furbelow.s6_write.words.said_step import SaidAction
from furbelow.s6_write.words.words import Words
from furbelow.techniques.gather import Gathered

from tests.said import said

from .drawn import ROOMS, demos, drawn_of, planned, root, sizes, words

SVG = "{http://www.w3.org/2000/svg}"


# What is drawn in several panels, each beside sentences of its own.
PANELS = {
    "gathering": ("rows", "pulled", "gathering"),
    "marks": ("marks", "pinned"),
    "band": ("band", "band-up", "band-over"),
    "elastic": ("elastic-marked", "elastic", "elastic-lapped"),
}


def callouts(figure: Figure) -> set[int]:
    """The ringed numbers: digits alone, bold and in the accent."""
    return {
        int(text.text or "")
        for text in root(figure).iter(f"{SVG}text")
        if text.attrib["fill"] == ACCENT and text.attrib.get("font-weight") and (text.text or "").isdigit()
    }


def steps(
    demo: str, room: str = "home"
) -> Iterator[tuple[Performed, Phrasing, tuple[Figure, ...], tuple[SaidAction, ...]]]:
    found = planned(demo, sizes(demo)[1], room)
    run = found.rehearsal.run
    say = Phrasing(run.solved, run.room, found.cutting.joins, found.cutting.lengths)
    for done in run.performed:
        actions = said(done, say).actions
        yield done, say, drawn_of(done, run, Words("en", say), 41), tuple(actions)


def of(
    demo: str, technique: str, key: str, room: str = "home"
) -> tuple[Performed, Phrasing, Figure, tuple[SaidAction, ...]]:
    """The first figure of that key that the technique draws in a demo."""
    for done, say, drawn, actions in steps(demo, room):
        for figure in drawn:
            if done.step.written.technique == technique and figure.key.endswith(f"-{key}"):
                return done, say, figure, actions
    raise AssertionError(f"{demo} has no {key} of {technique}")


@pytest.mark.parametrize("demo", demos())
@pytest.mark.parametrize("room", ROOMS)
def test_every_callout_is_the_number_of_a_sentence_of_its_step(demo: str, room: str) -> None:
    met = 0
    for _, _, drawn, actions in steps(demo, room):
        for figure in drawn:
            assert callouts(figure) <= set(range(41, 41 + len(actions))), figure.key
            met += len(callouts(figure))
    assert met > 5


@pytest.mark.parametrize(
    ("demo", "technique", "key", "sentences"),
    [
        ("larkspur", "gather", "gathering", ("[Ss]ew a row", "second row", "pull", "mark")),
        ("larkspur", "attach", "seam", ("^Sew 1 cm from the edge",)),
        ("larkspur", "attach", "marks", ("^Mark", "^Match the side seams")),
        (
            "larkspur",
            "attach",
            "rings",
            ("^Turn the flounce right side out", "^Slip the upper tier over"),
        ),
        ("larkspur", "edge with trim", "trim", ("^Sew 5 mm from the fold", "second row")),
        ("larkspur", "turn seam", "turned", ("from the seam on",)),
        ("larkspur", "narrow hem", "hem", ("Sew on the hem",)),
        (
            "larkspur",
            "band casing",
            "band",
            ("Sew 1 cm", "Fold the band up", "^Bring the folded edge over", "topstitch 2 mm"),
        ),
        (
            "larkspur",
            "insert elastic",
            "elastic",
            (
                "hang out of the gap",
                "work it round through",
                "^Draw a line",
                "^Draw a cross",
                "cut end on the line",
                "zigzag over",
            ),
        ),
        ("larkspur", "close gap", "gap", ("shut",)),
        ("larkspur", "stack layers", "layers", ("layers together",)),
        ("marigold", "folded casing", "hem", ("^Sew|lower fold",)),
        ("foxglove", "neaten", "margin", ("Zigzag over",)),
    ],
)
def test_callouts_stand_for_the_sentence_that_says_it(
    demo: str, technique: str, key: str, sentences: tuple[str, ...]
) -> None:
    done, _, _, actions = of(demo, technique, key)
    drawn = next(drawn for each, _, drawn, _ in steps(demo) if each is done)
    parts = PANELS.get(key, (key,))
    shown = [figure for figure in drawn if figure.key.rpartition("-")[2] in parts or figure.key.endswith(parts)]
    told = {number: actions[number - 41].text for figure in shown for number in callouts(figure)}
    for sentence in sentences:
        assert any(re.search(sentence, text) for text in told.values()), (sentence, told)
    assert len(told) == len(sentences), told


@pytest.mark.parametrize("room", ["home", "wardrobe"])  # the gathers lie on top, or underneath
def test_a_seam_opened_out_names_the_piece_that_is_gathered(room: str) -> None:
    _, _, figure, _ = of("larkspur", "attach", "seam", room)
    names = {text.text: int(text.attrib["x"]) for text in root(figure).iter(f"{SVG}text")}
    waves = [path.attrib["d"] for path in root(figure).iter(f"{SVG}path") if len(path.attrib["d"]) > 150]
    far = int(re.findall(r"-?\d+", waves[-1])[0])  # where the gathered ply of the last view ends
    assert abs(far - names["flounce"]) < abs(far - names["upper tier"])


def test_a_figure_without_numbers_has_no_callouts() -> None:
    found = planned("larkspur", "M")
    run = found.rehearsal.run
    for done in run.performed:
        for figure in figures_for(done, run, Words("en", run.say)):
            assert callouts(figure) == set()


def test_a_step_with_nothing_to_do_has_no_figure() -> None:
    # Without a cutting plan no strip has a join, so there is nothing to join.
    run = planned("larkspur", "M").rehearsal.run
    join = next(done for done in run.performed if done.step.written.technique == "join strips")
    assert figures_for(join, run, Words("en", run.say)) == ()


def test_numbers_are_those_of_the_messages_that_a_figure_names() -> None:
    actions = (SaidAction("mark", "Mark the edge."), SaidAction("row", "Sew a row."), SaidAction("again", "Sew a row."))
    assert Numbers(actions, 7).at("again") == 9
    assert Numbers(actions, 7).at("press", "again", "row") == 8
    assert Numbers(actions, 7).at("press") is None
    assert Numbers(actions, None).at("mark") is None


def test_the_gathering_says_cloth_length_set_length_and_every_quarter() -> None:
    done, say, figure, _ = of("larkspur", "gather", "gathering")
    texts = [line.text for line in words(figure)]
    cloth, short = done.before.edge("flounce.top").cloth_length, done.after.edge("flounce.top").set_length
    for quarter in (1, 2, 3, 4):
        assert say.length(cloth * quarter / 4) in texts
    # 3 m are more than 2 m and so marked in eighths.
    assert f"{say.length(short)} gathered, a mark every {say.length(short / 8)}" in texts


def test_the_attachment_is_drawn_as_one_row_of_pleats() -> None:
    _, _, figure, _ = of("larkspur", "gather", "gathering", "wardrobe")
    assert "pleating attachment" in figure.alt
    assert all("tails" not in line.text for line in words(figure))


def test_only_an_overlocker_leaves_a_tail_to_fasten() -> None:
    of("larkspur", "neaten", "tail", "wardrobe")
    with pytest.raises(AssertionError, match="has no tail"):
        of("larkspur", "neaten", "tail", "home")


def test_layers_are_named_from_the_outside_in() -> None:
    found = planned("larkspur", sizes("larkspur")[1]).rehearsal.run
    stacks = [
        figure
        for done, _, drawn, _ in steps("larkspur")
        for figure in drawn
        if done.step.written.technique == "stack layers" and figure.key.endswith("-layers")
    ]
    texts = " ".join(line.text for line in words(stacks[-1]))
    assert texts.index("upper tier") < texts.index("lining")
    assert "right side towards the legs" in texts
    lining = found.say.length(found.final.depth("lining"))
    assert lining != found.say.length(found.drops["flounce"])


@pytest.mark.parametrize("demo", demos())
def test_the_overview_gives_the_finished_measures(demo: str) -> None:
    run = planned(demo, sizes(demo)[0]).rehearsal.run
    figure = overview(run, Words("en", run.say))
    texts = " ".join(line.text for line in words(figure))
    for piece in run.final.cloths:
        assert run.say.length(run.final.depth(piece)) in texts
    for casing in run.final.casings.values():  # some demos close without elastic
        assert (
            f"Waist: {run.say.length(casing.elastic_length)} at rest; {run.say.length(casing.length)} of cloth" in texts
        )
    assert "stretch" not in texts + figure.alt
    lowest = max(run.drops.values())
    assert f"{run.say.length(lowest)} from the top" in texts
    assert run.say.length(lowest) in figure.caption


def test_the_margin_of_a_seam_is_drawn_as_wide_as_its_scale_says() -> None:
    # The first gathering row and the second, each from the edge: their drawn distances are as their real ones.
    done, _, figure, _ = of("larkspur", "gather", "rows")
    heights = []
    for path in root(figure).iter(f"{SVG}path"):
        if path.attrib.get("stroke-dasharray") == "110 50":
            heights.append(int(re.findall(r"-?\d+", path.attrib["d"])[1]))
    edge_y = 260  # the raw edge of the close view
    assert len(heights) == 2
    first, second = (float(at) for at in facts_of(done, Gathered).rows)
    assert (heights[1] - edge_y) == pytest.approx(second / first * (heights[0] - edge_y), abs=2)


def test_like_pieces_are_counted_until_they_are_one_garment() -> None:
    # Larkspur has two net skirts until their tops are held together; from then on it is one garment of two layers.
    held = False
    for done, _, drawn, _ in steps("larkspur"):
        held = held or done.step.written.technique == "stack layers"
        for figure in drawn:
            if figure.key.endswith("-piece") and "flounce" in done.touches:
                texts = " ".join(line.text for line in words(figure))
                assert ("2 layers" in texts, "2 alike" in texts) == ((True, False) if held else (False, True)) or (
                    done.step.written.technique == "stack layers"
                ), figure.key
    assert held


def test_a_layer_that_was_gathered_stays_gathered_in_the_stack() -> None:
    stacked = [
        (done, drawn) for done, _, drawn, _ in steps("larkspur") if done.step.written.technique == "stack layers"
    ]
    done, drawn = stacked[-1]
    piece = next(figure for figure in drawn if figure.key.endswith("-piece"))
    texts = [line.text for line in words(piece)]
    assert texts.count("gathered") == 2  # before and after
    # The margin that is covered is named, and not drawn as if this step sewed it.
    seam = next(text for text in root(piece).iter(f"{SVG}text") if text.text == "seam, margin")
    assert seam.attrib["fill"] != ACCENT


@pytest.mark.parametrize(
    "demo", [demo for demo in demos() if any(of_.step.written.technique == "join strips" for of_, *_ in steps(demo))]
)
def test_every_segment_of_a_strip_is_drawn_as_long_as_it_is_cut(demo: str) -> None:
    met = 0
    for done, say, drawn, _ in steps(demo):
        for figure in drawn:
            if not figure.key.endswith("-strips"):
                continue
            cuts = [
                cut
                for piece in done.touches
                if any(len(c) > 1 for c in say.lengths[piece])
                for cut in dict.fromkeys(say.lengths[piece])
                if len(cut) > 1
            ]
            drawn_wide = []
            for path in root(figure).iter(f"{SVG}path"):
                if path.attrib.get("fill") == RIGHT_SIDE:
                    drawn_wide.append(int(re.findall(r"-?\d+", path.attrib["d"])[2]))
            lengths = [float(length) for cut in cuts for length in cut]
            assert len(drawn_wide) == len(lengths)
            scale = drawn_wide[0] / lengths[0]
            assert drawn_wide == pytest.approx([length * scale for length in lengths], abs=2)
            met += 1
    joined = sum(done.step.written.technique == "join strips" and bool(drawn) for done, _, drawn, _ in steps(demo))
    assert met == joined


def test_a_trim_is_a_plain_band_and_elastic_has_cross_lines() -> None:
    _, _, figure, _ = of("larkspur", "edge with trim", "piece")
    bands = [path for path in root(figure).iter(f"{SVG}path") if path.attrib.get("fill") == ELASTIC]
    assert bands
    assert all(len(re.findall(r"-?\d+", path.attrib["d"])) == 8 for path in bands)


@pytest.mark.parametrize(
    ("demo", "size", "told"),
    [
        ("campion", "A", "Sewn on the waistband: tie 4 cm deep, lower edge"),
        ("bindweed", "A", "Sewn on the skirt length: pocket 18 cm deep, lower edge 16 cm long."),
        ("peony", "A", "skirt 103 cm deep, ruffle 12 cm deep, reaching 118 cm from the top, hem 480 cm round."),
    ],
)
def test_what_is_sewn_on_flat_is_told_as_such_and_has_no_hem_round(demo: str, size: str, told: str) -> None:
    run = planned(demo, size).rehearsal.run
    assert told in overview(run, Words("en", run.say)).alt
