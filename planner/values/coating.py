"""What is in the bottle: coatings, drying states and recoat windows."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date, datetime
from enum import StrEnum
from itertools import pairwise
from typing import Annotated

from planner.values.field import Field, Value
from planner.values.message import message
from planner.values.refusal import Refused, demand, plain_name


class Family(StrEnum):
    """Chemistry of a coating; it decides how the film dries and what attacks it."""

    WATERBORNE_ACRYLIC = "waterborne acrylic"
    SOLVENT_LACQUER = "solvent lacquer"
    ALKYD_ENAMEL = "alkyd enamel"
    ARTISTS_OIL = "artist's oil"
    ALCOHOL_INK = "alcohol ink"
    TWO_PACK = "two-pack"
    PIGMENT = "pigment"
    FIXER = "pigment fixer"
    DECAL = "decal"
    CHIPPING_FLUID = "chipping fluid"
    SOLVENT_CEMENT = "solvent cement"
    CYANOACRYLATE = "cyanoacrylate"
    WHITE_GLUE = "white glue"
    MASKING_FLUID = "masking fluid"
    SALT = "salt"
    RETARDER = "retarder"
    GRAPHITE = "graphite"
    WATER_THINNER = "water thinner"
    ALCOHOL_THINNER = "alcohol thinner"
    WHITE_SPIRIT = "white spirit"
    LACQUER_THINNER = "lacquer thinner"


THINNERS = frozenset(
    {
        Family.WATER_THINNER,
        Family.ALCOHOL_THINNER,
        Family.WHITE_SPIRIT,
        Family.LACQUER_THINNER,
        Family.RETARDER,
    }
)
THINNED_BY: dict[Family, Family] = {
    Family.WATERBORNE_ACRYLIC: Family.WATER_THINNER,
    Family.SOLVENT_LACQUER: Family.LACQUER_THINNER,
    Family.ALKYD_ENAMEL: Family.WHITE_SPIRIT,
    Family.ARTISTS_OIL: Family.WHITE_SPIRIT,
    Family.TWO_PACK: Family.LACQUER_THINNER,
    Family.ALCOHOL_INK: Family.ALCOHOL_THINNER,
}
"""What thins a paint, and cleans it off tools while it is wet."""
GLUES = frozenset({Family.SOLVENT_CEMENT, Family.CYANOACRYLATE, Family.WHITE_GLUE})


MOST_RETARDER = 0.5


class Finish(StrEnum):
    """Sheen of the dry film."""

    GLOSS = "gloss"
    SATIN = "satin"
    MATTE = "matte"


class Effect(StrEnum):
    """What a film is to the eye beside its colour and sheen."""

    PLAIN = "plain"
    METALLIC = "metallic"
    MIRROR = "mirror"
    FLUORESCENT = "fluorescent"
    POLISH = "polish gloss"


class Hiding(StrEnum):
    """How well a thin coat hides what lies below."""

    GOOD = "hides well"
    USUAL = "hides as most do"
    POOR = "hides badly"
    CLEAR = "lets it through"


class State(StrEnum):
    """How far a film has come.

    The words are those of ASTM D1640 and ISO 9117 where those have one;
    ``SOLVENT_SAFE`` (a weak solvent may be wiped over it) is the trade's.
    """

    SET_TO_TOUCH = "set-to-touch"
    DUST_FREE = "dust-free"
    TACK_FREE = "tack-free"
    DRY_TO_HANDLE = "dry-to-handle"
    DRY_TO_RECOAT = "dry-to-recoat"
    PRINT_FREE = "print-free"
    SOLVENT_SAFE = "solvent-safe"
    DRY_THROUGH = "dry-through"


class Clock(StrEnum):
    """How the minutes of a mark count."""

    ELAPSED = "elapsed"
    FILM = "film"  # equivalent minutes at 23 °C and 50 % RH


class Preparation(StrEnum):
    """What a window asks of the person before the next coat."""

    NONE = "none"
    WIPE = "wipe"
    SCUFF = "scuff"
    TIE_COAT = "tie coat"


MINUTES_OF_A_YEAR = Field(unit="min", least=0, most=527_040)


def colour(swatch: str, place: str) -> None:
    """Demand a colour written as "#c8b482"."""
    if re.fullmatch(r"#[0-9a-fA-F]{6}", swatch) is None:
        mend = message('"{swatch}" is not a colour; write it as #c8b482', swatch=swatch)
        raise Refused(place, mend)


def _fraction(solids: float, place: str) -> None:
    demand(0 < solids <= 1, place, "is a fraction of the volume; give 0.01 to 1")


@dataclass(frozen=True, kw_only=True)
class Mark(Value):
    """A moment in the life of a film.

    Exactly one of the two is given: a drying state, or minutes on a clock.
    As an opening, minutes count from the *end* of the pass that laid the
    film; as a closing, from its *start* (definition 4).
    """

    state: State | None = None
    minutes: Annotated[int | None, MINUTES_OF_A_YEAR] = None
    clock: Clock = Clock.ELAPSED

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            (self.state is None) != (self.minutes is None),
            "",
            'give either "state" or "minutes", not both and not neither',
        )
        demand(
            self.minutes is not None or self.clock is Clock.ELAPSED,
            "clock",
            'goes with "minutes" only',
        )

    @property
    def of_film(self) -> bool:
        """Tell whether it depends on how the film dries, not on the clock alone."""
        return self.state is not None or self.clock is Clock.FILM


@dataclass(frozen=True, kw_only=True)
class Window(Value):
    """One [opens, closes) of a gate, with the preparation it asks.

    ``opens`` absent means from the first minute; ``closes`` absent, for
    ever.  ``best`` is the moment to aim at; it counts as an opening does, and
    nothing is wrong before it (definition 6a).  In a window with ``merges``
    the next coat melts into the film below: thicknesses add and the clock
    starts anew (definition 11).
    """

    opens: Mark | None = None
    best: Mark | None = None
    closes: Mark | None = None
    preparation: Preparation = Preparation.NONE
    preparation_minutes: Annotated[int, Field(unit="min", least=0, most=600)] = 0
    merges: bool = False

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(
            (self.preparation is Preparation.NONE) == (self.preparation_minutes == 0),
            "preparation_minutes",
            "goes with a preparation other than none, and such a preparation takes minutes",
        )
        demand(
            not (self.merges and self.preparation_minutes),
            "merges",
            "a coat cannot melt into a film that was prepared; use two windows",
        )
        opens, closes = self.opens, self.closes
        if opens and closes and opens.minutes is not None and closes.minutes is not None:
            demand(
                opens.clock is not closes.clock or opens.minutes < closes.minutes,
                "closes",
                "must lie after opens",
            )
        self._best_between()

    def _best_between(self) -> None:
        best = self.best
        if best is None or best.minutes is None:
            return
        for other, later, mend in (
            (self.opens, False, "must not lie before opens"),
            (self.closes, True, "must lie before closes"),
        ):
            if other is None or other.minutes is None or other.clock is not best.clock:
                continue
            holds = best.minutes < other.minutes if later else best.minutes >= other.minutes
            demand(holds, "best", mend)


def ordered_windows(windows: tuple[Window, ...], place: str) -> None:
    """Demand windows that are ordered and disjoint where minutes show it (definition 8)."""
    for index, (first, second) in enumerate(pairwise(windows)):
        here = f"{place}[{index + 1}]"
        demand(first.closes is not None, f"{place}[{index}].closes", "only the last may stay open")
        demand(second.opens is not None, f"{here}.opens", "only the first may open at once")
        before, after = first.closes, second.opens
        if before and after and before.minutes is not None and after.minutes is not None:
            demand(
                before.clock is not after.clock or before.minutes <= after.minutes,
                f"{here}.opens",
                "lies before the window ahead of it has closed; order them",
            )


@dataclass(frozen=True, kw_only=True)
class StateTime(Value):
    """Reference time to one state at 23 °C, 50 % RH and the coating's own dry film [min]."""

    state: State
    minutes: Annotated[int, MINUTES_OF_A_YEAR]
    source: str = "label"

    def __post_init__(self) -> None:
        super().__post_init__()
        demand(bool(self.source.strip()), "source", 'is empty; write where it stands, as "label"')


@dataclass(frozen=True, kw_only=True)
class Coating(Value):
    """One coating of the stock.

    Attributes
    ----------
    solids
        Volume solids as a fraction, in (0, 1].
    dry_film_um
        Dry film that one coat leaves, and that ``times`` belong to [µm].
    times
        Times of this very product (label, data sheet); where a state is
        missing the family's default holds.
    recoat
        Recoat windows of the label; empty means "once dry-to-recoat".
    pot_life_minutes
        Life of a two-pack after mixing [min].
    least_c, most_c, most_humidity_pct
        The label's limits for laying it.
    in_stock_ml, counted
        What was there [ml] when it was last counted; what the logbook says
        was used since is taken off.  Without ``counted``, all of it is.
    bottle_ml
        What one bottle holds when bought [ml].
    drops_per_ml
        Drops of this very bottle to a millilitre; absent, the family's.
    opened
        When the bottle was opened.
    slowness
        Learned factor on every drying time, the label's included; 1 is as stated.
    effect
        What it does to the light: metallic, mirror, fluorescent; a gloss of
        the kind of floor polish; plain is none of these.
    hiding
        How well it hides; absent, as its hue usually does.
    doubt
        How far this bottle's times may lie from the likely ones, as a factor:
        surely is so many times likely; absent, as its label or family.
    steeper_kj_mol
        How much more than its family's its times go by temperature [kJ/mol].
    retarder
        Share of slow solvent stirred into it, by volume; 0 is none.
    """

    name: Annotated[
        str,
        Field("&Name", check=plain_name, help="By its kind, as “waterborne acrylic, sand”"),
    ]
    family: Annotated[Family, Field("&Family")]
    finish: Annotated[Finish, Field("F&inish")] = Finish.MATTE
    swatch: Annotated[str, Field("&Colour", check=colour)] = "#808080"
    solids: Annotated[
        float,
        Field("&Solids by volume", percent=True, decimals=1, least=0, most=1, check=_fraction),
    ] = 0.35
    dry_film_um: Annotated[
        float, Field("&Dry film of one coat", unit="µm", least=0.1, most=2000, decimals=1)
    ] = 20.0
    times: Annotated[tuple[StateTime, ...], Field("From the &label", unique="state")] = ()
    recoat: Annotated[
        tuple[Window, ...], Field("&Windows for the next coat", check=ordered_windows)
    ] = ()
    pot_life_minutes: Annotated[
        int | None, Field("&Life once mixed", unit="min", least=1, most=10_080)
    ] = None
    least_c: Annotated[
        float | None, Field("Not laid &below", unit="°C", least=-20, most=60, decimals=1)
    ] = None
    most_c: Annotated[
        float | None, Field("Not laid &above", unit="°C", least=-20, most=60, decimals=1)
    ] = None
    most_humidity_pct: Annotated[
        float | None, Field("Not laid in air &damper than", unit="% RH", least=1, most=100)
    ] = None
    in_stock_ml: Annotated[float, Field("&Left now", unit="ml", least=0, most=1e6, decimals=1)] = (
        0.0
    )
    counted: datetime | None = None
    bottle_ml: Annotated[
        float, Field("One &bottle holds", unit="ml", least=0.1, most=100_000, decimals=1)
    ] = 17.0
    drops_per_ml: Annotated[
        float | None,
        Field(
            "&Drops to a millilitre",
            least=1,
            most=200,
            decimals=1,
            help="Count the drops that fill 1 ml once; otherwise the family's usual figure holds",
        ),
    ] = None
    opened: Annotated[date | None, Field("&Opened")] = None
    slowness: Annotated[
        float,
        Field(
            "Drying &time, times as stated",
            unit="×",
            least=0.25,
            most=4,
            decimals=2,
            help="Learned from looks at films, or set by hand; 1 is as stated",
        ),
    ] = 1.0
    effect: Annotated[
        Effect,
        Field(
            "&Effect",
            help="A metallic loses its shine under matte clear, a fluorescent wants white below",
        ),
    ] = Effect.PLAIN
    hiding: Annotated[Hiding | None, Field("&Hides what lies below")] = None
    doubt: Annotated[
        float | None,
        Field(
            "S&urely, times likely",
            unit="×",
            least=1,
            most=4,
            decimals=2,
            help="How far its times may lie from the likely ones; else as its label or family",
        ),
    ] = None
    steeper_kj_mol: Annotated[
        float,
        Field(
            "Steeper by te&mperature",
            unit="kJ/mol",
            least=-20,
            most=60,
            decimals=1,
            help="Added to its family's slope; about 10 for a fifth more at 10 °C",
        ),
    ] = 0.0
    retarder: Annotated[
        float,
        Field(
            "&Retarder stirred in",
            percent=True,
            least=0,
            most=MOST_RETARDER,
            decimals=1,
            help="Slow solvent that keeps it open; a tenth doubles every time (assumed)",
        ),
    ] = 0.0
