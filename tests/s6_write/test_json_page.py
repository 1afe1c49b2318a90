"""guide.json holds all of the guide, the same letters each time."""

from __future__ import annotations

import json
from dataclasses import asdict

import pytest

from compiler.s6_write.json_page import to_json
from tests.s6_write.probes import PROBES
from tests.s6_write.sample_guide import GUIDE, with_text_everywhere


def test_all_of_the_guide_is_read_back() -> None:
    read = json.loads(to_json(GUIDE))
    assert read.pop("furbelow_guide") == 1
    assert read == json.loads(json.dumps(asdict(GUIDE)))


def test_keys_stand_in_alphabetical_order() -> None:
    keys = list(json.loads(to_json(GUIDE)))
    assert keys == sorted(keys)


@pytest.mark.parametrize("probe", PROBES)
def test_a_probe_is_read_back_as_it_was(probe: str) -> None:
    assert json.loads(to_json(with_text_everywhere(probe)))["title"] == f"{GUIDE.title} {probe}"
