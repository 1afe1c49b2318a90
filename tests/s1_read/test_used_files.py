"""What a spec is built on: libraries, a garment that it differs from, and files that mean harm."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from furbelow.editor.answers import faults_of
from furbelow.garment.spec import Spec
from furbelow.garment.workroom import Workroom
from furbelow.order.chain import prove
from furbelow.order.order import Order
from furbelow.order.read_order import Asked, OrderReader
from furbelow.preview.build import Builder
from furbelow.s1_read.read_spec import read_spec

LIBRARY = """\
library: 1
body:
  waist_girth: {from: 55 cm, to: 130 cm}
sizes:
  M: {waist_girth: 78 cm}
materials:
  net: {kind: cloth, fibre: nylon, width: 140 cm, weight: 25 g/m2, ravels: no, right side: no}
  lawn: {kind: cloth, fibre: cotton, width: 140 cm, weight: 85 g/m2, ravels: yes, right side: no}
  elastic: {kind: elastic, width: 25 mm, stretch: 100%}
  thread: {kind: thread, fibre: cotton, reel: 200 m}
techniques:
  shake out: {about: Shake it., works on: piece, do: ["Shake {piece}."]}
"""
PLAIN = """\
furbelow: 1
title: {en: Burnet net skirt, de: Netzrock}
use: library/nets.yaml
worn: {from: waist, over: waist_girth, length: 53 cm}
pieces:
  skirt: {from: net, length: 3 m, cut depth: 51 cm}
  band: {from: lawn, length: 130 cm, depth: 3 cm}
steps:
  - join ends: {of: skirt, seam: 1 cm}
  - called: finish
    steps:
      - shake out: {piece: skirt}
  - gather: {edge: skirt.top, length: 130 cm}
  - join ends: {of: band, seam: 1 cm}
  - band casing: {band: band, to: skirt.top, seam: 1 cm, gap: 5 cm}
  - insert elastic: {elastic: elastic, into: band, length: 66 cm}
  - close gap: {of: band}
"""
HEMMED = """\
furbelow: 1
title: Burnet skirt with a hem
based on: plain.yaml
materials:
  net: {width: 150 cm}
pieces:
  skirt: {depth: 50 cm}
change steps:
  finish:
    - narrow hem: {edge: skirt.bottom}
"""


@pytest.fixture
def here(tmp_path: Path) -> Path:
    (tmp_path / "library").mkdir()
    (tmp_path / "library" / "nets.yaml").write_text(LIBRARY)
    (tmp_path / "plain.yaml").write_text(PLAIN)
    (tmp_path / "hemmed.yaml").write_text(HEMMED)
    return tmp_path


def read(path: Path) -> Spec:
    staged = read_spec(path)
    assert staged.value is not None, staged.faults
    return staged.value


def refusal(path: Path) -> tuple[str, str, str, int, int]:
    """The one fault of a spec: code, headline, and its file, line and column."""
    (fault,) = read_spec(path).faults
    assert fault.primary is not None
    span = fault.primary.span
    return fault.code, fault.headline, Path(span.file).name, span.start_line, span.start_column


def test_a_library_gives_sizes_materials_and_techniques(here: Path) -> None:
    spec = read(here / "plain.yaml")
    assert list(spec.materials) == ["net", "lawn", "elastic", "thread"]
    assert [Path(file).name for file in spec.built_on] == ["nets.yaml"]
    staged = prove(Order(spec, "size M", spec.sizes["M"], {}, Workroom()))
    assert staged.faults == ()


def test_a_garment_based_on_another_says_only_what_differs(here: Path) -> None:
    spec = read(here / "hemmed.yaml")
    assert (spec.title, spec.materials["net"].fibre, spec.materials["net"].amounts["width"].text) == (
        "Burnet skirt with a hem", "nylon", "150 cm",
    )  # fmt: skip
    # A finished depth in place of a cut one: the two are one size.
    assert spec.pieces["skirt"].cut_depth is None
    assert [step.technique for step in spec.steps][:3] == ["join ends", "narrow hem", "gather"]
    solved = prove(Order(spec, "size M", spec.sizes["M"], {}, Workroom())).value
    assert solved is not None
    # 50 cm finished, 1 cm of seam above, 5 mm and 10 mm of hem below.
    assert solved.solved.length("skirt.cut_depth") == 525


def test_a_fault_in_a_library_names_its_file_and_shows_its_line(here: Path) -> None:
    (here / "library" / "nets.yaml").write_text(LIBRARY.replace("fibre: nylon, width", "fibre: nylon, wdth"))
    code, said, file, line, column = refusal(here / "plain.yaml")
    assert (code, said, file, line, column) == ("FB130", "`wdth` is no key of a cloth", "nets.yaml", 7, 36)
    reader = OrderReader()
    reader.spec_and_faults(str(here / "plain.yaml"))
    assert any("wdth" in text for text in reader.sources.values())


def test_a_size_that_a_base_gives_wrongly_is_told_in_its_file(here: Path) -> None:
    (here / "plain.yaml").write_text(PLAIN.replace("length: 3 m", "length: 3 kg"))
    spec = read(here / "hemmed.yaml")
    (fault, *_) = prove(Order(spec, "size M", spec.sizes["M"], {}, Workroom())).faults
    assert fault.primary is not None
    assert (fault.code, Path(fault.primary.span.file).name, fault.primary.span.start_line) == ("FB207", "plain.yaml", 6)


@pytest.mark.parametrize(
    ("old", "new", "told"),
    [
        ("library/nets.yaml", "library/net.yaml", "there is no file"),
        ("library/nets.yaml", "../nets.yaml", "../nets.yaml lies outside of the folder of the spec"),
        ("library/nets.yaml", "library/../../nets.yaml", "library/../../nets.yaml lies outside of the folder of the spec"),
        ("library/nets.yaml", "/etc/passwd", "/etc/passwd lies outside of the folder of the spec"),
        ("library/nets.yaml", "library", "there is no file"),
        ("use: library/nets.yaml", "based on: library/nets.yaml", "is a library, and no garment"),
        ("library/nets.yaml", "hemmed.yaml", "is no library"),
    ],
)  # fmt: skip  # a table reads in rows
def test_what_lies_outside_or_is_not_there_is_refused(here: Path, old: str, new: str, told: str) -> None:
    (here / "plain.yaml").write_text(PLAIN.replace(old, new))
    code, said, file, line, _ = refusal(here / "plain.yaml")
    assert (code, file, line) == ("FB174", "plain.yaml", 3)
    assert told in said


def test_a_link_does_not_lead_out_of_the_folder(here: Path, tmp_path_factory: pytest.TempPathFactory) -> None:
    secret = tmp_path_factory.mktemp("elsewhere") / "nets.yaml"
    secret.write_text(LIBRARY)
    (here / "library" / "nets.yaml").unlink()
    (here / "library" / "nets.yaml").symlink_to(secret)
    assert refusal(here / "plain.yaml")[:2] == ("FB174", "library/nets.yaml lies outside of the folder of the spec")
    (here / "library" / "nets.yaml").unlink()
    (here / "library").rmdir()
    (here / "library").symlink_to(secret.parent)
    assert refusal(here / "plain.yaml")[0] == "FB174"


def test_a_pipe_is_not_read(here: Path) -> None:
    (here / "library" / "nets.yaml").unlink()
    os.mkfifo(here / "library" / "nets.yaml")
    assert refusal(here / "plain.yaml")[0] == "FB174"


def test_garments_based_on_each_other_are_told(here: Path) -> None:
    (here / "plain.yaml").write_text(PLAIN.replace("use: library/nets.yaml", "based on: hemmed.yaml"))
    code, said, file, line, column = refusal(here / "hemmed.yaml")
    assert (code, file, line, column) == ("FB175", "plain.yaml", 3, 11)
    assert said == "files are built on each other in a circle: hemmed.yaml -> plain.yaml -> hemmed.yaml"
    (here / "alone.yaml").write_text("furbelow: 1\ntitle: Alone\nbased on: alone.yaml\n")
    assert refusal(here / "alone.yaml")[0] == "FB175"


def test_libraries_that_use_each_other_end(here: Path) -> None:
    (here / "library" / "nets.yaml").write_text(LIBRARY.replace("library: 1\n", "library: 1\nuse: other.yaml\n"))
    (here / "library" / "other.yaml").write_text("library: 1\nuse: nets.yaml\n")
    assert refusal(here / "plain.yaml")[0] == "FB175"


def test_a_chain_of_files_ends(here: Path) -> None:
    for number in range(40):
        (here / f"base{number}.yaml").write_text(f"furbelow: 1\nbased on: base{number + 1}.yaml\n")
    assert refusal(here / "base0.yaml")[:2] == ("FB175", "the spec is built on more than 30 files")


def test_a_library_is_as_small_as_any_file(here: Path) -> None:
    (here / "library" / "nets.yaml").write_text("library: 1\n#" + "x" * 1024 * 1024)
    assert refusal(here / "plain.yaml")[0] == "FB102"


def test_a_library_holds_no_pieces(here: Path) -> None:
    (here / "library" / "nets.yaml").write_text(LIBRARY + "pieces:\n  skirt: {from: net, length: 1 m, depth: 1 m}\n")
    assert refusal(here / "plain.yaml")[:3] == ("FB130", "`pieces` is no key of a library", "nets.yaml")


def test_changed_steps_must_be_there(here: Path) -> None:
    (here / "hemmed.yaml").write_text(HEMMED.replace("finish:", "finsh:"))
    assert refusal(here / "hemmed.yaml") == ("FB176", "no group of steps is called `finsh`", "hemmed.yaml", 9, 3)


def test_the_editor_tells_of_a_library_where_the_spec_leads_to_it(here: Path) -> None:
    (here / "library" / "nets.yaml").write_text(LIBRARY.replace("140 cm", "140 kg", 1))
    (fault,) = faults_of(str(here / "plain.yaml"), PLAIN)
    assert fault.primary is not None
    assert (fault.code, fault.primary.span.start_line, fault.primary.span.file) == (
        "FB207",
        3,
        str(here / "plain.yaml"),
    )
    assert f"{here / 'library' / 'nets.yaml'}:7:43: `net.width` is a weight" in fault.headline
    library = str(here / "library" / "nets.yaml")
    assert faults_of(library, LIBRARY) == ()
    assert [each.code for each in faults_of(library, LIBRARY.replace("fibre: nylon", "fibr: nylon"))] == ["FB130"]


def test_the_preview_watches_what_a_spec_is_built_on(here: Path) -> None:
    built = Builder(Asked(str(here / "hemmed.yaml"), "M")).build()
    assert built.guide is not None
    assert [Path(file).name for file in built.built_on] == ["plain.yaml", "nets.yaml"]
    (here / "library" / "nets.yaml").unlink()
    missing = Builder(Asked(str(here / "hemmed.yaml"), "M")).build()
    assert missing.guide is None
    # It is watched until it comes.
    assert [Path(file).name for file in missing.built_on] == ["plain.yaml", "nets.yaml"]
