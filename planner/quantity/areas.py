"""How large the places of a model are, and how that was found."""

from __future__ import annotations

import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache

from planner.quantity.usual_models import size_of
from planner.values.identity_key import Same
from planner.values.message import message
from planner.values.model import Measure, Model, ModelKind, Place, Shape

BOX_M = (6.0, 2.5, 2.5)  # what the hint for a missing area goes by [m]
CM2_IN_MM2 = 0.01


class AreaSource(StrEnum):
    """How an area was found."""

    TYPED = "typed"
    MEASURED = "measured"
    REAL_SIZE = "from the real size"
    ASSUMED = "assumed by the kind"
    MISSING = "missing"


@dataclass(frozen=True)
class Area:
    """The area of a place [cm²] and how it was found.

    Attributes
    ----------
    plain_cm2
        The area before ``detail``: of the measures, or this place's share.
    all_round_cm2
        The box of the model's real size, all round, at its scale; 0 where
        that was not asked.
    among
        How many places share what the others leave of that box.
    share
        The place's own share of that box; 0 where it has none.
    kind
        What the model shows: that may have given the size of the box.
    """

    cm2: float
    found: AreaSource
    plain_cm2: float = 0.0
    detail: float = 1.0
    all_round_cm2: float = 0.0
    among: int = 0
    mend: str = ""
    share: float = 0.0
    kind: ModelKind = ModelKind.OTHER

    @property
    def sentence(self) -> str:
        """How it was found, or how to mend that it was not, in one line."""
        detail = (
            message(", times {detail:g} for detail", detail=self.detail) if self.detail != 1 else ""
        )
        if self.found is AreaSource.TYPED:
            return message("{cm2:.3g} cm², typed", cm2=self.cm2)
        if self.found is AreaSource.MEASURED:
            return message(
                "{cm2:.3g} cm²: measures of {plain_cm2:.3g} cm²{detail}",
                cm2=self.cm2,
                plain_cm2=self.plain_cm2,
                detail=detail,
            )
        if self.found is AreaSource.ASSUMED:
            return message(
                "{cm2:.3g} cm², assumed: {share:.0%} of a box of {all_round_cm2:.3g} cm², the"
                " usual size of its kind ({kind}){detail}",
                cm2=self.cm2,
                share=self.share,
                all_round_cm2=self.all_round_cm2,
                kind=self.kind,
                detail=detail,
            )
        if self.found is AreaSource.REAL_SIZE and self.share:
            return message(
                "{cm2:.3g} cm²: {share:.0%} of a box of its real size, {all_round_cm2:.3g} cm²"
                " all round{detail}",
                cm2=self.cm2,
                share=self.share,
                all_round_cm2=self.all_round_cm2,
                detail=detail,
            )
        if self.found is AreaSource.REAL_SIZE:
            shared = (
                message(", shared by {among} places", among=self.among) if self.among > 1 else ""
            )
            return message(
                "{cm2:.3g} cm²: a box of its real size is {all_round_cm2:.3g} cm² all"
                " round{shared}{detail}",
                cm2=self.cm2,
                all_round_cm2=self.all_round_cm2,
                shared=shared,
                detail=detail,
            )
        return self.mend


def scale_of(text: str) -> float | None:
    """Return how many times smaller "1:72", "1/35" or "1 : 48" is; None if it says no scale."""
    read = re.fullmatch(r"\s*1\s*[:/]\s*(\d{1,6}(?:[.,]\d{1,3})?)\s*", text)
    scale = float(read[1].replace(",", ".")) if read else 0.0
    return scale if scale > 0 else None


def scaled_cm2(area_m2: float, scale: float) -> float:
    """Return what an area of the full-sized thing [m²] is at 1 : ``scale`` [cm²]."""
    return area_m2 * 1e4 / scale**2


def box_m2(length: float, width: float, height: float) -> float:
    """Return the surface of a box [m²]."""
    return 2 * (length * width + length * height + width * height)


def measure_cm2(measure: Measure) -> float:
    """Return the surface of the like bodies of a measure [cm²]."""
    length, width, height = measure.length_mm, measure.width_mm, measure.height_mm
    surfaces = {
        Shape.BOX: box_m2(length, width, height),
        Shape.CYLINDER: math.pi * width * length + math.pi * width**2 / 2,
        Shape.TUBE: math.pi * width * length,
        Shape.SHELL: length * width,
        Shape.BALL: math.pi * length**2,
    }
    return surfaces[measure.shape] * measure.count * CM2_IN_MM2


def areas_of(model: Model) -> Mapping[str, Area]:
    """Return the area of every "part/place" of a model.

    Typed areas come first, then measures, then a place's own share of a box
    of the real size at the model's scale, or of the usual size of its kind;
    what the box of the real size has left over is shared alike by the other
    places.
    """
    return _areas(Same(model))


@lru_cache(maxsize=1024)
def _areas(same: Same[Model]) -> Mapping[str, Area]:
    model = same.value
    spots = {f"{part.name}/{place.name}": place for part in model.parts for place in part.places}
    known = {
        name: area
        for name, place in spots.items()
        if (area := _own(place) or _of_box(model, place)) is not None
    }
    missing = len(spots) - len(known)
    if missing:
        taken = sum(area.cm2 for area in known.values())
        known |= {
            name: _share(model, place, taken, missing)
            for name, place in spots.items()
            if name not in known
        }
    return {name: known[name] for name in spots}


def _own(place: Place) -> Area | None:
    """Return the area that a place brings itself."""
    if place.area_cm2 > 0:
        return Area(place.area_cm2, AreaSource.TYPED, place.area_cm2)
    if place.measures:
        plain = sum(map(measure_cm2, place.measures))
        return Area(plain * place.detail, AreaSource.MEASURED, plain, place.detail)
    return None


def _of_box(model: Model, place: Place) -> Area | None:
    """Return a place's own share of a box of the real size, or of the usual one of its kind."""
    scale, size = scale_of(model.scale), size_of(model)
    if not place.share or scale is None or size is None:
        return None
    whole = scaled_cm2(box_m2(size.length_m, size.width_m, size.height_m), scale)
    assumed = model.real_size is None
    plain = whole * place.share
    return Area(
        plain * place.detail,
        AreaSource.ASSUMED if assumed else AreaSource.REAL_SIZE,
        plain,
        place.detail,
        whole,
        share=place.share,
        kind=model.kind,
    )


def _share(model: Model, place: Place, taken_cm2: float, among: int) -> Area:
    """Return a place's share of what the others leave of the model's real size."""
    scale, real = scale_of(model.scale), size_of(model) if place.share else model.real_size
    if real is None:
        return Area(0.0, AreaSource.MISSING, mend=_unmeasured(scale, model.scale))
    if scale is None:
        mend = message(
            'no area given, and the model has no scale such as "1:72"; give one, or area_cm2'
        )
        return Area(0.0, AreaSource.MISSING, mend=mend)
    whole = scaled_cm2(box_m2(real.length_m, real.width_m, real.height_m), scale)
    plain = (whole - taken_cm2) / among
    if plain <= 0:
        mend = message(
            "no area given, and the other places take all {whole:.3g} cm² of the "
            "real size; measure it and give area_cm2",
            whole=whole,
        )
        return Area(0.0, AreaSource.MISSING, all_round_cm2=whole, among=among, mend=mend)
    return Area(plain * place.detail, AreaSource.REAL_SIZE, plain, place.detail, whole, among)


def _unmeasured(scale: float | None, written: str) -> str:
    """Say what to give, with a size to go by at the model's scale."""
    text = message("no area given; measure it and give area_cm2")
    if scale is None:
        return text
    size = " × ".join(f"{side:g}" for side in BOX_M)
    area = scaled_cm2(box_m2(*BOX_M), scale)
    return message(
        "{text} (all round, a box of {size} m is {area:.0f} cm² at {written})",
        text=text,
        size=size,
        area=area,
        written=written.strip(),
    )
