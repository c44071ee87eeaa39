"""Tables, project archives and plans that were changed at random, through their readers.

``python tests/benchmarks/hostile_tables.py [READER...] [--count N] [--seed S] [--minutes M]``

A table of own paints, the air of three kinds of logger, a project with photos in an archive and
the plan of before are each changed in some bytes, cells or entries.  A file must be refused
in one line, or be taken into a book that is written out and read as the same; nothing may take
over five seconds.
"""

from __future__ import annotations

import argparse
import io
import json
import random
import resource
import sys
import time
import warnings
import zipfile
from collections.abc import Callable
from dataclasses import dataclass, fields
from pathlib import Path

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

from hostile_files import ODD, changed

from app.service import demos
from app.service.air_from_log import take_air
from app.service.air_log import LogFormat, read_air_log
from app.service.air_readings import noted
from app.service.csv_reading import is_table
from app.service.exporting import export
from app.service.importing import import_file
from app.service.own_paints import are_paints, read_paints, with_paints
from app.service.planning import plan
from planner.values.book import Book
from planner.values.moment import zone_named
from planner.values.refusal import Refused
from storage.exchange import load
from storage.plan_file import dump_plan, load_plan
from storage.project_file import unpack

SLOW_SECONDS = 5.0
MINE = demos.read("lone_lamplighter").book
NOW = demos.first_evening(MINE)
ZONE = zone_named(MINE.bench_time.zone)
PAINTS = """kind;colour;finish;ml;code
acrylic;olive green;matte;17;A12
enamel;rust red;gloss;14,0;
lacquer;"a ""bright"" yellow";satin;30;L3
primer;grey;matte;200;P1
"""
LOGS = (
    "Time,Temperature (°C),Humidity (%)\n"
    + "".join(
        f"2026-03-{1 + at // 24:02} {at % 24:02}:00,{18 + at % 5},{50 + at % 9}\n"
        for at in range(96)
    ),
    "Date;Clock;Temp [F];RH\n"
    + "".join(
        f"{13 + at // 24}/03/2026;{at % 24:02}:30;{64 + at % 7},5;{48 + at % 9}\n"
        for at in range(60)
    ),
    "time (GMT+01:00)\ttemperature\thumidity\n"
    + "".join(f"{1_772_000_000 + 900 * at}\t{17 + at % 4}.5\t{55 + at % 6}\n" for at in range(80)),
)  # invented
CELLS = (
    *map(str, ODD),
    "31/02/2026",
    "1e999",
    "-0",
    "12:60",
    "0x10",
    '"',
    "=1+1",
    "٣",
    "−4",
    "50 %",
)


@dataclass
class Count:
    """What came of the files of one reader."""

    files: int = 0
    refused: int = 0
    taken: int = 0
    silent: int = 0
    tracebacks: int = 0
    hangs: int = 0


def bytes_changed(data: bytes, drawn: random.Random) -> bytes:
    """Return data with some bytes exchanged, cut off or said again."""
    raw = bytearray(data)
    for _ in range(drawn.randint(1, 8)):
        at = drawn.randrange(len(raw) + 1)
        raw[at : at + drawn.randint(0, 3)] = drawn.randbytes(drawn.randint(0, 3))
    if drawn.random() < 0.1:
        del raw[drawn.randrange(len(raw) + 1) :]
    return bytes(raw)


def table_changed(text: str, drawn: random.Random) -> bytes:
    """Return a table with some cells or lines exchanged."""
    if drawn.random() < 0.2:
        return bytes_changed(text.encode(), drawn)
    separator = next(one for one in "\t;," if one in text)
    rows = [line.split(separator) for line in text.splitlines()]
    for _ in range(drawn.choice((1, 1, 2, 4))):
        row = drawn.choice(rows)
        how = drawn.random()
        if how < 0.1:
            rows.insert(drawn.randrange(len(rows) + 1), row)
        elif how < 0.2 and len(rows) > 1:
            rows.remove(row)
        elif how < 0.3:
            drawn.shuffle(row)
        elif row:
            at = drawn.randrange(len(row))
            row[at] = drawn.choice((row[at] * 300, drawn.choice(CELLS), drawn.choice(CELLS)))
    ends = drawn.choice(("\n", "\n", "\r\n", "\r"))
    code = drawn.choice(("utf-8", "utf-8", "utf-8-sig", "utf-16", "cp1252"))
    return ends.join(separator.join(row) for row in rows).encode(code, "replace")


def archive_changed(drawn: random.Random) -> bytes:
    """Return an archive of a project with something wrong in its entries or its bytes."""
    data = demos.data("lone_lamplighter")
    inner = changed(data, drawn) if drawn.random() < 0.5 else data
    entries = [("project.json", inner)]
    for _ in range(drawn.choice((0, 0, 0, 1, 2, 40))):
        names = ("project.json", "photos/", "photos/x.jpg", "../x", "/etc/x", "photos/" + "a" * 300)
        name = drawn.choice((*names, f"photos/{drawn.randbytes(32).hex()}.jpg"))
        entries.insert(drawn.randrange(len(entries) + 1), (name, drawn.randbytes(30) * 200))
    written = io.BytesIO()
    warnings.simplefilter("ignore", UserWarning)  # a name twice is what is wanted
    with zipfile.ZipFile(written, "w", drawn.choice((0, 8, 12, 14))) as archive:
        for name, content in entries:
            archive.writestr(zipfile.ZipInfo(name), content)
    whole = written.getvalue()
    return whole if drawn.random() < 0.6 else bytes_changed(whole, drawn)


def _came(book: Book) -> str:
    return "taken" if load(export(book)).book == book else "silent"


def paints(drawn: random.Random) -> str:
    """Read a table of own paints, or what a person takes for one."""
    data = table_changed(PAINTS, drawn)
    is_table(data)
    are_paints(data)
    return _came(with_paints(MINE, read_paints(data)).book)


def logger(drawn: random.Random) -> str:
    """Read the table of a logger, and take its air in."""
    data = table_changed(drawn.choice(LOGS), drawn)
    asked = LogFormat(ZONE, drawn.choice((None, True, False)), drawn.choice((None, True, False)))
    log = read_air_log(data, asked)
    return _came(take_air(MINE, log, now=NOW).edit.book)


def reading(drawn: random.Random) -> str:
    """Read what was typed of a gauge."""
    words = ("21", "50", "21.5 °C", "48 %", "70 F", drawn.choice(CELLS))
    typed = " ".join(drawn.choices(words, k=2))
    if drawn.random() < 0.3:
        typed = bytes_changed(typed.encode("utf-8", "replace"), drawn).decode("utf-8", "replace")
    return _came(noted(MINE, typed, NOW).book)


def archive(drawn: random.Random) -> str:
    """Read a project with its photos, and take it in."""
    file = unpack(archive_changed(drawn))
    import_file(MINE, file.exchange, now=NOW)
    return _came(file.exchange.book)


PLANNED = plan(MINE, NOW)
PLAN_DATA = json.dumps(dump_plan(PLANNED.plan, MINE)).encode()


def kept(drawn: random.Random) -> str:
    """Read the plan of before, and stay near to it."""
    plan(MINE, NOW, last=load_plan(changed(PLAN_DATA, drawn)))
    return "taken"


READERS: dict[str, Callable[[random.Random], str]] = {
    one.__name__: one for one in (paints, logger, reading, archive, kept)
}


def run(name: str, count: int, seed: int, minutes: float = 60.0) -> Count:
    """Try so many files of one reader, or as many as the minutes allow."""
    found = Count()
    end = time.monotonic() + 60 * minutes
    for number in range(count):
        if time.monotonic() > end:
            break
        drawn = random.Random(f"{seed} {name} {number}")
        began = time.process_time()
        found.files += 1
        try:
            came = READERS[name](drawn)
        except Refused as problem:
            came = "refused"
            if "\n" in str(problem) or len(str(problem)) > 2_000:
                found.tracebacks += 1
                print(f"  {name} {number}: {str(problem)!r}"[:400], flush=True)
        except Exception as problem:
            found.tracebacks += 1
            print(f"  {name} {number}: {problem!r}"[:400], flush=True)
            continue
        setattr(found, came, getattr(found, came) + 1)
        found.hangs += time.process_time() - began > SLOW_SECONDS
    return found


def main() -> None:
    """Try the files and print what came of them."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("reader", nargs="*", choices=[*READERS, []], help="absent: every one")
    parser.add_argument("--count", type=int, default=1_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--minutes", type=float, default=60.0)
    args = parser.parse_args()
    print(f"{'reader':10}" + "  ".join(f"{field.name[:7]:>7}" for field in fields(Count)))
    for name in args.reader or READERS:
        found = run(name, args.count, args.seed, args.minutes)
        print(
            f"{name:10}" + "  ".join(f"{getattr(found, one.name):7}" for one in fields(Count)),
            flush=True,
        )
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"largest {peak:.0f} MB")


if __name__ == "__main__":
    main()
