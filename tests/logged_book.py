"""The small book with two evenings in its logbook, photos, looks and a diary; all invented."""

from __future__ import annotations

import struct
import zlib
from dataclasses import replace
from datetime import datetime
from pathlib import Path

from small_book import CART, PROJECT, ZONE, small_book

from planner.values.book import Book
from planner.values.coating import State
from planner.values.project import Event, Happened, Logged, Observed, Used

PHOTO, LOST = "primed.png", "lost.jpg"


def moment(text: str) -> datetime:
    """Return a local moment such as "2031-03-06 19:33"."""
    return datetime.fromisoformat(text).replace(tzinfo=ZONE)


def logged_book() -> Book:
    """Return the book: primed on 6 March, sand on the 13th, the wash under way since the 20th.

    Work by hand: 25 min as written, 12 min from start to end, together 37 min.
    """
    prime = Logged(
        model=CART,
        step="prime",
        start=moment("2031-03-06 19:33"),
        end=moment("2031-03-06 20:00"),
        minutes=25,
        planned=10,
        temperature_c=21.5,
        humidity_pct=48,
        used=(Used(coating="grey primer", ml=2.25), Used(coating="water thinner", ml=0.5)),
        note="ran at the edge",
        photos=(PHOTO, LOST),
    )
    sand = Logged(
        model=CART, step="sand", start=moment("2031-03-13 19:33"), end=moment("2031-03-13 19:45")
    )
    wash = Logged(model=CART, step="wash", start=moment("2031-03-20 19:30"))
    diary = (
        Happened(
            at=moment("2031-03-14 08:00"), event=Event.TACKY, model=CART, step="sand",
            text="box was cold",
        ),
        Happened(at=moment("2031-03-15 08:00"), event=Event.NOTE, text="bought tape"),
    )  # fmt: skip
    seen = Observed(
        model=CART,
        step="sand",
        at=moment("2031-03-14 08:00"),
        state=State.TACK_FREE,
        reached=False,
    )
    book = small_book()
    project = replace(
        book.project(PROJECT), log=(sand, prime, wash), diary=diary, observed=(seen,),
        note="for the club table",
    )  # fmt: skip
    return replace(book, projects=(project,))


def png() -> bytes:
    """Return a picture of one grey pixel, made as the PNG specification says."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        check = struct.pack(">I", zlib.crc32(kind + data))
        return struct.pack(">I", len(data)) + kind + data + check

    header = struct.pack(">IIBBBBB", 1, 1, 8, 0, 0, 0, 0)
    pixel = zlib.compress(b"\x00\x80")
    signature = b"\x89PNG\r\n\x1a\n"
    return signature + chunk(b"IHDR", header) + chunk(b"IDAT", pixel) + chunk(b"IEND", b"")


def photos_in(folder: Path) -> Path:
    """Return a folder of photos in which one of the two is missing."""
    folder.mkdir()
    (folder / PHOTO).write_bytes(png())
    return folder
