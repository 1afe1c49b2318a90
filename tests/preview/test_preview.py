"""The preview builds at each save, keeps the last good guide, and answers this machine alone."""

from __future__ import annotations

import http.client
import json
import os
import socket
import struct
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from furbelow.preview.build import Builder
from furbelow.preview.watch import LOOK_EVERY, Watch
from furbelow.s4_cut.cut import planned_afresh

from tests.preview.running import SPECS, call, running

LARKSPUR = (SPECS / "larkspur.yaml").read_text(encoding="utf-8")
FAULTY = LARKSPUR.replace("piece: lining}", "piece: linning}")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    file = tmp_path / "larkspur.yaml"
    file.write_text(LARKSPUR, encoding="utf-8")
    return file


@pytest.fixture
def preview(spec: Path) -> Iterator[tuple[Watch, int]]:
    with running(spec) as watch_and_port:
        yield watch_and_port


def ask(port: int, path: str, method: str = "GET", **headers: str) -> tuple[int, dict[str, str], bytes]:
    connection = http.client.HTTPConnection("127.0.0.1", port, timeout=30)
    connection.putrequest(method, path, skip_host="Host" in headers)
    for name, value in headers.items():
        connection.putheader(name, value)
    connection.endheaders()
    answer = connection.getresponse()
    content = answer.read()
    connection.close()
    return answer.status, dict(answer.getheaders()), content


def state(port: int, after: int = 0, guide: int = 0) -> dict[str, Any]:
    line, _, page = ask(port, f"/state?after={after}&guide={guide}")[2].partition(b"\n")
    found: dict[str, Any] = json.loads(line)
    return {**found, "page": page}


# --- building ---


def test_the_guide_is_that_of_the_size_asked(spec: Path) -> None:
    for size, shown in (("XS", b"size XS"), ("L", b"size L")):
        built = Builder(call(spec, size=size)).build()
        assert built.guide is not None
        assert shown in built.guide
        assert built.report == ""


@pytest.mark.parametrize(
    ("more", "told"),
    [
        ({"size": "XXXL"}, "FB214"),
        ({"choices": ["layer=3"]}, "FB215"),
        ({"choices": ["layers"]}, "FB201"),
        ({"workroom": "nowhere.yaml"}, "FB112"),
        ({"wearer": "nowhere.yaml"}, "FB112"),
    ],
)
def test_whatever_is_at_fault_is_told_in_the_report(spec: Path, more: dict[str, object], told: str) -> None:
    built = Builder(call(spec, **more)).build()
    assert built.guide is None
    assert told in built.report


def test_who_names_nobody_is_asked_for_whom(spec: Path) -> None:
    assert "(sizes: XS, S, M, L, XL)" in Builder(call(spec, size=None)).build().report


def test_a_bug_of_ours_does_not_end_the_preview(spec: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError("by nothing")

    monkeypatch.setattr("furbelow.preview.build.make_page", broken)
    built = Builder(call(spec)).build()
    assert built.guide is None
    assert "our bug" in built.report


def test_a_build_with_plans_kept_from_the_one_before_is_the_build_afresh(
    spec: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    builder = Builder(call(spec))
    builder.build()
    planned: list[object] = []

    def counted(*cloth: Any) -> object:
        planned.append(cloth)
        return planned_afresh(*cloth)

    monkeypatch.setattr("furbelow.s4_cut.plan_cache.planned_afresh", counted)
    spec.write_text(
        LARKSPUR.replace(
            "default: 3 cm",
            "default: 4 cm",
        ),
        encoding="utf-8",
    )
    again = builder.build()
    assert len(planned) == 1  # the satin, not the net
    assert again == Builder(call(spec)).build()


# --- saving ---


def test_a_fault_is_told_and_the_last_good_guide_is_kept(spec: Path, preview: tuple[Watch, int]) -> None:
    _, port = preview
    first = state(port)
    assert (first["number"], first["guide"], first["report"]) == (1, 1, "")
    good = ask(port, "/guide")[2]

    spec.write_text(FAULTY, encoding="utf-8")
    second = state(port, after=1)
    assert second["guide"] == 1
    assert "no piece is called `linning`" in second["report"]
    assert "1 error" in second["tally"]
    assert ask(port, "/guide")[2] == good

    spec.write_text(LARKSPUR.replace("en: Larkspur dancing", "en: Tansy dancing"), encoding="utf-8")
    third = state(port, after=second["number"])
    assert third["guide"] == third["number"]
    assert third["report"] == ""
    assert b"Tansy dancing" in third["page"]
    assert b"Tansy dancing" in ask(port, "/guide")[2]


def test_words_of_the_workroom_are_watched_too(spec: Path) -> None:
    words = spec.parent / "words" / "en"
    words.mkdir(parents=True)
    room = spec.parent / "room.yaml"
    room.write_text("workroom: 1\nwords: words\n", encoding="utf-8")
    with running(spec, workroom=str(room)) as (_, port):
        assert b"Look the garment over" in ask(port, "/guide")[2]
        (words / "mine.ftl").write_text("last-look-title = Have a good look at it\n", encoding="utf-8")
        assert b"Have a good look at it" in state(port, after=1)["page"]
        (words / "mine.ftl").write_text("last-look-title = Have a long look at it\n", encoding="utf-8")
        assert b"Have a long look at it" in state(port, after=2)["page"]


def test_a_save_by_renaming_is_seen_too(spec: Path, preview: tuple[Watch, int]) -> None:
    _, port = preview
    beside = spec.with_suffix(".new")
    beside.write_text(FAULTY, encoding="utf-8")
    os.replace(beside, spec)
    assert "linning" in state(port, after=1)["report"]


def test_a_file_that_is_emptied_before_it_is_written_is_not_told_as_empty(
    spec: Path, preview: tuple[Watch, int]
) -> None:
    _, port = preview
    with spec.open("w", encoding="utf-8") as file:
        time.sleep(4 * LOOK_EVERY)
        file.write(FAULTY)
    assert "linning" in state(port, after=1)["report"]


def test_a_file_that_stays_empty_is_told(spec: Path, preview: tuple[Watch, int]) -> None:
    _, port = preview
    spec.write_bytes(b"")
    assert "FB1" in state(port, after=1)["report"]


def test_a_file_that_goes_away_is_told(spec: Path, preview: tuple[Watch, int]) -> None:
    _, port = preview
    spec.unlink()
    gone = state(port, after=1)
    assert "FB112" in gone["report"]
    assert gone["guide"] == 1


def test_a_preview_may_begin_with_a_fault(spec: Path) -> None:
    spec.write_text(FAULTY, encoding="utf-8")
    with running(spec) as (_, port):
        assert state(port)["guide"] == 0
        assert ask(port, "/guide")[2] == b""


def test_the_guide_comes_with_the_news_to_who_shows_another_one(spec: Path, preview: tuple[Watch, int]) -> None:
    _, port = preview
    assert state(port)["page"] == ask(port, "/guide")[2] != b""
    assert state(port, guide=1)["page"] == b""
    spec.write_text(FAULTY, encoding="utf-8")
    assert state(port, after=1, guide=1)["page"] == b""


# --- who is answered ---


def test_it_is_bound_to_the_loopback_address_alone(preview: tuple[Watch, int]) -> None:
    _, port = preview
    bound = (
        [line.split() for line in Path("/proc/net/tcp").read_text().splitlines()[1:]]
        if Path("/proc/net/tcp").exists()
        else []
    )
    mine = [fields[1] for fields in bound if fields[1].endswith(f":{port:04X}") and fields[3] == "0A"]
    assert mine in ([], [f"0100007F:{port:04X}"])
    others = {str(found[4][0]) for found in socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)} - {
        "127.0.0.1"
    }
    for address in others:
        if not address.startswith("127."):
            with pytest.raises(OSError):  # noqa: PT011
                socket.create_connection((address, port), timeout=2)


@pytest.mark.parametrize(
    "host", ["evil.example", "127.0.0.1", "localhost:1", "127.0.0.1.evil.example", "[::1]", "", "0.0.0.0"]
)
@pytest.mark.parametrize("path", ["/", "/guide", "/state", "/try"])
def test_another_host_name_is_refused_and_told_nothing(preview: tuple[Watch, int], host: str, path: str) -> None:
    status, _, content = ask(preview[1], path, Host=host)
    assert status == 403
    assert b"arkspur" not in content


@pytest.mark.parametrize("name", ["127.0.0.1", "localhost"])
def test_its_own_names_are_answered(preview: tuple[Watch, int], name: str) -> None:
    _, port = preview
    assert ask(port, "/", Host=f"{name}:{port}")[0] == 200


@pytest.mark.parametrize("method", ["POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "HEAD"])
def test_nothing_can_be_written_to_it(preview: tuple[Watch, int], method: str) -> None:
    assert ask(preview[1], "/state", method)[0] == 501


@pytest.mark.parametrize(
    "path",
    ["/larkspur.yaml", "/../../etc/passwd", "/guide/../../etc/passwd", "/%2e%2e/", "//evil.example/", "/state/", "*"],
)
def test_no_other_page_is_there(preview: tuple[Watch, int], path: str) -> None:
    assert ask(preview[1], path)[0] == 404


@pytest.mark.parametrize("path", ["http://[::1", "http://["])
def test_an_address_that_is_none_is_told(
    preview: tuple[Watch, int], path: str, capfd: pytest.CaptureFixture[str]
) -> None:
    with socket.create_connection(("127.0.0.1", preview[1]), timeout=30) as asking:
        asking.sendall(f"GET {path} HTTP/1.1\r\nHost: 127.0.0.1:{preview[1]}\r\nConnection: close\r\n\r\n".encode())
        assert asking.recv(100).startswith(b"HTTP/1.1 400 ")
    assert capfd.readouterr().err == ""


@pytest.mark.parametrize("after", ["", "x", "-1", "9" * 5000, "%00", "\u0663".encode().hex(), "1e9"])
def test_an_odd_question_gets_the_state(preview: tuple[Watch, int], after: str) -> None:
    status, _, content = ask(preview[1], f"/state?after={after}&guide={after}")
    assert status == 200
    assert json.loads(content.splitlines()[0])["number"] == 1


def test_every_answer_is_kept_by_nobody_and_framed_by_nobody_else(preview: tuple[Watch, int]) -> None:
    for path in ("/", "/guide", "/state"):
        _, headers, _ = ask(preview[1], path)
        assert headers["Cache-Control"] == "no-store"
        assert headers["X-Content-Type-Options"] == "nosniff"
        assert headers["Cross-Origin-Resource-Policy"] == "same-origin"
        assert "Access-Control-Allow-Origin" not in headers
    assert "frame-ancestors 'none'" in ask(preview[1], "/")[1]["Content-Security-Policy"]
    assert "frame-ancestors 'self'" in ask(preview[1], "/guide")[1]["Content-Security-Policy"]


def test_a_browser_that_goes_away_leaves_the_terminal_quiet(
    spec: Path, preview: tuple[Watch, int], capfd: pytest.CaptureFixture[str]
) -> None:
    _, port = preview
    for asked in (b"GET /state?after=1 HTTP/1.1\r\nHost: 127.0.0.1:%d\r\n\r\n" % port, b"GET /"):
        gone = socket.create_connection(("127.0.0.1", port))
        gone.sendall(asked)
        # A linger of nothing makes the system reset the connection.
        gone.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        gone.close()
    spec.write_text(FAULTY, encoding="utf-8")
    assert "linning" in state(port, after=1)["report"]
    assert "Traceback" not in capfd.readouterr().err
