"""Own paints from a table or a typed line, and which colour of an order they are taken for."""

from __future__ import annotations

import codecs
from datetime import date

import pytest

from app.service.books import starter_book
from app.service.own_paints import difference, read_paints, taken_colours, typed_paint, with_paints
from app.service.starter_stock import COATINGS
from planner.sequences.built_in import ALL
from planner.values.coating import Coating, Family, Finish
from planner.values.refusal import Refused

WHOLE = """kind;colour;finish;ml;code
acrylic;sand yellow;matte;17;A12
enamel;black green;satin;8,5;B 3
acrylic primer;grey;matte;60;
clear;gloss clear;gloss;30,0;C1
"""


def told(data: str | bytes) -> tuple[str, str]:
    """Return place and sentence of the refusal of a table."""
    with pytest.raises(Refused) as refused:
        read_paints(data if isinstance(data, bytes) else data.encode())
    return refused.value.place, str(refused.value.mend)


def test_a_table_is_read_with_kind_colour_finish_amount_and_code() -> None:
    sand, green, primer, clear = read_paints(WHOLE.encode())
    assert (sand.name, sand.family) == (
        "waterborne acrylic, sand yellow (A12)",
        Family.WATERBORNE_ACRYLIC,
    )
    assert (sand.finish, sand.in_stock_ml) == (Finish.MATTE, 17)
    assert (green.family, green.finish, green.in_stock_ml) == (
        Family.ALKYD_ENAMEL,
        Finish.SATIN,
        8.5,
    )
    assert "primer" in primer.name
    assert (clear.family, clear.finish) == (Family.WATERBORNE_ACRYLIC, Finish.GLOSS)


@pytest.mark.parametrize(
    "data",
    [
        codecs.BOM_UTF8 + WHOLE.encode(),
        WHOLE.encode("utf-16"),
        WHOLE.replace("\n", "\r\n").encode(),
        WHOLE.replace(";", "\t").encode(),
        WHOLE.replace("8,5", '"8,5"').replace("30,0", "30.0").replace(";", ",").encode(),
        WHOLE.replace("kind;colour;finish", "Art;Farbe;Glanzgrad").encode(),
    ],
)
def test_any_usual_encoding_separator_and_language_of_headings(data: bytes) -> None:
    assert [paint.in_stock_ml for paint in read_paints(data)] == [17, 8.5, 60, 30]


def test_a_table_in_the_windows_code_page_keeps_its_letters() -> None:
    (paint,) = read_paints("Art;Farbe\nAcryl;Grün\n".encode("cp1252"))
    assert paint.name == "waterborne acrylic, Grün"


@pytest.mark.parametrize(
    ("data", "place", "why"),
    [
        ("", "", "is empty"),
        ("kind;colour\n", "line 1", "is all there is"),
        ("a;b\n1;2\n", "line 1", "kind"),
        ("kind;kind;colour\nacrylic;x;sand\n", 'line 1, column "kind"', "twice"),
        ("kind;colour\nacrylic;\n", 'line 2, column "colour"', "is empty"),
        ("kind;colour\n\nporridge;sand\n", 'line 3, column "kind"', "porridge"),
        ("kind;colour;ml\nacrylic;sand;much\n", 'line 2, column "ml"', "no number"),
        ("kind;colour;ml\nacrylic;sand;1.234,5\n", 'line 2, column "ml"', "no number"),
        ("kind;colour;ml\nacrylic;sand;-3\n", 'line 2, column "ml"', "no amount"),
        ("kind;colour;ml\nacrylic;sand;1e999\n", 'line 2, column "ml"', "no number"),
        ("kind;colour;finish\nacrylic;sand;dull\n", 'line 2, column "finish"', "no finish"),
        ("kind;colour\nacrylic;a/b\n", 'line 2, column "colour"', "/"),
        ("kind;colour;swatch\nacrylic;sand;red\n", 'line 2, column "swatch"', "colour"),
        ("kind;colour\nacrylic;sand\nacrylic;sand\n", 'line 3, column "colour"', "line 2"),
        ('kind;colour\n"acrylic;sand\n', "line 2", "quotation"),
        (b"kind;colour\nacrylic;sa\x00nd\n", "line 2", "zero byte"),
        (b"kind;colour\nacrylic;\x81\x8d\n", "line 2", "no text"),
        (b"\xff\xfek\x00i\xd8", "", "no text"),
        ("kind;colour\nacrylic;" + "x" * 5000 + "\n", "line 2", "too long"),
        ("kind;colour\nacrylic;" + "x" * 200_000 + "\n", "line 2", "quotation"),
        ("kind;colour\n" + ";".join("x" * 300) + "\n", "line 2", "far more cells"),
    ],
)
def test_a_refusal_names_line_and_column(data: str | bytes, place: str, why: str) -> None:
    where, sentence = told(data)
    assert where == place
    assert why in sentence


def test_a_file_that_is_far_too_large_is_refused_before_it_is_read() -> None:
    assert "20 MB" in told(b"x" * 20_000_001)[1]


def test_a_line_that_is_typed() -> None:
    paint = typed_paint("acrylic, olive green, satin, 12.5 ml, A 7")
    assert (paint.name, paint.finish, paint.in_stock_ml) == (
        "waterborne acrylic, olive green (A 7)",
        Finish.SATIN,
        12.5,
    )
    assert typed_paint("enamel; black").family is Family.ALKYD_ENAMEL
    with pytest.raises(Refused, match="olive green, 17 ml"):
        typed_paint("olive")


def test_the_difference_of_two_colours_is_that_of_the_standard() -> None:
    """CIE 15:2004: sRGB red and green primaries lie 170.6 apart in L*a*b* (D65), from memory."""
    one, other = (
        Coating(name=s, family=Family.WATERBORNE_ACRYLIC, swatch=s) for s in ("#ff0000", "#00ff00")
    )
    assert difference(one, other) == pytest.approx(170.6, abs=0.3)
    white = Coating(name="w", family=Family.WATERBORNE_ACRYLIC, swatch="#ffffff")
    black = Coating(name="b", family=Family.WATERBORNE_ACRYLIC, swatch="#000000")
    assert difference(white, black) == pytest.approx(100, abs=0.1)  # L* from 0 to 100


def test_an_owned_paint_of_the_same_kind_and_near_enough_is_taken() -> None:
    quick = next(one for one in ALL if one.name == "quick table-top")
    owned = read_paints(WHOLE.encode())
    taken = taken_colours(quick.colours, owned)
    assert taken["base colour"] == "waterborne acrylic, sand yellow (A12)"
    assert taken["primer"] == "waterborne acrylic, grey, primer"
    assert taken["gloss clear"] == "waterborne acrylic, gloss clear (C1)"
    assert "running gear" not in taken  # no dark grey stands there; the green enamel is no acrylic
    assert "edges" not in taken  # the sand is taken already
    assert "matte clear" not in taken


def test_nothing_is_taken_that_is_far_off() -> None:
    quick = next(one for one in ALL if one.name == "quick table-top")
    red = typed_paint("acrylic, red, 17 ml")
    assert taken_colours(quick.colours, (red,)) == {}


def test_paints_are_put_on_the_shelf_and_what_stands_there_keeps_all_but_its_amount() -> None:
    book = starter_book("UTC", date(2031, 3, 3))
    sand = next(one for one in COATINGS if one.name == "waterborne acrylic, sand")
    book = with_paints(book, (sand,)).book
    (again,) = read_paints(b"kind;colour;finish;ml\nacrylic;sand;gloss;9\n")
    (kept,) = with_paints(book, (again,)).book.coatings
    assert (kept.in_stock_ml, kept.finish, kept.dry_film_um) == (9, sand.finish, sand.dry_film_um)
