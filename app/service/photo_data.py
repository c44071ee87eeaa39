"""Photos made fit to be given away: the picture, without what a telephone writes into it.

Where and with what a photo was taken stands in it, often to the metre.
Whoever shows a build does not mean to tell that, so it is left out; how the
picture is to be turned stays.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator

# ISO/IEC 10918-1, table B.1: markers.
SOI, EOI, SOS, COM = b"\xff\xd8", b"\xff\xd9", 0xDA, 0xFE
APP1, APP2, APP13 = 0xE1, 0xE2, 0xED
EXIF = b"Exif\0\0"
ORIENTATION = 0x0112  # Exif 2.32 (CIPA DC-008), table 4
PNG_START = 8  # bytes of the signature
# PNG specification, section 11: chunks that hold words, times and Exif.
PNG_WORDS = frozenset({b"eXIf", b"tEXt", b"zTXt", b"iTXt", b"tIME"})
WEBP_WORDS = frozenset({b"EXIF", b"XMP "})  # RFC 9649, section 2.7
WEBP_WORD_FLAGS = 0b0000_1100


class Damaged(ValueError):  # noqa: N818 - named after what the photo is
    """A photo that does not hold together."""


def bare(data: bytes, kind: str) -> bytes:
    """Return a photo without the words in it; ``kind`` is its suffix.

    Raises
    ------
    Damaged
        If it is cut short or does not follow its format.
    """
    makers = {"jpg": _jpeg, "png": _png, "webp": _webp}
    try:
        return makers[kind](data) if kind in makers else data
    except (struct.error, IndexError) as problem:
        raise Damaged("is cut short") from problem


def _jpeg(data: bytes) -> bytes:
    kept, turned, at = [SOI], b"", 2
    while True:
        marker, size = struct.unpack_from(">xBH", data, at)
        if data[at] != 0xFF or size < 2:
            raise Damaged("has no segment where one should be")
        segment = data[at : at + 2 + size]
        if marker == SOS:
            end = data.find(EOI, at)  # what follows is another picture with words of its own
            if end < 0:
                raise Damaged("has no end")
            return b"".join([*kept[:1], turned, *kept[1:], data[at : end + 2]])
        if marker == APP1 and segment[4:10] == EXIF:
            turned = _turned(segment[10:])
        colours = marker == APP2 and segment[4:].startswith(b"ICC_PROFILE")
        if colours or marker not in (APP1, APP2, APP13, COM):
            kept.append(segment)
        at += 2 + size


def _turned(tiff: bytes) -> bytes:
    """Return a segment that says nothing but how the picture is to be turned, or nothing."""
    order = ">" if tiff[:2] == b"MM" else "<"
    try:
        for tag, value in _entries(tiff, order):
            if tag == ORIENTATION and 1 < value <= 8:
                body = EXIF + struct.pack(
                    ">2sHIHHHIHHI", b"MM", 42, 8, 1, ORIENTATION, 3, 1, value, 0, 0
                )
                return struct.pack(">BBH", 0xFF, APP1, len(body) + 2) + body
    except struct.error:
        return b""
    return b""


def _entries(tiff: bytes, order: str) -> Iterator[tuple[int, int]]:
    """Yield tag and first short value of each entry of the first directory."""
    (first,) = struct.unpack_from(f"{order}I", tiff, 4)
    (count,) = struct.unpack_from(f"{order}H", tiff, first)
    for number in range(count):
        tag, _, _, value = struct.unpack_from(f"{order}HHIH", tiff, first + 2 + 12 * number)
        yield tag, value


def _png(data: bytes) -> bytes:
    kept, at = [data[:PNG_START]], PNG_START
    while True:
        size, name = struct.unpack_from(">I4s", data, at)
        end = at + 12 + size
        if end > len(data):
            raise Damaged("is cut short")
        if name not in PNG_WORDS:
            kept.append(data[at:end])
        if name == b"IEND":
            return b"".join(kept)
        at = end


def _webp(data: bytes) -> bytes:
    kept, at = [], 12
    (whole,) = struct.unpack_from("<I", data, 4)
    while at < 8 + whole:
        name, size = struct.unpack_from("<4sI", data, at)
        end = at + 8 + size + size % 2
        if end > len(data):
            raise Damaged("is cut short")
        chunk = data[at:end]
        if name == b"VP8X":
            chunk = chunk[:8] + bytes([chunk[8] & ~WEBP_WORD_FLAGS]) + chunk[9:]
        if name not in WEBP_WORDS:
            kept.append(chunk)
        at = end
    body = b"".join(kept)
    return b"RIFF" + struct.pack("<I", len(body) + 4) + b"WEBP" + body
