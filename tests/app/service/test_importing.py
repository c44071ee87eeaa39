"""What an exchange file may change in a book, and what it never does."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from drawn_examples import drawn
from hypothesis import assume, given
from hypothesis import strategies as st
from rich_books import rich_books
from small_book import CART, NOW, PROJECT, ZONE, small_book

from app.service import logbook
from app.service.exporting import export, export_sequence
from app.service.importing import Household, import_file
from app.service.merging import ItemKind, MergeChoice, differences, named
from planner.values.book import Book
from planner.values.coating import Coating, Family
from planner.values.gear import Airbrush, Cleaned, Gear
from planner.values.model import Made, ModelKind
from planner.values.moment import moment_of
from planner.values.plan import PassKey
from planner.values.refusal import Refused
from planner.values.room import AirPoint, Location
from planner.values.sequence import EVERY, Colour, Sequence, SequenceStep
from planner.values.step import Application, Minutes, Stage, Step
from planner.values.supplies import Supplies
from storage.exchange import Exchange, load


def visitor(name: str = "visitors") -> Book:
    """Return a book of somebody else: another project, room, gear and evenings."""
    book = small_book()
    cold = AirPoint(at="00:00", temperature_c=12, humidity_pct=80)
    room = replace(book.room, locations=(Location(name="shed", drying_places=2, workdays=(cold,)),))
    evenings = tuple(
        replace(stretch, start="06:00", end="07:00") for stretch in book.bench_time.stretches
    )
    return replace(
        book,
        room=room,
        bench_time=replace(book.bench_time, stretches=evenings),
        gear=Gear(airbrushes=(Airbrush(name="borrowed"),)),
        projects=(replace(book.projects[0], name=name, target=None),),
    )


def with_dries_in(book: Book, location: str) -> Book:
    project = book.projects[0]
    model = project.models[0]
    steps = (replace(model.steps[0], dries_in=location), *model.steps[1:])
    changed = replace(project, models=(replace(model, steps=steps),))
    return replace(book, projects=(changed,))


def test_the_books_own_household_wins() -> None:
    done = import_file(small_book(), Exchange(visitor()))
    assert done.book.room == small_book().room
    assert done.book.gear == small_book().gear
    assert done.book.bench_time == small_book().bench_time
    assert [project.name for project in done.book.projects] == [PROJECT, "visitors"]
    assert done.projects == (("visitors", "visitors"),)
    assert (done.already, done.kept, done.replaced, done.added) == ((), (), (), ())


def test_a_person_may_take_the_files_household() -> None:
    done = import_file(small_book(), Exchange(visitor()), theirs=frozenset(Household))
    assert done.book.room.location("").name == "shed"
    assert done.book.gear.airbrushes[0].name == "borrowed"
    assert done.book.bench_time.stretches[0].start == "06:00"


def test_a_location_that_the_steps_need_comes_along() -> None:
    done = import_file(small_book(), Exchange(with_dries_in(visitor(), "shed")))
    assert [location.name for location in done.book.room.locations] == ["bench", "shed"]
    assert done.added == ("shed",)


def test_locations_of_the_book_outlast_a_room_taken_over() -> None:
    ours = with_dries_in(small_book(), "bench")
    done = import_file(ours, Exchange(visitor()), theirs=frozenset({Household.ROOM}))
    assert [location.name for location in done.book.room.locations] == ["shed", "bench"]


def test_an_airbrush_that_the_steps_need_comes_along() -> None:
    ours = replace(small_book(), projects=(), gear=Gear())
    done = import_file(ours, Exchange(visitor()))
    assert [airbrush.name for airbrush in done.book.gear.airbrushes] == ["borrowed"]
    assert done.added == ("borrowed",)


def recoloured(theirs: Book) -> Book:
    """Return the visitor's book with a sand of its own."""
    warmer = replace(theirs.coating("sand"), swatch="#d0a060", dry_film_um=30)
    kept = tuple(warmer if coating.name == "sand" else coating for coating in theirs.coatings)
    return replace(theirs, coatings=kept)


SAND, THIN = (ItemKind.COATING, "sand"), (ItemKind.MIX, "thin sand")


def test_coatings_that_differ_are_shown_side_by_side_and_the_books_stays() -> None:
    ours, theirs = small_book(), recoloured(visitor())
    (difference,) = differences(ours, theirs)
    assert difference.item == SAND
    apart = [(side.field, side.ours, side.theirs) for side in difference.sides if side.differs]
    assert apart == [("swatch", "#c8b482", "#d0a060"), ("dry film [µm]", "20", "30")]
    assert ("family", "waterborne acrylic") in {
        (side.field, side.ours) for side in difference.sides
    }
    done = import_file(ours, Exchange(theirs))
    assert done.kept == (SAND,)
    assert done.book.coating("sand") == ours.coating("sand")


def test_the_files_coating_may_take_the_place_of_the_books() -> None:
    theirs = recoloured(visitor())
    done = import_file(small_book(), Exchange(theirs), choices={SAND: MergeChoice.THEIRS})
    assert done.book.coating("sand") == theirs.coating("sand")
    assert done.replaced == (SAND,)


def test_a_coating_taken_beside_goes_with_the_files_projects_alone() -> None:
    ours, theirs = small_book(), recoloured(visitor())
    done = import_file(
        ours, Exchange(theirs), choices={SAND: MergeChoice.BESIDE}, names={SAND: "warm sand"}
    )
    assert done.book.coating("sand") == ours.coating("sand")
    assert done.book.coating("warm sand").swatch == "#d0a060"
    # The mix of it cannot be the mix that the book has under that name.
    assert done.book.mix("thin sand") == ours.mix("thin sand")
    other = done.book.mix("thin sand (2)")
    assert other is not None
    assert other.portions[0].coating == "warm sand"
    laid = {
        project.name: [step.applications[0].coating for step in project.models[0].steps[:3]]
        for project in done.book.projects
    }
    assert laid == {
        PROJECT: ["grey primer", "thin sand", "gloss clear"],
        "visitors": ["grey primer", "thin sand (2)", "gloss clear"],
    }


def test_what_was_taken_beside_once_is_not_taken_again() -> None:
    theirs = Exchange(recoloured(visitor(PROJECT)))
    choices = {SAND: MergeChoice.BESIDE, (ItemKind.PROJECT, PROJECT): MergeChoice.BESIDE}
    once = import_file(small_book(), theirs, choices=choices)
    twice = import_file(once.book, theirs, choices=choices)
    assert twice.book == once.book
    assert twice.already == (PROJECT,)


def test_a_new_name_that_is_taken_is_refused() -> None:
    with pytest.raises(Refused, match="gloss clear"):
        import_file(
            small_book(),
            Exchange(recoloured(visitor())),
            choices={SAND: MergeChoice.BESIDE},
            names={SAND: "gloss clear"},
        )


def test_cleanings_come_with_the_logs_that_name_their_airbrush() -> None:
    of = visitor()
    of = logbook.finish(of, PassKey("visitors", CART, "prime", 1), NOW + 20, 10).book
    at = moment_of(NOW + 26, ZONE)
    cleaned = tuple(Cleaned(airbrush=name, at=at) for name in ("borrowed", "never used"))
    taken = import_file(small_book(), Exchange(replace(of, cleaned=cleaned)))
    assert taken.book.cleaned == cleaned[:1]
    again = import_file(taken.book, Exchange(replace(of, cleaned=cleaned)))
    assert again.book == taken.book


def test_of_two_projects_of_one_name_either_may_stay() -> None:
    theirs, item = Exchange(visitor(PROJECT)), (ItemKind.PROJECT, PROJECT)
    mine = import_file(small_book(), theirs, choices={item: MergeChoice.MINE})
    assert mine.book == small_book()
    other = import_file(small_book(), theirs, choices={item: MergeChoice.THEIRS})
    assert other.book.projects == theirs.book.projects
    assert other.projects == ((PROJECT, PROJECT),)


def test_steps_that_differ_are_shown_one_by_one() -> None:
    theirs = visitor(PROJECT)
    project = theirs.projects[0]
    model = project.models[0]
    slower = replace(model.steps[0], minutes=Minutes(fixed=25))
    model = replace(model, steps=(slower, *model.steps[1:-1]))
    theirs = replace(theirs, projects=(replace(project, models=(model,)),))
    (difference,) = differences(small_book(), theirs)
    apart = {side.field: (side.ours, side.theirs) for side in difference.sides if side.differs}
    assert apart.keys() == {"target", "cart/prime: minutes", "cart/wipe"}
    assert apart["target"] == ("2031-04-30", "–")
    assert apart["cart/wipe"][1] == "–"
    assert apart["cart/prime: minutes"] == ("fixed 10", "fixed 25")


def test_a_models_kind_is_compared_like_its_other_fields() -> None:
    theirs = visitor(PROJECT)
    project = theirs.projects[0]
    models = (replace(project.models[0], kind=ModelKind.RAIL),)
    theirs = replace(theirs, projects=(replace(project, models=models),))
    (difference,) = differences(small_book(), theirs)
    apart = {side.field: (side.ours, side.theirs) for side in difference.sides if side.differs}
    assert apart["cart: kind"] == ("other", "rail vehicle")


def sequence(note: str = "") -> Sequence:
    step = Step(
        id="prime",
        stage=Stage.PRIME,
        applications=(Application(places=(EVERY,), coating="ground"),),
        minutes=Minutes(fixed=10),
    )
    colours = (Colour(name="ground", usual="grey primer"),)
    return Sequence(name="quick", note=note, colours=colours, steps=(SequenceStep(step=step),))


def test_sequences_come_in_and_differ_like_all_else() -> None:
    ours = replace(small_book(), sequences=(sequence(),))
    theirs = replace(visitor(), sequences=(sequence("theirs"),))
    model = replace(theirs.projects[0].models[0], made=Made(sequence="quick"))
    theirs = replace(theirs, projects=(replace(theirs.projects[0], models=(model,)),))
    fresh = import_file(small_book(), Exchange(theirs))
    assert fresh.sequences == (("quick", "quick"),)
    assert fresh.book.sequences == theirs.sequences
    item = (ItemKind.SEQUENCE, "quick")
    assert import_file(ours, Exchange(theirs)).book.sequences == ours.sequences
    done = import_file(ours, Exchange(theirs), choices={item: MergeChoice.BESIDE}).book
    assert [(sequence.name, sequence.note) for sequence in done.sequences] == [
        ("quick", ""),
        ("quick (2)", "theirs"),
    ]
    made = done.project("visitors").models[0].made
    assert made is not None
    assert made.sequence == "quick (2)"


def test_a_sequence_goes_out_with_what_it_usually_takes_and_nothing_of_the_person() -> None:
    book = replace(small_book(), sequences=(sequence(),), supplies=Supplies(margin_pct=33))
    out = load(export_sequence(book, "quick")).book
    assert out.sequences == book.sequences
    assert [coating.name for coating in out.coatings] == ["grey primer"]
    assert (out.projects, out.mixes, out.supplies) == ((), (), Supplies())
    with pytest.raises(Refused, match="quick"):
        export_sequence(book, "quik")


def test_a_project_goes_out_with_the_sequence_that_made_it() -> None:
    book = replace(small_book(), sequences=(sequence(), replace(sequence(), name="slow")))
    model = replace(book.projects[0].models[0], made=Made(sequence="quick"))
    book = replace(book, projects=(replace(book.projects[0], models=(model,)),))
    out = load(export(book, (PROJECT,))).book
    assert [sequence.name for sequence in out.sequences] == ["quick"]
    with pytest.raises(Refused, match="yard"):
        export(book, ("yrad",))


@given(rich_books(), rich_books(), st.sampled_from(MergeChoice))
@drawn(8)
def test_nothing_of_the_book_is_lost_unless_the_file_was_preferred(
    ours: Book, theirs: Book, choice: MergeChoice
) -> None:
    choices = {difference.item: choice for difference in differences(ours, theirs)}
    try:
        done = import_file(ours, Exchange(theirs), choices=choices)
    except Refused:
        assume(False)
    for kind in ItemKind:
        mine, its, whole = (named(book, kind) for book in (ours, theirs, done.book))
        assert mine.keys() <= whole.keys()
        if choice is MergeChoice.THEIRS:
            assert all(whole[name] == one for name, one in its.items())
        else:
            assert all(whole[name] == one for name, one in mine.items())
    assert done.book.supplies == ours.supplies
    again = import_file(
        done.book,
        Exchange(theirs),
        choices={difference.item: choice for difference in differences(done.book, theirs)},
    )
    assert again.book == done.book


def test_new_coatings_are_added() -> None:
    rust = Coating(name="rust", family=Family.PIGMENT)
    theirs = visitor()
    done = import_file(small_book(), Exchange(replace(theirs, coatings=(*theirs.coatings, rust))))
    assert done.book.coating("rust") == rust
    assert done.added == ("rust",)


def test_the_same_file_twice_changes_nothing() -> None:
    once = import_file(small_book(), Exchange(visitor()))
    twice = import_file(once.book, Exchange(visitor()))
    assert twice.book == once.book
    assert twice.already == ("visitors",)


def test_another_project_of_the_same_name_gets_a_new_one() -> None:
    done = import_file(small_book(), Exchange(visitor(PROJECT)))
    assert done.projects == ((PROJECT, "yard (2)"),)
    assert done.book.project(PROJECT).target == date(2031, 4, 30)  # ours, untouched
    assert done.book.project("yard (2)").target is None


def test_a_coating_that_is_a_mix_in_the_book_is_refused() -> None:
    theirs = visitor()
    clash = Coating(name="thin sand", family=Family.WATERBORNE_ACRYLIC)
    theirs = replace(theirs, coatings=(*theirs.coatings, clash), mixes=())
    with pytest.raises(Refused, match="thin sand"):
        import_file(small_book(), Exchange(theirs))


def test_all_that_goes_out_comes_in_again() -> None:
    read = load(export(small_book(), note="to whom it may concern"))
    assert read == Exchange(small_book(), "to whom it may concern")


def test_one_project_goes_out_with_what_it_needs() -> None:
    book = import_file(small_book(), Exchange(visitor())).book
    rust = Coating(name="rust", family=Family.PIGMENT)
    out = load(export(replace(book, coatings=(*book.coatings, rust)), ("visitors",))).book
    assert [project.name for project in out.projects] == ["visitors"]
    assert [mix.name for mix in out.mixes] == ["thin sand"]
    names = {coating.name for coating in out.coatings}
    assert names == {"grey primer", "sand", "water thinner", "gloss clear", "dark oil"}
