"""Every dialog of the window, each on a window that shows a planned book."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date

from PySide6.QtWidgets import QDialog

from app.service import demos
from app.service.bench_time_edits import DayHours
from app.service.film_brake import HeldUp
from app.window import help_pages
from app.window.air_log_dialog import AirLogDialog
from app.window.bench_time.dialogs import AwayDialog, ExtraDialog, RuleDialog
from app.window.book_copies import show_copies
from app.window.evening.brake_dialog import BrakeDialog
from app.window.evening.closing_dialog import ClosingDialog
from app.window.evening.gaps_dialog import GapsDialog
from app.window.evening.other_work_dialog import OtherWorkDialog
from app.window.forms.controls import number
from app.window.gear.airbrush_dialog import AirbrushDialog
from app.window.gear.location_dialog import LocationDialog
from app.window.import_dialog import ImportDialog
from app.window.last_edits import show_edits
from app.window.main_window import MainWindow
from app.window.model_acts.another_dialog import AnotherDialog
from app.window.model_acts.dates_dialog import DatesDialog
from app.window.model_acts.mend_prompt import MendPrompt
from app.window.model_acts.order_dialog import OrderDialog
from app.window.model_acts.reached_dialog import ReachedDialog
from app.window.model_acts.vehicles_dialog import VehiclesDialog
from app.window.model_editor.duplicate_dialog import AgainDialog
from app.window.model_editor.split_dialog import SplitDialog
from app.window.palette import LIGHT
from app.window.plan_snapshot import PlanSnapshot
from app.window.sequences.dialogs import (
    ColourDialog,
    NameDialog,
    NoteDialog,
    OptionDialog,
    SaveDialog,
)
from app.window.sequences.give_dialog import GiveDialog
from app.window.sequences.step_dialog import SequenceStepDialog
from app.window.stock.coating_dialog import CoatingDialog
from app.window.stock.drying_card_dialog import DryingCardDialog
from app.window.stock.supply_dialogs import (
    AmountDialog,
    CardDialog,
    ConsumableDialog,
    LeftoverDialog,
    MixDialog,
)
from app.window.wishes.choice_list import Choose
from planner.evening.closing_evening import EveningSummary, FilmLaid, LeftInCup, WornModel
from planner.evening.film_brake import EARLY_RISKS, TOO_LATE, Miss, Unready
from planner.sequences.apply_to_book import every_sequence
from planner.values.book import Book
from planner.values.coating import State
from planner.values.keys import StepKey
from planner.values.moment import zone_named
from planner.values.plan import PassKey
from storage.exchange import Exchange

Opener = Callable[[], QDialog]


def every_dialog(window: MainWindow) -> dict[str, Opener]:
    """Return how to make each dialog, by a short name; none is shown yet but the help's."""
    session, book = window.session, window.session.book
    assert book is not None
    return {
        **_of_the_window(window, book),
        **_of_time_and_gear(window, book),
        **_of_stock(window, book),
        **_of_sequences(window),
        **_of_models(window),
        **_of_the_evening(window, book),
        "edits": lambda: show_edits(session, window),
        "copies": lambda: show_copies(session, window),
    }


def _of_the_window(window: MainWindow, book: Book) -> dict[str, Opener]:
    project = book.projects[0]
    model = project.models[0]
    fullest = max(model.steps, key=lambda step: len(step.references()))
    spot = StepKey(project.name, model.name, fullest.id)
    names = [(f"{model.name}, {step.id}", step) for model in project.models for step in model.steps]
    return {
        "keys": lambda: help_pages.keys(window),
        "words": lambda: help_pages.trade_words(window),
        **{f"help {page.name}": _help(window, at) for at, page in enumerate(window.pages)},
        "about": lambda: help_pages.about(window),
        "split": lambda: SplitDialog(book, spot, window),
        "again": lambda: AgainDialog(model.name, [model.name for model in project.models], window),
        "choose": lambda: Choose("Together with", "Which one?", names, window),
        "import": lambda: ImportDialog(book, Exchange(book=_else(book)), "other.json", window),
        "import new": lambda: ImportDialog(
            book, Exchange(book=_other(book), note="An invented project."), "new.json", window
        ),
    }


def _of_the_evening(window: MainWindow, book: Book) -> dict[str, Opener]:
    project = book.projects[0]
    first, second = (
        PassKey(project.name, project.models[0].name, step.id)
        for step in project.models[0].steps[:2]
    )
    zone, now = zone_named(book.bench_time.zone), window.session.now
    wet = Unready(
        first,
        book.coatings[0].name,
        ("hull/upper",),
        side=Miss.EARLY,
        state=State.DRY_TO_RECOAT,
        ready=now + 31,
        closed=None,
        off=31,
        risk=EARLY_RISKS[State.DRY_TO_RECOAT],
    )
    shut = replace(
        wet, side=Miss.LATE, state=None, ready=now + 1440, closed=now - 40, risk=TOO_LATE
    )
    return {
        "gaps": lambda: GapsDialog(
            _picture(window), window.session.now, lambda _gap, _offer: None, window
        ),
        "other work": lambda: OtherWorkDialog(window.session, window),
        "closing": lambda: ClosingDialog(window.session, _picture(window), _left(book), window),
    } | {
        f"brake {name}": lambda held=held, done=done: BrakeDialog(
            held, zone, now, window, done=done
        )
        for name, held, done in (
            ("early", HeldUp(second, now, (wet,)), False),
            ("late", HeldUp(second, now, (shut, wet)), True),
        )
    }


def _picture(window: MainWindow) -> PlanSnapshot:
    picture = window.session.picture
    assert picture is not None
    return picture


def _left(book: Book) -> EveningSummary:
    """Return what an evening leaves behind that had some of everything."""
    project = book.projects[0]
    keys = [PassKey(project.name, project.models[0].name, s.id) for s in project.models[0].steps]
    colour = book.coatings[0].name
    return EveningSummary(
        since=0,
        done=tuple(keys[:3]),
        half=(keys[1],),
        not_told=(keys[2],),
        models=tuple(WornModel(project.name, one.name, keys[0]) for one in project.models[:2]),
        cups=(LeftInCup("the fine airbrush", colour, ()),),
        jars=(LeftInCup("", "a mix with a long name of its own", ()),),
        films=(FilmLaid(keys[0], colour, ("hull/upper",), State.TACK_FREE),),
        next_start=window_minute(book),
        next_work=(keys[2],),
    )


def window_minute(book: Book) -> int:
    """Return a minute of some evening to come."""
    return demos.first_evening(book) + 2 * 1440


def _of_models(window: MainWindow) -> dict[str, Opener]:
    session = window.session
    lines = "".join(
        f"2026-03-0{day} {hour:02d}:00;{15 + hour / 4};60\n" for day in (3, 4) for hour in range(24)
    )
    table = f"time;temperature;humidity\n{lines}".encode()
    return {
        "vehicles": lambda: VehiclesDialog(session, window),
        "order": lambda: OrderDialog(session, window),
        "reached": lambda: ReachedDialog(session, window),
        "another": lambda: AnotherDialog(session, window),
        "dates": lambda: DatesDialog(session, window),
        "mends": lambda: MendPrompt(session, window),
        "logger": lambda: AirLogDialog(session, table, "logger.csv", window),
    }


def _help(window: MainWindow, at: int) -> Opener:
    title = window.commands.views[at].text().replace("&", "")
    return lambda: help_pages.page(window, window.pages[at].name, title)


def _else(book: Book) -> Book:
    """Return a book that describes the same things differently."""
    coatings = tuple(replace(coating, finish=None, swatch="#123456") for coating in book.coatings)
    projects = tuple(replace(project, note="another note", weight=7) for project in book.projects)
    return replace(book, coatings=coatings, projects=projects)


def _other(book: Book) -> Book:
    names = {project.name for project in book.projects}
    demo = next(
        one
        for one in map(demos.read, demos.names())
        if not names & {project.name for project in one.book.projects}
    )
    return demo.book


def _of_time_and_gear(window: MainWindow, book: Book) -> dict[str, Opener]:
    session, today = window.session, date(2026, 3, 5)
    bench = book.bench_time
    old = bench.stretches[0] if bench.stretches else None
    return {
        **{
            f"hours {each.name}": lambda each=each: RuleDialog(session, each, None, today, window)
            for each in DayHours
        },
        "hours old": lambda: RuleDialog(session, DayHours.BENCH, old, today, window),
        "away": lambda: AwayDialog(session, today, window),
        "extra": lambda: ExtraDialog(session, None, today, window),
        "airbrush": lambda: AirbrushDialog(session, None, window),
        "location": lambda: LocationDialog(session, None, LIGHT, window),
        "location old": lambda: LocationDialog(session, book.room.locations[0], LIGHT, window),
    }


def _of_stock(window: MainWindow, book: Book) -> dict[str, Opener]:
    session = window.session
    mix = book.mixes[0] if book.mixes else None
    return {
        "coating": lambda: CoatingDialog(session, None, window),
        "coating old": lambda: CoatingDialog(session, book.coatings[-1], window),
        "count": lambda: AmountDialog(
            session,
            "Count a bottle",
            "&There are",
            "By the book, 5 ml are left.",
            number(5, 0, 100),
            lambda _book: None,  # type: ignore[arg-type, return-value]
            window,
        ),
        "mix": lambda: MixDialog(session, mix, window),
        "mix new": lambda: MixDialog(session, None, window),
        "consumable": lambda: ConsumableDialog(session, None, window),
        "leftover": lambda: LeftoverDialog(session, None, window, of=mix),
        "card": lambda: CardDialog(session, None, window),
        "drying card": lambda: DryingCardDialog(session, book.coatings[0].name, window),
    }


def _of_sequences(window: MainWindow) -> dict[str, Opener]:
    session, book = window.session, window.session.book
    assert book is not None
    some = max(every_sequence(book), key=lambda one: len(one.steps))
    longest = max(some.steps, key=lambda step: len(step.step.gates))

    def kept(_name: str) -> None:
        return None

    return {
        "give": lambda: GiveDialog(session, some, window),
        "sequence step": lambda: SequenceStepDialog(session, some, longest, window),
        "save": lambda: SaveDialog(session, kept, window),
        "option": lambda: OptionDialog(session, some, some.options[0], window),
        "colour": lambda: ColourDialog(session, some, some.colours[0], window),
        "note": lambda: NoteDialog(session, some, window),
        "name": lambda: NameDialog(
            session,
            "Rename a sequence",
            some.name,
            lambda book, new: None,  # type: ignore[arg-type, return-value]
            kept,
            window,
        ),
    }
