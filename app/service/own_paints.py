"""Paints that stand on a person's shelf: read from a table, typed in a line, used by the plan.

A line says of what kind a paint is, its colour, finish, what is left, and
the person's own code for it.  A colour of a sequence takes an owned paint of
the same kind whose colour is near enough.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Mapping
from dataclasses import replace
from types import MappingProxyType

from app.service.csv_reading import TableRow, column_of, number, read_table, shown, spot
from app.service.edits import Edit
from app.service.starter_stock import COATINGS
from planner.layers.mend_coatings import PRIMER_WORDS
from planner.values.book import Book
from planner.values.coating import Coating, Family, Finish
from planner.values.coating_names import CLEAR_WORDS, named_so
from planner.values.message import Message, Translate, called, message
from planner.values.refusal import Refused, demand
from planner.values.sequence import Colour

COLUMNS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "kind": ("kind", "type", "family", "art", "sorte"),
        "colour": ("colour", "color", "name", "farbe", "farbton"),
        "finish": ("finish", "sheen", "glanz", "oberfl"),
        "ml": ("ml", "millilit", "left", "rest", "menge", "amount"),
        "code": ("code", "number", "no", "nr", "nummer", "own"),
        "swatch": ("swatch", "rgb", "hex"),
    }
)
"""What a heading may begin with, in the languages of the window."""
_KINDS: tuple[tuple[str, Family], ...] = (
    ("acrylic|acryl|water|wasser|emulsion", Family.WATERBORNE_ACRYLIC),
    ("lacquer|nitro|lack auf l|lösemittel|solvent", Family.SOLVENT_LACQUER),
    ("enamel|alkyd|kunstharz|email", Family.ALKYD_ENAMEL),
    ("oil|öl", Family.ARTISTS_OIL),
    ("ink|tinte", Family.ALCOHOL_INK),
    ("two-pack|2k|two pack|zweikomp", Family.TWO_PACK),
    ("fixer|fixier", Family.FIXER),
    ("pigment", Family.PIGMENT),
    ("chipping|hairspray|haarspray|abplatz", Family.CHIPPING_FLUID),
    ("decal|nassschieb", Family.DECAL),
    ("graphit", Family.GRAPHITE),
)
_FINISHES: tuple[tuple[str, Finish], ...] = (
    ("gloss|glänz|glanz", Finish.GLOSS),
    ("satin|seiden|semi", Finish.SATIN),
    ("matt|flat", Finish.MATTE),
)
_HUES: Mapping[str, str] = MappingProxyType(
    {
        "black|schwarz": "#1d1d1d",
        "white|weiß|weiss": "#f2f2ee",
        "dark grey|dark gray|dunkelgrau|panzergrau": "#3d4043",
        "pale grey|light grey|light gray|hellgrau": "#b9b8b2",
        "grey|gray|grau": "#84827b",
        "pale sand|cream|creme|elfenbein|ivory": "#dccfa4",
        "sand|tan|desert|dunkelgelb|dark yellow": "#b8a06e",
        "olive|oliv": "#5a6140",
        "dark green|dunkelgrün": "#3c4a33",
        "green|grün": "#66713a",
        "red brown|rotbraun|rust|rost": "#6e4632",
        "leather|leder": "#7a5233",
        "brown|braun|earth|erde|umber": "#6b5438",
        "brick|ziegel": "#8c3b2e",
        "red|rot": "#a5241f",
        "orange": "#d0702a",
        "yellow|gelb|ochre|ocker": "#d8b13a",
        "dark blue|dunkelblau": "#23325c",
        "blue|blau": "#3f6391",
        "skin|flesh|haut": "#c89878",
        "silver|silber|steel|stahl|metal|metall|alumin": "#a9adb0",
        "gold|brass|messing": "#b08d3c",
        "clear|klar": "#f2f2ee",
    }
)
"""Swatches of common colour words, the more exact ones first: assumed."""
HEAD = 4_000  # bytes in which the first line of a table ends
USES = ("primer", "Grundierung", "wash", "Lasur")  # a kind that goes into the paint's name
NEAR = 25.0  # of CIE 1976 colour difference: a colour of the same name, by our own eyes; assumed


def are_paints(data: bytes) -> bool:
    """Tell whether a table names kinds and colours in its first line.

    Raises
    ------
    Refused
        If it is no table.
    """
    try:
        first = read_table(data[:HEAD]).rows[0]
    except Refused:  # what was cut off there may have been the end of a quotation
        first = read_table(data).rows[0]
    return {"kind", "colour"} <= set(column_of(first, COLUMNS))


def read_paints(data: bytes, family_word: Translate = str) -> tuple[Coating, ...]:
    """Read a table of one's own paints; the first line says what stands in which column.

    Columns: kind, colour, finish, millilitres, code of one's own; kind and
    colour must be there.  Their order does not matter.  ``family_word``
    gives the first word of their names.

    Raises
    ------
    Refused
        By line and column.
    """
    table = read_table(data)
    header, *rows = table.rows
    at = column_of(header, COLUMNS)
    for needed in ("kind", "colour"):
        demand(
            needed in at,
            spot(header.line),
            message(
                "has no column “{name}”; begin with a line such as kind;colour;finish;ml;code",
                name=needed,
            ),
        )
    demand(bool(rows), spot(header.line), message("is all there is; write a line for each paint"))
    found: dict[str, tuple[int, Coating]] = {}
    for row in rows:
        paint = _paint(row, at, family_word)
        if paint.name in found:
            mend = message(
                "“{name}” stands in line {line} already; give each a code of its own",
                name=paint.name,
                line=found[paint.name][0],
            )
            raise Refused(spot(row.line, "colour"), mend)
        found[paint.name] = (row.line, paint)
    return tuple(paint for _, paint in found.values())


def typed_paint(text: str, family_word: Translate = str) -> Coating:
    """Read one line that was typed, as "acrylic, olive green, matte, 17 ml, A12".

    Its kind comes first and its colour second; the rest may be left out.

    Raises
    ------
    Refused
        If kind or colour is missing, or no kind is called so.
    """
    cells = [cell.strip() for cell in re.split(r"[;,]", text)]
    if len(cells) < 2 or not cells[1]:
        raise Refused(
            "paint",
            message(
                "“{text}” names no kind and colour; type it as acrylic, olive green, 17 ml",
                text=shown(text),
            ),
        )
    told: dict[str, str] = {"kind": cells[0], "colour": cells[1]}
    for cell in cells[2:]:
        amount = re.fullmatch(r"(\d+(?:\.\d+)?)\s*(?:ml)?", cell, re.IGNORECASE)
        if amount and "ml" not in told:
            told["ml"] = amount[1]
        elif _finish(cell) is not None and "finish" not in told:
            told["finish"] = cell
        elif cell:
            told["code"] = cell
    names = tuple(told)
    row = TableRow(1, tuple(told.values()))
    try:
        return _paint(row, {name: at for at, name in enumerate(names)}, family_word)
    except Refused as refused:
        raise Refused("paint", refused.mend) from refused


def with_paints(book: Book, paints: Iterable[Coating]) -> Edit:
    """Put paints on the shelf; what stands there under the same name keeps all but its amount.

    An amount of 0 says nothing of what is left.
    """
    new = {paint.name: paint for paint in paints}
    kept = [_counted(coating, new.pop(coating.name, None)) for coating in book.coatings]
    mixes = {mix.name for mix in book.mixes}
    for name in new:
        if name in mixes:
            raise Refused("coatings", message('"{mix}" is a mix; rename one', mix=name))
    changed = replace(book, coatings=(*kept, *new.values()))
    return Edit(called("{n} paints of your own", n=len(tuple(new)) or len(kept)), changed)


def _counted(coating: Coating, paint: Coating | None) -> Coating:
    if paint is None or not paint.in_stock_ml:
        return coating
    return replace(coating, in_stock_ml=paint.in_stock_ml, counted=paint.counted)


def owned_for(colour: Colour, owned: Iterable[Coating]) -> str:
    """Return the owned paint that serves as a colour of a sequence, or "".

    Of the same family and use (primer, clear coat of that finish, wash,
    plain colour), and of a colour that is near enough where that matters.
    """
    usual = next((one for one in COATINGS if one.name == colour.usual), None)
    if usual is None:
        return ""
    best, least = "", NEAR
    for paint in owned:
        if _use(paint) != _use(usual):
            continue
        apart = 0.0 if _use(usual)[1] in ("primer", "clear") else difference(paint, usual)
        if apart < least or (apart == least == 0.0 and not best):
            best, least = paint.name, apart
    return best


def taken_colours(colours: Iterable[Colour], owned: Iterable[Coating]) -> dict[str, str]:
    """Return the owned paint for each colour that one serves for; never one for two colours."""
    stock, found = list(owned), dict[str, str]()
    for colour in colours:
        name = owned_for(colour, stock)
        if name:
            found[colour.name] = name
            paint = next(one for one in stock if one.name == name)
            if _use(paint)[1] == "colour":
                stock.remove(paint)
    return found


def difference(one: Coating, other: Coating) -> float:
    """Return the colour difference of two swatches: CIE 1976, by L*a*b*, D65."""
    return math.dist(_lab(one.swatch), _lab(other.swatch))


def _use(coating: Coating) -> tuple[Family, str, object]:
    """Return what a coating is for: family, use, and the finish where that is the point of it."""
    name = coating.name.casefold()
    if named_so(coating, PRIMER_WORDS):
        return coating.family, "primer", " can" in name or "dose" in name
    if named_so(coating, CLEAR_WORDS):
        return coating.family, "clear", (coating.finish, " can" in name or "dose" in name)
    if "wash" in name or "lasur" in name:
        return coating.family, "wash", None
    return coating.family, "colour", " can" in name or "dose" in name


def _paint(row: TableRow, at: Mapping[str, int], family_word: Translate) -> Coating:
    def cell(name: str) -> str:
        return row.cell(at.get(name))

    kind, colour = cell("kind"), cell("colour")
    if not colour:
        raise Refused(spot(row.line, "colour"), message("is empty; say which colour it is"))
    family = _family(kind, row.line)
    amount = number(cell("ml").removesuffix("ml"), row.line, "ml") if cell("ml") else 0.0
    demand(
        0 <= amount <= 1e5,
        spot(row.line, "ml"),
        message("is no amount of a bottle; write it in ml"),
    )
    finish = _finish(cell("finish")) if cell("finish") else Finish.MATTE
    if finish is None:
        raise Refused(
            spot(row.line, "finish"),
            message(
                "“{text}” is no finish; write gloss, satin or matte", text=shown(cell("finish"))
            ),
        )
    swatch = cell("swatch") or _swatch(f"{kind} {colour}")
    code = f" ({cell('code')})" if cell("code") else ""
    use = next((f", {word}" for word in USES if word.casefold() in kind.casefold()), "")
    told = "" if use.strip(", ") in colour else use
    try:
        return Coating(
            name=f"{family_word(family.value)}, {colour}{told}{code}",
            family=family,
            finish=finish,
            swatch=swatch,
            in_stock_ml=amount,
            **_film(colour + use),  # type: ignore[arg-type]
        )
    except Refused as refused:
        column = {"name": "colour", "swatch": "swatch"}.get(refused.place, "colour")
        raise Refused(spot(row.line, column), refused.mend) from refused


def _film(told: str) -> dict[str, float]:
    """Return film and solids as the starter stock has them for such a coating: assumed there."""
    if "wash" in told:
        return {"dry_film_um": 3.0, "solids": 0.12}
    if any(word in told.casefold() for word in PRIMER_WORDS):
        return {"dry_film_um": 15.0}
    clear = any(word in told.casefold() for word in CLEAR_WORDS)
    return {"dry_film_um": 14.0 if clear else 12.0}


def _family(text: str, line: int) -> Family:
    told = text.strip().casefold()
    exact = next((family for family in Family if family.value == told), None)
    if exact is not None:
        return exact
    for words, family in _KINDS:
        if told and re.search(words, told):
            return family
    if re.search("primer|grundier|clear|klar|varnish|wash", told):
        return Family.WATERBORNE_ACRYLIC  # the usual one, where nothing else is said
    raise Refused(spot(line, "kind"), _no_kind(text))


def _no_kind(text: str) -> Message:
    if not text.strip():
        return message("is empty; write acrylic, lacquer, enamel, oil, ink, pigment or the like")
    return message(
        "“{text}” is no kind of paint; write acrylic, lacquer, enamel, oil, ink, pigment or the"
        " like",
        text=shown(text),
    )


def _finish(text: str) -> Finish | None:
    told = text.strip().casefold()
    return next((finish for words, finish in _FINISHES if re.search(words, told)), None)


def _swatch(text: str) -> str:
    told = text.casefold()
    return next((hue for words, hue in _HUES.items() if re.search(words, told)), "#808080")


def _lab(swatch: str) -> tuple[float, float, float]:
    """Return L*, a*, b* of an sRGB swatch (IEC 61966-2-1; CIE 15:2004, D65)."""
    red, green, blue = (_linear(int(swatch[at : at + 2], 16) / 255) for at in (1, 3, 5))
    x = (0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505
    y = 0.2126 * red + 0.7152 * green + 0.0722 * blue
    z = (0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089
    fx, fy, fz = (_root(value) for value in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def _linear(value: float) -> float:
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


def _root(value: float) -> float:
    return value ** (1 / 3) if value > (6 / 29) ** 3 else value / (3 * (6 / 29) ** 2) + 4 / 29
