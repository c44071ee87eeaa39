"""Every text of the window is found, is in the file of each language, and is compiled."""

from __future__ import annotations

import ast
import re
from collections import Counter
from enum import StrEnum
from pathlib import Path
from string import Formatter

import pytest
from PySide6.QtCore import QTranslator

from app.window.translations import __main__ as tool
from app.window.translations import catalogue, extract, values
from planner.sequences.built_in import ALL
from planner.sequences.references import ALSO_CALLED
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.field import fields_of, values_within
from planner.values.room import Movement

GERMAN = catalogue.HERE / "tackfree_de.ts"
WINDOW = Path(extract.WINDOW)


@pytest.fixture(scope="module")
def german() -> catalogue.Catalogue:
    return catalogue.read(GERMAN)


@pytest.fixture(scope="module")
def texts() -> extract.Texts:
    return catalogue.all_texts()


@pytest.fixture(scope="module")
def calls() -> list[tuple[str, list[ast.expr]]]:
    """Return all calls in the source of the window: the last name of each, and what it gets."""
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in WINDOW.rglob("*.py")]
    return [
        (ast.unparse(node.func).rpartition(".")[2], node.args)
        for tree in trees
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
    ]


def fields(text: str) -> list[str]:
    """Return the placeholders of a text with their formats, sorted."""
    return sorted(
        f"{name}:{form}" for _, name, form, _ in Formatter().parse(text) if name is not None
    )


def test_the_extractor_reads_what_tr_stands_for() -> None:
    source = """
from app.window import words
from app.window.words import tr
from planner.values.book import Book
from planner.values.coating import Family
from planner.values.field import fields_of, values_within
from planner.values.room import Movement

PLAIN = tr("of the module")

class View:
    def __init__(self):
        tr = self.tr
        made = [tr("short " "hand") for _ in "ab"]
        def inner():
            return self.tr("inner")

    def other(self):
        tr, unit = words.tr, 3
        return tr("shared"), self._session.tr("of another")
"""
    assert extract.texts_of(source, "made up") == [
        ("words", "of the module"),
        ("View", "short hand"),
        ("View", "inner"),
        ("words", "shared"),
        ("Session", "of another"),
    ]


@pytest.mark.parametrize(
    "source", ["self.tr(name)", 'def f(tr):\n    tr("whose?")', "tr(f'{x} parts')"]
)
def test_a_text_that_cannot_be_found_beforehand_is_an_error(source: str) -> None:
    with pytest.raises(extract.UnreadableError):
        extract.texts_of(source, "made up")


def test_no_text_of_the_window_escapes_the_extractor(texts: extract.Texts, calls) -> None:
    """A second and plainer reading: any call of something named tr, whatever the context."""
    known = {source for sources in texts.values() for source in sources}
    said = {
        str(args[0].value)
        for name, args in calls
        if name == "tr" and isinstance(args[0], ast.Constant)
    }
    assert len(said) > 1000
    assert said - known == set()


def test_every_context_of_values_is_listed(texts: extract.Texts, calls) -> None:
    """`translate("context", value)` is in no text; its context must be among the values."""
    contexts = [args[0] for name, args in calls if name == "translate" and len(args) > 1]
    values_told = [each.value for each in contexts if isinstance(each, ast.Constant)]
    used = {context for context in values_told if isinstance(context, str)}  # a painter has one too
    assert {"stage", "family", "colour"} <= used
    assert used <= set(values.values_shown()) | set(texts)


def test_every_enumeration_that_a_form_offers_has_words(calls) -> None:
    """By the fields of the values that forms show, and by the lists that are made of one."""
    listed = {kind for kinds in values.ENUMERATIONS.values() for kind in kinds}
    offered = {
        told.kind
        for value in values_within(Book)
        for told in fields_of(value).values()
        if told.field.title and isinstance(told.kind, type) and issubclass(told.kind, StrEnum)
    }
    assert {Family, Movement} <= offered
    assert offered <= listed
    named = {ast.unparse(args[0]) for name, args in calls if name == "enum_choice"}
    assert {"Shape", "Stage"} <= named
    assert named <= {kind.__name__ for kind in listed}


def test_values_are_whole(german: catalogue.Catalogue) -> None:
    for context, kinds in values.ENUMERATIONS.items():
        for kind in kinds:
            assert all(german[context, one.value] for one in kind)
    assert all(german["family", one.value] != one.value for one in Family)
    assert all(german["step", each.step.title] for one in ALL for each in one.steps)


def test_each_text_has_a_finished_translation(
    texts: extract.Texts, german: catalogue.Catalogue
) -> None:
    wanted = {(context, source) for context, sources in texts.items() for source in sources}
    missing = sorted(pair for pair in wanted if not german.get(pair))
    assert missing == [], "run python -m app.window.translations, and translate what it lists"
    assert sorted(set(german) - wanted) == [], "gone; run python -m app.window.translations"


def test_translations_keep_placeholders_spaces_and_lines(german: catalogue.Catalogue) -> None:
    for (_, source), text in german.items():
        assert fields(source) == fields(text), source
        assert re.match(r"\s*", source)[0] == re.match(r"\s*", text)[0], source  # type: ignore[index]
        assert source[len(source.rstrip()) :] == text[len(text.rstrip()) :], source
        assert source.count("\n") == text.count("\n"), source
        assert source.count("&") == text.count("&"), source
        assert source.count(";;") == text.count(";;"), source  # between filters of files


def test_a_built_in_sequence_finds_parts_by_the_name_that_it_shows(
    german: catalogue.Catalogue,
) -> None:
    shown = {source: text for (context, source), text in german.items() if context == "part"}
    assert shown.keys() == ALSO_CALLED.keys()
    assert all(text.casefold() in ALSO_CALLED[source] for source, text in shown.items())


def test_one_word_for_a_drying_state_and_another_for_each(german: catalogue.Catalogue) -> None:
    states = [text for (context, _), text in german.items() if context == "state"]
    assert [state for state, times in Counter(states).items() if times > 1] == []


def test_what_is_compiled_is_what_is_written(
    tmp_path: Path, german: catalogue.Catalogue, qapp
) -> None:
    fresh = tmp_path / "fresh.qm"
    tool.compile_(GERMAN, fresh)
    here, there = QTranslator(), QTranslator()
    assert here.load(str(GERMAN.with_suffix(".qm")))
    assert there.load(str(fresh))
    for (context, source), text in german.items():
        assert here.translate(context, source) == text, "run python -m app.window.translations"
        assert there.translate(context, source) == text


def test_new_texts_come_in_unfinished_and_old_ones_go(tmp_path: Path) -> None:
    path = tmp_path / "tackfree_xx.ts"
    catalogue.write(path, {"A": ["kept", "new"]}, {("A", "kept"): "da", ("A", "old"): "weg"}, "xx")
    assert catalogue.read(path) == {("A", "kept"): "da", ("A", "new"): ""}
    assert 'type="unfinished"' in path.read_text(encoding="utf-8")
