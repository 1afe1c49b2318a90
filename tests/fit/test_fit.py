"""The best garment under limits, against all garments of the grid planned one by one."""

from __future__ import annotations

import json
from fractions import Fraction
from functools import cache

import pytest
from furbelow.fit.fit import Fit, fit
from furbelow.fit.report import as_data, as_text
from furbelow.garment.solved import Derivation
from furbelow.measure.quantity import Quantity, number
from furbelow.order.chain import prove
from furbelow.s2_solve.derivations import Derivations
from furbelow.verbs.command import run

from tests.demos.demos import SPECS, order
from tests.fit.every_garment import Garment, every_garment


def _steps(low: str, high: str, step: str) -> tuple[Quantity, ...]:
    values, at = [], Fraction(low)
    while at <= Fraction(high):
        values.append(number(at))
        at += Fraction(step)
    return tuple(values)


MARIGOLD = ("marigold", "16", (("fullness", _steps("1.25", "2", "0.05")),))
LARKSPUR = ("larkspur", "M", (("fullness", _steps("1.5", "3", "0.05")),))


@cache
def _fit(case: tuple[str, str, object], *limits: str, aim: str = "") -> Fit:
    staged = fit(order(case[0], case[1]), "fullness", limits, aim)
    assert staged.value is not None, staged.faults
    return staged.value


def _fullness(garment: Garment) -> Fraction:
    return garment.choices["fullness"].value


def _metres(garment: Garment, cloth: str) -> Fraction:
    return garment.takes[cloth] / 1000


@pytest.mark.parametrize("case", [MARIGOLD, LARKSPUR])
def test_no_garment_takes_less_than_its_area_alone_says(case: tuple[str, str, tuple]) -> None:  # type: ignore[type-arg]
    for garment in every_garment(*case):
        assert garment.takes.keys() == garment.at_least.keys()
        assert all(garment.at_least[name] <= took for name, took in garment.takes.items())


@pytest.mark.parametrize("metres", ["4.1", "4.6", "5.0", "5.25", "5.9", "7"])
def test_the_fullest_that_the_net_at_hand_allows_is_the_fullest_of_all(metres: str) -> None:
    found = _fit(LARKSPUR, f"net <= {metres} m")
    allowed = [each for each in every_garment(*LARKSPUR) if _metres(each, "net") <= Fraction(metres)]
    assert found.best is not None
    assert found.best.choices["fullness"].value == max(map(_fullness, allowed))


def test_halving_the_range_would_have_missed_it() -> None:
    """More fullness may take less cloth: a strip grows long enough to be laid another way."""
    rows = sorted(every_garment(*LARKSPUR), key=_fullness)
    limit = Fraction("4.6")
    found = _fit(LARKSPUR, "net <= 4.6 m")
    assert found.best is not None
    best = found.best.choices["fullness"].value
    assert any(_fullness(row) < best and _metres(row, "net") > limit for row in rows)


@pytest.mark.parametrize(
    ("limits", "keeps"),
    [
        (("cost <= 26 EUR",), lambda each: each.takes["cost"] <= 26),
        (("hours <= 5",), lambda each: each.takes["hours"] <= 5),
        (
            ("hours < 5", "cost <= 24.35 EUR"),
            lambda each: each.takes["hours"] < 5 and each.takes["cost"] <= Fraction("24.35"),
        ),
        (
            ("lawn <= 2.4 yd and thread <= 90 m",),
            lambda each: each.takes["lawn"] <= Fraction("914.4") * Fraction("2.4") and each.takes["thread"] <= 90_000,
        ),
        (
            ("3 * hours + 1 <= 15 and 25 EUR >= cost",),
            lambda each: 3 * each.takes["hours"] + 1 <= 15 and each.takes["cost"] <= 25,
        ),
        (("hours >= 5",), lambda each: each.takes["hours"] >= 5),
    ],
)
def test_limits_of_every_kind_are_kept(limits, keeps) -> None:  # type: ignore[no-untyped-def]
    found = _fit(MARIGOLD, *limits)
    allowed = [each for each in every_garment(*MARIGOLD) if keeps(each)]
    assert found.best is not None
    assert found.best.choices["fullness"].value == max(map(_fullness, allowed))
    assert found.best.exact is not None
    assert all(limit.holds(found.best.exact) for limit in found.limits)


@pytest.mark.parametrize(
    "aim", ["least cost", "least hours", "least lawn, then most fullness", "most thread", "most hours, least cost"]
)
def test_the_best_for_an_aim_is_the_best_of_all(aim: str) -> None:
    found = _fit(MARIGOLD, "lawn <= 2.6 m", aim=aim)
    allowed = [each for each in every_garment(*MARIGOLD) if _metres(each, "lawn") <= Fraction("2.6")]
    wanted = [(word.split()[-2:]) for word in aim.split(",")]

    def key(garment: Garment) -> tuple[Fraction, ...]:
        values = {**garment.takes, "fullness": _fullness(garment)}
        return tuple(-values[name] if most == "most" else values[name] for most, name in wanted)

    assert found.best is not None
    assert found.best.exact is not None
    best = next(each for each in allowed if _fullness(each) == found.best.choices["fullness"].value)
    assert key(best) == min(map(key, allowed))


def test_two_choices_are_wanted_in_the_order_they_are_named() -> None:
    layers_first = fit(order("larkspur", "S"), "layers,fullness", ["net <= 6 m"]).value
    assert layers_first is not None
    assert layers_first.best is not None
    most = layers_first.best.choices["layers"]
    # The fullest of so many layers, and one layer more does not go.
    for layers in (most, most + number(1)):
        rows = every_garment("larkspur", "S", (("layers", (layers,)), ("fullness", _steps("1.5", "3", "0.05"))))
        allowed = [row for row in rows if row.takes["net"] <= 6000]
        assert bool(allowed) == (layers == most)
        if allowed:
            assert layers_first.best.choices["fullness"].value == max(map(_fullness, allowed))


def test_where_nothing_keeps_the_limits_the_nearest_miss_is_told() -> None:
    found = _fit(MARIGOLD, "lawn <= 1.8 m", "hours <= 3")
    assert found.best is None
    assert found.nearest is not None

    def share(garment: Garment) -> Fraction:
        return max(garment.takes["lawn"] / 1800 - 1, garment.takes["hours"] / 3 - 1, Fraction(0))

    rows = every_garment(*MARIGOLD)
    nearest = next(each for each in rows if _fullness(each) == found.nearest.choices["fullness"].value)
    assert share(nearest) == min(map(share, rows))
    assert [missed.over.value for missed in found.missed(found.nearest)] == [
        nearest.takes["lawn"] - 1800,
        nearest.takes["hours"] - 3,
    ]


def test_what_would_do_is_the_least_that_one_limit_must_give_way_alone() -> None:
    found = _fit(MARIGOLD, "lawn <= 1.8 m", "hours <= 5")
    rows = [each for each in every_garment(*MARIGOLD) if each.takes["hours"] <= 5]
    assert found.best is None
    (relaxed,) = found.relax  # no garment takes so little lawn, so no number of hours helps
    assert relaxed.limit.text == "lawn <= 1.8 m"
    assert relaxed.to.value == min(each.takes["lawn"] for each in rows)


def test_far_fewer_garments_are_planned_than_there_are() -> None:
    found = _fit(LARKSPUR, "net <= 4.3 m")
    assert found.grid == 31
    assert found.ruled_out > 0
    assert found.planned + found.ruled_out <= found.grid


def test_a_choice_without_a_limit_goes_as_far_as_the_cloth_gathers() -> None:
    """Marigold's lawn of 80 g/m2 gathers to 3, so the range of the choice is the end."""
    found = _fit(MARIGOLD)
    assert found.best is not None
    assert found.best.choices["fullness"] == number(2)


@pytest.mark.parametrize(
    ("free", "limit", "aim", "code", "headline"),
    [
        ("fulness", "net <= 9 m", "", "FB703", "`fulness` is no choice of this garment"),
        ("fullness,fullness", "net <= 9 m", "", "FB703", "`fullness` is set free twice"),
        ("fullness", "nett <= 9 m", "", "FB701", "nothing is named `nett`"),
        ("fullness", "net", "", "FB201", None),
        ("fullness", "net <= 9 kg", "", "FB701", None),
        ("fullness", "net <= 9 m or cost <= 3 EUR", "", "FB701", "`net <= 9 m or cost <= 3 EUR` sets no limit"),
        ("fullness", "net <= 9 m", "fullest", "FB702", "`fullest` says neither the most nor the least of what"),
        ("fullness", "net <= 9 m", "most fulness", "FB701", "nothing is named `fulness`"),
        (
            "fullness,skirt_length,clearance,layers",
            "net <= 9 m",
            "",
            "FB704",
            "the free choices make 35,712 garments, more than the 5,000 that are tried",
        ),
    ],
)
def test_what_is_asked_wrongly_is_told(free: str, limit: str, aim: str, code: str, headline: str | None) -> None:
    staged = fit(order("larkspur", "M"), free, [limit], aim)
    assert staged.value is None
    assert staged.faults[0].code == code
    if headline:
        assert staged.faults[0].headline == headline


def _best_and_next() -> tuple[str, str]:
    """The fullest larkspur of 5.2 m of net, and the garment one step fuller."""
    allowed = [_fullness(each) for each in every_garment(*LARKSPUR) if _metres(each, "net") <= Fraction("5.2")]
    return f"{float(max(allowed)):g}", f"{float(max(allowed) + Fraction('0.05')):g}"


def test_the_text_says_what_to_type_and_why_not_more() -> None:
    best, more = _best_and_next()
    told = as_text(_fit(LARKSPUR, "net <= 5.2 m"))
    assert f"make it with --set fullness={best}" in told
    assert f"no better: with fullness {more} net comes to" in told


def test_the_data_hold_the_same() -> None:
    best, more = _best_and_next()
    told = as_data(_fit(LARKSPUR, "net <= 5.2 m"))
    assert told["best"]["choices"] == {"fullness": {"number": float(best), "unit": "1", "shown": best}}
    assert told["best"]["missed"] == []
    assert told["passed_over"]["choices"] == {"fullness": {"number": float(more), "unit": "1", "shown": more}}
    assert told["garments"]["all"] == 31


def test_the_command_tells_a_fit_as_text_and_as_data(capsys: pytest.CaptureFixture[str]) -> None:
    call = ["fit", str(SPECS / "marigold.yaml"), "--size", "16", "--free", "fullness"]
    assert run([*call, "--so-that", "lawn <= 2.6 m"]) == 0
    assert "make it with --set fullness=" in capsys.readouterr().out
    assert run([*call, "--so-that", "lawn <= 1 m", "--format", "json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert told["best"] is None
    assert told["relax"][0]["limit"] == "lawn <= 1 m"


@pytest.mark.parametrize(
    ("options", "said"),
    [
        (["--so-that", "lawnn <= 1 m"], "nothing is named `lawnn`"),
        (["--for", "fullest"], "says neither the most nor the least"),
        (["--set", "fullness=2"], "is both made with --set and set free"),
    ],
)
def test_a_wrong_call_is_told_with_its_exit_code(
    options: list[str], said: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert run(["fit", str(SPECS / "marigold.yaml"), "--size", "16", "--free", "fullness", *options]) == 2
    assert said in capsys.readouterr().err


@pytest.mark.parametrize(
    "limit",
    [
        "(net + satin) <= 6 m",
        "6 m >= (net + satin)",
        "((net) + (satin) <= (6 m))",
        "(net <= 6 m - satin and (hours) <= (40))",
        "not (net + satin)",
    ],
)
def test_a_limit_may_begin_or_end_with_a_bracket(limit: str) -> None:
    staged = fit(order("larkspur", "M"), "layers", [limit])
    if limit.startswith("not"):
        assert staged.faults
        return
    plain = fit(order("larkspur", "M"), "layers", ["net + satin <= 6 m"]).value
    assert staged.value is not None
    assert plain is not None
    assert plain.best is not None
    assert staged.value.best is not None
    assert staged.value.best.choices == plain.best.choices


def test_a_fault_in_the_first_of_two_limits_is_shown_under_its_own_text(capsys: pytest.CaptureFixture[str]) -> None:
    spec = str(SPECS / "larkspur.yaml")
    wrong = ["--so-that", "nett <= 9 m", "--so-that", "cost <= 40 kg"]
    assert run(["fit", spec, "--size", "M", "--free", "fullness", *wrong]) == 2
    told = capsys.readouterr().err
    first, second = told.index("nothing is named `nett`"), told.index("the limit can't be worked out")
    assert "nett <= 9 m" in told[first + 30 : second]
    assert "cost <= 40 kg" in told[second:]


def test_where_the_work_allowed_ends_the_search_it_is_said_and_what_is_found_still_holds(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("furbelow.fit.fit.BEST_WORK", 10)
    found = fit(order("larkspur", "M"), "layers,fullness", ["hours <= 8"]).value
    assert found is not None
    assert found.unsure > 0
    assert found.best is not None
    assert found.best.exact is not None
    assert found.best.exact["hours"].value <= 8
    assert f"{found.unsure} not reached in the work allowed" in as_text(found)
    assert as_data(found)["garments"]["not_reached"] == found.unsure


def test_only_what_is_asked_for_is_kept_of_a_garment() -> None:
    """A thousand garments with a hundred numbers each would fill the memory."""
    found = _fit(LARKSPUR, "net <= 4.3 m")
    assert found.nearest is None
    assert found.best is not None
    assert found.best.exact is not None
    assert not [name for name in found.best.exact if "." in name]


def test_no_reason_is_put_into_words_for_a_garment_that_is_only_looked_at(monkeypatch: pytest.MonkeyPatch) -> None:
    """A hundred reasons for each of thousands of garments took most of the time of a fit."""
    worded = []
    tell = Derivations._tell

    def counted(self: Derivations, name: str) -> Derivation:
        worded.append(name)
        return tell(self, name)

    monkeypatch.setattr(Derivations, "_tell", counted)
    found = fit(order("larkspur", "M"), "fullness,layers", ["net <= 1 m"]).value
    assert found is not None
    looked_at, numbers = found.grid, len(prove(order("larkspur", "M")).value.solved.values)  # type: ignore[union-attr]
    assert found.planned + found.refused < looked_at / 3
    assert len(worded) < looked_at * numbers / 2
