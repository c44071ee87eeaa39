"""Damaged photos, bombs and files that are two things at once, kept and made small.

``python tests/benchmarks/hostile_photos.py [COUNT [SEED]]``

Each is offered to the book's photos; what is kept is read as the window reads
it.  A process of its own does a hundred at a time with 1 GB of memory above what it starts with.
Printed are, by kind, how many were tried, refused (no photo, or not to be
read), shown, over five seconds (slow), and ended the process (dead).
"""

from __future__ import annotations

import os
import random
import resource
import struct
import subprocess
import sys
import tempfile
import time
import zipfile
import zlib
from collections import Counter
from collections.abc import Callable, Iterator
from io import BytesIO
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

SLOW_SECONDS = 5.0
GIGABYTE = 2**30
BATCH = 100


def png_chunk(kind: bytes, data: bytes) -> bytes:
    """Return a chunk of a PNG file."""
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def png(width: int, height: int, pixels: bytes, *more: bytes) -> bytes:
    """Return a PNG file that says it has so many grey pixels."""
    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    body = (png_chunk(b"IHDR", head), *more, png_chunk(b"IDAT", zlib.compress(pixels, 9)))
    return b"\x89PNG\r\n\x1a\n" + b"".join(body) + png_chunk(b"IEND", b"")


def sound(draw: random.Random) -> bytes:
    """Return a photo of one of the usual kinds."""
    from PySide6.QtCore import QBuffer, QByteArray
    from PySide6.QtGui import QColor, QImage

    image = QImage(draw.randint(1, 90), draw.randint(1, 90), QImage.Format.Format_RGB32)
    image.fill(QColor.fromHsv(draw.randrange(360), 200, 200))
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QBuffer.OpenModeFlag.WriteOnly)
    image.save(buffer, draw.choice(("PNG", "JPG", "BMP")))
    return bytes(data.data())


def mutated(draw: random.Random) -> bytes:
    """Return a photo with some bytes changed, cut, doubled or left out."""
    data = bytearray(sound(draw))
    for _ in range(draw.randint(1, 12)):
        at = draw.randrange(len(data))
        way = draw.randrange(4)
        if way == 0:
            data[at] = draw.randrange(256)
        elif way == 1:
            data[at:at] = draw.randbytes(draw.randint(1, 8))
        elif way == 2 and len(data) > 40:
            del data[at : at + draw.randint(1, 8)]
        else:
            data = data[: max(20, at)]
    return bytes(data)


def bomb(draw: random.Random) -> bytes:
    """Return a small file that says it is a huge picture."""
    side = draw.choice((20_000, 60_000, 65_535, 2**31 - 1))
    way = draw.randrange(5)
    if way == 0:
        return png(side, side, b"\0" * 1000)
    if way == 1:  # it really holds much
        return png(12_000, 12_000, b"\0" * (12_001 * 12_000))
    if way == 2:
        text = zlib.compress(b"x" * 2**27, 9)
        return png(4, 4, b"\0" * 20, png_chunk(b"zTXt", b"note\0\0" + text))
    if way == 3:
        small = min(side, 65_535)
        return b"GIF89a" + struct.pack("<HH", small, small) + b"\x80\0\0" + b"\0" * 40
    head = struct.pack("<IiiHHIIiiII", 40, side, side, 1, 24, 0, 0, 0, 0, 0, 0)
    return b"BM" + struct.pack("<IHHI", 54, 0, 0, 54) + head + b"\0" * 64


def polyglot(draw: random.Random) -> bytes:
    """Return a photo that is something else as well."""
    data = sound(draw)
    way = draw.randrange(4)
    if way == 0:
        archive = BytesIO()
        with zipfile.ZipFile(archive, "w") as file:
            file.writestr("../outside", b"x" * 100)
        return data + archive.getvalue()
    if way == 1:
        return data + b"<html><script>alert(1)</script></html>"
    if way == 2:
        return b"GIF89a/*" + draw.randbytes(40) + b"*/=1;alert(1)"
    return b"\xff\xd8\xff\xe0" + b"#!/bin/sh\necho\n" + draw.randbytes(60)


KINDS: dict[str, Callable[[random.Random], bytes]] = {
    "mutated": mutated,
    "bombs": bomb,
    "two at once": polyglot,
}


def tried(files: list[Path]) -> Iterator[str]:
    """Offer files to a book's photos, and read what is kept; yield what came of each."""
    from app.window.logbook.thumbnails import read_small
    from planner.values.refusal import Refused
    from storage import photos

    for path in files:
        began = time.monotonic()
        book = path.with_suffix(".tackfree")
        try:
            name = photos.keep(book, path)
        except Refused:
            came = "refused"
        else:
            came = "refused" if read_small(photos.path_of(book, name)).isNull() else "shown"
        yield "slow" if time.monotonic() - began > SLOW_SECONDS else came


def batch(folder: Path) -> None:
    """Try all files of a folder, with little memory, and print what came of each."""
    files = sorted(folder.glob("*.photo"))
    from PySide6.QtGui import QGuiApplication

    _app = QGuiApplication([])
    with Path("/proc/self/statm").open(encoding="ascii") as file:
        now = int(file.read().split()[0]) * resource.getpagesize()
    resource.setrlimit(resource.RLIMIT_AS, (now + GIGABYTE, now + GIGABYTE))
    for came in tried(files):
        print(came, flush=True)


def main(count: int, seed: int) -> None:
    """Print the table."""
    draw = random.Random(seed)
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    print("kind          tried  refused  shown  slow  dead")
    for kind, make in KINDS.items():
        found: Counter[str] = Counter()
        left = count if kind == "mutated" else max(1, count // 10)
        while left > 0:
            with tempfile.TemporaryDirectory() as name:
                for number in range(min(BATCH, left)):
                    (Path(name) / f"{number:04}.photo").write_bytes(make(draw))
                done = subprocess.run(
                    [sys.executable, __file__, "--batch", name],
                    env=environment,
                    capture_output=True,
                    text=True,
                    check=False,
                )
                found.update(done.stdout.split())
                found["dead"] += done.returncode != 0
            left -= BATCH
        figures = (found[one] for one in ("refused", "shown", "slow", "dead"))
        print(
            f"{kind:12}  {sum(found.values()):5}  {'  '.join(f'{n:5}' for n in figures)}",
            flush=True,
        )


if __name__ == "__main__":
    if sys.argv[1:2] == ["--batch"]:
        batch(Path(sys.argv[2]))
    else:
        main(*(int(text) for text in (sys.argv[1:] + ["2000", "0"][len(sys.argv) - 1 :])[:2]))
