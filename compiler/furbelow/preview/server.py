"""The preview's server: four pages to read, on this machine alone, and nothing that can be written to.

A page of another site that makes a browser ask here under a name of its own (DNS rebinding) is refused by its Host.
"""

from __future__ import annotations

import base64
import hashlib
import html
import json
import sys
from collections.abc import Mapping, Sequence
from dataclasses import asdict
from http import HTTPStatus
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Any
from urllib.parse import parse_qs, urlsplit

from furbelow.preview.trial import Trials
from furbelow.preview.watch import Watch
from furbelow.resources import template

LOOPBACK = "127.0.0.1"
MOST_CHOICES = 100  # that are tried at once

_ALWAYS = {
    "Cache-Control": "no-store",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
}


class _Server(ThreadingHTTPServer):
    daemon_threads = True

    def handle_error(self, request: Any, client_address: Any) -> None:
        """A browser that goes away in the midst of an answer is no fault."""
        if not isinstance(sys.exception(), (ConnectionError, TimeoutError)):
            super().handle_error(request, client_address)


def preview_server(watch: Watch, trials: Trials, title: str, port: int = 0) -> ThreadingHTTPServer:
    """A server bound to the loopback address alone. port 0: any free one. Fails: OSError when the port is taken.

    trials: for the controls beside the guide.
    """
    page, policy = _page(title)

    class Handler(BaseHTTPRequestHandler):
        server_version, sys_version = "furbelow", ""
        protocol_version = "HTTP/1.1"
        timeout = 60  # a browser that says nothing does not keep a thread for ever
        # Else the end of an answer waits until its start is acknowledged, which takes 40 ms. Source: RFC 896, RFC 1122 4.2.3.2.
        disable_nagle_algorithm = True

        def do_GET(self) -> None:
            if self.headers.get("Host") not in hosts:
                self._answer(HTTPStatus.FORBIDDEN, b"this preview answers on this machine only\n")
                return
            try:
                asked = urlsplit(self.path)
            except ValueError:  # such as `http://[::1`
                self._answer(HTTPStatus.BAD_REQUEST, b"this is no address\n")
                return
            if asked.path == "/":
                self._answer(HTTPStatus.OK, page, "text/html", {"Content-Security-Policy": policy})
            elif asked.path == "/guide":
                # The guide brings its own policy; here it may only stand in the frame of the preview.
                self._answer(
                    HTTPStatus.OK, watch.state.guide, "text/html", {"Content-Security-Policy": "frame-ancestors 'self'"}
                )
            elif asked.path == "/state":
                self._answer(HTTPStatus.OK, self._state(asked.query))
            elif asked.path == "/try":
                chosen = parse_qs(asked.query)
                tried = trials.of(chosen.get("size", [""])[0], chosen.get("set", [])[:MOST_CHOICES])
                self._answer(HTTPStatus.OK, json.dumps(asdict(tried)).encode(), "application/json")
            else:
                self._answer(HTTPStatus.NOT_FOUND, b"there is no such page\n")

        def _state(self, query: str) -> bytes:
            """The state after that of the number asked for, as a line of JSON; the lines behind it are the guide itself
            where the asker shows another one. In JSON, half a megabyte of page would take the browser longer to read.
            """
            asked = parse_qs(query)
            state = watch.after(_count(asked, "after"))
            told = {
                "number": state.number,
                "guide": state.guide_number,
                "report": state.report,
                "tally": state.tally,
            }
            page = state.guide if _count(asked, "guide") != state.guide_number else b""
            return json.dumps(told).encode() + b"\n" + page

        def _answer(
            self, status: HTTPStatus, content: bytes, kind: str = "text/plain", more: Mapping[str, str] | None = None
        ) -> None:
            self.send_response(status)
            for name, value in {**_ALWAYS, **(more or {})}.items():
                self.send_header(name, value)
            self.send_header("Content-Type", f"{kind}; charset=utf-8")
            self.send_header("Content-Length", str(len(content)))
            self.end_headers()
            self.wfile.write(content)

        def log_message(self, format: str, *args: Any) -> None:
            """The terminal stays free for faults."""

    server = _Server((LOOPBACK, port), Handler)
    hosts = {f"{name}:{server.server_address[1]}" for name in (LOOPBACK, "localhost")}
    return server


def _count(asked: Mapping[str, list[str]], name: str) -> int:
    """A number that was asked with; 0 for anything that is none."""
    told = asked.get(name, ["0"])[0]
    return int(told) if told.isascii() and told.isdigit() and len(told) < 10 else 0


def _page(title: str) -> tuple[bytes, str]:
    """The page around the guide, and the policy that lets in its own style and script alone."""
    # The picture has the colours that it has in the guide.
    style, script = map(_joined, (("preview.css", "picture.css"), ("choose.js", "preview.js")))
    text = template("preview.html").read_text(encoding="utf-8")
    text = text.replace("TITLE", html.escape(title)).replace("STYLE", style).replace("SCRIPT", script)
    policy = (
        f"default-src 'none'; style-src '{_hash(style)}'; script-src '{_hash(script)}'; connect-src 'self';"
        " frame-src 'self'; frame-ancestors 'none'; base-uri 'none'; form-action 'none'"
    )
    return text.encode(), policy


def _joined(names: Sequence[str]) -> str:
    return "\n".join(template(name).read_text(encoding="utf-8") for name in names)


def _hash(text: str) -> str:
    return "sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
