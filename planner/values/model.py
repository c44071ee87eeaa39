"""What stands on the table: models, their parts, the places on them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum
from typing import Annotated

from planner.values.field import NAME, Field, Value
from planner.values.refusal import demand, number_in, plain_name
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
class Measure(Value):
    """``count`` like bodies of the model itself [mm]; what a shape does not use stays 0."""

    shape: Shape
    length_mm: Annotated[float, Field(unit="mm", least=0.1, most=10_000, decimals=1)]
    width_mm: Annotated[float, Field(unit="mm", least=0, most=10_000, decimals=1)] = 0.0
    height_mm: Annotated[float, Field(unit="mm", least=0, most=10_000, decimals=1)] = 0.0
    count: Annotated[int, Field(least=1, most=1000)] = 1

    def __post_init__(self) -> None:
        super().__post_init__()
        sides = {Shape.BOX: ("width_mm", "height_mm"), Shape.BALL: ()}.get(
            self.shape, ("width_mm",)
        )
        for field in ("width_mm", "height_mm"):
            least = 0.1 if field in sides else 0
            number_in(getattr(self, field), least, 10_000 if least else 0, field, "mm")


@dataclass(frozen=True, kw_only=True)
class Place(Value):
    """An area of a part with a stack of coats of its own.

    Its area is ``area_cm2`` where typed, else that of ``measures``, times
    ``detail`` for what stands out and lies deep, else the place's ``share``
    of a box of the model's real size; without one, places share alike what
    the others leave of it.
    """

    name: Annotated[str, NAME]
    side: Side = Side.TOP
    area_cm2: Annotated[float, Field(unit="cm²", least=0, most=1e6, decimals=2)] = 0.0
    measures: tuple[Measure, ...] = ()
    detail: Annotated[float, Field(least=0.1, most=5, decimals=2)] = 1.0
    share: Annotated[float, Field(least=0, most=5, decimals=2)] = 0.0


@dataclass(frozen=True, kw_only=True)
class Part(Value):
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

    name: Annotated[str, NAME]
    places: Annotated[tuple[Place, ...], Field(unique="name")]
    holder: str = ""
    stands: Annotated[int, Field(least=1, most=1000)] = 1
    material: Material = Material.STYRENE
    stressed: bool = False

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.places) >= 1, "places", 'is empty; give at least one, such as "all over"')


Metres = Annotated[float, Field(unit="m", least=0.01, most=1000, decimals=2)]


@dataclass(frozen=True, kw_only=True)
class RealSize(Value):
    """The full-sized thing's length, width and height [m]."""

    length_m: Metres
    width_m: Metres
    height_m: Metres


@dataclass(frozen=True, kw_only=True)
class Chosen:
    """The coating or mix that a model takes for one colour of its sequence."""

    colour: str
    coating: str


class NamedChange(StrEnum):
    """What can be put into an order, or taken out of it, with all that belongs to it.

    Several hold together in this order, whichever was asked for first.
    """

    COLOUR = "one colour more"
    CHIPPING = "chipping layers"
    NO_CHIPPING = "no chipping"
    DECALS = "decals"
    NO_DECALS = "no decals"
    NO_WASH = "no wash"
    BRUSH = "brush instead of airbrush"
    CAN = "spray can where it can be"
    AIRBRUSH = "airbrush instead of brush"


class PartsChange(StrEnum):
    """What can be changed in how a model is taken apart for painting."""

    APART = "wheels and tools apart"
    TOGETHER = "everything glued first"


@dataclass(frozen=True, kw_only=True)
class Made(Value):
    """The sequence that a model's steps came from, with what was chosen then.

    ``changes`` were made to that order for this model.
    """

    sequence: Annotated[str, Field(check=plain_name)]
    options: Annotated[tuple[str, ...], Field(unique="")] = ()
    colours: Annotated[tuple[Chosen, ...], Field(unique="colour")] = ()
    changes: Annotated[tuple[NamedChange, ...], Field(unique="")] = ()


Weight = Annotated[int, Field(least=1, most=1000)]
"""How much a day late weighs against that of another."""


@dataclass(frozen=True, kw_only=True)
class Model(Value):
    """One vehicle, figure or scenery piece, with its steps in working order.

    ``target`` is a date of its own, ``weight`` scales its lateness, and with
    ``early`` it is to be finished as early as it can be (definition 26).
    ``kind`` says how large the full-sized thing usually is, until ``real_size``
    does.
    """

    name: Annotated[str, NAME]
    parts: Annotated[tuple[Part, ...], Field(unique="name")]
    steps: Annotated[tuple[Step, ...], Field(unique="id")] = ()
    scale: str = ""
    real_size: RealSize | None = None
    made: Made | None = None
    target: date | None = None
    weight: Weight = 1
    early: bool = False
    kind: ModelKind = ModelKind.OTHER

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.parts) >= 1, "parts", "is empty; give at least one")
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
