"""Forms of a model, a part and a place."""

from __future__ import annotations

from dataclasses import replace

from app.service import wishes
from app.service.build_edits import models, names, parts
from app.service.build_edits.advice import add_dry_fit, late_joined
from app.service.build_edits.locate import model_of
from app.service.build_edits.names import fresh_name
from app.service.edits import Edit
from app.window import words
from app.window.forms.live_controls import (
    beside,
    button,
    choice,
    decimal,
    enum_choice,
    fill,
    line,
    number,
    pick,
    put,
    tick,
)
from app.window.labels import ColouredLabel, text
from app.window.message_translation import translated
from app.window.model_editor.fields import EditorForm
from app.window.model_editor.measures import MeasuresField
from app.window.model_editor.nodes import title_of
from app.window.model_editor.project_form import date_of, dated, put_date
from app.window.palette import Colours
from planner.quantity import areas_of
from planner.quantity.usual_models import ALL_OVER, size_of
from planner.values.book import Book
from planner.values.keys import ModelKey
from planner.values.lookup import part_of, project_of
from planner.values.model import Material, Model, ModelKind, Part, Place, RealSize, Side
from planner.values.refusal import Refused

USUAL_SIZE = RealSize(length_m=6, width_m=2.5, height_m=2.5)  # a lorry's, about

SIZES = ("length_m", "width_m", "height_m")


class ModelForm(EditorForm):
    """Name, scale, date and priority, and real size."""

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self._at = ModelKey("", "")
        self.name = line(self._rename, most=120)
        self.scale = line(self._scale, most=20)
        self.scale.setPlaceholderText("1:72")
        self.kind = enum_choice(ModelKind, self._kind)
        self.kind.setToolTip(tr("Its outline in lists and pages"))
        self.by, self.target = dated(self._target)
        self.by.setText(tr("Finish by"))
        self.target.setAccessibleName(tr("Date of the model"))
        self.weight = number(Model, "weight", self._weight)
        self.weight.setToolTip(
            tr("How much a day late of this model weighs against a day of another")
        )
        self.early = tick(
            tr("As early as it can be"),
            self._early,
            tr("Others of its project fill the gaps while its paint dries"),
        )
        self.first = tick(
            tr("Begin no other before it is finished"),
            self._first,
            tr("It shows what works, and how long it takes, before the rest follow"),
        )
        self.done = ColouredLabel()
        self.sized = tick(
            tr("Size of the real thing"),
            self._size,
            tr("With the scale, it gives the areas that were not measured"),
        )
        self.sizes = [decimal(RealSize, name, self._size) for name in SIZES]
        self.word = text("")
        self.dry_fit = button(tr("Try them together first"), self._dry_fit)
        self.row(tr("Model"), self.name, "name")
        self.row(tr("Scale"), self.scale, "scale")
        self.row(tr("Kind"), self.kind, "kind")
        self.wide(self.done)
        self.wide(beside(self.by, self.target), "target")
        self.row(tr("Weight"), self.weight, "weight")
        self.wide(self.early, "early")
        self.wide(self.first)
        self.wide(self.sized, "real_size")
        for name, field in zip((tr("Length"), tr("Width"), tr("Height")), self.sizes, strict=True):
            self.row(name, field)
        self.wide(self.word)
        self.wide(beside(self.dry_fit))
        self.end()

    def show_model(self, book: Book, at: ModelKey) -> None:
        """Show a model of the book."""
        model, pilot = model_of(book, at), project_of(book, at.project).pilot
        with self.filling((at, model, pilot)) as fresh:
            self._at = at
            if not fresh:
                return
            put(self.name, model.name)
            put(self.scale, model.scale)
            pick(self.kind, model.kind.value)
            put(self.first, pilot == model.name)
            put_date(self.by, self.target, model.target)
            put(self.weight, model.weight)
            put(self.early, model.early)
            put(self.sized, model.real_size is not None)
            size = size_of(model) or USUAL_SIZE
            for field, value in zip(
                self.sizes, (size.length_m, size.width_m, size.height_m), strict=True
            ):
                put(field, value)
                field.setEnabled(model.real_size is not None)
            self._advise(late_joined(model))

    def _advise(self, late: tuple[str, ...]) -> None:
        self.word.setText(
            self.tr(
                "{parts} are painted apart and joined later: try them together dry before "
                "painting. Paint in a joint is hard to remove. (common practice, no source)"
            ).format(parts=words.capital(words.listed(late)))
            if late
            else ""
        )
        self.word.setVisible(bool(late))
        self.dry_fit.setVisible(bool(late))

    def _rename(self) -> None:
        at, new = self._at, self.name.text().strip()
        if new != at.model:
            self.ask(lambda book: names.rename_model(book, at, new))

    def _scale(self) -> None:
        at, scale = self._at, self.scale.text().strip()
        self.ask(lambda book: models.set_scale(book, at, scale))

    def _kind(self) -> None:
        at, kind = self._at, ModelKind(self.kind.currentData())
        self.ask(lambda book: models.set_kind(book, at, kind, words.given_name))

    def show_done(self, told: str, late: bool, colours: Colours) -> None:
        """Say when the model is finished by the plan, in the colour of what is missed if late."""
        self.done.say(told, colours.closing_word if late else colours.soft)
        self.done.setVisible(bool(told))

    def _target(self) -> None:
        at, target = self._at, date_of(self.by, self.target)
        self.ask(lambda book: models.set_model_target(book, at, target))

    def _weight(self) -> None:
        at, weight = self._at, self.weight.value()
        self.ask(lambda book: models.set_model_weight(book, at, weight))

    def _early(self) -> None:
        at, early = self._at, self.early.isChecked()
        self.ask(lambda book: models.set_early(book, at, early))

    def _first(self) -> None:
        at, pilot = self._at, self._at.model if self.first.isChecked() else ""
        self.ask(lambda book: wishes.set_pilot(book, at.project, pilot))

    def _size(self) -> None:
        at, on = self._at, self.sized.isChecked()
        length, width, height = (field.value() for field in self.sizes)

        def make(book: Book) -> Edit:
            size = RealSize(length_m=length, width_m=width, height_m=height) if on else None
            return models.set_real_size(book, at, size)

        self.ask(make)

    def _dry_fit(self) -> None:
        at = self._at
        self.ask(lambda book: add_dry_fit(book, at))


class PartForm(EditorForm):
    """Name, holder, drying places and material; apart or glued first."""

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self._at, self._part = ModelKey("", ""), ""
        self.name = line(self._apply, most=120)
        self.holder = line(self._apply, most=120)
        self.holder.setPlaceholderText(tr("none"))
        self.holder.setToolTip(tr("What it is held by while painted: a skewer, a clip, a cork"))
        self.stands = number(Part, "stands", self._apply)
        self.material = enum_choice(Material, self._apply)
        self.stressed = tick(
            tr("Snaps in under stress"), self._apply, tr("Strong thinner cracks such parts")
        )
        self.state = text("")
        self.other = choice(self._chosen)
        self.join = button(tr("Join by a step"), self._join, tr("Adds a step that joins them"))
        self.glue = button(
            tr("Glue on before painting"), self._glue, tr("Makes one part of them; the join goes")
        )
        self.row(tr("Part"), self.name, "name")
        self.row(tr("Held by"), self.holder, "holder")
        self.row(tr("Drying places"), self.stands, "stands")
        self.row(tr("Material"), self.material, "material")
        self.wide(self.stressed)
        self.title(tr("Apart and joined"))
        self.wide(self.state)
        self.row(tr("With the part"), self.other)
        self.wide(beside(self.join, self.glue), "places", "parts")
        self.end()

    def show_part(self, book: Book, at: ModelKey, name: str) -> None:
        """Show a part of a model."""
        model = model_of(book, at)
        part = part_of(model, name)
        with self.filling((at, model, part)) as fresh:
            self._at, self._part = at, name
            if not fresh:
                return
            put(self.name, part.name)
            put(self.holder, part.holder)
            put(self.stands, part.stands)
            pick(self.material, part.material.value)
            put(self.stressed, part.stressed)
            others = [(part.name, part.name) for part in model.parts if part.name != name]
            fill(self.other, others, self.other.currentData())
            for field in (self.other, self.join, self.glue):
                field.setEnabled(bool(others))
            self.state.setText(_joins(model, name))

    def _apply(self) -> None:
        at, name = self._at, self._part
        if not name:
            return

        def make(book: Book) -> Edit:
            part = replace(
                part_of(model_of(book, at), name),
                name=self.name.text().strip(),
                holder=self.holder.text().strip(),
                stands=self.stands.value(),
                material=Material(self.material.currentData()),
                stressed=self.stressed.isChecked(),
            )
            return parts.set_part(book, at, name, part)

        self.ask(make)

    def _chosen(self) -> None:
        """The other part alone changes nothing; it is read when a button is pressed."""

    def _join(self) -> None:
        at, pair = self._at, (self._part, self.other.currentData())
        self.ask(lambda book: parts.join_parts(book, at, pair))

    def _glue(self) -> None:
        at, name, other = self._at, self._part, self.other.currentData()
        self.ask(lambda book: parts.glue_first(book, at, other, name))


class PlaceForm(EditorForm):
    """Name, side, area by measures or typed, and detail."""

    def __init__(self) -> None:
        super().__init__()
        tr = self.tr
        self._at, self._part, self._place = ModelKey("", ""), "", ""
        self.name = line(self._apply, most=120)
        self.side = enum_choice(Side, self._apply)
        self.area = decimal(Place, "area_cm2", self._apply, tr("by its measures, or its share"))
        self.detail = decimal(Place, "detail", self._apply)
        self.detail.setSingleStep(0.1)
        self.detail.setToolTip(tr("Raised and recessed detail adds area"))
        self.share = decimal(Place, "share", self._apply, tr("none of its own"))
        self.share.setDecimals(3)
        self.share.setSingleStep(0.01)
        self.share.setToolTip(
            tr("Part of a box of the model's real size, all round; the kind brings it, assumed")
        )
        self.found = text("", size=0.92)
        self.measures = MeasuresField()
        self.measures.changed.connect(self._apply)
        self.apart = button(
            tr("Paint it apart"),
            self._paint_apart,
            tr("Makes a part of its own of it, joined by a step at the end"),
        )
        self.row(tr("Place"), self.name, "name")
        self.row(tr("Faces"), self.side, "side")
        self.row(tr("Area"), self.area, "area_cm2")
        self.row(tr("Detail"), self.detail, "detail")
        self.row(tr("Share"), self.share, "share")
        self.wide(self.found)
        self.title(tr("Measures"))
        self.wide(self.measures, "measures", "length_mm", "width_mm", "height_mm", "count")
        self.wide(beside(self.apart), "places")
        self.end()

    def show_place(self, book: Book, at: ModelKey, part: str, name: str) -> None:
        """Show a place of a part."""
        owner = part_of(model_of(book, at), part)
        place = next((place for place in owner.places if place.name == name), None)
        if place is None:
            raise Refused("places", f"there is no place called “{name}”")
        area = areas_of(model_of(book, at))[f"{part}/{name}"]
        self.found.setText(translated(area.sentence))
        with self.filling((at, owner, place)) as fresh:
            self._at, self._part, self._place = at, part, name
            if not fresh:
                return
            put(self.name, place.name)
            pick(self.side, place.side.value)
            put(self.area, place.area_cm2)
            put(self.detail, place.detail)
            put(self.share, place.share)
            self.measures.show_measures(place.measures)
            self.apart.setEnabled(len(owner.places) > 1)

    def _apply(self) -> None:
        at, part, name = self._at, self._part, self._place
        if not name:
            return

        def make(book: Book) -> Edit:
            owner = part_of(model_of(book, at), part)
            old = next((place for place in owner.places if place.name == name), Place(name=name))
            place = replace(
                old,
                name=self.name.text().strip(),
                side=Side(self.side.currentData()),
                area_cm2=_kept(old.area_cm2, self.area.value()),
                detail=_kept(old.detail, self.detail.value()),
                share=_kept(old.share, self.share.value()),
                measures=self.measures.value(),
            )
            return parts.set_place(book, at, part, name, place)

        self.ask(make)

    def _paint_apart(self) -> None:
        at, part, name = self._at, self._part, self._place
        self.ask(lambda book: parts.paint_apart(book, at, part, name))


def new_part(model: Model) -> Part:
    """Return a part to begin with."""
    name = fresh_name(words.tr("part"), [part.name for part in model.parts])
    return Part(name=name, places=(Place(name=words.given_name(ALL_OVER)),))


def new_place(part: Part) -> Place:
    """Return a place to begin with."""
    return Place(name=fresh_name(words.tr("place"), [place.name for place in part.places]))


def _kept(old: float, shown: float) -> float:
    """Return the old value if it reads as the field shows it: two decimals lose nothing."""
    return old if round(old, 2) == shown else shown


def _joins(model: Model, part: str) -> str:
    """Say by which steps a part is joined to which others."""
    told = []
    for step in model.steps:
        of = dict.fromkeys(name.partition("/")[0] for name in step.references())
        if step.stage.value == "join" and part in of:
            others = words.listed([name for name in of if name != part])
            name = title_of(step)
            told.append(
                words.tr("“{step}” joins it with {others}.").format(step=name, others=others)
            )
    return " ".join(told) or words.tr("It stays apart: no step joins it.")
