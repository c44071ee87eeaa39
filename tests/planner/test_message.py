"""Sentences that remember how they were made."""

from __future__ import annotations

import copy
import json
import pickle
from dataclasses import FrozenInstanceError, dataclass

import pytest

from planner.values.message import Message, called, message, row, told, within
from planner.values.refusal import Refused, demand, number_in, unknown


@dataclass(frozen=True)
class Holder:
    text: str


def test_it_is_the_english_text() -> None:
    text = message("{coats} coats on {place}", coats=2, place="hull")
    assert text == "2 coats on hull"
    assert {text: 1}["2 coats on hull"] == 1
    assert f"{text}." == "2 coats on hull."
    assert json.dumps([text]) == '["2 coats on hull"]'
    assert isinstance(text, str)


def test_it_keeps_how_it_was_made() -> None:
    inner = message("let it dry")
    text = message("{who}: {what}", who="cart", what=inner)
    assert text.template == "{who}: {what}"
    assert text.arguments == {"who": "cart", "what": "let it dry"}
    assert text.arguments["what"] is inner


def test_braces_stay_where_nothing_is_put_in() -> None:
    assert message('must be {"a": 1}') == 'must be {"a": 1}'


def test_it_goes_to_another_process_and_back_whole() -> None:
    text = row([message("{n} min", n=5), "cart"], "; ")
    for again in (pickle.loads(pickle.dumps(text)), copy.deepcopy(text)):
        assert type(again) is Message
        assert again == text == "5 min; cart"
        assert again.arguments["text0"].template == "{n} min"


def test_it_lies_in_a_frozen_value() -> None:
    held = Holder(message("after {step}", step="base"))
    assert held == Holder("after base")
    assert hash(held) == hash(Holder("after base"))
    with pytest.raises(FrozenInstanceError):
        held.text = "x"  # type: ignore[misc]


def test_what_is_joined_and_cut() -> None:
    assert row([]) == ""
    assert row(["a", "b"]) == "a, b"
    assert type(within(3, message("abc"))) is Message
    assert within(2, message("abc")) == "ab"
    assert told(called("x")).template == "x"
    assert told("plain").template == "plain"


def test_every_refusal_can_be_translated() -> None:
    with pytest.raises(Refused) as refused:
        demand(False, "coats", "is empty; name a coating")
    assert refused.value.mend.template == "is empty; name a coating"
    assert str(refused.value) == refused.value.line == "coats: is empty; name a coating"
    assert refused.value.line.arguments["text1"].template == "is empty; name a coating"
    with pytest.raises(Refused) as refused:
        number_in(7.5, 0, 5, "coats", "ml")
    assert str(refused.value) == "coats: 7.5 ml is outside 0 to 5 ml"
    assert refused.value.under("steps[0]").mend.arguments["value"] == 7.5
    assert unknown("step", "bsae", ["base"]).arguments["near"] == "base"
