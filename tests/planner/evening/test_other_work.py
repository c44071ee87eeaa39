"""What was really painted: read from one line, put into stack, logbook and stock."""

from __future__ import annotations

from dataclasses import replace

import pytest
from logged_book import moment
from small_book import CART, PROJECT, at, slow_primer, small_book

from planner.evening import log_entries
from planner.evening.other_work import OtherWork, PaintedModel, noted
from planner.evening.other_work_line import read_line
from planner.quantity import stock_now
from planner.values.book import Book
from planner.values.model import Model, Part, Place
from planner.values.project import Logged
from planner.values.refusal import Refused
from planner.values.step import Stage, Tool

ALL = ("tub/bed", "tub/sides")
END = at("2031-03-06 20:30")


def yard() -> Book:
    """Return the small book with a second model, whose parts share words with the first."""
    book = small_book()
    wheels = Part(name="wheels", places=(Place(name="rims", area_cm2=8),))
    tub = book.projects[0].models[0].parts[0]
    truck = Model(name="Yard truck", parts=(tub, wheels), steps=book.projects[0].models[0].steps)
    project = book.projects[0]
    return replace(book, projects=(replace(project, models=(*project.models, truck)),))


def painted(book: Book, coating: str, places: tuple[str, ...] = ALL, **more: object) -> Book:
    work = OtherWork(coating, (PaintedModel(PROJECT, CART, places),), **more)  # type: ignore[arg-type]
    return noted(book, work, END)[0]


def ids(book: Book, model: str = CART) -> list[str]:
    return [step.id for step in book.project(PROJECT).model(model).steps]


def logged(book: Book) -> dict[str, Logged]:
    return {fact.step: fact for fact in book.project(PROJECT).log}


# --- the line ---------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("line", "coating", "on", "more"),
    [
        ("sand on cart", "sand", {CART: ALL}, {}),
        ("GREY PRIMER on cart tub bed", "grey primer", {CART: ("tub/bed",)}, {}),
        ("dark on yard wheels", "dark oil", {"Yard truck": ("wheels/rims",)}, {}),
        (
            "thin sand on cart tub, truck sides, brush, 15 min, 2,5 ml",
            "thin sand",
            {CART: ALL, "Yard truck": ("tub/sides",)},
            {"tool": Tool.BRUSH, "minutes": 15, "ml": 2.5},
        ),
        ("gloss auf cart bed; by airbrush; detail", "gloss clear", {CART: ("tub/bed",)},
            {"tool": Tool.AIRBRUSH, "stage": Stage.DETAIL}),
        ("sand on truck, oil wash", "sand", {"Yard truck": (*ALL, "wheels/rims")},
            {"stage": Stage.OIL_WASH}),
    ],
)  # fmt: skip
def test_a_line_is_read(
    line: str, coating: str, on: dict[str, tuple[str, ...]], more: dict[str, object]
) -> None:
    work = read_line(yard(), line)
    assert work.coating == coating
    assert {one.model: one.places for one in work.on} == on
    told = {"tool": work.tool, "stage": work.stage, "minutes": work.minutes, "ml": work.ml}
    assert {name: value for name, value in told.items() if value is not None} == more


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("sand", "tells no coating and model"),
        ("", "tells no coating and model"),
        ("mauve on cart", 'no coating or mix is called "mauve"'),
        ("sand on lorry", '"lorry" is no model'),
        ("sand on tub", '"tub" may be "cart tub", "Yard truck tub"'),
        ("sand on brush", "tells no model"),
        ("sand on cart, 1.5 min", "minutes are whole"),
        ("sand on cart, 0 min", "1"),
        ("sand on cart, 99999 min", "1440"),
        ("x" * 700 + " on cart", "too long"),
        ("s on cart", 'may be "sand"'),
    ],
)
def test_a_line_that_cannot_be_meant_says_why(line: str, said: str) -> None:
    book = yard()
    if line.startswith("s on"):
        other = replace(book.coatings[1], name="sky blue")
        book = replace(book, coatings=(*book.coatings, other))
    with pytest.raises(Refused) as refused:
        read_line(book, line)
    assert said in str(refused.value)


def test_other_languages_words_are_taken() -> None:
    work = read_line(yard(), "sand auf cart, pinsel", {"pinsel": Tool.BRUSH})
    assert work.tool is Tool.BRUSH


# --- what becomes of it -----------------------------------------------------------------


def test_what_was_planned_next_is_that_pass() -> None:
    book = painted(small_book(), "grey primer", minutes=12)
    assert ids(book) == ids(small_book())
    fact = logged(book)["prime"]
    assert (fact.start, fact.end, fact.minutes) == (
        moment("2031-03-06 20:18"),
        moment("2031-03-06 20:30"),
        12,
    )


def test_part_of_what_was_planned_parts_it() -> None:
    book = painted(small_book(), "grey primer", ("tub/bed",))
    assert ids(book)[:2] == ["prime", "prime-rest"]
    assert list(logged(book)) == ["prime"]


def test_what_nobody_had_planned_lies_on_what_is_done_and_below_what_comes() -> None:
    fact = Logged(
        model=CART, step="prime", start=moment("2031-02-01 20:00"), end=moment("2031-02-01 20:10")
    )
    book = log_entries.written(small_book(), PROJECT, fact)
    book = painted(book, "dark oil", ("tub/bed",), tool=Tool.BRUSH)
    # The wash of dark oil is planned for the bed, but sand and gloss come before it.
    assert ids(book)[0] == "prime"
    fresh = ids(book)[1]
    assert fresh not in ids(small_book())
    assert ids(book)[2:] == ids(small_book())[1:]
    step = book.project(PROJECT).model(CART).steps[1]
    assert step.applications[0].places == ("tub/bed",)
    assert set(logged(book)) == {"prime", fresh}


def test_a_coat_between_two_coats_of_a_step_parts_that_step() -> None:
    book = small_book()
    model = book.projects[0].models[0]
    twice = replace(
        model.steps[0], applications=(replace(model.steps[0].applications[0], coats=2),)
    )
    model = replace(model, steps=(twice, *model.steps[1:]))
    book = replace(book, projects=(replace(book.projects[0], models=(model,)),))
    first = Logged(
        model=CART, step="prime", start=moment("2031-02-01 20:00"), end=moment("2031-02-01 20:10")
    )
    book = painted(log_entries.written(book, PROJECT, first), "gloss clear", tool=Tool.BRUSH)
    names = ids(book)
    assert names[0] == "prime"
    assert names[1] in logged(book)
    assert names[2].startswith("prime")


def test_several_models_share_the_time_one_after_the_other() -> None:
    work = read_line(yard(), "grey primer on cart, truck, 30 min")
    book, keys = noted(yard(), work, END)
    facts = sorted(book.project(PROJECT).log, key=lambda fact: fact.start)
    assert [fact.model for fact in facts] == [CART, "Yard truck"]
    assert facts[0].end == facts[1].start
    assert sum(fact.minutes or 0 for fact in facts) == 30
    assert facts[-1].end == moment("2031-03-06 20:30")
    assert {one.model for one in keys} == {CART, "Yard truck"}


def test_the_stock_is_less_by_what_was_told() -> None:
    book = small_book()
    full = replace(book.coatings[1], in_stock_ml=17.0)
    book = replace(book, coatings=(book.coatings[0], full, *book.coatings[2:]))
    assert full.name == "sand"
    after = painted(book, "sand", tool=Tool.BRUSH, ml=3.0)
    left = {one.coating.name: one.left_ml for one in stock_now(after)}
    assert left["sand"] == 14.0
    (fact,) = after.project(PROJECT).log
    assert [(used.coating, used.ml) for used in fact.used] == [("sand", 3.0)]


def test_over_a_wet_film_it_is_marked_like_any_other_work() -> None:
    first = Logged(
        model=CART, step="prime", start=moment("2031-03-06 20:00"), end=moment("2031-03-06 20:10")
    )
    book = log_entries.written(slow_primer(small_book()), PROJECT, first)
    book = painted(book, "gloss clear", tool=Tool.BRUSH, minutes=5)
    assert [line.text.split(" min ")[1] for line in book.project(PROJECT).diary] == [
        "before grey primer was ready"
    ]


def test_unknown_things_are_refused() -> None:
    with pytest.raises(Refused):
        painted(small_book(), "mauve")
    with pytest.raises(Refused):
        noted(small_book(), OtherWork("sand", ()), END)
