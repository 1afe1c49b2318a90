"""Documents set by the typesetter: the first few here, the others in a process beside this one that is replaced in time.

The typesetter keeps what it has once set, for documents that come again; ours do not, and a class of eighty would fill a
gigabyte. A process that ends gives all of it back. It reads documents from its input and ends when that does.
"""

from __future__ import annotations

import atexit
import json
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager, nullcontext, suppress
from pathlib import Path
from shutil import copyfile
from tempfile import TemporaryDirectory
from typing import IO

from furbelow.resources import template

_HERE = 2  # documents: to start a process takes as long as to set one, and one guide alone does without
_EACH = 4  # documents that a process sets before it is replaced
_READY, _FAILED = b"+", b"-"


class Refused(Exception):
    """The typesetter could not set a document: a fault of ours, in its words."""


def typeset(given: str) -> bytes:
    """The document as PDF, the same bytes for the same text.

    given: what the template is to show, as JSON; `document` in it is the name of the template, `date` the seconds of the
        date that it bears, or null, `font` the path of a font for letters that the shipped ones lack, or null, `faces` the paths of a
        theme's fonts by its words.
    """
    if _beside.set_here < _HERE:
        _beside.set_here += 1
        return _set(given)
    return _beside.typeset(given)


def _set(given: str) -> bytes:
    import typst

    told = json.loads(given)
    date = told.pop("date")
    document = template(told.pop("document"))
    with _fonts(told.pop("font")) as folders, _faces(told.pop("faces", {})) as (families, named):
        return typst.compile(
            document,
            root=document.parent,
            format="pdf",
            # Only the shipped fonts and the workroom's: what a machine has of its own would change the page.
            font_paths=typst.Fonts(
                include_system_fonts=False, include_embedded_fonts=False, font_paths=[*folders, *named]
            ),
            sys_inputs={"guide": json.dumps({**told, "dated": date is not None, "families": families}, sort_keys=True)},
            pdf_standards=["ua-1"],
            timestamp=date or 0,
        )


@contextmanager
def _fonts(own: str | None) -> Iterator[list[str]]:
    """The folders of the fonts. The typesetter looks through whole folders, so a font of one's own gets one to itself."""
    shipped = str(template("fonts"))
    if own is None:
        yield [shipped]
        return
    with TemporaryDirectory(prefix="furbelow-") as folder:
        copyfile(own, Path(folder, "own.ttf"))
        yield [shipped, folder]


@contextmanager
def _faces(faces: dict[str, str]) -> Iterator[tuple[dict[str, list[str]], list[str]]]:
    """The fonts of a theme: the families of each, as the typesetter calls them, and the folders that they lie in."""
    import typst

    with TemporaryDirectory(prefix="furbelow-") if faces else nullcontext("") as top:
        families, folders = {}, []
        for name, path in sorted(faces.items()):
            folder = Path(top, name)
            folder.mkdir()
            copyfile(path, folder / "face.ttf")
            alone = typst.Fonts(include_system_fonts=False, include_embedded_fonts=False, font_paths=[str(folder)])
            families[name] = sorted(alone.families())
            folders.append(str(folder))
        yield families, folders


class _Beside:
    """The process beside this one, if there is one."""

    def __init__(self) -> None:
        self.set_here = 0
        self._set_there = 0
        self._process: subprocess.Popen[bytes] | None = None

    def typeset(self, given: str) -> bytes:
        if self._process is None or self._set_there >= _EACH:
            self.end()
            self._process, self._set_there = _started(), 0
        self._set_there += 1
        there, back = self._process.stdin, self._process.stdout
        assert there is not None
        assert back is not None
        try:
            _send(there, _READY, given.encode())
            mark, told = _received(back)
        except OSError as error:  # it was ended from outside
            self.end()
            raise Refused(f"the process that sets the PDF ended: {error}") from error
        except BaseException:
            self.end()  # what it still sends would be taken for the next document
            raise
        if mark == _FAILED:
            raise Refused(told.decode())
        return told

    def end(self) -> None:
        if self._process is not None:
            process, self._process = self._process, None
            with suppress(OSError), process:
                process.kill()


_beside = _Beside()
atexit.register(_beside.end)


def _started() -> subprocess.Popen[bytes]:
    # Isolated, with our own paths: the folder that it is started in may hold modules of any name.
    code = (
        f"import sys; sys.path[:] = {[path for path in sys.path if path]!r}; from furbelow.s6_write.pages import typeset;"
        " typeset.serve()"
    )
    return subprocess.Popen([sys.executable, "-I", "-c", code], stdin=subprocess.PIPE, stdout=subprocess.PIPE)


def serve() -> None:
    """Sets the documents that come on standard input, until it ends."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl-C is for the command, which then ends this
    asked, answers = sys.stdin.buffer, sys.stdout.buffer
    with suppress(OSError):
        while True:
            _, given = _received(asked)
            try:
                done = (_READY, _set(given.decode()))
            except Exception as error:  # the process that asked tells it
                done = (_FAILED, str(error).encode())
            _send(answers, *done)


def _send(to: IO[bytes], mark: bytes, content: bytes) -> None:
    to.write(mark + len(content).to_bytes(8, "big"))
    to.write(content)
    to.flush()


def _received(source: IO[bytes]) -> tuple[bytes, bytes]:
    """A mark and the content behind it. Fails: OSError at the end of the source."""
    head = source.read(9)
    if len(head) < 9:
        raise OSError("nothing more is sent")
    content = source.read(int.from_bytes(head[1:], "big"))
    return head[:1], content
