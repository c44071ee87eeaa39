"""Find everything that is unsound in the order of coats of a book."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.chipping import chipping
from planner.layers.finding import Finding, Mend, Scene, scenes
from planner.layers.finishing import decals_sealed, matte_last, pressed
from planner.layers.hiding import hiding
from planner.layers.holding import faces, sides
from planner.layers.masking import masking
from planner.layers.material import material
from planner.layers.mixing import mixing
from planner.layers.over import over
from planner.layers.table import Verdict
from planner.values.book import Book

__all__ = ["Finding", "Mend", "Verdict", "find"]

RULES = (
    over,
    material,
    decals_sealed,
    matte_last,
    pressed,
    chipping,
    masking,
    sides,
    faces,
    hiding,
)


def find(book: Book) -> tuple[Finding, ...]:
    """Return every finding of the mixes and of the active projects, in working order.

    The order of the steps alone decides; no schedule is looked at.
    """
    return (*mixing(book), *_of_models(book))


def _of_models(book: Book) -> Iterator[Finding]:
    for scene in scenes(book):
        yield from _of_scene(scene)


def _of_scene(scene: Scene) -> list[Finding]:
    found = [finding for rule in RULES for finding in rule(scene)]
    at = {step.id: number for number, step in enumerate(scene.model.steps)}
    return sorted(found, key=lambda one: (at[one.step], -one.verdict.rank))
