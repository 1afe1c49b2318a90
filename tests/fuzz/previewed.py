"""The preview with a hostile browser before it: requests of every shape, and saves of the spec between them.

The verb runs whole, but for its loop: what would come over the network is handed to its handler, one request after another,
and then Ctrl-C ends it.
"""

from __future__ import annotations

import io
import json
import random
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from http.server import ThreadingHTTPServer
from pathlib import Path
from typing import NamedTuple
from unittest.mock import patch
from urllib.parse import quote

from furbelow.preview import server as module
from furbelow.preview.build import Builder
from furbelow.preview.trial import Trials
from furbelow.preview.watch import Watch

from tests.fuzz.garments import Garment, texts
from tests.fuzz.mutate import TROUBLE, formula, mutant

HOST = b"127.0.0.1:PORT"
# What the standard library's server answers besides: too long, not known, too many headers, no such version.
STATUSES = {200, 400, 403, 404, 414, 431, 501, 505}


class Sent(NamedTuple):
    """Bytes as they come from a browser; saved: the spec as it is saved before, "" for as it is."""

    request: bytes
    saved: str = ""


def sound_requests(luck: random.Random, garment: Garment) -> tuple[Sent, ...]:
    """The page, the guide, the state, and the choices in some of their states."""
    chosen = [f"set={quote(f'{name}={value}')}" for name, value in garment.choices if luck.random() < 0.6]
    tried = "&".join([f"size={quote(garment.size)}", *chosen])
    paths = [luck.choice(["/", "/guide", f"/state?after={luck.randrange(3)}&guide={luck.randrange(2)}"])]
    return tuple(Sent(_get(path)) for path in (*paths, f"/try?{tried}"))


def hostile_requests(luck: random.Random, garment: Garment) -> tuple[Sent, ...]:
    return tuple(_hostile(luck, garment) for _ in range(luck.randrange(1, 4)))


def _hostile(luck: random.Random, garment: Garment) -> Sent:
    kind = luck.randrange(8)
    if kind == 0:
        return Sent(luck.randbytes(luck.randrange(200)).replace(b"\0", b"\r\n"))
    if kind == 1:
        return Sent(_get("/try?" + "&".join(["size=M"] * luck.choice([1, 100, 9_000]))))
    if kind == 2:
        method = luck.choice(["POST", "HEAD", "OPTIONS", "get", "GET " + "x" * 70_000, ""])
        return Sent(_get("/", method=method))
    if kind == 3:
        host = luck.choice([b"furbelow.example", b"", b"127.0.0.1", b"localhost:PORT", b"[::1]:PORT", "é".encode()])
        return Sent(_get(luck.choice(["/", "/guide", "/try"]), host=host))
    if kind == 4:
        path = luck.choice(
            ["http://[::1", "//", "/../../etc/passwd", "*", "/guide%00", "/try?%", "/state?after=-1", "/é"]
        )
        return Sent(_get(path))
    if kind == 5:
        return Sent(
            _get(f"/state?after={quote(luck.choice(TROUBLE)[:200])}&guide={luck.choice(['9' * 30, '１', '-1'])}")
        )
    name = luck.choice([name for name, _ in garment.choices] or ["layers"])
    chosen = [f"{name}={luck.choice([formula(luck), luck.choice(TROUBLE)[:200]])}", luck.choice(TROUBLE)[:100]]
    tried = "&".join(f"set={quote(each, errors='replace')}" for each in chosen[: luck.randrange(1, 3)])
    size = quote(luck.choice([garment.size, garment.size, "", luck.choice(TROUBLE)[:100]]), errors="replace")
    return Sent(_get(f"/try?size={size}&{tried}"), mutant(luck, texts()).decode() if kind == 6 else "")


def _get(path: str, *, method: str = "GET", host: bytes = HOST) -> bytes:
    return f"{method} {path} HTTP/1.1\r\n".encode() + b"Host: " + host + b"\r\nConnection: close\r\n\r\n"


@contextmanager
def browsed(sent: Sequence[Sent]) -> Iterator[None]:
    """Whatever preview is begun inside is asked all of this. Raises AssertionError where an answer is not as it should be."""
    begun = module.preview_server

    def before_a_browser(watch: Watch, trials: Trials, title: str, port: int = 0) -> ThreadingHTTPServer:
        server = begun(watch, trials, title, port)

        def serve_forever() -> None:
            watch.end()  # else whoever asks for news waits for it
            for each in sent:
                if each.saved:
                    Path(trials.asked.spec).write_bytes(each.saved.encode())
                    assert "our bug" not in Builder(trials.asked).build().report, "a build failed"
                _answered(server, each.request.replace(b"PORT", str(server.server_address[1]).encode()))
            raise KeyboardInterrupt

        setattr(server, "serve_forever", serve_forever)  # noqa: B010 (a method can't be assigned to, for mypy)
        return server

    with patch.object(module, "preview_server", before_a_browser):
        yield


class _Line:
    """A connection whose other end has sent all that it will."""

    def __init__(self, sent: bytes) -> None:
        self.sent, self.answer = sent, b""

    def makefile(self, _mode: str, _size: int = -1) -> io.BytesIO:
        return io.BytesIO(self.sent)

    def sendall(self, answer: bytes) -> None:
        self.answer += answer

    def settimeout(self, _seconds: float) -> None:
        return

    def setsockopt(self, *_option: object) -> None:
        return


def _answered(server: ThreadingHTTPServer, request: bytes) -> None:
    line = _Line(request)
    server.RequestHandlerClass(line, ("127.0.0.1", 9), server)  # no socket, but all that is asked of one
    head, _, body = line.answer.partition(b"\r\n\r\n")
    if not head.startswith(b"HTTP/1.1 "):
        return  # a line in the manner of HTTP/0.9, or nothing at all
    status = int(head.split()[1])
    assert status in STATUSES, f"status {status}"
    if status != 200:
        return
    assert f"Content-Length: {len(body)}".encode() in head
    if b"application/json" in head:
        tried = json.loads(body)
        assert "our bug" not in tried["report"], tried["report"]
    elif request.startswith(b"GET /state"):
        assert json.loads(body.split(b"\n")[0])["number"] >= 1
