"""What is in the bottle: coatings, mixes, drying states and recoat windows."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime
from enum import StrEnum
from itertools import pairwise

from planner.values.message import message
from planner.values.moment import aware, in_years
from planner.values.refusal import Refused, all_different, demand, number_in, plain_name

CLEAR_WORDS = ("clear", "varnish", "klar", "firnis")
"""How people call clear coats in the languages of the window."""


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


@dataclass(frozen=True, kw_only=True)
class Mark:
    """A moment in the life of a film.

    Exactly one of the two is given: a drying state, or minutes on a clock.
    As an opening, minutes count from the *end* of the pass that laid the
    film; as a closing, from its *start* (definition 4).
    """

    state: State | None = None
    minutes: int | None = None
    clock: Clock = Clock.ELAPSED

    def __post_init__(self) -> None:
        demand(
            (self.state is None) != (self.minutes is None),
            "",
            'give either "state" or "minutes", not both and not neither',
        )
        if self.minutes is not None:
            number_in(self.minutes, 0, 527_040, "minutes", "min")
        else:
            demand(self.clock is Clock.ELAPSED, "clock", 'goes with "minutes" only')

    @property
    def of_film(self) -> bool:
        """Tell whether it depends on how the film dries, not on the clock alone."""
        return self.state is not None or self.clock is Clock.FILM


@dataclass(frozen=True, kw_only=True)
class Window:
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
    preparation_minutes: int = 0
    merges: bool = False

    def __post_init__(self) -> None:
        number_in(self.preparation_minutes, 0, 600, "preparation_minutes", "min")
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
class StateTime:
    """Reference time to one state at 23 °C, 50 % RH and the coating's own dry film [min]."""

    state: State
    minutes: int
    source: str = "label"

    def __post_init__(self) -> None:
        number_in(self.minutes, 0, 527_040, "minutes", "min")
        demand(bool(self.source.strip()), "source", 'is empty; write where it stands, as "label"')


@dataclass(frozen=True, kw_only=True)
class Coating:
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

    name: str
    family: Family
    finish: Finish = Finish.MATTE
    swatch: str = "#808080"
    solids: float = 0.35
    dry_film_um: float = 20.0
    times: tuple[StateTime, ...] = ()
    recoat: tuple[Window, ...] = ()
    pot_life_minutes: int | None = None
    least_c: float | None = None
    most_c: float | None = None
    most_humidity_pct: float | None = None
    in_stock_ml: float = 0.0
    counted: datetime | None = None
    bottle_ml: float = 17.0
    drops_per_ml: float | None = None
    opened: date | None = None
    slowness: float = 1.0
    effect: Effect = Effect.PLAIN
    hiding: Hiding | None = None
    doubt: float | None = None
    steeper_kj_mol: float = 0.0
    retarder: float = 0.0

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        number_in(self.retarder, 0, MOST_RETARDER, "retarder")
        number_in(self.steeper_kj_mol, -20, 60, "steeper_kj_mol", "kJ/mol")
        if self.doubt is not None:
            number_in(self.doubt, 1, 4, "doubt")
        if re.fullmatch(r"#[0-9a-fA-F]{6}", self.swatch) is None:
            raise Refused(
                "swatch",
                message('"{swatch}" is not a colour; write it as #c8b482', swatch=self.swatch),
            )
        demand(0 < self.solids <= 1, "solids", "is a fraction of the volume; give 0.01 to 1")
        number_in(self.dry_film_um, 0.1, 2000, "dry_film_um", "µm")
        all_different([time.state for time in self.times], "times", "state")
        ordered_windows(self.recoat, "recoat")
        if self.pot_life_minutes is not None:
            number_in(self.pot_life_minutes, 1, 10_080, "pot_life_minutes", "min")
        for field in ("least_c", "most_c"):
            limit = getattr(self, field)
            if limit is not None:
                number_in(limit, -20, 60, field, "°C")
        if self.most_humidity_pct is not None:
            number_in(self.most_humidity_pct, 1, 100, "most_humidity_pct", "%")
        number_in(self.in_stock_ml, 0, 1e6, "in_stock_ml", "ml")
        if self.counted is not None:
            aware(self.counted, "counted")
        number_in(self.bottle_ml, 0.1, 100_000, "bottle_ml", "ml")
        if self.drops_per_ml is not None:
            number_in(self.drops_per_ml, 1, 200, "drops_per_ml")
        if self.opened is not None:
            in_years(self.opened, "opened")
        number_in(self.slowness, 0.25, 4, "slowness")


def film_of_mix(mix: Mix, known: Mapping[str, Coating]) -> Coating:
    """Return the coating of the film that a mix leaves: its first, with the retarder in it."""
    first = known[mix.portions[0].coating]
    whole = sum(portion.parts for portion in mix.portions)
    slow = sum(
        portion.parts
        for portion in mix.portions
        if known[portion.coating].family is Family.RETARDER
    )
    if not slow:
        return first
    return replace(first, retarder=min(MOST_RETARDER, first.retarder + slow / whole))


_BY_NAME: tuple[tuple[Effect, str], ...] = (
    (Effect.FLUORESCENT, r"fluorescent|fluo|neon|leuchtfarbe|leucht\w*"),
    (Effect.MIRROR, r"chrome|mirror|chrom|spiegel\w*"),
    (
        Effect.METALLIC,
        r"metallic|metal|metallisch|aluminium|aluminum|steel|stahl|gunmetal|brass|messing|copper"
        r"|kupfer|bronze|gold|silver(?! gr[ea]y)|silber(?!grau)",
    ),
)


def effect_of(coating: Coating) -> Effect:
    """Return the effect of a coating: as the book says, else as its name tells.

    Who names a bottle "aluminium" means the metal; what is told wrongly so
    can be set in the book.
    """
    if coating.effect is not Effect.PLAIN:
        return coating.effect
    name = coating.name.casefold()
    return next(
        (effect for effect, words in _BY_NAME if re.search(rf"\b(?:{words})\b", name)),
        Effect.PLAIN,
    )


def named_so(coating: Coating, words: Iterable[str]) -> bool:
    """Tell whether the name of a coating holds one of some words."""
    name = coating.name.casefold()
    return any(word in name for word in words)


@dataclass(frozen=True, kw_only=True)
class Portion:
    """Some parts by volume of one coating in a mix."""

    coating: str
    parts: float

    def __post_init__(self) -> None:
        demand(bool(self.coating), "coating", "is empty; name a coating")
        number_in(self.parts, 0.01, 1000, "parts")


@dataclass(frozen=True, kw_only=True)
class Mix:
    """Parts of several coatings stirred together.

    The film that forms is that of the first portion; further portions
    shift its colour or thin it.  ``life_minutes`` is how long it can be
    used, in the cup or on the palette [min].
    """

    name: str
    portions: tuple[Portion, ...]
    life_minutes: int = 240
    swatch: str | None = None

    def __post_init__(self) -> None:
        plain_name(self.name, "name")
        demand(len(self.portions) >= 1, "portions", "is empty; name at least one coating")
        all_different([portion.coating for portion in self.portions], "portions", "coating")
        number_in(self.life_minutes, 1, 43_200, "life_minutes", "min")
        if self.swatch is not None and not re.fullmatch(r"#[0-9a-fA-F]{6}", self.swatch):
            raise Refused(
                "swatch",
                message('"{swatch}" is not a colour; write it as #c8b482', swatch=self.swatch),
            )
