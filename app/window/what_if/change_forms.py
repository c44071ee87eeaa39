"""Every kind of change that can be tried, in the order in which they are offered."""

from __future__ import annotations

from app.window.what_if.air_forms import AirForm, ElsewhereForm
from app.window.what_if.change_form import ChangeForm
from app.window.what_if.hours_forms import EveningForm, OnceForm
from app.window.what_if.work_forms import FirstForm, LeaveOutForm, WeightForm

FORMS: tuple[type[ChangeForm], ...] = (
    EveningForm,
    OnceForm,
    LeaveOutForm,
    ElsewhereForm,
    FirstForm,
    WeightForm,
    AirForm,
)
