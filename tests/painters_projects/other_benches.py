"""The nine further pairs of LIST.md as exchange documents; everything is invented."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from painters_projects.books import (
    BLACK,
    CAMO,
    GLOSS,
    MATTE,
    OIL,
    PRIME,
    SAND,
    WIPE,
    Document,
    book,
    coating,
    gate,
    part,
    step,
)

BOTTLES = [
    coating("enamel red", "alkyd enamel", "gloss", swatch="#8c2a22", dry_film_um=20),
    coating("lacquer red", "solvent lacquer", "gloss", swatch="#8c2a22", dry_film_um=15),
    coating("two-pack clear", "two-pack", "gloss", swatch="#f2f2ee", dry_film_um=30),
    coating("cyanoacrylate", "cyanoacrylate", "gloss"),
    coating("white glue", "white glue", "satin"),
    coating("silver mirror", "solvent lacquer", "gloss", swatch="#d2d4d8", effect="mirror"),
    coating("orange", "waterborne acrylic", swatch="#d8702c", dry_film_um=12),
    coating("water primer", "waterborne acrylic", swatch="#8c8c8a", dry_film_um=15),
    coating("enamel steel grey", "alkyd enamel", swatch="#777b80", dry_film_um=15),
]


def _with(*steps: Document, parts: list[Document] | None = None) -> Document:
    document = book(*steps, parts=parts)
    return {**document, "coatings": [*document["coatings"], *BOTTLES]}


def _glue(name: str, *faces: str, **more: Any) -> Document:
    return {
        "stage": "join",
        "applications": [{"places": list(faces), "coating": name}],
        "tool": "hand",
        "minutes": {"fixed": 6},
        **more,
    }


def _car(colour: str, *gates: Document) -> Document:
    clear = step("varnish", "two-pack clear", role="final", gates=list(gates))
    return _with(PRIME, step("base", colour), clear)


def _canopy(glue: str) -> Document:
    return _with(
        step("prime", "grey primer", ref="body/skin"),
        step("base", "sand", ref="body/skin"),
        _glue(glue, "body/sill", "canopy/rim"),
        parts=[
            part("body", places=("skin", "sill")),
            part("canopy", "clear plastic", ("pane", "rim")),
        ],
    )


def _wheels(**join: Any) -> Document:
    everything: Document = {"ref": "body"}
    wheels: Document = {"ref": "wheels"}
    return _with(
        step("prime", "grey primer", **everything),
        step("prime", "grey primer", **wheels),
        step("base", "sand", **everything),
        step("base", "green", **wheels),
        _glue("cyanoacrylate", "body/faces", "wheels/faces", **join),
        parts=[part("body", places=("skin", "faces")), part("wheels", places=("rim", "faces"))],
    )


def _robot(*steps: Document) -> Document:
    return _with(*steps, parts=[part("body", places=("chest", "arms"))])


def _push_fit(*steps: Document) -> Document:
    return _with(*steps, parts=[{**part("body"), "stressed": True}])


def _taped(*gates: Document) -> Document:
    return _with(
        PRIME,
        step("base", "green", ref="body/cab"),
        step("mask", ref="body/cab"),
        step("base", "sand", ref="body/bed"),
        step("unmask", ref="body/cab", gates=list(gates)),
        parts=[part("body", places=("cab", "bed"))],
    )


def _beside(*steps: Document) -> Document:
    """Return a cab that is taped, and what follows."""
    parts = [part("body", places=("cab", "bed"))]
    return _with(PRIME, SAND, step("mask", ref="body/cab"), *steps, parts=parts)


GREY = step("dry-brush", "enamel steel grey", "brush")
BOOKS: dict[str, Callable[[], Document]] = {
    "17a": lambda: _car("enamel red", gate("s2", 1440, None)),
    "17b": lambda: _car("lacquer red"),
    "18a": lambda: _canopy("cyanoacrylate"),
    "18b": lambda: _canopy("white glue"),
    "19a": _wheels,
    "19b": lambda: _wheels(scraped=True),
    "20a": lambda: _with(SAND, MATTE, parts=[part("body", "wood")]),
    "20b": lambda: _with(PRIME, SAND, MATTE, parts=[part("body", "wood")]),
    "21a": lambda: _with(step("base", "sand", "brush"), parts=[part("body", "cast metal")]),
    "21b": lambda: _with(
        step("clean"), PRIME, step("base", "sand", "brush"), parts=[part("body", "cast metal")]
    ),
    "22a": lambda: _robot(
        PRIME,
        step("base", "gloss black", ref="body/chest"),
        step("base", "silver mirror", ref="body/chest"),
        step("mask", ref="body/chest"),
        step("base", "orange", ref="body/arms", coats=3),
        step("unmask", ref="body/chest"),
    ),
    "22b": lambda: _robot(
        PRIME,
        step("base", "orange", ref="body/arms", coats=3),
        step("mask", ref="body/arms"),
        step("base", "gloss black", ref="body/chest"),
        step("base", "silver mirror", ref="body/chest"),
        step("unmask", ref="body/arms"),
    ),
    "23a": lambda: _push_fit(OIL, WIPE),
    "23b": lambda: _push_fit(step("prime", "water primer"), CAMO, GLOSS, OIL, WIPE),
    "24a": lambda: _taped(gate("s4", 14_400, None)),
    "24b": _taped,
    "25a": lambda: _with(PRIME, step("base", "enamel steel grey"), MATTE),
    "25b": lambda: _with(BLACK, CAMO, GREY, MATTE),
    "26a": lambda: _beside(step("unmask", ref="body/cab"), step("camo", "green", ref="body/bed")),
    "26b": lambda: _beside(step("camo", "green", ref="body/bed"), step("unmask", ref="body/cab")),
    "27a": lambda: _with(SAND, parts=[part("body", "photo-etched metal")]),
    "27b": lambda: _with(step("clean"), PRIME, SAND, parts=[part("body", "photo-etched metal")]),
    "28a": lambda: _with(PRIME, SAND, parts=[part("body", "clear plastic")]),
    "28b": lambda: _with(
        step("detail", "masking fluid", "brush"),
        PRIME,
        SAND,
        step("unmask"),
        parts=[part("body", "clear plastic")],
    ),
    "29a": lambda: _with(PRIME, SAND, OIL, WIPE),
    "29b": lambda: _with(PRIME, SAND, step("filter", "enamel steel grey", "brush")),
}
