"""Enumerations whose values are shown as words, by the context of their translation."""

from __future__ import annotations

from enum import StrEnum

from planner.cure.family_times import Evidence
from planner.layers.overcoat_table import LayerVerdict
from planner.values.coating import Effect, Family, Finish, Hiding, Preparation, State
from planner.values.drying_card import CardTrial
from planner.values.model import Material, ModelKind, NamedChange, PartsChange, Shape, Side
from planner.values.project import StageReached
from planner.values.room import Movement
from planner.values.step import Role, Stage, Tool, Trait
from planner.values.wishes import Care

ENUMERATIONS: dict[str, tuple[type[StrEnum], ...]] = {
    "stage": (Stage, Role),  # a varnish is told by its role
    "role": (Role,),
    "tool": (Tool,),
    "trait": (Trait,),
    "family": (Family,),
    "finish": (Finish,),
    "effect": (Effect,),
    "hiding": (Hiding,),
    "state": (State,),
    "preparation": (Preparation,),
    "status": (Evidence,),
    "verdict": (LayerVerdict,),
    "side": (Side,),
    "material": (Material,),
    "kind": (ModelKind,),
    "change": (NamedChange, PartsChange),
    "reached": (StageReached,),
    "shape": (Shape,),
    "movement": (Movement,),
    "care": (Care,),
    "trial": (CardTrial,),
}
