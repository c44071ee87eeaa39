"""What stands on the table: models, their parts, the places on them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from planner.values.moment import in_years
from planner.values.refusal import all_different, demand, number_in, plain_name
from planner.values.step import Step


class Side(StrEnum):
    """Which way a place faces while the part lies on the bench."""

    TOP = "top"
    UNDER = "under"


class Material(StrEnum):
    """What the bare part is made of."""

    STYRENE = "hard styrene"
    RESIN = "resin"
    PRINT = "3-D print"
    SOFT = "soft polymer"
    METAL = "metal"
    CLEAR = "clear plastic"
    CAST = "cast metal"
    ETCHED = "photo-etched metal"
    VINYL = "soft vinyl"
    WOOD = "wood"


class ModelKind(StrEnum):
    """What kind of thing a model shows, by which it gets its outline."""

    WHEELED = "wheeled vehicle"
    TRACKED = "tracked vehicle"
    CAR = "car"
    RAIL = "rail vehicle"
    BOAT = "boat"
    AIRCRAFT = "aircraft"
    FIGURE = "figure"
    BUILDING = "building"
    OTHER = "other"


class Shape(StrEnum):
    """Simple bodies that a part is measured by."""

    BOX = "box"  # length, width, height; all six faces
    CYLINDER = "cylinder"  # length, diameter; both ends
    TUBE = "tube"  # length, diameter; no ends
    SHELL = "shell"  # length, width; one face
    BALL = "ball"  # diameter (length)


@dataclass(frozen=True, kw_only=True)
class Measure:
    """``count`` like bodies of the model itself [mm]; what a shape does not use stays 0."""

    shape: Shape
    length_mm: float
    width_mm: float = 0.0
    height_mm: float = 0.0
    count: int = 1

    def __post_init__(self) -> None:
        number_in(self.length_mm, 0.1, 10_000, "length_mm", "mm")
        sides = {Shape.BOX: ("width_mm", "height_mm"), Shape.BALL: ()}.get(
            self.shape, ("width_mm",)
        )
        for field in ("width_mm", "height_mm"):
            least = 0.1 if field in sides else 0
            number_in(getattr(self, field), least, 10_000 if least else 0, field, "mm")
        number_in(self.count, 1, 1000, "count")


@dataclass(frozen=True, kw_only=True)
class Place:
    """An area of a part with a stack of coats of its own.

    Its area is ``area_cm2`` where typed, else that of ``measures``, times
    ``detail`` for what stands out and lies deep, else the place's ``share``
    of a box of the model's real size; without one, places share alike what
    the others leave of it.
    """

    name: str
    side: Side = Side.TOP
    area_cm2: float = 0.0
    measures: tuple[Measure, ...] = ()
    detail: float = 1.0
    share: float = 0.0

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        number_in(self.area_cm2, 0, 1e6, "area_cm2", "cm²")
        number_in(self.detail, 0.1, 5, "detail")
        number_in(self.share, 0, 5, "share")


@dataclass(frozen=True, kw_only=True)
class Part:
    """What is painted apart until a join glues it on.

    Attributes
    ----------
    holder
        What it is held by while painted ("skewer"); with one, wet coats may
        be laid beside each other and the part turned wet.  Empty: none.
    stands
        Drying places it takes.
    stressed
        Snap-fitted under stress: strong thinner cracks it.
    """

    name: str
    places: tuple[Place, ...]
    holder: str = ""
    stands: int = 1
    material: Material = Material.STYRENE
    stressed: bool = False

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        demand(len(self.places) >= 1, "places", 'is empty; give at least one, such as "all over"')
        all_different([place.name for place in self.places], "places")
        number_in(self.stands, 1, 1000, "stands")


@dataclass(frozen=True, kw_only=True)
class RealSize:
    """The full-sized thing's length, width and height [m]."""

    length_m: float
    width_m: float
    height_m: float

    def __post_init__(self) -> None:
        for field in ("length_m", "width_m", "height_m"):
            number_in(getattr(self, field), 0.01, 1000, field, "m")


@dataclass(frozen=True, kw_only=True)
class Chosen:
    """The coating or mix that a model takes for one colour of its sequence."""

    colour: str
    coating: str


@dataclass(frozen=True, kw_only=True)
class Made:
    """The sequence that a model's steps came from, with what was chosen then."""

    sequence: str
    options: tuple[str, ...] = ()
    colours: tuple[Chosen, ...] = ()

    def __post_init__(self) -> None:
        plain_name(self.sequence, "sequence")
        all_different(self.options, "options", "")
        all_different([colour.colour for colour in self.colours], "colours", "colour")


@dataclass(frozen=True, kw_only=True)
class Model:
    """One vehicle, figure or scenery piece, with its steps in working order.

    ``target`` is a date of its own, ``weight`` scales its lateness, and with
    ``early`` it is to be finished as early as it can be (definition 26).
    ``kind`` says how large the full-sized thing usually is, until ``real_size``
    does.
    """

    name: str
    parts: tuple[Part, ...]
    steps: tuple[Step, ...] = ()
    scale: str = ""
    real_size: RealSize | None = None
    made: Made | None = None
    target: date | None = None
    weight: int = 1
    early: bool = False
    kind: ModelKind = ModelKind.OTHER

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        number_in(self.weight, 1, 1000, "weight")
        if self.target is not None:
            in_years(self.target, "target")
        demand(len(self.parts) >= 1, "parts", "is empty; give at least one")
        all_different([part.name for part in self.parts], "parts")
        all_different([step.id for step in self.steps], "steps", "id")
        demand(len(self.scale) <= 20, "scale", "is longer than 20 characters; write it as 1:72")

    def part(self, name: str) -> Part:
        """Return the part called ``name``; `KeyError` if there is none."""
        for part in self.parts:
            if part.name == name:
                return part
        raise KeyError(name)

    def places(self, reference: str) -> tuple[str, ...]:
        """Return the "part/place" names that a reference covers.

        "hull" covers every place of the part, "hull/deck" one of them.

        Raises
        ------
        KeyError
            If there is no such part or place.
        """
        part_name, _, place_name = reference.partition("/")
        part = self.part(part_name)
        if not place_name:
            return tuple(f"{part.name}/{place.name}" for place in part.places)
        if place_name not in [place.name for place in part.places]:
            raise KeyError(reference)
        return (reference,)

    def place(self, reference: str) -> Place:
        """Return the place "part/place"; `KeyError` if there is none."""
        part_name, _, place_name = reference.partition("/")
        for place in self.part(part_name).places:
            if place.name == place_name:
                return place
        raise KeyError(reference)
