"""The texts of the demonstration projects in another language.

A project is written once, in English; ``demo_projects/texts`` holds its texts in other
languages, by what they name.  Only texts are put into another language: times, colours and
the program's own words, as of a stage, are the same everywhere.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from functools import cache
from importlib import resources
from typing import Any, Final

FOLDER: Final = "demo_projects"
ENGLISH: Final = "en"
PATH = "path"  # "part/place", each of which has its own word
KINDS: Final[Mapping[str, str]] = {
    "note": "note",
    "coatings.name": "coating",
    "coatings.times.source": "source",
    "mixes.name": "coating",
    "mixes.portions.coating": "coating",
    "room.locations.name": "location",
    "gear.airbrushes.name": "airbrush",
    "projects.name": "project",
    "projects.note": "note",
    "projects.models.name": "model",
    "projects.models.parts.name": "part",
    "projects.models.parts.holder": "holder",
    "projects.models.parts.places.name": "place",
    "projects.models.steps.id": "step",
    "projects.models.steps.title": "title",
    "projects.models.steps.dries_in": "location",
    "projects.models.steps.touches": PATH,
    "projects.models.steps.gates.after": "step",
    "projects.models.steps.applications.coating": "coating",
    "projects.models.steps.applications.places": PATH,
}

Texts = Mapping[str, Mapping[str, str]]


@cache
def texts(language: str) -> Texts:
    """Return the texts of a language (BCP 47) by kind; none in English and in one not written."""
    file = resources.files(FOLDER) / "texts" / f"{language}.json"
    if language == ENGLISH or not file.is_file():
        return {}
    found: Texts = json.loads(file.read_text(encoding="utf-8"))
    return found


def spoken(document: Any, words: Texts, at: str = "") -> Any:
    """Return a document of JSON data with its texts in the words of a language."""
    if isinstance(document, dict):
        return {
            name: spoken(value, words, f"{at}.{name}" if at else name)
            for name, value in document.items()
        }
    if isinstance(document, list):
        return [spoken(each, words, at) for each in document]
    if not isinstance(document, str) or at not in KINDS:
        return document
    kind = KINDS[at]
    if kind != PATH:
        return words[kind].get(document, document)
    part, slash, place = document.partition("/")
    return words["part"].get(part, part) + slash + words["place"].get(place, place)
