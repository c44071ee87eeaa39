"""The judge: one constructed violation per definition, beside a sound twin.

What a case breaks, and why, stands with it in ``judge_cases``; the minutes
are worked out there by hand from the definitions, or placed a minute to
either side of what ``planner.cure`` says (which has published checks of its
own).
"""

from __future__ import annotations

import judge_cases.alone
import judge_cases.bench
import judge_cases.cups
import judge_cases.facts
import judge_cases.gates
import judge_cases.units
import judge_cases.wishes  # noqa: F401 - importing registers the cases
import pytest
from judge_cases.making import CASES, Case

from planner.schedule.judge import RULES, judge

DEFINITIONS = frozenset(range(1, 29))

every_case = pytest.mark.parametrize(
    ("definition", "build"),
    [
        pytest.param(definition, build, id=f"{definition}-{name}")
        for definition, name, build in CASES
    ],
)


def test_every_definition_has_a_rule_and_a_case():
    assert set(RULES) == DEFINITIONS
    assert {definition for definition, _, _ in CASES} == DEFINITIONS


@every_case
def test_the_sound_twin_is_accepted(definition, build):
    case: Case = build()
    verdict = judge(case.book, case.sound, expected_digest=case.digest)
    assert verdict.violations == ()
    assert verdict.accepted


@every_case
def test_the_broken_plan_is_refused_for_that_definition_alone(definition, build):
    case: Case = build()
    verdict = judge(case.book, case.broken, expected_digest=case.digest)
    assert verdict.definitions == {definition}, verdict.violations
    assert not verdict.accepted


@every_case
def test_only_that_rule_refuses_it(definition, build):
    case: Case = build()
    rules = DEFINITIONS - {definition}
    verdict = judge(case.book, case.broken, rules=rules, expected_digest=case.digest)
    assert verdict.violations == ()
