"""Put what swatches say into a workroom file, every other line of it kept as it was written."""

from __future__ import annotations

from pathlib import Path

from furbelow.diagnose.fault import Fault, Staged, has_errors
from furbelow.s1_read.read_workroom import read_workroom
from furbelow.s1_read.source import read_bytes
from furbelow.s1_read.yaml_tree import MapTree, read_tree
from furbelow.s6_write.safe_writing import write_over

KEY = "attachment takes"


def with_line(content: bytes, file: str, line: str) -> Staged[bytes]:
    """The file with its line for the attachment changed, or added at the end.

    line: `attachment takes: {...}`. Fails: as reading a workroom does; the file is left alone then.
    """
    before = read_workroom((file, content))
    if before.value is None:
        return Staged(None, before.faults)
    tree = read_tree(content, file).value
    text = content.decode("utf-8-sig")
    newline = "\r\n" if "\r\n" in text else "\n"
    lines = text.splitlines(keepends=True)
    entry = tree.entry(KEY) if isinstance(tree, MapTree) else None
    if entry is not None:
        # A block of several lines ends where its last value does; a comment behind it on that line is kept.
        first, last = entry.key_span.start_line, entry.value.span.end_line
        end = entry.value.span.end_column
        if end == 1:
            last, end = last - 1, len(lines[last - 2].rstrip("\r\n")) + 1
        rest = lines[last - 1][end - 1 :]
        lines[first - 1 : last] = [line + (rest or newline)]
    else:
        if lines and not lines[-1].endswith(("\n", "\r")):
            lines[-1] += newline
        lines.append(line + newline)
    changed = "".join(lines).encode("utf-8")
    after = read_workroom((file, changed))
    if after.value is None or has_errors(after.faults):
        return Staged(None, after.faults)
    return Staged(changed)


def write_into(path: Path, line: str) -> Staged[Path]:
    """The workroom file rewritten, whole or not at all.

    A link is followed to the file that it stands for. Fails: FB102 and FB112 when it can't be read or written.
    """
    name, content = read_bytes(path)
    if content.value is None:
        return Staged(None, content.faults)
    changed = with_line(content.value, name, line)
    if changed.value is None:
        return Staged(None, changed.faults)
    try:
        write_over(path.resolve(), changed.value)
    except OSError as error:
        reason = (error.strerror or type(error).__name__).lower()
        return Staged(None, (Fault("FB112", f"{path} can't be written: {reason}; it is as it was"),))
    return Staged(path)
