"""How much of each coating a project takes: film, spread, loss, mixes, drops, what to buy.

Figures are estimates.  Each loss is given with what it is worth; residues in
cups and bottles are not counted.
"""

from __future__ import annotations

import re
from collections import defaultdict
from dataclasses import dataclass

from planner.cure import Status
from planner.passes import Pass, expand_all
from planner.values.book import Book
from planner.values.coating import GLUES, THINNERS, Coating, Family, Mix, Portion
from planner.values.model import Model
from planner.values.refusal import number_in
from planner.values.step import Stage, Step, Tool

NOT_BY_VOLUME = GLUES | {Family.DECAL, Family.PIGMENT, Family.GRAPHITE}
"""Families that nobody measures out in millilitres per area."""

THIN_LIQUIDS = frozenset({Family.ALCOHOL_THINNER, Family.WHITE_SPIRIT, Family.LACQUER_THINNER})
WASHES = frozenset({Stage.WASH, Stage.OIL_WASH, Stage.FILTER})
BOX_M = (6.0, 2.5, 2.5)  # what the hint for a missing area goes by [m]


@dataclass(frozen=True)
class Transfer:
    """Fraction of a coating that stays on the model, its span and what it is worth."""

    fraction: float
    least: float
    most: float
    status: Status
    source: str


_MODEL_BRUSH = Transfer(0.95, 0.9, 1.0, Status.ASSUMED, "little is lost in a brush")
_RUBBED = Transfer(0.65, 0.5, 0.8, Status.ASSUMED, "what is wiped or dabbed off is lost")
_TRANSFER = {
    Tool.AIRBRUSH: Transfer(
        0.30, 0.15, 0.50, Status.ASSUMED, "small targets catch 20 to 50 %, R. Joseph 2009"
    ),
    Tool.CAN: Transfer(
        0.25, 0.15, 0.40, Status.PUBLISHED, "air-atomised spray, 40 CFR 60.313; span assumed"
    ),
    Tool.BRUSH: _MODEL_BRUSH,
    Tool.HAND: _MODEL_BRUSH,
    Tool.SPONGE: _RUBBED,
    Tool.CLOTH: _RUBBED,
}


def transfer(step: Step) -> Transfer:
    """Return how much of the coating a step's way of working leaves on the model."""
    return _RUBBED if step.stage in WASHES and step.tool is Tool.BRUSH else _TRANSFER[step.tool]


def spreading_rate_m2_l(solids: float, dry_film_um: float) -> float:
    """Return the theoretical spreading rate [m²/l], by identity of volumes.

    ``solids`` is the volume solids as a fraction, ``dry_film_um`` the dry
    film [µm].  Multiply by the transfer for the practical rate.
    """
    _check(solids, dry_film_um)
    return 1000 * solids / dry_film_um


def wet_film_um(dry_film_um: float, solids: float, thinner: float = 0.0) -> float:
    """Return the wet film that dries to ``dry_film_um`` [µm].

    ``thinner`` is what was added per volume of coating (UFC 3-190-06
    paragraph 2.1.5 for the unthinned coating).
    """
    _check(solids, dry_film_um)
    number_in(thinner, 0, 100, "thinner")
    return dry_film_um * (1 + thinner) / solids


def amount_ml(
    area_cm2: float, dry_film_um: float, solids: float, fraction: float, coats: int = 1
) -> float:
    """Return the volume to lay ``coats`` coats on an area [ml].

    V = A × film × coats / (10 000 × solids × fraction), A in cm² and the film in
    µm (1 cm² × 1 µm = 1/10 000 ml); ``fraction`` is what stays on the model.
    """
    _check(solids, dry_film_um)
    number_in(fraction, 0.01, 1, "fraction")
    return area_cm2 * dry_film_um * coats / (10_000 * solids * fraction)


def _check(solids: float, dry_film_um: float) -> None:
    number_in(solids, 1e-6, 1, "solids")
    number_in(dry_film_um, 1e-3, 1e5, "dry_film_um", "µm")


def solids_of(coating: Coating) -> float:
    """Return the volume solids of what is in a bottle; a thinner leaves nothing."""
    return 0.0 if coating.family in THINNERS else coating.solids


def mixed_solids(book: Book, mix: Mix) -> float:
    """Return the volume solids of a mix; no contraction is reckoned with."""
    parts = sum(portion.parts for portion in mix.portions)
    solid = sum(
        portion.parts * solids_of(book.coating(portion.coating)) for portion in mix.portions
    )
    return solid / parts


def drops_per_ml(family: Family) -> int:
    """Return how many drops of a usual bottle make a millilitre.

    20 for water ± 10 % (USP, usual practice); 45 for alcohol and white spirit
    (from memory), whose drops are smaller.  Bottles differ: count once.
    """
    return 45 if family in THIN_LIQUIDS else 20


@dataclass(frozen=True)
class Measure:
    """What goes into a mix of one coating."""

    coating: str
    parts: float
    ml: float
    drops: int


def measured(book: Book, mix: Mix, total_ml: float) -> tuple[Measure, ...]:
    """Return the measures by volume that make ``total_ml`` of a mix."""
    whole = sum(portion.parts for portion in mix.portions)
    found = []
    for portion in mix.portions:
        ml = total_ml * portion.parts / whole
        drops = round(ml * drops_per_ml(book.coating(portion.coating).family))
        found.append(Measure(portion.coating, portion.parts, ml, drops))
    return tuple(found)


def scaled_cm2(area_m2: float, scale: float) -> float:
    """Return what an area of the full-sized thing [m²] is at 1 : ``scale`` [cm²]."""
    return area_m2 * 1e4 / scale**2


def box_m2(length: float, width: float, height: float) -> float:
    """Return the surface of a box [m²]."""
    return 2 * (length * width + length * height + width * height)


@dataclass(frozen=True)
class Need:
    """How much of one coating the work that is left takes [ml].

    ``complete`` is false where some places that get it have no area, so that
    it takes more than ``needed_ml``.
    """

    coating: str
    needed_ml: float
    in_stock_ml: float
    complete: bool

    @property
    def buy_ml(self) -> float:
        """What the stock lacks [ml]."""
        return max(0.0, self.needed_ml - self.in_stock_ml)


@dataclass(frozen=True)
class NoArea:
    """A place that gets a coat but has no area, and how to mend that."""

    project: str
    model: str
    place: str
    mend: str


@dataclass(frozen=True)
class Shopping:
    """What the work left in all active projects takes.

    ``at_hand`` names coatings that are needed but not measured by volume
    (glue, decals, pigment).
    """

    needs: tuple[Need, ...]
    at_hand: tuple[str, ...]
    no_area: tuple[NoArea, ...]


def amounts(book: Book) -> Shopping:
    """Return what the passes not yet done take, mixes split by their parts."""
    done = {
        (project.name, entry.model, entry.step, entry.coat)
        for project in book.projects
        for entry in project.log
        if entry.end is not None
    }
    tally = _Tally(book)
    for one in expand_all(book):
        key = one.key
        if (key.project, key.model, key.step, key.coat) not in done:
            tally.add(one, book.project(key.project).model(key.model))
    needs = tuple(
        Need(
            coating.name,
            tally.needed[coating.name],
            coating.in_stock_ml,
            coating.name not in tally.short,
        )
        for coating in book.coatings
        if coating.name in tally.needed
    )
    at_hand = tuple(c.name for c in book.coatings if c.name in tally.at_hand)
    return Shopping(needs, at_hand, tuple(tally.no_area.values()))


class _Tally:
    """Sums up pass after pass."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.needed: dict[str, float] = defaultdict(float)
        self.short: set[str] = set()
        self.at_hand: set[str] = set()
        self.no_area: dict[tuple[str, str, str], NoArea] = {}

    def add(self, one: Pass, model: Model) -> None:
        fraction = transfer(one.step).fraction
        for place, name in one.films:
            coating = self.book.coating(name)
            area = model.place(place).area_cm2
            mix = self.book.mix(name) or Mix(name=name, portions=(Portion(coating=name, parts=1),))
            if coating.family in NOT_BY_VOLUME:
                self.at_hand.update(portion.coating for portion in mix.portions)
                continue
            if area == 0:
                spot = (one.key.project, model.name, place)
                self.no_area.setdefault(spot, NoArea(*spot, _mend(model)))
            ml = amount_ml(area, coating.dry_film_um, mixed_solids(self.book, mix), fraction)
            for measure in measured(self.book, mix, ml):
                self.needed[measure.coating] += measure.ml
                if area == 0:
                    self.short.add(measure.coating)


def _mend(model: Model) -> str:
    """Say what to give, with a size to go by at the model's scale."""
    text = "no area given; measure it and give area_cm2"
    scale = re.fullmatch(r"\s*1\s*[:/]\s*(\d+(?:\.\d+)?)\s*", model.scale)
    if scale and float(scale[1]) > 0:
        size = " × ".join(f"{side:g}" for side in BOX_M)
        area = scaled_cm2(box_m2(*BOX_M), float(scale[1]))
        text += f" (all round, a box of {size} m is {area:.0f} cm² at {model.scale.strip()})"
    return text
