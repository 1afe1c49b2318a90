"""guide.json holds all of the guide, the same letters each time."""

from __future__ import annotations

import json
from dataclasses import asdict

import pytest
from furbelow.s6_write.pages.json_page import to_json

from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere


def test_all_of_the_guide_is_read_back() -> None:
    read, whole = json.loads(to_json(GUIDE)), json.loads(json.dumps(asdict(GUIDE)))
    assert read.pop("furbelow_guide") == 2
    # The reasons stand as trees with the numbers that they are for.
    del whole["reasons"]
    for guide in (read, whole):
        operations = [operation for part in guide["parts"] for operation in part["operations"]]
        for told in (*guide["facts"], *guide["cutting"], *operations):
            told.pop("why", None)
    assert read == whole


def test_a_reason_is_a_tree_down_to_what_was_written_or_measured() -> None:
    flounce = json.loads(to_json(GUIDE))["cutting"][1]
    length, cut_length = flounce["why"]
    assert length == {
        "name": "flounce.length",
        "label": "finished length of the flounce",
        "value": "600 cm",
        "text": "finished length of the upper tier × fullness = 300 cm × 2 = 600 cm",
        "formula": "upper.length * fullness",
        "with_numbers": "300 cm * 2",
        "place": "line 76 of larkspur.yaml",
        "from": [
            {
                "name": "upper.length",
                "label": "finished length of the upper tier",
                "value": "300 cm",
                "text": "written on line 69 of larkspur.yaml",
                "formula": "300 cm",
                "with_numbers": "300 cm",
                "place": "line 69 of larkspur.yaml",
            },
            {
                "name": "fullness",
                "label": "fullness",
                "value": "2",
                "text": "a choice, line 25 of larkspur.yaml",
                "formula": "2",
                "with_numbers": "2",
                "place": "line 25 of larkspur.yaml",
            },
        ],
    }
    assert [each["name"] for each in cut_length["from"]] == [
        "flounce.length",
        "flounce.start_takes",
        "flounce.end_takes",
    ]
    assert cut_length["from"][0]["from"] == length["from"]


def test_a_measurement_without_a_reason_says_so() -> None:
    facts = {fact["name"]: fact["why"] for fact in json.loads(to_json(GUIDE))["facts"]}
    assert facts["waistband.length"] is None
    assert facts["skirt_length"]["from"][0]["name"] == "waist_height"


def test_keys_stand_in_alphabetical_order() -> None:
    keys = list(json.loads(to_json(GUIDE)))
    assert keys == sorted(keys)


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_is_read_back_as_it_was(probe: str) -> None:
    assert json.loads(to_json(with_text_everywhere(probe)))["title"] == f"{GUIDE.title} {probe}"
