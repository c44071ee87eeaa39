"""A stock to begin with: coatings by kind, with their class's usual numbers.

Names and swatches are invented; a window that speaks another language gives
the names in that one to a book.  None has times of its own: the family's
default holds until a label, or the logbook, says better.  Nothing is in
stock of any of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.message import Translate
from planner.values.mix import Mix, Portion
from planner.values.sequence import Sequence

_W, _L = Family.WATERBORNE_ACRYLIC, Family.SOLVENT_LACQUER
THIN_UM, CLEAR_UM, WASH_UM = 12.0, 14.0, 3.0  # dry films of one thin coat [µm]; assumed
CAN_SOLIDS = 0.08  # of all that is in a can, propellant included; assumed


def _colour(name: str, swatch: str, **rest: object) -> Coating:
    family = _L if name.startswith(_L.value) else _W
    return Coating(
        name=name,
        family=family,
        swatch=swatch,
        **({"dry_film_um": THIN_UM} | rest),  # type: ignore[arg-type]
    )


def _can(name: str, swatch: str, **rest: object) -> Coating:
    return _colour(name, swatch, **({"solids": CAN_SOLIDS, "bottle_ml": 150.0} | rest))


COATINGS: tuple[Coating, ...] = (
    _colour("waterborne acrylic, grey primer", "#9a9c9d", dry_film_um=15.0),
    _colour("waterborne acrylic, white primer", "#ecebe6"),
    _can(
        "solvent lacquer, grey primer in a can",
        "#949698",
        dry_film_um=20.0,
    ),
    _colour("waterborne acrylic, sand", "#b8a06e"),
    _colour("waterborne acrylic, pale sand", "#dccfa4"),
    _colour("waterborne acrylic, olive green", "#5a6140"),
    _colour("waterborne acrylic, red brown", "#6e4632"),
    _colour("waterborne acrylic, brick red", "#8c3b2e"),
    _colour("waterborne acrylic, dark grey", "#3d4043"),
    _colour("waterborne acrylic, stone grey", "#84827b"),
    _colour("waterborne acrylic, pale grey", "#b9b8b2"),
    _colour("waterborne acrylic, earth brown", "#6b5438"),
    _colour("waterborne acrylic, leather brown", "#7a5233"),
    _colour("waterborne acrylic, skin tone", "#c89878"),
    _colour("waterborne acrylic, olive drab cloth", "#6a6544"),
    _colour("waterborne acrylic, bright metal", "#a9adb0"),
    _colour("waterborne acrylic, moss green", "#66713a"),
    _colour("waterborne acrylic, light rust", "#94623f"),
    _colour("waterborne acrylic, dark rust", "#4a2f22"),
    _colour("waterborne acrylic, chalk white", "#e8e6de", dry_film_um=8.0),
    _colour("waterborne wash, umber", "#4b3a2a", solids=0.12, dry_film_um=WASH_UM),
    _can("solvent lacquer, sand in a can", "#b8a06e"),
    _can("solvent lacquer, olive green in a can", "#5a6140"),
    _can("solvent lacquer, brick red in a can", "#8c3b2e"),
    _can("solvent lacquer, stone grey in a can", "#84827b"),
    _colour(
        "waterborne acrylic, gloss clear", "#f2f2ee", finish=Finish.GLOSS, dry_film_um=CLEAR_UM
    ),
    _can(
        "waterborne acrylic, gloss clear in a can",
        "#f2f2ee",
        finish=Finish.GLOSS,
        dry_film_um=CLEAR_UM,
    ),
    _colour(
        "waterborne acrylic, satin clear", "#ebece8", finish=Finish.SATIN, dry_film_um=CLEAR_UM
    ),
    _colour("waterborne acrylic, matte clear", "#dfe2e2"),
    _can("waterborne acrylic, matte clear in a can", "#dfe2e2"),
    Coating(
        name="artist's oil, umber",
        family=Family.ARTISTS_OIL,
        finish=Finish.SATIN,
        swatch="#5a3826",
        solids=0.9,
        dry_film_um=2.0,
    ),
    Coating(
        name="artist's oil, ochre",
        family=Family.ARTISTS_OIL,
        finish=Finish.SATIN,
        swatch="#b07a2e",
        solids=0.9,
        dry_film_um=1.0,
    ),
    Coating(
        name="water-slide decals",
        family=Family.DECAL,
        finish=Finish.GLOSS,
        swatch="#ffffff",
        solids=1.0,
        dry_film_um=8.0,
    ),
    Coating(
        name="chipping fluid",
        family=Family.CHIPPING_FLUID,
        finish=Finish.SATIN,
        swatch="#eeeeea",
        dry_film_um=5.0,
    ),
    Coating(name="graphite powder", family=Family.GRAPHITE, finish=Finish.SATIN, swatch="#5a5d61"),
    Coating(name="pigment, dry earth", family=Family.PIGMENT, swatch="#9c8462", solids=1.0),
    Coating(name="pigment fixer", family=Family.FIXER, swatch="#e6e2d6", solids=0.05),
    Coating(
        name="cyanoacrylate glue",
        family=Family.CYANOACRYLATE,
        finish=Finish.GLOSS,
        swatch="#f4f4f4",
        solids=1.0,
        dry_film_um=50.0,
    ),
    Coating(name="water", family=Family.WATER_THINNER, swatch="#cfe6f2"),
    Coating(name="white spirit", family=Family.WHITE_SPIRIT, swatch="#f2f2ea"),
)


def _mix(name: str, life_minutes: int, swatch: str, **portions: float) -> Mix:
    named = {"wash": "waterborne wash, umber", "water": "water", "spirit": "white spirit"}
    named |= {"umber": "artist's oil, umber", "ochre": "artist's oil, ochre"}
    return Mix(
        name=name,
        portions=tuple(Portion(coating=named[key], parts=parts) for key, parts in portions.items()),
        life_minutes=life_minutes,
        swatch=swatch,
    )


CUP_MINUTES = 240  # a thinned acrylic in its cup or jar, before it skins or settles; assumed


def _for_airbrush(name: str, coating: str, swatch: str, parts: float = 2) -> Mix:
    """Return a colour thinned for the airbrush, so many parts to one of water."""
    portions = (Portion(coating=coating, parts=parts), Portion(coating="water", parts=1))
    return Mix(name=name, portions=portions, life_minutes=CUP_MINUTES, swatch=swatch)


THINNED: tuple[Mix, ...] = (
    _for_airbrush("sand for the airbrush, 2 : 1", "waterborne acrylic, sand", "#b8a06e"),
    _for_airbrush(
        "olive green for the airbrush, 2 : 1", "waterborne acrylic, olive green", "#5a6140"
    ),
    _for_airbrush("red brown for the airbrush, 2 : 1", "waterborne acrylic, red brown", "#6e4632"),
    _for_airbrush("brick red for the airbrush, 2 : 1", "waterborne acrylic, brick red", "#8c3b2e"),
    _for_airbrush("dark grey for the airbrush, 2 : 1", "waterborne acrylic, dark grey", "#3d4043"),
    _for_airbrush(
        "stone grey for the airbrush, 2 : 1", "waterborne acrylic, stone grey", "#84827b"
    ),
    _for_airbrush(
        "gloss clear for the airbrush, 3 : 1", "waterborne acrylic, gloss clear", "#f2f2ee", 3
    ),
    _for_airbrush(
        "matte clear for the airbrush, 3 : 1", "waterborne acrylic, matte clear", "#dfe2e2", 3
    ),
)
"""Ready thinned: milk is what painters compare it to (common practice, no source)."""
MIXES: tuple[Mix, ...] = (
    _mix("shading wash, 2 : 3", 480, "#6d5a45", wash=2, water=3),
    _mix("umber oil wash, 1 : 9", 480, "#7a543c", umber=1, spirit=9),
    _mix("ochre filter, 1 : 19", 480, "#c49a55", ochre=1, spirit=19),
    *THINNED,
)
NAMES = (*(mix.name for mix in MIXES), *(coating.name for coating in COATINGS))


def bottle(book: Book, name: str, translate: Translate = str) -> str:
    """Return what a coating of the starter stock is called in a book.

    One that the book has keeps its name; another comes under the name that
    ``translate`` gives it.  Names that the starter stock does not know stay.
    """
    there = {coating.name for coating in book.coatings} | {mix.name for mix in book.mixes}
    return name if name in there or name not in NAMES else translate(name)


def with_coatings(book: Book, names: Iterable[str], translate: Translate = str) -> Book:
    """Return the book with those of the starter stock that it lacks; a mix brings its portions.

    They are known by their names here or by those that ``translate`` gives
    them; names that the starter stock does not know stay out.
    """
    there = {coating.name for coating in book.coatings} | {mix.name for mix in book.mixes}
    called = {name: bottle(book, name, translate) for name in NAMES}
    wanted = {called.get(name, name) for name in names} - there
    mixes = tuple(_mixed(mix, called) for mix in MIXES if called[mix.name] in wanted)
    wanted |= {portion.coating for mix in mixes for portion in mix.portions}
    coatings = tuple(
        replace(coating, name=called[coating.name])
        for coating in COATINGS
        if called[coating.name] in wanted - there
    )
    if not coatings and not mixes:
        return book
    return replace(book, coatings=(*book.coatings, *coatings), mixes=(*book.mixes, *mixes))


def _mixed(mix: Mix, called: Mapping[str, str]) -> Mix:
    portions = tuple(replace(portion, coating=called[portion.coating]) for portion in mix.portions)
    return replace(mix, name=called[mix.name], portions=portions)


def in_words_of(book: Book, sequence: Sequence, translate: Translate) -> Sequence:
    """Return a sequence whose usual coatings are called as they are, or will be, in a book."""
    colours = tuple(
        replace(colour, usual=bottle(book, colour.usual, translate)) for colour in sequence.colours
    )
    return sequence if colours == sequence.colours else replace(sequence, colours=colours)


def swatch_of(book: Book, name: str) -> str:
    """Return the swatch of a coating or mix of a book or of the starter stock, or ""."""
    for mixes, coatings in ((book.mixes, book.coatings), (MIXES, COATINGS)):
        mix = next((mix for mix in mixes if mix.name == name), None)
        if mix is not None and mix.swatch:
            return mix.swatch
        first = mix.portions[0].coating if mix else name
        for coating in coatings:
            if coating.name == first:
                return coating.swatch
    return ""
