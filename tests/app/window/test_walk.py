"""The window stays up under a seeded walk; in a process of its own, for a fault ends that."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

WALKING = Path(__file__).parents[2] / "walking.py"


@pytest.mark.parametrize(
    ("seed", "acts", "more"),
    [(8, 160, []), (9, 50, ["--collect"])],  # the second searches for garbage after each act
)
def test_a_walk_meets_no_fault(seed: int, acts: int, more: list[str]) -> None:
    command = [sys.executable, "-X", "faulthandler", str(WALKING), *more]
    command += ["--seed", str(seed), "--acts", str(acts), "--every", "80"]
    ended = subprocess.run(command, capture_output=True, text=True, check=False, timeout=600)
    assert ended.returncode == 0, ended.stderr[-4000:]
    told = json.loads(ended.stdout.splitlines()[-1])
    assert told["told"] == []  # no exception within Qt, and nothing that Qt complained of
    assert told["strange"] == []
    assert sum(told["done"].values()) == acts
