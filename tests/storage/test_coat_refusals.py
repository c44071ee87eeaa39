"""Air, films and pot lives that cannot be are refused by their place in the file."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import pytest

from app.service import demos
from planner.values.refusal import Refused
from storage.exchange import load

File = dict[str, Any]


def _humid(raw: File) -> None:
    raw["room"]["locations"][0]["workdays"][0]["humidity_pct"] = 140


def _frozen(raw: File) -> None:
    raw["room"]["locations"][0]["workdays"][0]["temperature_c"] = -300


def _hole(raw: File) -> None:
    raw["room"]["locations"][0]["workdays"] = []


def _thin(raw: File) -> None:
    raw["coatings"][0]["dry_film_um"] = 0


def _stale(raw: File) -> None:
    step = raw["projects"][0]["models"][0]["steps"][0]
    name = step["applications"][0]["coating"]
    bottle = next(one for one in raw["coatings"] if one["name"] == name)
    bottle["pot_life_minutes"] = 2


@pytest.mark.parametrize(
    ("spoil", "path", "mend"),
    [
        (_humid, "room.locations[0].workdays[0].humidity_pct", "140 % RH is outside 0 to 100"),
        (_frozen, "room.locations[0].workdays[0].temperature_c", "-300 °C is outside"),
        (_hole, "room.locations[0].workdays", "hole"),
        (_thin, "coatings[0].dry_film_um", "0 µm is outside"),
        (_stale, "projects[0].models[0].steps[0].minutes", "can be used for 2 min"),
    ],
)
def test_what_no_room_or_pot_can_be_is_refused(
    spoil: Callable[[File], None], path: str, mend: str
) -> None:
    raw = json.loads(demos.data("harbour_tenders"))
    spoil(raw)
    with pytest.raises(Refused) as refused:
        load(json.dumps(raw).encode())
    assert refused.value.place == path
    assert mend in refused.value.mend
