"""Where a step can hurt: one short caution each, and where it comes from.

They remind; they do not instruct.  The label, the safety data sheet and
the local rules have the last word (`LAST_WORD`).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from math import floor

from planner.layers.coat_stack import walk
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.message import Message, message, told
from planner.values.model import Material
from planner.values.room import Room
from planner.values.step import Stage, Step, Tool

LAST_WORD = "The label, the safety data sheet and local rules have the last word."


@dataclass(frozen=True)
class Caution:
    """What can hurt, in one sentence, and the public source of it.

    ``name`` is its subject in a word or two, for where the sentence stands nearby.
    """

    text: str
    source: str
    name: str

    def __post_init__(self) -> None:
        for field in ("text", "source", "name"):
            object.__setattr__(self, field, told(getattr(self, field)))


_MIST = Caution(
    "Spray mist: extract it, and wear a mask that stops particles and vapour; "
    "a dust mask stops no vapour.",
    "29 CFR 1910.134 (choice of respirators); EN 14387 (combined filters)",
    "spray mist",
)
_VAPOUR = Caution(
    "Solvent vapour: air the room well; no flame, spark or unsealed motor near it.",
    "29 CFR 1910.94(c)(6) (vapour at most a quarter of the lower explosive limit)",
    "solvent vapour",
)
_TWO_PACK = Caution(
    "A two-pack with isocyanate must not be sprayed in a hobby room: it can cause asthma, "
    "filters give no warning by smell. Read which hardener it has.",
    "NIOSH Alert 96-111; HSE INDG388",
    "isocyanate",
)
_RAGS = Caution(
    "Rags with drying oil heat themselves and can catch fire: spread them flat outdoors, "
    "or keep them under water in a closed metal can.",
    "Juita et al. 2012, Fire Science Reviews 1:3 (mechanism); TB 43-0209 (cloths soaked with oil)",
    "oily rags",
)
_GLUE = Caution(
    "Cyanoacrylate bonds skin at once and its vapour stings (limit 0.2 ppm): "
    "gloves, fresh air, eyes away.",
    "workplace limit of ethyl cyanoacrylate, as the chemicals library 1.5.2 holds it",
    "glue on skin and eyes",
)
_BLADE = Caution(
    "Blade: cut away from the fingers, and change it before it needs force.",
    "common practice, no source",
    "blade",
)
_POWDER = Caution(
    "Pigment dust: do not blow it about, and do not breathe it.",
    "common practice, no source",
    "pigment dust",
)

_GLOVES = Caution(
    "Gloves: solvents and two-pack go through the skin; nitrile, and changed when wet.",
    "common practice, no source; the safety data sheet names the glove",
    "gloves",
)
_DUST = Caution(
    "Resin dust: sand and scrape it wet, with a dust mask, and wipe it up wet.",
    "common practice, no source; UFC 3-190-06 par. 13.4 (wet sanding)",
    "resin dust",
)

# All but the estimates.
WRITTEN = (_MIST, _VAPOUR, _TWO_PACK, _RAGS, _GLUE, _BLADE, _POWDER, _GLOVES, _DUST)

_SOLVENT_BORNE = frozenset(
    {
        Family.SOLVENT_LACQUER,
        Family.ALKYD_ENAMEL,
        Family.ARTISTS_OIL,
        Family.ALCOHOL_INK,
        Family.TWO_PACK,
        Family.FIXER,
        Family.SOLVENT_CEMENT,
        Family.ALCOHOL_THINNER,
        Family.WHITE_SPIRIT,
        Family.LACQUER_THINNER,
    }
)


@dataclass(frozen=True)
class Solvent:
    """What evaporates, by its main part: density [g/ml], molar mass [g/mol], limit [ppm].

    ``explosive_pct`` is the lower explosive limit [% of the air].
    """

    name: str
    density: float
    molar_mass: float
    limit_ppm: float
    explosive_pct: float
    source: str


def _in_air(limit: str) -> Message:
    return message("ideal gas at 25 °C; limit: {limit}", limit=limit)


WHITE_SPIRIT = Solvent(
    told("white spirit"),
    0.78,
    140.0,
    61.0,
    0.9,
    _in_air(told("NIOSH REL 350 mg/m³ for Stoddard solvent")),
)
ISOPROPANOL = Solvent(
    told("2-propanol"), 0.785, 60.10, 400.0, 2.0, _in_air(told("29 CFR 1910.1000 Table Z-1"))
)
BUTYL_ACETATE = Solvent(
    told("n-butyl acetate"), 0.88, 116.16, 150.0, 1.2, _in_air(told("29 CFR 1910.1000 Table Z-1"))
)
BUTANONE = Solvent(
    told("butanone"), 0.805, 72.11, 200.0, 1.4, _in_air(told("29 CFR 1910.1000 Table Z-1"))
)
"""Lower explosive limits as safety data sheets have them, from memory."""
_EVAPORATES: dict[Family, Solvent] = {
    Family.ALKYD_ENAMEL: WHITE_SPIRIT,
    Family.ARTISTS_OIL: WHITE_SPIRIT,
    Family.WHITE_SPIRIT: WHITE_SPIRIT,
    Family.FIXER: WHITE_SPIRIT,
    Family.ALCOHOL_INK: ISOPROPANOL,
    Family.ALCOHOL_THINNER: ISOPROPANOL,
    Family.SOLVENT_LACQUER: BUTYL_ACETATE,
    Family.LACQUER_THINNER: BUTYL_ACETATE,
    Family.TWO_PACK: BUTYL_ACETATE,
    Family.SOLVENT_CEMENT: BUTANONE,
}
MOLAR_LITRES = 24.45  # l/mol of an ideal gas at 25 °C and 1013 hPa
ESTIMATE_ML = 10.0  # for a cup and its cleaning; an assumption
GLUE_ML = 1.0  # for a joint; an assumption
BOX_LITRES = 100.0  # of a heated box; an assumption
QUARTER = 0.25  # of the lower explosive limit: 29 CFR 1910.94(c)(6)
BOX_WARMER_C = 3.0  # a place so much warmer than the bench is a heated box: assumed

DUSTY = frozenset({Material.RESIN, Material.PRINT})
_DRYING_OIL = frozenset({Family.ALKYD_ENAMEL, Family.ARTISTS_OIL})


def vapour_ppm(solvent_ml: float, density: float, molar_mass: float, room_m3: float) -> float:
    """Return the vapour of a solvent that has all evaporated into unaired air [ppm].

    Parameters
    ----------
    solvent_ml
        What evaporates [ml].
    density, molar_mass
        Of the solvent [g/ml, g/mol].
    room_m3
        Volume of the room [m³].

    Notes
    -----
    ppm = V ρ / M × 24.45 / room, an ideal gas at 25 °C (OSHA methods manual).
    """
    litres = solvent_ml * density / molar_mass * MOLAR_LITRES
    return litres / (room_m3 * 1000) * 1e6


def estimate(families: Iterable[Family], room_m3: float) -> Caution | None:
    """Return what a cup of the solvent in these coatings does to the room, if they have one."""
    solvents = dict.fromkeys(_EVAPORATES[family] for family in families if family in _EVAPORATES)
    if not solvents:
        return None
    amount = {solvent: GLUE_ML if solvent is BUTANONE else ESTIMATE_ML for solvent in solvents}
    ppm = {
        solvent: vapour_ppm(amount[solvent], solvent.density, solvent.molar_mass, room_m3)
        for solvent in solvents
    }
    worst = max(ppm, key=lambda one: ppm[one] / one.limit_ppm)
    text = message(
        "Estimate: {ml:.0f} ml of {solvent} make about {ppm:.0f} ppm in {room:g} m³ without "
        "airing; a limit over a working day is {limit:.0f} ppm.",
        ml=amount[worst],
        solvent=worst.name,
        ppm=ppm[worst],
        room=room_m3,
        limit=worst.limit_ppm,
    )
    return Caution(text, worst.source, told("vapour in the room"))


def quarter_limit_ml(solvent: Solvent, litres: float) -> float:
    """Return how much of a solvent brings closed air to a quarter of its explosive limit [ml].

    Parameters
    ----------
    litres
        Volume of the air [l].

    References
    ----------
    29 CFR 1910.94(c)(6): vapour at most a quarter of the lower explosive limit.
    """
    vapour = QUARTER * solvent.explosive_pct / 100 * litres
    return vapour / MOLAR_LITRES * solvent.molar_mass / solvent.density


def in_a_box(families: Iterable[Family]) -> Caution | None:
    """Return what solvent-wet films do in a heated closed box, if these are such."""
    solvents = dict.fromkeys(_EVAPORATES[family] for family in families if family in _EVAPORATES)
    if not solvents:
        return None
    worst = min(solvents, key=lambda solvent: quarter_limit_ml(solvent, BOX_LITRES))
    text = message(
        "Heated box: let solvent flash off in the room first, and keep the lid ajar; in a closed "
        "box of {litres:.0f} l {ml:.1f} ml of {solvent} make a quarter of the lower explosive "
        "limit.",
        litres=BOX_LITRES,
        ml=floor(quarter_limit_ml(worst, BOX_LITRES) * 10) / 10,
        solvent=worst.name,
    )
    source = message("29 CFR 1910.94(c)(6); ideal gas at 25 °C; the box is assumed")
    return Caution(text, source, told("heated box"))


def heated_box(room: Room, location: str) -> bool:
    """Tell whether films that dry at a location of a room dry in a heated box."""
    place, bench = room.location(location), room.locations[0]
    if place == bench or place.outdoors:
        return False
    warmest = [
        max(point.temperature_c for point in (*one.workdays, *one.weekends))
        for one in (place, bench)
    ]
    return warmest[0] >= warmest[1] + BOX_WARMER_C


def oily(book: Book, step: Step) -> bool:
    """Tell whether a step lays or wipes a coating with drying oil, whose rags heat themselves."""
    return not _DRYING_OIL.isdisjoint(_families_at(book, step))


def _families_at(book: Book, step: Step) -> dict[Family, None]:
    """Return the families in the cup or on the rag."""
    families: dict[Family, None] = {}
    for application in step.applications:
        mix = book.mix(application.coating)
        names = [portion.coating for portion in mix.portions] if mix else [application.coating]
        families.update((book.coating(name).family, None) for name in names)
    if step.stage is Stage.WIPE:
        families.update(dict.fromkeys(_wiped(book, step)))
    return families


def _wiped(book: Book, step: Step) -> Iterator[Family]:
    """Yield the families of the films that a wiping step works on."""
    for project in book.projects:
        for model in project.models:
            if any(other is step for other in model.steps):
                for moment in walk(book, project, model):
                    if moment.step is step:
                        stacks = (moment.stack(place) for place in moment.first.places)
                        yield from (stack[-1].family for stack in stacks if stack)


def cautions(
    step: Step,
    families: Iterable[Family],
    room_m3: float | None = None,
    *,
    boxed: bool = False,
    materials: Iterable[Material] = (),
) -> tuple[Caution, ...]:
    """Return the cautions of a step.

    Parameters
    ----------
    families
        Families of all that is in the cup or on the rag: what the step
        lays, thinners in a mix included, and for wiping the film wiped.
    room_m3
        Volume of the room, for an estimate of the vapour [m³]; None: no estimate.
    boxed
        What it lays dries in a heated box.
    materials
        What the parts that it works on are made of.
    """
    known = frozenset(families)
    found = list(_cautions(step, known))
    if step.scraped or step.stage is Stage.CLEAN:
        found += [_DUST] if DUSTY & frozenset(materials) else []
    reckoned = [
        estimate(sorted(known), room_m3) if room_m3 and _VAPOUR in found else None,
        in_a_box(sorted(known)) if boxed and step.applications else None,
    ]
    return (*found, *(one for one in reckoned if one))


def _cautions(step: Step, families: frozenset[Family]) -> Iterator[Caution]:
    sprayed = step.tool in (Tool.AIRBRUSH, Tool.CAN)
    if sprayed:
        yield _MIST
    if Family.TWO_PACK in families:
        yield _TWO_PACK
    if families & _SOLVENT_BORNE or step.tool is Tool.CAN:
        yield _VAPOUR
    if families & _SOLVENT_BORNE and step.tool is not Tool.CAN:
        yield _GLOVES
    wiped = step.tool is Tool.CLOTH or step.stage in (Stage.OIL_WASH, Stage.WIPE)
    if wiped and families & _DRYING_OIL:
        yield _RAGS
    if Family.CYANOACRYLATE in families:
        yield _GLUE
    if Family.PIGMENT in families:
        yield _POWDER
    if step.stage in (Stage.MASK, Stage.DECAL) or step.scraped:
        yield _BLADE
