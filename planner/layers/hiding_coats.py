"""How many coats a colour needs over another: pale over dark, and what hides badly."""

from __future__ import annotations

from collections.abc import Iterator
from math import atan2, degrees, hypot

from planner.layers.coat_stack import RESISTS, Layer, Moment
from planner.layers.finding import Finding, Mend, Scene
from planner.layers.mend_coatings import PRIMER_WORDS
from planner.layers.overcoat_table import LayerVerdict
from planner.layers.step_edits import Coats
from planner.values.book import Book
from planner.values.coating import THINNERS, Coating, Effect, Family, Hiding
from planner.values.coating_names import effect_of, named_so
from planner.values.message import message
from planner.values.step import Application, Bound, Stage

COLOUR = frozenset({Stage.BASE, Stage.CAMO})
OPAQUE = frozenset({Stage.PRIME, Stage.BASE, Stage.CAMO})
PALE, DARK = 65.0, 35.0  # CIE L*; what counts as pale and dark is an assumption
POOR_COATS = 2  # coats more of a colour that hides badly; an assumption
CLEAN, WARM = 55.0, (-15.0, 110.0)  # chroma, and hues from red to yellow [°], CIE L*a*b*: assumed
BRIGHT, GREY, OTHER_HUE = 75.0, 12.0, 45.0  # L*, chroma, hue apart [°]: assumed
GLAZE = 0.25  # less paint than this part of a mix is a glaze: assumed
OFF_AGAIN = RESISTS | {Family.CHIPPING_FLUID}
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


def lab(swatch: str) -> tuple[float, float, float]:
    """Return CIE 1976 L*, a*, b* of "#rrggbb", sRGB and its white D65 (IEC 61966-2-1, CIE 15)."""
    red, green, blue = (_linear(int(swatch[at : at + 2], 16) / 255) for at in (1, 3, 5))
    x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505
    y = 0.2126 * red + 0.7152 * green + 0.0722 * blue
    z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.0890
    fx, fy, fz = (_root(each) for each in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def _root(value: float) -> float:
    if value > (6 / 29) ** 3:
        return float(value ** (1 / 3))
    return value / 3 * (29 / 6) ** 2 + 4 / 29


def hides(coating: Coating, swatch: str) -> Hiding:
    """Return how well a coating hides: as the book says, else as its effect and hue mostly do.

    Clean yellow, orange and red hide badly: common practice, no source; the
    limits of hue and chroma are assumed.
    """
    if coating.hiding is not None:
        return coating.hiding
    if effect_of(coating) in (Effect.METALLIC, Effect.MIRROR):
        return Hiding.GOOD  # its flakes stop the light
    _, a, b = lab(swatch)
    hue = degrees(atan2(b, a))
    clean = hypot(a, b) >= CLEAN and WARM[0] <= hue <= WARM[1]
    return Hiding.POOR if clean else Hiding.USUAL


def hiding(scene: Scene) -> Iterator[Finding]:
    """Yield colours that go over what they do not hide with so few coats."""
    for moment in scene.moments:
        if moment.step.stage not in COLOUR:
            continue
        for application in moment.step.applications:
            yield from _hidden(scene, moment, application)


def _hidden(scene: Scene, moment: Moment, application: Application) -> Iterator[Finding]:
    coating = scene.book.coating(application.coating)
    swatch = _swatch(scene.book, application.coating)
    power = hides(coating, swatch)
    if paint_share(scene.book, application.coating) < GLAZE:
        yield _glaze(scene, moment, application)
        return
    if power in (Hiding.GOOD, Hiding.CLEAR) or effect_of(coating) is Effect.FLUORESCENT:
        return  # it hides, or is not meant to; what a fluorescent wants is its own rule
    places = [p for ref in application.places for p in scene.model.places(ref)]
    below = {place: film for place in places if (film := _opaque_below(moment, place))}
    asked: dict[str, int] = {}
    for place, film in below.items():
        needed = _needed(power, swatch, shade_of(scene.book, film))
        if needed > application.coats:
            asked[place] = needed
    if not asked:
        return
    needed = max(asked.values())
    film = below[next(iter(asked))]
    dark = lightness(swatch) >= PALE and lightness(shade_of(scene.book, film)) <= DARK
    saving = _saving(scene.book, swatch)
    yield scene.found(
        message("pale over dark") if dark else message("colour that hides badly"),
        LayerVerdict.ADVICE,
        moment,
        asked,
        _sentence(application, film.laid_as, needed, saving)
        if dark
        else _badly(application, film.laid_as, needed),
        _more(scene, moment, application.coating, needed),
    )


def paint_share(book: Book, name: str) -> float:
    """Return which part of a coating or mix is paint and not thinner, by volume."""
    mix = book.mix(name)
    if mix is None:
        return 1.0
    whole = sum(portion.parts for portion in mix.portions)
    thin = sum(
        portion.parts
        for portion in mix.portions
        if book.coating(portion.coating).family in THINNERS
    )
    return (whole - thin) / whole


def _glaze(scene: Scene, moment: Moment, application: Application) -> Finding:
    places = [p for ref in application.places for p in scene.model.places(ref)]
    return scene.found(
        message("colour thinned to a glaze"),
        LayerVerdict.ADVICE,
        moment,
        places,
        message(
            "{coating} is thinned so far that it is a glaze and hides nothing; a colour for the "
            "airbrush is thinned to about 1 : 1 at most, and a glaze is a filter or a wash",
            coating=application.coating,
        ),
        None,
    )


def _needed(power: Hiding, swatch: str, below: str) -> int:
    """Return how many thin coats are asked of a colour over another; 0 where none is asked."""
    pale_over_dark = lightness(swatch) >= PALE and lightness(below) <= DARK
    if power is Hiding.POOR and _shows_through(swatch, below):
        return coats_to_hide(swatch, below) + POOR_COATS
    return coats_to_hide(swatch, below) if pale_over_dark else 0


def _shows_through(swatch: str, below: str) -> bool:
    """Tell whether what lies below is dark enough, and of another hue, to show through."""
    _, a, b = lab(swatch)
    light, under_a, under_b = lab(below)
    if light >= BRIGHT:
        return False
    if hypot(under_a, under_b) < GREY:
        return True
    apart = abs(degrees(atan2(b, a) - atan2(under_b, under_a)))
    return min(apart, 360 - apart) > OTHER_HUE


def _badly(application: Application, below: str, needed: int) -> str:
    coating, coats = application.coating, application.coats
    return (
        message(
            "{coating} hides badly, and {below} shows through one thin coat: about {needed} will "
            "hide it, or fewer over a white or pale undercoat",
            coating=coating,
            below=below,
            needed=needed,
        )
        if coats == 1
        else message(
            "{coating} hides badly, and {below} shows through {coats} thin coats: about {needed} "
            "will hide it, or fewer over a white or pale undercoat",
            coating=coating,
            below=below,
            coats=coats,
            needed=needed,
        )
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


def _opaque_below(moment: Moment, place: str) -> Layer | None:
    """Return the opaque film right below; None over what the colour is to be taken off from."""
    stack = moment.stack(place)
    if stack and stack[-1].family in OFF_AGAIN:
        return None  # a thin coat is wanted there
    opaque = [film for film in stack if film.step.stage in OPAQUE]
    return opaque[-1] if opaque else None


def shade_of(book: Book, film: Layer) -> str:
    """Return the swatch of a film, its mix's own if it has one."""
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
