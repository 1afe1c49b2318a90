"""Completion, hover and faults in an editor: the YAML language server from npm, with our schema.

Where it is: FURBELOW_YAML_SERVER, or `node_modules/.bin/yaml-language-server` in the checkout. Where it is missing these
tests are skipped, but not in CI. Source of the protocol: Language Server Protocol Specification 3.17.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from furbelow.verbs.start import starting_spec

BESIDE = Path(__file__).parents[2] / "node_modules" / ".bin" / "yaml-language-server"


class Editor:
    """An editor with one open file, as the language server sees it."""

    def __init__(self, command: list[str], folder: Path) -> None:
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE)
        self.uri = (folder / "tansy.yaml").as_uri()
        self.number = 0
        self.faults: list[dict[str, Any]] | None = None
        self.ask("initialize", {"processId": os.getpid(), "rootUri": folder.as_uri(), "capabilities": {}})
        self.say("initialized", {})

    def _send(self, message: dict[str, Any]) -> None:
        content = json.dumps({"jsonrpc": "2.0", **message}).encode()
        assert self.process.stdin
        self.process.stdin.write(b"Content-Length: %d\r\n\r\n" % len(content) + content)
        self.process.stdin.flush()

    def _receive(self) -> dict[str, Any]:
        assert self.process.stdout
        length = 0
        while line := self.process.stdout.readline().strip():
            name, _, value = line.partition(b":")
            if name.lower() == b"content-length":
                length = int(value)
        assert length, "the server ended"
        message: dict[str, Any] = json.loads(self.process.stdout.read(length))
        return message

    def _take(self) -> dict[str, Any]:
        """The next message; what the server asks of the editor is answered at once."""
        message = self._receive()
        if message.get("method") == "textDocument/publishDiagnostics":
            self.faults = message["params"]["diagnostics"]
        elif "method" in message and "id" in message:
            asked = (
                message.get("params", {}).get("items", []) if message["method"] == "workspace/configuration" else None
            )
            self._send({"id": message["id"], "result": [{} for _ in asked] if asked is not None else None})
        return message

    def say(self, method: str, params: dict[str, Any]) -> None:
        self._send({"method": method, "params": params})

    def ask(self, method: str, params: dict[str, Any]) -> Any:
        self.number += 1
        self._send({"id": self.number, "method": method, "params": params})
        while (message := self._take()).get("id") != self.number or "method" in message:
            pass
        assert "error" not in message, message
        return message["result"]

    def open(self, text: str) -> None:
        document = {"uri": self.uri, "languageId": "yaml", "version": 1, "text": text}
        self.say("textDocument/didOpen", {"textDocument": document})

    def at(self, line: int, column: int) -> dict[str, Any]:
        return {"textDocument": {"uri": self.uri}, "position": {"line": line, "character": column}}

    def told(self) -> list[dict[str, Any]]:
        while self.faults is None:
            self._take()
        return self.faults

    def end(self) -> None:
        self.process.kill()
        self.process.communicate()


@pytest.fixture
def editor(tmp_path: Path) -> Iterator[Editor]:
    server = Path(os.environ.get("FURBELOW_YAML_SERVER") or BESIDE)
    if not server.exists() or shutil.which("node") is None:
        if os.environ.get("CI"):
            pytest.fail("the YAML language server is not here")
        pytest.skip("the YAML language server is not here")
    shutil.copytree(Path(__file__).parents[2] / "schemas", tmp_path / "schemas")
    opened = Editor([str(server), "--stdio"], tmp_path)
    yield opened
    opened.end()


SPEC = starting_spec("tansy", "tansy.yaml")
LINES = SPEC.splitlines()


def _line(part: str) -> int:
    return next(number for number, line in enumerate(LINES) if part in line)


def test_a_new_spec_opens_without_a_fault(editor: Editor) -> None:
    editor.open(SPEC)
    assert editor.told() == []


def test_an_unknown_key_is_marked_where_it_stands(editor: Editor) -> None:
    at = _line("    about: skirt")
    editor.open("\n".join([*LINES[:at], "    abuot: skirt", *LINES[at + 1 :]]))
    told = editor.told()
    assert [fault["range"]["start"]["line"] for fault in told] == [at]
    assert "abuot" in told[0]["message"]


def test_the_techniques_are_offered_in_a_new_row(editor: Editor) -> None:
    at = _line("- part: Waist")
    editor.open("\n".join([*LINES[:at], "  - ", *LINES[at:]]))
    offered = editor.ask("textDocument/completion", editor.at(at, 4))
    items = offered["items"] if isinstance(offered, dict) else offered
    assert {"gather", "narrow hem", "insert elastic", "join ends"} <= {item["label"] for item in items}


def test_the_keys_of_a_piece_are_offered(editor: Editor) -> None:
    at = _line("    grain: across")
    editor.open("\n".join([*LINES[:at], "    ", *LINES[at + 1 :]]))
    offered = editor.ask("textDocument/completion", editor.at(at, 4))
    items = offered["items"] if isinstance(offered, dict) else offered
    assert {"grain", "count"} <= {item["label"] for item in items}


@pytest.mark.parametrize(
    ("part", "word", "said"),
    [("    ravels: yes", "ravels", "threads come out of a cut edge"), ("  - narrow hem:", "first turn", "turn")],
)
def test_a_key_is_explained_under_the_pointer(editor: Editor, part: str, word: str, said: str) -> None:
    editor.open(SPEC)
    at = _line(part)
    hover = editor.ask("textDocument/hover", editor.at(at, LINES[at].index(word) + 1))
    assert hover is not None
    assert said in json.dumps(hover["contents"])
