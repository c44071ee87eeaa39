"""The projects of LIST.md as exchange documents: what somebody would type, and nothing more.

Everything is invented.  Bottles carry no times of their own, so that the families' defaults speak.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

Document = dict[str, Any]

NOW = "2031-03-03T12:00:00+01:00"  # a Monday


def coating(name: str, family: str, finish: str = "matte", **more: Any) -> Document:
    """Return a bottle."""
    return {"name": name, "family": family, "finish": finish, **more}


BOTTLES = [
    coating("grey primer", "solvent lacquer", swatch="#8c8c8a", dry_film_um=12),
    coating("black primer", "solvent lacquer", swatch="#161616", dry_film_um=12),
    coating("enamel primer", "alkyd enamel", swatch="#8c8c8a", dry_film_um=15),
    coating("sand", "waterborne acrylic", swatch="#b8a077", dry_film_um=12),
    coating("green", "waterborne acrylic", swatch="#55603c", dry_film_um=12),
    coating("gloss blue", "waterborne acrylic", "gloss", swatch="#3a557d", dry_film_um=15),
    coating("white", "waterborne acrylic", swatch="#f4f4f2", dry_film_um=12),
    coating("lacquer brown", "solvent lacquer", swatch="#6a4a33", dry_film_um=10),
    coating("gloss black", "solvent lacquer", "gloss", swatch="#101010", dry_film_um=12),
    coating(
        "aluminium", "solvent lacquer", "gloss", swatch="#c9ccd0", dry_film_um=8, effect="metallic"
    ),
    coating(
        "orange glow",
        "waterborne acrylic",
        swatch="#ff6a1f",
        dry_film_um=12,
        effect="fluorescent",
    ),
    coating("can of grey", "solvent lacquer", "satin", swatch="#8a9096", dry_film_um=15),
    coating("gloss clear", "waterborne acrylic", "gloss", swatch="#f2f2ee", dry_film_um=12),
    coating("satin clear", "waterborne acrylic", "satin", swatch="#eeeeea", dry_film_um=12),
    coating("matte clear", "waterborne acrylic", swatch="#dfe2e2", dry_film_um=12),
    coating("lacquer matte clear", "solvent lacquer", swatch="#dfe2e2", dry_film_um=10),
    coating("decals", "decal", "satin", swatch="#e8e8e8"),
    coating("brown oil wash", "artist's oil", "satin", swatch="#4a3a2c", dry_film_um=3),
    coating("brown water wash", "waterborne acrylic", swatch="#4a3a2c", dry_film_um=4),
    coating("chipping fluid", "chipping fluid", "satin"),
    coating("masking fluid", "masking fluid", "satin"),
    coating("graphite", "graphite", "satin", swatch="#55585c"),
]


def step(
    stage: str, name: str = "", tool: str = "airbrush", ref: str | None = None, **more: Any
) -> Document:
    """Return a step on the body, of one coating, or touching it where it lays none."""
    where = [ref or "body"]
    work: Document = {"stage": stage, "tool": tool, "minutes": {"fixed": 2, "per_part": 8}}
    if name:
        coats = more.pop("coats", 1)
        work["applications"] = [{"places": where, "coating": name, "coats": coats}]
    else:
        work["touches"] = where
        work["tool"] = "hand"
    return {**work, **more}


def book(
    *steps: Document,
    parts: list[Document] | None = None,
    rooms: list[Document] | None = None,
    bench: Document | None = None,
) -> Document:
    """Return the document of one lorry with these steps, numbered s1, s2 and so on."""
    own = parts or [part("body")]
    return {
        "tackfree": 1,
        "note": "Invented.",
        "coatings": BOTTLES,
        "room": {"locations": rooms or [location("bench", 20, 45)]},
        "bench_time": {
            "zone": "Europe/Berlin",
            "stretches": [
                {
                    "rule": "FREQ=DAILY",
                    "since": "2031-03-01",
                    "start": "19:00",
                    "end": "22:00",
                }
            ],
            **(bench or {}),
        },
        "gear": {"airbrushes": [{"name": "airbrush"}]},
        "projects": [
            {
                "name": "one lorry",
                "models": [
                    {
                        "name": "lorry",
                        "parts": own,
                        "steps": [
                            {"id": f"s{number}", **step} for number, step in enumerate(steps, 1)
                        ],
                    }
                ],
            }
        ],
    }


def part(name: str, material: str = "hard styrene", places: tuple[str, ...] = ("all",)) -> Document:
    """Return a part on a holder."""
    return {
        "name": name,
        "material": material,
        "holder": "skewer",
        "places": [{"name": place, "area_cm2": 60} for place in places],
    }


def location(name: str, celsius: float, humidity: float, **more: Any) -> Document:
    """Return a place of the room with constant air."""
    air = [{"at": "12:00", "temperature_c": celsius, "humidity_pct": humidity}]
    return {"name": name, "drying_places": 12, "workdays": air, **more}


def gate(after: str, opens: int | None, closes: int | None) -> Document:
    """Return a gate that the painter wrote, in minutes."""
    window: Document = {}
    if opens is not None:
        window["opens"] = {"minutes": opens}
    if closes is not None:
        window["closes"] = {"minutes": closes}
    return {"after": after, "windows": [window]}


PRIME = step("prime", "grey primer")
BLACK = step("prime", "black primer")
SAND = step("base", "sand")
CAMO = step("camo", "green")
GLOSS = step("varnish", "gloss clear", role="decal bed")
SEAL = step("varnish", "satin clear", role="seal")
MATTE = step("matte", "matte clear")
DECALS = step("decal", "decals", "hand")
OIL = step("oil wash", "brown oil wash", "brush", minutes={"fixed": 2, "per_part": 10})
WIPE = step("wipe back")
RUST = step("base", "lacquer brown")
FLUID = step("chip fluid", "chipping fluid")
CAN = {"tool": "spray can", "minutes": {"fixed": 1, "per_part": 4}}
DAYS = {
    "stretches": [
        {"rule": "FREQ=DAILY", "since": "2031-03-01", "start": "10:00", "end": "13:00"},
        {"rule": "FREQ=DAILY", "since": "2031-03-01", "start": "19:00", "end": "22:00"},
    ],
    "daylight": [{"rule": "FREQ=DAILY", "since": "2031-03-01", "start": "08:00", "end": "17:00"}],
}


def _can_twice(opens: int | None, closes: int) -> Document:
    """Two coats from a can as two steps, with what the painter wrote between them."""
    first = step("base", "can of grey", **CAN)
    second = step("base", "can of grey", **CAN, gates=[gate("s2", opens, closes)])
    return book(PRIME, first, second)


def _chips(*rub: Document) -> Document:
    top = step("base", "sand", minutes={"fixed": 2, "per_part": 8})
    return book(PRIME, RUST, FLUID, top, *rub, GLOSS)


def _outdoors(celsius: float, humidity: float) -> Document:
    rooms = [location("bench", 20, 45), location("yard", celsius, humidity, outdoors=True)]
    return book(step("prime", "can of grey", **CAN), SAND, rooms=rooms, bench=DAYS)


def _cab(*steps: Document) -> Document:
    return book(*steps, parts=[part("cab", "clear plastic", ("windows", "frame"))])


BOOKS: dict[str, Callable[[], Document]] = {
    "1a": lambda: book(PRIME, SAND, CAMO, DECALS, MATTE),
    "1b": lambda: book(PRIME, SAND, CAMO, GLOSS, DECALS, SEAL, MATTE),
    "2a": lambda: book(PRIME, step("base", "gloss blue"), DECALS, OIL, WIPE, MATTE),
    "2b": lambda: book(PRIME, step("base", "gloss blue"), DECALS, SEAL, OIL, WIPE, MATTE),
    "3a": lambda: _chips(step("chip rub", gates=[gate("s4", 2880, None)])),
    "3b": lambda: _chips(step("chip rub")),
    "4a": lambda: book(PRIME, CAMO, step("dry-brush", "graphite", "cloth"), MATTE),
    "4b": lambda: book(PRIME, CAMO, MATTE, step("dry-brush", "graphite", "cloth")),
    "5a": lambda: _can_twice(360, 600),
    "5b": lambda: _can_twice(None, 15),
    "6a": lambda: book(
        step("prime", "enamel primer", "spray can", ref="tyre"),
        parts=[part("tyre", "soft polymer")],
    ),
    "6b": lambda: book(
        step("prime", "enamel primer", "spray can", ref="tyre"), parts=[part("tyre")]
    ),
    "7a": lambda: book(PRIME, SAND, parts=[part("body", "resin")]),
    "7b": lambda: book(step("clean"), PRIME, SAND, parts=[part("body", "resin")]),
    "8a": lambda: book(
        PRIME,
        step("base", "gloss blue", ref="body/cab"),
        step("mask", ref="body/cab"),
        step("base", "sand", ref="body/bed"),
        step("unmask", ref="body/cab"),
        parts=[part("body", places=("cab", "bed"))],
    ),
    "8b": lambda: book(
        PRIME,
        step("base", "lacquer brown", ref="body/cab"),
        step("mask", ref="body/cab"),
        step("base", "sand", ref="body/bed"),
        step("unmask", ref="body/cab"),
        parts=[part("body", places=("cab", "bed"))],
    ),
    "9a": lambda: book(
        PRIME, CAMO, step("matte", "lacquer matte clear"), rooms=[location("bench", 20, 84)]
    ),
    "9b": lambda: book(
        PRIME, CAMO, step("matte", "lacquer matte clear"), rooms=[location("bench", 20, 50)]
    ),
    "10a": lambda: _outdoors(4, 93),
    "10b": lambda: _outdoors(22, 50),
    "11a": lambda: book(
        step("prime", "grey primer", ref="windscreen"),
        step("varnish", "gloss clear", ref="windscreen"),
        parts=[part("windscreen", "clear plastic")],
    ),
    "11b": lambda: _cab(
        step("mask", ref="cab/windows"),
        step("prime", "grey primer", ref="cab/frame"),
        step("base", "sand", ref="cab/frame"),
        step("unmask", ref="cab/windows"),
    ),
    "12a": lambda: book(BLACK, step("base", "orange glow", coats=2)),
    "12b": lambda: book(PRIME, step("base", "white"), step("base", "orange glow", coats=2)),
    "13a": lambda: book(BLACK, step("base", "white")),
    "13b": lambda: book(PRIME, step("base", "gloss black"), step("base", "aluminium")),
    "14a": lambda: book(PRIME, RUST, step("detail", "masking fluid", "sponge"), SAND),
    "14b": lambda: book(
        PRIME, RUST, step("detail", "masking fluid", "sponge"), SAND, step("unmask")
    ),
    "15a": lambda: book(PRIME, CAMO, GLOSS, SEAL, OIL, WIPE),
    "15b": lambda: book(PRIME, CAMO, GLOSS, DECALS, SEAL, OIL, WIPE),
    "16a": lambda: book(PRIME, CAMO, GLOSS, OIL, WIPE, MATTE),
    "16b": lambda: book(PRIME, CAMO, GLOSS, step("wash", "brown water wash", "brush"), MATTE),
}
