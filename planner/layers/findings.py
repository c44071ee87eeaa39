"""Find everything that is unsound in the order of coats of a book."""

from __future__ import annotations

from dataclasses import dataclass, replace

from planner.layers.chipping import chipping
from planner.layers.early_gates import early_gates
from planner.layers.effects import effects
from planner.layers.finding import Finding, Mend, Scene, scenes
from planner.layers.finishing import decals_sealed, matte_last, pressed
from planner.layers.hiding_coats import hiding
from planner.layers.masking import masking
from planner.layers.material import material
from planner.layers.mixing import mixing
from planner.layers.overcoat_rules import over
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.practice_advice import tooth, water_lifts
from planner.layers.resists import resists
from planner.layers.stretched_decals import stretched_decals
from planner.layers.substrates import substrates
from planner.layers.turns_and_joins import faces, sides
from planner.layers.unfit_air import unfit_air
from planner.layers.working_order import working_order
from planner.layers.written_gates import written_gates
from planner.values.book import Book

__all__ = ["Finding", "LayerVerdict", "Mend", "find"]

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
    tooth,
    water_lifts,
    written_gates,
    early_gates,
    stretched_decals,
    effects,
    resists,
    substrates,
    working_order,
    unfit_air,
)


ROUNDS = 12


@dataclass(frozen=True)
class Settle:
    """The edits of a mend, with what keeps them from doing harm.

    They are applied only while ``finding`` stands; where they bring about
    something graver than it (a coat moved onto one that it attacks), that
    is mended as well.  ``known`` names the findings that were there before.
    """

    finding: Finding
    known: frozenset[tuple[str, ...]]

    def apply(self, book: Book) -> Book:
        """Apply the edits, then the mends of what is fresh and graver."""
        mend = self.finding.mend
        stands = (self.finding.key, self.finding.places)
        if mend is None or stands not in [(one.key, one.places) for one in _found(book)]:
            return book
        book = mend.apply(book)
        for _ in range(ROUNDS):
            fresh = (
                one.mend
                for one in _found(book)
                if one.verdict.rank > self.finding.verdict.rank and one.key not in self.known
            )
            worse = next((one for one in fresh if one), None)
            if worse is None:
                break
            book = worse.apply(book)
        return book


def find(book: Book) -> tuple[Finding, ...]:
    """Return every finding of the mixes and of the active projects, in working order.

    The order of the steps alone decides; no schedule is looked at.
    """
    found = _found(book)
    known = frozenset(one.key for one in found)
    return tuple(
        replace(one, mend=Mend(one.mend.title, (Settle(one, known),))) if one.mend else one
        for one in found
    )


def _found(book: Book) -> tuple[Finding, ...]:
    found = [*mixing(book)]
    for scene in scenes(book):
        found += _of_scene(scene)
    return tuple(found)


def _of_scene(scene: Scene) -> list[Finding]:
    found = [finding for rule in RULES for finding in rule(scene)]
    at = {step.id: number for number, step in enumerate(scene.model.steps)}
    return sorted(found, key=lambda one: (at.get(one.step, -1), -one.verdict.rank))
