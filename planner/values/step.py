"""A step: one piece of attended work, and the gates that hold it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import StrEnum
from typing import Annotated

from planner.values.coating import Window, ordered_windows
from planner.values.field import Field, Value
from planner.values.message import message
from planner.values.refusal import Refused, demand


class Stage(StrEnum):
    """What kind of work a step is."""

    PRIME = "prime"
    BASE = "base"
    CAMO = "camo"
    HIGHLIGHT = "highlight"
    DETAIL = "detail"
    DRY_BRUSH = "dry-brush"
    WASH = "wash"
    OIL_WASH = "oil wash"
    WIPE = "wipe back"
    FILTER = "filter"
    VARNISH = "varnish"
    DECAL = "decal"
    PRESS = "press decals"
    CHIP = "chip"
    CHIP_FLUID = "chip fluid"
    CHIP_RUB = "chip rub"
    PIGMENT = "pigment"
    WEATHER = "weather"
    MASK = "mask"
    UNMASK = "unmask"
    TURN = "turn"
    JOIN = "join"
    CLEAN = "clean"
    MATTE = "matte"


SET_GOING = 5  # minutes of hands that work needs before it goes on alone: assumed

LAYS_NO_FILM = frozenset(
    {
        Stage.MASK,
        Stage.UNMASK,
        Stage.TURN,
        Stage.WIPE,
        Stage.PRESS,
        Stage.CHIP_RUB,
        Stage.CLEAN,
    }
)


UNDONE_BY = {
    Stage.MASK: Stage.UNMASK,
    Stage.CHIP_FLUID: Stage.CHIP_RUB,
    Stage.DECAL: Stage.PRESS,
    Stage.OIL_WASH: Stage.WIPE,
}
"""What takes off or presses down what a stage puts on, and is pointless without it."""

CLEAR_STAGES = frozenset({Stage.VARNISH, Stage.MATTE})


class Role(StrEnum):
    """What a varnish is there for."""

    DECAL_BED = "decal bed"
    SEAL = "seal"
    BARRIER = "barrier"
    FINAL = "final"


class Tool(StrEnum):
    """What the work is done with."""

    AIRBRUSH = "airbrush"
    BRUSH = "brush"
    CAN = "spray can"
    SPONGE = "sponge"
    CLOTH = "cloth"
    HAND = "hand"


class Trait(StrEnum):
    """What else is true of a step and matters to when it is done."""

    NOISY = "noisy"  # kept out of quiet hours, whatever its tool
    DAYLIGHT = "needs daylight"  # done in daylight hours only
    SMELLS = "smells"  # kept out of quiet hours, and the room is aired before they begin
    ONE_STRETCH = "all in one stretch"  # every coat of it in the same stretch
    HANDS_FREE = "hands free"  # once set going it goes on alone
    ANY_AIR = "in any air"  # the person's word: laid even where the air speaks against it


class Bound(StrEnum):
    """Which end of the pass must come before a closing (definition 7)."""

    START = "start"
    END = "end"


MOST_COATS = 20  # of one step: assumed


@dataclass(frozen=True, kw_only=True)
class Application(Value):
    """Coats of one coating or mix on some places.

    ``places`` holds references: "hull/deck" is one place, "hull" all of
    that part's.  ``coats`` is how many thin coats (each a pass of its own).
    ``share`` is the fraction of those areas that gets it; absent, the
    stage's usual one.
    """

    places: Annotated[tuple[str, ...], Field("&Places", unique="")]
    coating: Annotated[str, Field("&Colour")]
    coats: Annotated[int, Field("C&oats", least=1, most=MOST_COATS)] = 1
    share: Annotated[float | None, Field(percent=True, least=0.001, most=1)] = None

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(len(self.places) >= 1, "places", "is empty; name what gets the coat")
        demand(bool(self.coating), "coating", "is empty; name a coating or mix")


@dataclass(frozen=True, kw_only=True)
class Minutes(Value):
    """Attended minutes of one pass.

    ``fixed`` + ``per_part`` for each part it works on + ``per_change`` for
    each change of colour within it (one less than its coatings).
    """

    fixed: Annotated[int, Field("Fixed &minutes", unit="min", least=0, most=1440)] = 0
    per_part: Annotated[int, Field("and for each &part", unit="min", least=0, most=1440)] = 0
    per_change: Annotated[
        int,
        Field("and for each change of &colour within it", unit="min", least=0, most=1440),
    ] = 0

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            self.fixed + self.per_part > 0, "", "no work takes 0 minutes; give fixed or per_part"
        )

    def of(self, parts: int, colours: int = 1) -> int:
        """Return the minutes for a number of parts and of colours."""
        return self.fixed + self.per_part * parts + self.per_change * max(0, colours - 1)


@dataclass(frozen=True, kw_only=True)
class Gate:
    """What must hold between an earlier step of the model and this one.

    ``after`` is the id of the earlier step: the gate counts from its last
    pass.  One of ``windows`` is used.  ``closing`` says whether this step
    must end (wiping back, pressing decals) or start by the closing.  A gate
    with a state looks at the film that the earlier step laid.
    """

    after: str
    windows: tuple[Window, ...]
    closing: Bound = Bound.START

    def __post_init__(self) -> None:
        demand(bool(self.after), "after", "is empty; name an earlier step")
        demand(len(self.windows) >= 1, "windows", "is empty; give at least one")
        ordered_windows(self.windows, "windows")


def _step_id(name: str, place: str) -> None:
    if re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", name) is None or len(name) > 60:
        mend = message('"{id}" is not a step id; use lower-case letters, digits and "-"', id=name)
        raise Refused(place, mend)


@dataclass(frozen=True, kw_only=True)
class Step(Value):
    """One piece of attended work on one model.

    Attributes
    ----------
    id
        Short name, unique in its model: lower-case letters, digits, "-".
    applications
        Coats that it lays.  For a join: the glue, on the faces to glue.
    touches
        Places worked on without laying a film (masked, wiped, turned,
        joined), as references.
    minutes
        Attended minutes of each pass.
    gates
        Gates beyond those that the coat stack itself asks for.
    after
        Ids of steps that must be finished first, where no shared place says so.
    role
        What a varnish is there for.
    split_least
        Least piece [min] if the work may be split over several stretches.
    helper
        Needs two people.
    dries_in
        Location where its films dry; empty means the first one.
    scraped
        For a join: the faces are scraped to bare plastic as part of it.
    stands
        For a join: drying places of the assembly; absent, the most of its parts.
    or_in
        Other locations where its films may dry instead; the planner chooses.
    traits
        What else is true of it and matters to when it is done.
    look_in
        Minutes after its end at which somebody should have a look.
    """

    id: Annotated[str, Field(check=_step_id)]
    stage: Stage
    title: Annotated[str, Field("&Name", most=200)] = ""
    applications: tuple[Application, ...] = ()
    touches: tuple[str, ...] = ()
    tool: Annotated[Tool, Field("&Tool")] = Tool.BRUSH
    minutes: Minutes
    gates: tuple[Gate, ...] = ()
    after: Annotated[tuple[str, ...], Field(unique="")] = ()
    role: Role | None = None
    split_least: Annotated[int | None, Field("Shortest p&iece", unit="min", least=5, most=1440)] = (
        None
    )
    helper: bool = False
    dries_in: str = ""
    scraped: bool = False
    stands: Annotated[int | None, Field(least=1, most=1000)] = None
    or_in: Annotated[tuple[str, ...], Field(unique="")] = ()
    traits: Annotated[tuple[Trait, ...], Field("&Marks", unique="")] = ()
    look_in: Annotated[int | None, Field("&Look after it", unit="min", least=1, most=10_080)] = None

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            bool(self.applications or self.touches),
            "applications",
            "touches nothing; give applications or touches",
        )
        if self.applications and self.stage in LAYS_NO_FILM:
            raise Refused(
                "applications",
                message("{stage} lays no film; move its places to touches", stage=self.stage),
            )
        if self.tool is Tool.AIRBRUSH:
            coatings = {application.coating for application in self.applications}
            demand(
                len(coatings) == 1,
                "applications",
                "an airbrush holds one coating at a time; make a step of each",
            )
        demand(self.dries_in not in self.or_in, "or_in", "names the location of dries_in again")
        demand(not self.or_in or bool(self.applications), "or_in", "goes with applications")
        demand(
            (self.role is None) or self.stage in (Stage.VARNISH, Stage.MATTE),
            "role",
            "belongs to varnish and matte steps",
        )
        if self.split_least is not None:
            demand(
                self.tool is not Tool.AIRBRUSH,
                "split_least",
                "a sprayed coat is laid in one go; it cannot be split",
            )
            demand(
                all(window.closes is None for gate in self.gates for window in gate.windows),
                "split_least",
                "a step with a closing gate cannot be split (definition 17)",
            )
        demand(not self.scraped or self.stage is Stage.JOIN, "scraped", "belongs to join steps")
        demand(
            self.coats == 1 or all(gate.closing is Bound.START for gate in self.gates),
            "gates",
            "only a step of one coat can have to end by a closing; make a step of each coat",
        )
        demand(self.stands is None or self.stage is Stage.JOIN, "stands", "belongs to join steps")

    @property
    def coats(self) -> int:
        """Number of passes: the most coats of any application, at least one."""
        return max((application.coats for application in self.applications), default=1)

    @property
    def goes_alone(self) -> bool:
        """Tell whether it goes on without hands once it is set going; no spraying does."""
        return Trait.HANDS_FREE in self.traits and self.tool not in (Tool.AIRBRUSH, Tool.CAN)

    @property
    def least_piece(self) -> int | None:
        """The least piece [min] if it may be split; what goes on alone has nothing to split."""
        return None if self.goes_alone else self.split_least

    def attended(self, minutes: int) -> int:
        """Return how many of a pass's minutes need hands: its first ones, if it goes on alone."""
        return min(minutes, SET_GOING) if self.goes_alone else minutes

    def references(self) -> tuple[str, ...]:
        """Return every place reference it names, applications first, each once."""
        named = [place for application in self.applications for place in application.places]
        return tuple(dict.fromkeys([*named, *self.touches]))
