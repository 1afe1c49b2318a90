"""What each kind of figure shows, against the garment and against the sentences of the guide."""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest

from compiler.s6_write.figures import figures_for, overview
from compiler.s6_write.figures.language import ACCENT
from compiler.s6_write.figures.numbers import Numbers
from compiler.s6_write.guide import Figure
from compiler.say import Say
from compiler.techniques import techniques
from compiler.techniques.technique import Action, Performed

from .drawn import ROOMS, demos, planned, root, sizes, words

SVG = "{http://www.w3.org/2000/svg}"


def callouts(figure: Figure) -> set[int]:
    """The ringed numbers: digits alone, bold and in the accent."""
    return {
        int(text.text or "")
        for text in root(figure).iter(f"{SVG}text")
        if text.attrib["fill"] == ACCENT and text.attrib.get("font-weight") and (text.text or "").isdigit()
    }


def steps(demo: str, room: str = "home") -> Iterator[tuple[Performed, Say, tuple[Figure, ...], tuple[Action, ...]]]:
    found = planned(demo, sizes(demo)[1], room)
    run = found.rehearsal.run
    say = Say(run.solved, run.room, found.cutting.joins)
    for done in run.performed:
        actions = techniques()[done.step.step.technique].tell(done, say).actions
        yield done, say, figures_for(done, run, say, 41), tuple(actions)


def of(demo: str, technique: str, key: str, room: str = "home") -> tuple[Performed, Say, Figure, tuple[Action, ...]]:
    """The first figure of that key that the technique draws in a demo."""
    for done, say, drawn, actions in steps(demo, room):
        for figure in drawn:
            if done.step.step.technique == technique and figure.key.endswith(f"-{key}"):
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
    assert met > 10


@pytest.mark.parametrize(
    ("demo", "technique", "key", "sentences"),
    [
        ("larkspur", "gather", "gathering", ("[Ss]ew a row", "second row", "^Pull", "^Mark")),
        ("larkspur", "attach", "seam", ("^Sew 1 cm from the edge",)),
        ("larkspur", "attach", "marks", ("^Mark", "against")),
        ("larkspur", "edge with trim", "trim", ("lower edge level with the fold", "second row")),
        ("larkspur", "turn seam", "turned", ("From the right side",)),
        ("larkspur", "narrow hem", "hem", ("^Sew close",)),
        ("larkspur", "band casing", "band", ("^Sew 1 cm", "^Topstitch")),
        ("larkspur", "insert elastic", "elastic", ("Pin one end", "work it through", "^Zigzag")),
        ("larkspur", "close gap", "gap", ("shut",)),
        ("larkspur", "stack layers", "layers", ("layers together",)),
        ("marigold", "folded casing", "hem", ("^Sew|lower fold",)),
        ("foxglove", "neaten", "margin", ("^Zigzag",)),
    ],
)
def test_callouts_stand_for_the_sentence_that_says_it(demo: str, technique: str, key: str, sentences: tuple[str, ...]) -> None:
    _, _, figure, actions = of(demo, technique, key)
    told = {number: actions[number - 41].text for number in callouts(figure)}
    for sentence in sentences:
        assert any(re.search(sentence, text) for text in told.values()), (sentence, told)
    assert len(told) == len(sentences), told


def test_a_figure_without_numbers_has_no_callouts() -> None:
    found = planned("larkspur", "M")
    run = found.rehearsal.run
    for done in run.performed:
        for figure in figures_for(done, run, run.say):
            assert callouts(figure) == set()


def test_a_step_with_nothing_to_do_has_no_figure() -> None:
    # Without a cutting plan no strip has a join, so there is nothing to join.
    run = planned("larkspur", "M").rehearsal.run
    join = next(done for done in run.performed if done.step.step.technique == "join strips")
    assert figures_for(join, run, run.say) == ()


def test_numbers_are_found_by_what_a_sentence_says() -> None:
    actions = (Action("Mark the edge."), Action("Sew a row."), Action("Sew a second row."))
    assert Numbers(actions, 7).of("second row") == 9
    assert Numbers(actions, 7).of("sew", "row") == 8
    assert Numbers(actions, 7).of("iron") is None
    assert Numbers(actions, None).of("mark") is None


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
        if done.step.step.technique == "stack layers" and figure.key.endswith("-layers")
    ]
    texts = " ".join(line.text for line in words(stacks[-1]))
    assert texts.index("upper tier") < texts.index("lining")
    assert "right side towards the legs" in texts
    lining = found.say.length(found.final.depth("lining"))
    assert lining != found.say.length(found.drops["flounce"])


@pytest.mark.parametrize("demo", demos())
def test_the_overview_gives_the_finished_measures(demo: str) -> None:
    run = planned(demo, sizes(demo)[0]).rehearsal.run
    figure = overview(run, run.say)
    texts = " ".join(line.text for line in words(figure))
    for piece in run.final.cloths:
        assert run.say.length(run.final.depth(piece)) in texts
    (casing,) = run.final.casings.values()
    assert f"Waist {run.say.length(casing.elastic_length)} at rest, stretches to {run.say.length(casing.length)}" in texts
    lowest = max(run.drops.values())
    assert f"{run.say.length(lowest)} from the top" in texts
    assert run.say.length(lowest) in figure.caption


def test_the_margin_of_a_seam_is_drawn_as_wide_as_its_scale_says() -> None:
    # The two gathering rows lie 5 mm and 10 mm from the edge (common practice, no source): the second twice as far.
    _, _, figure, _ = of("larkspur", "gather", "gathering")
    heights = []
    for path in root(figure).iter(f"{SVG}path"):
        if path.attrib.get("stroke-dasharray") == "110 50":
            heights.append(int(re.findall(r"-?\d+", path.attrib["d"])[1]))
    edge_y = 260  # the raw edge of the close view
    assert len(heights) == 2
    assert (heights[1] - edge_y) == pytest.approx(2 * (heights[0] - edge_y), abs=1)
