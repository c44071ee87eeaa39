"""What planner, storage and service say comes in the window's language, wherever it is shown."""

from __future__ import annotations

import ast
import json
import re
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from logged_book import logged_book
from pseudo_language import Ear, marked
from PySide6.QtWidgets import QApplication
from small_book import NOW, small_book, small_plan
from window_steps import MakeWindow, settle
from window_texts import own_words, texts_in

from app.service import demos
from app.service.bench_sheet import bench_sheet
from app.service.build_record import build_record
from app.service.calendar_file import calendar_bytes
from app.service.document import translated_document
from app.service.document_html import html_of
from app.service.edits import set_target, skip_date
from app.service.merging import differences
from app.service.starter_stock import COATINGS, MIXES
from app.window.language import Language
from app.window.message_translation import KEPT, edit_name, pattern_of, title, translated
from app.window.translations import planner_texts
from planner.values.book import Book
from planner.values.coating import State
from planner.values.message import Message, called, message, row
from planner.values.plan import Unplaced
from storage.exchange import load

UNSOUND = Path(__file__).parents[2] / "planner" / "layers" / "unsound_project.json"
GERMAN = pytest.mark.parametrize("spoken", [Language.GERMAN], indirect=True)

# Names that stay as they are: of languages and of paper, of bottles in the starter stock
# (a book's data once they are taken), and the parts that a built-in sequence looks for.
NAMES = {"English", "Deutsch", "Letter", "wheels", "tracks", "running gear", "glue faces"}
STOCK = {coating.name for coating in (*COATINGS, *MIXES)}
SWAPPED = {"lacquer thinner", "waterborne acrylic, matte #6b7a4a"}  # bottles that mends add


@pytest.fixture(scope="module")
def calls() -> list[tuple[Path, ast.Call]]:
    """Return every call in planner, storage and service."""
    return [
        (path, node)
        for folder in planner_texts.FOLDERS
        for path in sorted(folder.rglob("*.py"))
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call)
    ]


# -- every text is found --------------------------------------------------------------------

TEXTS = {  # the arguments that people read, of what is made for them
    "Refused": (1, "mend"),
    "BookTrouble": (1, "mend"),
    "demand": (2, "mend"),
    "Edit": (0, "name"),
    "Mend": (0, "title"),
    "Finding": (7, "message"),
    "found": (4, "fault"),
    "Advisory": (1, "reason"),
    "Clash": (0, "what"),
    "Least": (2, "proof"),
    "Bound": (2, "proof"),
    "Unplaced": (1, "why"),
    "Heading": (1, "text"),
    "Paragraph": (0, "text"),
}
PLAIN = {"Refused", "BookTrouble", "demand"}  # take a literal as it is


def text_of(call: ast.Call) -> ast.expr | None:
    name = ast.unparse(call.func).rpartition(".")[2]
    at, word = TEXTS.get(name, (99, ""))
    if len(call.args) > at:
        return call.args[at]
    return next((keyword.value for keyword in call.keywords if keyword.arg == word), None)


def test_no_text_that_people_read_is_put_together_unseen(
    calls: list[tuple[Path, ast.Call]],
) -> None:
    seen, wrong = 0, []
    for path, call in calls:
        text = text_of(call)
        name = ast.unparse(call.func).rpartition(".")[2]
        if text is None:
            continue
        seen += 1
        literal = isinstance(text, ast.Constant) and bool(text.value) and name not in PLAIN
        if isinstance(text, ast.JoinedStr | ast.BinOp) or literal:
            wrong.append(f"{path.name}:{call.lineno}: {ast.unparse(text)[:60]}")
    assert seen > 300
    assert wrong == []


def test_what_is_put_into_a_text_is_what_it_asks_for(
    calls: list[tuple[Path, ast.Call]],
) -> None:
    seen = 0
    for path, call in calls:
        name = ast.unparse(call.func)
        if name not in planner_texts.ALWAYS or not isinstance(call.args[0], ast.Constant):
            continue
        seen += 1
        given = {keyword.arg for keyword in call.keywords}
        asked = set(re.findall(r"\{(\w+)", call.args[0].value)) if given else set()
        assert given == asked, f"{path.name}:{call.lineno}"
    assert seen > 500


def test_a_text_that_cannot_be_found_is_an_error() -> None:
    assert planner_texts.texts_of('message("a {b}", b=1); told("x" if y else "z")', "made up") == [
        ("message", "a {b}"),
        ("told", "x"),
        ("told", "z"),
    ]
    with pytest.raises(planner_texts.UnreadableError):
        planner_texts.texts_of("message(text)", "made up")


def test_what_books_keep_as_text_is_listed() -> None:
    written = json.loads(KEPT.read_text(encoding="utf-8"))
    assert written == planner_texts.kept_as_text(), "run python -m app.window.translations"


# -- how it is said -------------------------------------------------------------------------


@GERMAN
@pytest.mark.usefixtures("spoken")
def test_each_part_is_translated_by_itself() -> None:
    inner = message("after {step}", step="matte")
    assert translated(
        message("{step} on {names}: {message}", step="A", names="b", message=inner)
    ) == ("A auf b: nach matte")
    assert (
        translated(row([message("yes"), "label", State.TACK_FREE], "; ")) == "ja; label; klebfrei"
    )
    assert translated("label") == "label"  # somebody's own


@GERMAN
@pytest.mark.usefixtures("spoken")
def test_numbers_and_dates_are_written_as_in_german() -> None:
    # DIN 1333: a decimal comma; DIN 5008: the day as an ordinal with a full stop.
    assert translated(message("{ml:.1f} ml", ml=2.5)) == "2,5 ml"
    assert translated(
        message("{project}: finish by {target}", project="P", target=date(2026, 3, 5))
    ) == ("P: fertig bis Do. 5. März")
    at = datetime(2026, 3, 5, 19, 30)  # noqa: DTZ001 - a wall clock
    assert translated(message("{name} not before {at:%a %Y-%m-%d %H:%M}", name="N", at=at)) == (
        "N nicht vor Do. 5. März 19:30"
    )


@GERMAN
@pytest.mark.usefixtures("spoken")
def test_what_the_journal_keeps_is_told_like_what_was_just_done() -> None:
    book = small_book()
    for edit in (skip_date(book, date(2031, 3, 6)), set_target(book, book.projects[0].name, None)):
        assert edit_name(str.__str__(edit.name)) == edit_name(edit.name) != edit.name
    moved = called("{word}: {work}", word=Message("touch up"), work="base, cart")
    assert edit_name("touch up: base, cart") == translated(moved) == "ausbessern: base, cart"
    assert edit_name("no name of ours") == "no name of ours"


@GERMAN
@pytest.mark.usefixtures("spoken")
def test_titles_of_steps_that_the_program_added() -> None:
    assert (
        title("gloss clear (seal) over Base colour") == "Glanzlack (Versiegelung) über Grundfarbe"
    )
    assert title("turn it over") == "wenden"
    assert title("Base colour: hull, tracks") == "Grundfarbe: hull, tracks"
    late = "lift what has dried with a swab and the wash's own thinner"
    assert title(f"Base colour; {late}") == f"Grundfarbe; {title(late)}" != f"Grundfarbe; {late}"
    assert title("My rust: hull") == "My rust: hull"
    assert title("My own way with rust") == "My own way with rust"


def test_every_kept_text_is_found_again() -> None:
    kept = json.loads(KEPT.read_text(encoding="utf-8"))
    for template in [*kept["called"], *kept["titled"]]:
        names = dict.fromkeys(re.findall(r"\{(\w+)", template))
        plain = re.sub(r"\{(\w+)[^}]*\}", r"{\1}", template)
        filled = {name: f"x{at}" for at, name in enumerate(names)}
        match = pattern_of(template).fullmatch(plain.format(**filled))
        assert match is not None, template
        assert match.groupdict() == filled


def test_english_is_what_the_program_says() -> None:
    text = message("{ml:.1f} ml of {what}", ml=2.5, what=message("matte clear"))
    assert translated(text) == text == "2.5 ml of matte clear"
    assert edit_name("away on 2031-03-06") == "away on 2031-03-06"


@pytest.mark.usefixtures("marker")
def test_the_mark_leaves_what_is_put_in_alone() -> None:
    assert marked("{n:02d} h {what}, late") == "{n:02d}⟦ h ⟧{what}⟦, late⟧"
    ear = Ear({"base-coat", "cart"})
    assert ear.unmarked("⟦after ⟧base coat, cart 12") == ""
    assert ear.unmarked("⟦after ⟧base coat on cart") == "on"
    assert ear.unmarked("Donnerstag, 5. März (Ctrl+1)") == ""


# -- nothing escapes ------------------------------------------------------------------------


def unsound() -> tuple[Book, int]:
    book = load(UNSOUND.read_bytes()).book
    return book, demos.first_evening(book)


def logged() -> tuple[Book, int]:
    return logged_book(), NOW + 30 * 1440


@pytest.mark.usefixtures("marker")
@pytest.mark.parametrize(
    ("made", "pages"), [(unsound, {"tonight", "stack", "build"}), (logged, set())]
)
def test_no_text_of_any_page_stays_english(
    qapp: QApplication, make_window: MakeWindow, made, pages: set[str]
) -> None:
    book, now = made()
    window = make_window(book, now)
    ear = Ear(own_words(book) | NAMES | STOCK | SWAPPED)
    left = set()
    for page in [page for page in window.pages if not pages or page.name in pages]:
        window.show_page(page.name)
        settle(qapp)
        left |= {
            (page.name, where, text) for where, text in texts_in(page.widget) if ear.unmarked(text)
        }
    left |= {("", where, text) for where, text in texts_in(window) if ear.unmarked(text)}
    assert "\n".join(map(str, sorted(left))) == ""


@pytest.mark.usefixtures("marker")
def test_no_text_of_what_differs_between_two_books_stays_english() -> None:
    book = small_book()
    other = replace(
        book,
        coatings=tuple(replace(coating, solids=0.5, in_stock_ml=2.5) for coating in book.coatings),
        projects=tuple(replace(project, weight=3, note="gone") for project in book.projects),
    )
    ear = Ear(own_words(book) | {"gone", "g", "ml"})
    sides = [side for found in differences(book, other) for side in found.sides]
    told = [translated(text) for side in sides for text in (side.field, side.ours, side.theirs)]
    assert len(told) > 20
    assert [text for text in told if ear.unmarked(text)] == []


@pytest.mark.usefixtures("marker")
def test_no_text_of_a_build_record_stays_english(tmp_path: Path) -> None:
    book = logged_book()
    ear = Ear(own_words(book) | {tmp_path.name})
    record = translated_document(build_record(book, NOW + 30 * 1440, tmp_path), translated)
    told = re.sub(r"<[^>]+>", "\n", html_of(record).decode().partition("<body>")[2])
    assert "⟦" in told
    assert [line for line in told.split("\n") if ear.unmarked(line)] == []


@pytest.mark.usefixtures("marker")
def test_no_text_of_a_calendar_or_a_bench_sheet_stays_english() -> None:
    book, plan = small_book(), small_plan()
    lost = Unplaced(plan.placements[-1].key, message("has no place"))
    ear = Ear(own_words(book) | {"min"})
    data = calendar_bytes(book, plan, NOW, Path("x"), translate=translated).data.decode()
    lines = data.replace("\r\n ", "").split("\r\n")
    told = [line.partition(":")[2] for line in lines if re.match("SUMMARY|DESCRIPTION|NAME", line)]
    told = [re.sub(r"\\([,;])", r"\1", part) for line in told for part in line.split(r"\n")]
    sheet = bench_sheet(book, plan, NOW, translate=translated)
    told += [
        line for evening in sheet.evenings for section in evening.sections for line in section.lines
    ]
    told += [
        text
        for evening in sheet.evenings
        for entry in evening.entries
        for text in (entry.title, entry.waits)
    ]
    assert len(told) > 20
    assert translated(lost.why) == "⟦has no place⟧"
    assert [text for text in (*told, *sheet.lines) if ear.unmarked(text)] == []
