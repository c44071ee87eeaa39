"""The Stock view: what is told of each coating, and its forms through the real widgets."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path

import pytest
from PySide6.QtCore import QDate, QModelIndex
from PySide6.QtGui import QColor, QImage, QKeySequence
from PySide6.QtTest import QAbstractItemModelTester, QTest
from small_book import CART, NOW, PROJECT, ZONE, small_book
from view_steps import dialog_of, shown

from app.window.forms.mix_portions import PortionsEditor
from app.window.forms.window_field import By
from app.window.palette import DARK
from app.window.session import Session
from app.window.stock.coating_dialog import CoatingDialog
from app.window.stock.coating_rows import cure_lines, families, told_place
from app.window.stock.coatings import cure_source
from app.window.stock.supply_dialogs import (
    AmountDialog,
    CardDialog,
    ConsumableDialog,
    LeftoverDialog,
    MixDialog,
)
from app.window.stock.tree import LEFT, NAME, NEEDED, OPENED, StockFilter, StockModel, cell
from app.window.stock.view import StockView
from planner.cure.family_times import Evidence
from planner.quantity import Shopping, ShoppingLine
from planner.values.book import Book
from planner.values.coating import (
    Clock,
    Coating,
    Family,
    Finish,
    Mark,
    Preparation,
    State,
    StateTime,
    Window,
)
from planner.values.mix import Mix, Portion
from planner.values.project import Logged, Used
from planner.values.step import Stage
from planner.values.supplies import Card, Consumable, Drops, Leftover, Supplies
from storage import photos

TODAY = date(2031, 3, 6)
FATAL = QAbstractItemModelTester.FailureReportingMode.Fatal
Opened = tuple[StockView, Session]


def stocked() -> Book:
    """Return the small book with 20 ml of primer, 3 ml of which the logbook has used."""
    book = small_book()
    primer = replace(book.coatings[0], in_stock_ml=20, opened=date(2020, 1, 1))
    (project,) = book.projects
    fact = Logged(
        model=CART,
        step="prime",
        start=datetime(2031, 3, 6, 19, tzinfo=ZONE),
        end=datetime(2031, 3, 6, 19, 10, tzinfo=ZONE),
        used=(Used(coating="grey primer", ml=3),),
    )
    return replace(
        book,
        coatings=(primer, *book.coatings[1:]),
        projects=(replace(project, log=(fact,)),),
        supplies=Supplies(
            consumables=(Consumable(name="tape", unit="m", in_stock=4, stages=(Stage.MASK,)),),
            leftovers=(
                Leftover(
                    name="jar",
                    ml=5,
                    made=datetime(2031, 2, 1, 12, tzinfo=ZONE),
                    keeps_days=7,
                    portions=(Portion(coating="sand", parts=1),),
                ),
            ),
        ),
    )


@pytest.fixture
def opened(tmp_path: Path) -> Iterator[Opened]:
    with shown(StockView, stocked(), NOW, tmp_path) as both:
        yield both


def needing(book: Book, name: str, needed: float) -> Shopping:
    have = next(coating for coating in book.coatings if coating.name == name)
    line = ShoppingLine(
        have, needed, have.in_stock_ml, 0, None, complete=True, replace=False, old=""
    )
    return Shopping((line,), (), (), (), (), ())


def test_coatings_are_told_by_family_with_use_stock_and_need() -> None:
    book = stocked()
    every = families(book, needing(book, "grey primer", 18.5), TODAY)
    assert [one.family for one in every] == [
        Family.WATERBORNE_ACRYLIC,
        Family.ARTISTS_OIL,
        Family.WATER_THINNER,
    ]
    rows = {row.coating.name: row for family in every for row in family.rows}
    assert [row.coating.name for row in every[0].rows] == ["gloss clear", "grey primer", "sand"]
    assert rows["grey primer"].roles == ("prime",)
    assert rows["gloss clear"].roles == ("seal",)  # the varnish's role, not its stage
    assert rows["sand"].roles == ("base",)  # through the mix
    assert rows["water thinner"].roles == ("thinner",)
    # 20 ml less the 3 ml of the logbook are 17, and 18.5 are needed.
    assert rows["grey primer"].stock.left_ml == 17
    assert rows["grey primer"].short
    assert cell(rows["grey primer"], LEFT) == "17.0 ml"
    assert cell(rows["grey primer"], NEEDED) == "⚠ 18.5 ml"
    assert cell(rows["grey primer"], OPENED).startswith("△")  # eleven years ago
    assert not rows["sand"].short
    assert cell(rows["sand"], NEEDED) == ""


def test_cure_numbers_name_their_source() -> None:
    label = StateTime(state=State.TACK_FREE, minutes=50, source="label, side panel")
    coating = Coating(name="x", family=Family.WATERBORNE_ACRYLIC, times=(label,), slowness=1.5)
    lines = {line.state: line for line in cure_lines(coating)}
    assert list(lines) == list(State)
    told = lines[State.TACK_FREE]
    assert (told.minutes, told.learned, told.status) == (50, 75, Evidence.LABEL)
    assert cure_source(told) == "label, side panel"
    assert lines[State.SOLVENT_SAFE].status is not Evidence.LABEL
    assert cure_lines(replace(coating, slowness=1))[0].learned is None
    assert cure_lines(Coating(name="y", family=Family.WHITE_SPIRIT)) == ()


def test_the_tree_is_sound_full_shorter_and_empty() -> None:
    model = StockModel()
    QAbstractItemModelTester(model, FATAL)
    every = families(stocked(), None, TODAY)
    model.show_families(every)
    assert model.rowCount() == 3
    family = model.index(0, NAME)
    assert model.rowCount(family) == 3
    cell_ = model.index(1, NAME, family)
    assert model.rowCount(cell_) == 0
    assert model.parent(cell_) == family
    assert model.index_of("sand").isValid()
    assert not model.index_of("no such").isValid()
    model.show_families(every)
    model.show_families(every[1:])
    assert model.rowCount() == 2
    model.show_families(())
    assert model.rowCount() == 0
    assert model.rowCount(QModelIndex()) == 0


@pytest.mark.parametrize(
    ("asked", "names"),
    [
        ("", {"gloss clear", "grey primer", "sand", "dark oil", "water thinner"}),
        ("PRIM", {"grey primer"}),  # its name, and what it is for
        ("seal", {"gloss clear"}),
        ("oil", {"dark oil"}),
        ("waterborne gloss", {"gloss clear"}),  # the family and the finish
        ("nothing of the kind", set()),
    ],
)
def test_the_filter_looks_in_every_column_and_the_family(asked: str, names: set[str]) -> None:
    model = StockModel()
    model.show_families(families(stocked(), None, TODAY))
    proxy = StockFilter(model)
    QAbstractItemModelTester(proxy, FATAL)
    proxy.look_for(asked)
    found = set()
    for row in range(proxy.rowCount()):
        above = proxy.index(row, 0)
        found |= {proxy.index(at, 0, above).data() for at in range(proxy.rowCount(above))}
    assert found == names


def fill_coating(form: CoatingDialog) -> None:
    """Fill in every field of a coating."""
    form.controls["name"].setText("two-pack clear, satin")
    form.controls["family"].setCurrentIndex(form.controls["family"].findData(Family.TWO_PACK.value))
    form.controls["finish"].setCurrentIndex(form.controls["finish"].findData(Finish.SATIN.value))
    form.controls["swatch"].typed.setText("#a0b0c0")
    form.controls["in_stock_ml"].setValue(42.5)
    form.controls["bottle_ml"].setValue(60)
    form.given["opened"].box.setChecked(True)
    form.controls["opened"].setDate(QDate(2030, 12, 24))
    form.given["drops_per_ml"].box.setChecked(True)
    form.controls["drops_per_ml"].setValue(27.5)
    form.controls["solids"].setValue(48.5)
    form.controls["dry_film_um"].setValue(32)
    form.given["pot_life_minutes"].box.setChecked(True)
    form.controls["pot_life_minutes"].setValue(90)
    form.controls["slowness"].setValue(1.25)
    for limit, value in (
        (form.given["least_c"], 15),
        (form.given["most_c"], 28),
        (form.given["most_humidity_pct"], 70),
    ):
        limit.box.setChecked(True)
        limit.control.setValue(value)
    form.times.boxes[State.TACK_FREE].setChecked(True)
    form.times.minutes[State.TACK_FREE].setValue(180)
    form.times.sources[State.TACK_FREE].setText("data sheet")
    fill_windows(form)


def fill_windows(form: CoatingDialog) -> None:
    """Wet on wet for an hour; from a day on after scuffing, until the film is dry-through."""
    form.recoat.add.click()
    form.recoat.add.click()
    first, second = (row.window_field for row in form.recoat.rows)
    first.closes.by.setCurrentIndex(first.closes.by.findData(By.MINUTES.value))
    first.closes.minutes.setValue(60)
    first.merges.setChecked(True)
    second.opens.by.setCurrentIndex(second.opens.by.findData(By.FILM.value))
    second.opens.minutes.setValue(1440)
    second.closes.by.setCurrentIndex(second.closes.by.findData(State.DRY_THROUGH.value))
    second.preparation.setCurrentIndex(second.preparation.findData(Preparation.SCUFF.value))
    second.minutes.setValue(12)


def test_every_field_of_a_coating_goes_through_its_form(opened: Opened) -> None:
    view, session = opened
    view.coatings.buttons["add"].click()
    form = dialog_of(view, CoatingDialog)
    fill_coating(form)
    form.buttons.accepted.emit()
    made = session.book.coatings[-1]
    assert made == Coating(
        name="two-pack clear, satin",
        family=Family.TWO_PACK,
        finish=Finish.SATIN,
        swatch="#a0b0c0",
        solids=0.485,
        dry_film_um=32,
        times=(StateTime(state=State.TACK_FREE, minutes=180, source="data sheet"),),
        recoat=(
            Window(closes=Mark(minutes=60), merges=True),
            Window(
                opens=Mark(minutes=1440, clock=Clock.FILM),
                closes=Mark(state=State.DRY_THROUGH),
                preparation=Preparation.SCUFF,
                preparation_minutes=12,
            ),
        ),
        pot_life_minutes=90,
        least_c=15,
        most_c=28,
        most_humidity_pct=70,
        in_stock_ml=42.5,
        counted=datetime(2031, 3, 6, 19, 30, tzinfo=ZONE),
        bottle_ml=60,
        drops_per_ml=27.5,
        opened=date(2030, 12, 24),
        slowness=1.25,
    )
    assert view.coatings.chosen() == made
    assert view.coatings.buttons["remove"].isEnabled()
    view.coatings.buttons["remove"].click()
    assert session.book == stocked()


def test_a_form_that_nothing_is_changed_in_changes_nothing(opened: Opened) -> None:
    view, session = opened
    for coating in session.book.coatings:
        view.coatings._ask(coating)
        dialog_of(view, CoatingDialog).buttons.accepted.emit()
    assert session.book == stocked()
    assert session.undo_name() == ""


def test_refusals_stand_beside_the_field_on_its_page(opened: Opened) -> None:
    view, session = opened
    view.coatings._ask(session.book.coatings[0])
    form = dialog_of(view, CoatingDialog)

    def refused(field: str) -> str:
        form.buttons.accepted.emit()
        assert form.isVisible()
        page = form.forms[form.tabs.currentIndex()]
        assert [name for name, message in page.messages.items() if message.text()] == [field]
        return page.messages[field].text()

    form.controls["swatch"].typed.setText("sandy")
    assert "is not a colour" in refused("swatch")
    form.controls["swatch"].typed.setText("#c8b482")
    form.controls["name"].setText("sand")
    assert "taken" in refused("name")
    form.controls["name"].setText("grey primer")
    form.controls["solids"].setValue(0)
    assert "fraction of the volume" in refused("solids")
    form.controls["solids"].setValue(35)
    form.times.boxes[State.DUST_FREE].setChecked(True)
    form.times.sources[State.DUST_FREE].setText("")
    assert "dust-free" in refused("times")
    form.times.boxes[State.DUST_FREE].setChecked(False)
    form.recoat.add.click()
    row = form.recoat.rows[0].window_field
    row.opens.by.setCurrentIndex(row.opens.by.findData(By.MINUTES.value))
    row.opens.minutes.setValue(30)
    row.closes.by.setCurrentIndex(row.closes.by.findData(By.MINUTES.value))
    row.closes.minutes.setValue(20)
    assert "must lie after opens" in refused("recoat")
    row.closes.by.setCurrentIndex(row.closes.by.findData(By.NOTHING.value))
    form.buttons.accepted.emit()
    assert session.book.coatings[0].recoat == (Window(opens=Mark(minutes=30)),)


def test_a_new_name_is_carried_to_the_steps(opened: Opened) -> None:
    view, session = opened
    view.coatings._ask(session.book.coatings[0])
    form = dialog_of(view, CoatingDialog)
    form.controls["name"].setText("pale grey primer")
    form.buttons.accepted.emit()
    step = session.book.project(PROJECT).model(CART).steps[0]
    assert step.applications[0].coating == "pale grey primer"
    assert view.coatings.chosen().name == "pale grey primer"


def test_a_coating_in_use_is_kept_and_its_use_is_named(opened: Opened) -> None:
    view, session = opened
    view.coatings._choose("gloss clear")
    view.coatings.buttons["remove"].click()
    assert session.book == stocked()
    assert view.coatings.message.text().startswith("cart, gloss: ")
    assert told_place(stocked(), "mixes[0].portions[1].coating") == "thin sand"
    assert told_place(stocked(), "coatings") == "coatings"


def test_bottles_are_counted_and_bought(opened: Opened) -> None:
    view, _session = opened
    view.coatings._choose("grey primer")
    view.coatings.buttons["count"].click()
    form = dialog_of(view, AmountDialog)
    form.forms[0].fields["amount"].setValue(11.5)
    form.buttons.accepted.emit()
    assert view.coatings.row().stock.left_ml == 11.5
    view.coatings.buttons["buy"].click()
    form = dialog_of(view, AmountDialog)
    form.forms[0].fields["amount"].setValue(0)
    form.buttons.accepted.emit()
    assert "outside 1 to 1000" in form.forms[0].messages["amount"].text()
    form.forms[0].fields["amount"].setValue(2)
    form.buttons.accepted.emit()
    assert view.coatings.row().stock.left_ml == 11.5 + 2 * 17


def test_the_filter_keeps_what_is_chosen_and_says_when_nothing_is_left(opened: Opened) -> None:
    view, _ = opened
    view.coatings._choose("sand")
    view.coatings.look.setText("base")
    assert view.coatings.chosen().name == "sand"
    view.coatings.look.setText("no such thing")
    assert view.coatings.chosen() is None
    assert view.coatings.none.isVisible()
    assert not view.coatings.buttons["change"].isEnabled()
    view.coatings.look.clear()
    assert not view.coatings.none.isVisible()


def test_a_mix_goes_through_its_form(opened: Opened) -> None:
    view, session = opened
    view.mixes.buttons[0].click()
    form = dialog_of(view, MixDialog)
    form.buttons.accepted.emit()
    assert "is empty" in form.forms[0].messages["portions"].text()
    form.controls["name"].setText("thinned clear")
    for name in ("gloss clear", "water thinner"):
        form.portions.add.click()
        form.portions.rows[-1].coating.setCurrentText(name)
    form.portions.typed.setText("30 % : 70 %")
    form.portions.typed.editingFinished.emit()
    form.controls["life_minutes"].setValue(60)
    form.given["swatch"].box.setChecked(True)
    form.controls["swatch"].typed.setText("#102030")
    form.buttons.accepted.emit()
    assert session.book.mixes[-1] == Mix(
        name="thinned clear",
        portions=(
            Portion(coating="gloss clear", parts=30),
            Portion(coating="water thinner", parts=70),
        ),
        life_minutes=60,
        swatch="#102030",
    )
    view.mixes.choose(1)
    view.mixes.buttons[2].click()
    assert session.book == stocked()
    view.mixes.choose(0)
    view.mixes.buttons[2].click()
    assert view.mixes.message.text().startswith("cart, sand: ")


def test_parts_in_one_line_are_taken_or_refused(qtbot) -> None:
    editor = PortionsEditor(("a", "b", "c"), (("a", 1), ("b", 1)))
    qtbot.addWidget(editor)
    for typed, parts in (("2 : 3", (2, 3)), ("1,5 : 1", (1.5, 1)), ("50 : 50", (50, 50))):
        editor.typed.setText(typed)
        editor.typed.editingFinished.emit()
        assert tuple(amount for _, amount in editor.amounts()) == parts
        assert editor.message.text() == ""
    editor.typed.setText("1 : 2 : 3")
    editor.typed.editingFinished.emit()
    assert "3 parts" in editor.message.text()
    editor.typed.setText("half and half")
    editor.typed.editingFinished.emit()
    assert "is no mix" in editor.message.text()
    assert editor.amounts() == (("a", 50), ("b", 50))


def test_consumables_go_through_their_forms(opened: Opened) -> None:
    view, session = opened
    listing = view.consumables
    listing.buttons[0].click()
    form = dialog_of(view, ConsumableDialog)
    form.controls["name"].setText("swabs")
    form.controls["unit"].setText("pieces")
    form.controls["in_stock"].setValue(40)
    form.controls["per_pass"].setValue(3)
    form.stages[Stage.WIPE].setChecked(True)
    form.buttons.accepted.emit()
    made = session.book.supplies.consumables[-1]
    assert (made.name, made.unit, made.in_stock, made.per_pass, made.stages) == (
        "swabs",
        "pieces",
        40,
        3,
        (Stage.WIPE,),
    )
    listing.choose(0)
    listing.buttons[3].click()
    form = dialog_of(view, AmountDialog)
    form.forms[0].fields["amount"].setValue(10)
    form.buttons.accepted.emit()
    assert session.book.supplies.consumables[0].in_stock == 14
    listing.buttons[2].click()
    form = dialog_of(view, AmountDialog)
    form.forms[0].fields["amount"].setValue(1.5)
    form.buttons.accepted.emit()
    assert session.book.supplies.consumables[0].in_stock == 1.5
    listing.buttons[4].click()
    assert [consumable.name for consumable in session.book.supplies.consumables] == ["swabs"]


def test_leftovers_and_cards_go_through_their_forms(opened: Opened, tmp_path: Path) -> None:
    view, session = opened
    assert "expired" in view.leftovers.model.index(0, 5).data()
    view.leftovers.buttons[1].click()
    form = dialog_of(view, LeftoverDialog)
    form.controls["keeps_days"].setValue(400)
    form.buttons.accepted.emit()
    (leftover,) = session.book.supplies.leftovers
    assert leftover == replace(stocked().supplies.leftovers[0], keeps_days=400)
    assert "until" in view.leftovers.model.index(0, 5).data()
    view.cards.buttons[0].click()
    form = dialog_of(view, CardDialog)
    form.controls["name"].setText("warm sand")
    form.controls["on"].setDate(QDate(2031, 3, 1))
    form.drops.add.click()
    form.drops.rows[0].coating.setCurrentText("sand")
    form.drops.rows[0].amount.setValue(7)
    form.controls["note"].setPlainText("over grey")
    words = tmp_path / "words.txt"
    words.write_text("no picture")
    form.photo.keep(words)
    assert "is no image" in form.photo.message.text()
    picture = QImage(40, 30, QImage.Format.Format_RGB32)
    picture.fill(QColor("#c8b482"))
    assert picture.save(str(tmp_path / "card.png"))
    form.photo.keep(tmp_path / "card.png")
    kept = form.photo.photo
    assert photos.path_of(session.path, kept).read_bytes() == (tmp_path / "card.png").read_bytes()
    assert form.photo.picture.pixmap().width() == 80  # small, and as wide as it can be
    form.buttons.accepted.emit()
    assert session.book.supplies.cards == (
        Card(
            name="warm sand",
            on=date(2031, 3, 1),
            drops=(Drops(coating="sand", drops=7),),
            note="over grey",
            photo=kept,
        ),
    )
    view.cards.buttons[2].click()
    view.leftovers.buttons[2].click()
    assert session.book.supplies.cards == session.book.supplies.leftovers == ()


def test_an_empty_book_says_so(tmp_path: Path) -> None:
    bare = replace(small_book(), coatings=(), mixes=(), projects=())
    with shown(StockView, bare, NOW, tmp_path) as (view, _session):
        view.set_colours(DARK)
        assert view.coatings.none.isVisible()
        assert "0 coatings" in view.summary.text()
        assert view.mixes.empty.isVisibleTo(view.mixes)


def test_a_leftover_of_a_mix_begins_with_its_parts(opened: Opened) -> None:
    view, session = opened
    view.mixes.choose(0)
    view.mixes.buttons[3].click()
    form = dialog_of(view, LeftoverDialog)
    form.controls["ml"].setValue(3.5)
    form.buttons.accepted.emit()
    made = session.book.supplies.leftovers[-1]
    assert made.portions == small_book().mixes[0].portions
    assert (made.ml, made.made) == (3.5, datetime(2031, 3, 6, 19, 30, tzinfo=ZONE))


@pytest.mark.parametrize("as_list", [False, True])
def test_the_find_key_goes_to_the_filter(opened: Opened, as_list: bool) -> None:
    view, _ = opened
    view.activateWindow()
    view.coatings.as_list.setChecked(as_list)
    shown = view.coatings.tree if as_list else view.coatings.shelf
    shown.setFocus()
    QTest.keySequence(shown, QKeySequence(QKeySequence.StandardKey.Find))
    assert view.coatings.look.hasFocus()
