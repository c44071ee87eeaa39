"""Every run draws the same examples, but for one that asks for new ones."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from drawn_examples import PROFILE, USUAL, drawn, load_profile
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st


@pytest.fixture(autouse=True)
def _as_usual_again() -> Iterator[None]:
    yield
    load_profile(0)


def numbers(examples: int) -> list[int]:
    """Return what one property draws."""
    seen: list[int] = []

    @drawn(examples)
    @given(st.integers(0, 10**9))
    def note(number: int) -> None:
        seen.append(number)

    note()
    return seen


@pytest.mark.parametrize("ci", ["", "true"])
def test_examples_are_as_many_as_a_property_says_and_the_same_each_time(
    ci: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("CI", ci)
    load_profile(0)
    first = numbers(30)
    assert len(first) == 30
    assert numbers(30) == first
    assert settings.get_profile(PROFILE).max_examples == USUAL


def test_asked_for_they_are_as_many_as_asked_and_new_each_time() -> None:
    load_profile(40)
    first = numbers(3)
    assert len(first) == 40
    assert numbers(3) != first


def test_what_a_property_suppresses_is_added() -> None:
    checks = drawn(5, HealthCheck.data_too_large).suppress_health_check
    assert set(checks) == {HealthCheck.too_slow, HealthCheck.data_too_large}
