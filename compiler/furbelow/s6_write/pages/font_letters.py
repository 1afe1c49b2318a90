"""Which letters a font has: read from its own table, without trust in what stands there.

Source: ISO/IEC 14496-22, Open Font Format, tables `cmap` of the formats 4 and 12.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator

_KINDS = (b"\x00\x01\x00\x00", b"OTTO", b"true")
_UNICODE = {(0, 3), (0, 4), (0, 6), (3, 1), (3, 10)}  # (platform, encoding) of tables by Unicode
_MOST_TABLES = 200
_LAST = 0x10FFFF


class FontFault(Exception):
    """Bytes that are no font, or whose table of letters can't be read."""


def letters_of(data: bytes) -> frozenset[str]:
    """The letters that the font has a shape for. Fails: FontFault."""
    if data[:4] not in _KINDS:
        raise FontFault("it is no font in the format of TrueType or OpenType")
    try:
        return frozenset(map(chr, _codes(data)))
    except (struct.error, ValueError, IndexError, OverflowError) as broken:
        raise FontFault("its table of letters can't be read") from broken


def _codes(data: bytes) -> Iterator[int]:
    table = _cmap(data)
    (count,) = struct.unpack_from(">H", table, 2)
    found = False
    for at in range(min(count, _MOST_TABLES)):
        platform, encoding, offset = struct.unpack_from(">HHL", table, 4 + 8 * at)
        if (platform, encoding) not in _UNICODE:
            continue
        (kind,) = struct.unpack_from(">H", table, offset)
        if kind in (4, 12):
            found = True
            yield from _segments(table, offset) if kind == 4 else _groups(table, offset)
    if not found:
        raise ValueError("no table by Unicode")


def _cmap(data: bytes) -> bytes:
    (count,) = struct.unpack_from(">H", data, 4)
    for at in range(min(count, _MOST_TABLES)):
        tag, _, offset, length = struct.unpack_from(">4sLLL", data, 12 + 16 * at)
        if tag == b"cmap":
            return data[offset : offset + length]
    raise ValueError("no table of letters")


def _segments(table: bytes, start: int) -> Iterator[int]:
    """Format 4: runs of letters below U+10000, each with where its glyphs are; glyph 0 is none."""
    (twice,) = struct.unpack_from(">H", table, start + 6)
    count = twice // 2
    ends = start + 14
    starts, deltas, ranges = (ends + 2 + twice * (1 + at) for at in range(3))
    for at in range(count):
        (last,), (first,) = (
            struct.unpack_from(">H", table, ends + 2 * at),
            struct.unpack_from(">H", table, starts + 2 * at),
        )
        (delta,), (offset,) = (struct.unpack_from(">H", table, place + 2 * at) for place in (deltas, ranges))
        for code in range(first, min(last, 0xFFFE) + 1):
            glyph = code
            if offset:
                (glyph,) = struct.unpack_from(">H", table, ranges + 2 * at + offset + 2 * (code - first))
                if glyph == 0:
                    continue
            if (glyph + delta) % 0x10000:
                yield code


def _groups(table: bytes, start: int) -> Iterator[int]:
    """Format 12: groups of letters with their first glyph."""
    (count,) = struct.unpack_from(">L", table, start + 12)
    left = _LAST  # overlapping groups of a hostile file must not go on for ever
    for at in range(min(count, _LAST)):
        first, last, glyph = struct.unpack_from(">LLL", table, start + 16 + 12 * at)
        left -= max(last - first, 0) + 1
        if left < 0 or last > _LAST:
            raise ValueError("more letters than there are")
        yield from range(first + (glyph == 0), last + 1)
