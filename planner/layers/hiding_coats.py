"""How many coats a pale colour needs over a dark one."""

from __future__ import annotations

from collections.abc import Iterator

from planner.layers.coat_stack import Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import PRIMER_WORDS
from planner.layers.overcoat_table import Verdict
from planner.layers.step_edits import Coats
from planner.values.book import Book
from planner.values.coating import named_so
from planner.values.message import message
from planner.values.step import Application, Bound, Stage

COLOUR = frozenset({Stage.BASE, Stage.CAMO})
OPAQUE = frozenset({Stage.PRIME, Stage.BASE, Stage.CAMO})
PALE, DARK = 65.0, 35.0  # CIE L*; what counts as pale and dark is an assumption
COATS_BY_STEP = ((10.0, 1), (40.0, 2), (65.0, 3))  # L* gained → coats; an assumption


def lightness(swatch: str) -> float:
    """Return the CIE 1976 lightness L* of "#rrggbb" [0 to 100].

    Relative luminance of sRGB after IEC 61966-2-1; L* after CIE 15,
    white Y = 1.
    """
    linear = [_linear(int(swatch[at : at + 2], 16) / 255) for at in (1, 3, 5)]
    y = 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
    if y > (6 / 29) ** 3:
        return 116 * float(y ** (1 / 3)) - 16
    return y * (29 / 3) ** 3


def _linear(value: float) -> float:
    return value / 12.92 if value <= 0.04045 else float(((value + 0.055) / 1.055) ** 2.4)


def coats_to_hide(colour: str, below: str) -> int:
    """Return how many thin coats of one swatch hide another; an estimate."""
    gain = lightness(colour) - lightness(below)
    return next((coats for limit, coats in COATS_BY_STEP if gain <= limit), 4)


def hiding(scene: Scene) -> Iterator[Finding]:
    """Yield pale colours that go over a dark one with too few coats."""
    for moment in scene.moments:
        if moment.step.stage not in COLOUR:
            continue
        for application in moment.step.applications:
            swatch = _swatch(scene.book, application.coating)
            places = [p for ref in application.places for p in scene.model.places(ref)]
            dark = {place: film for place in places if (film := _dark_below(scene, moment, place))}
            if not dark or lightness(swatch) < PALE:
                continue
            needed = max(coats_to_hide(swatch, _shade(scene.book, film)) for film in dark.values())
            if application.coats >= needed:
                continue
            film = next(iter(dark.values()))
            yield scene.found(
                message("pale over dark"),
                Verdict.ADVICE,
                moment,
                dark,
                _sentence(application, film.laid_as, needed, _saving(scene.book, swatch)),
                _more(scene, moment, application.coating, needed),
            )


def _sentence(application: Application, below: str, needed: int, saving: str) -> str:
    coating, coats = application.coating, application.coats
    if coats == 1:
        return message(
            "{coating} is pale and {below} below it dark: one thin coat will not hide it, "
            "about {needed} will; {saving}",
            coating=coating,
            below=below,
            needed=needed,
            saving=saving,
        )
    return message(
        "{coating} is pale and {below} below it dark: {coats} thin coats will not hide it, "
        "about {needed} will; {saving}",
        coating=coating,
        below=below,
        coats=coats,
        needed=needed,
        saving=saving,
    )


def _dark_below(scene: Scene, moment: Moment, place: str) -> Layer | None:
    """Return the opaque film right below, if it is dark."""
    opaque = [film for film in moment.stack(place) if film.step.stage in OPAQUE]
    if not opaque or lightness(_shade(scene.book, opaque[-1])) > DARK:
        return None
    return opaque[-1]


def _shade(book: Book, film: Layer) -> str:
    return _swatch(book, film.laid_as)


def _swatch(book: Book, name: str) -> str:
    mix = book.mix(name)
    if mix is not None and mix.swatch is not None:
        return mix.swatch
    return book.coating(name).swatch


def _saving(book: Book, swatch: str) -> str:
    """Name the primer that would save coats: from the stock, or by its shade."""
    used = {
        application.coating
        for project in book.projects
        for model in project.models
        for step in model.steps
        if step.stage is Stage.PRIME
        for application in step.applications
    }
    primers = [
        coating
        for coating in book.coatings
        if (coating.name in used or named_so(coating, PRIMER_WORDS))
        and lightness(coating.swatch) > DARK
    ]
    if not primers:
        return message("a grey or white primer would save coats")
    best = min(primers, key=lambda one: (coats_to_hide(swatch, one.swatch), one.name))
    return message(
        "over {primer} {coats} would do",
        primer=best.name,
        coats=coats_to_hide(swatch, best.swatch),
    )


def _more(scene: Scene, moment: Moment, coating: str, needed: int) -> Mend | None:
    if any(gate.closing is Bound.END for gate in moment.step.gates):
        return None  # such a step has one coat
    edit = Coats(scene.spot, moment.step.id, coating, needed)
    return Mend(message("lay {needed} coats of {coating}", needed=needed, coating=coating), (edit,))
