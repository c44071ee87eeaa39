"""One stretch to the minute: which of its passes fit, and in which order.

A colour is loaded once in a stretch; its sprayed coats, with whatever hand
work stands between them, make one block.  Blocks of one family stand
together.  That is how people paint, and it leaves no circuit to solve.
"""

from __future__ import annotations

from collections import defaultdict
from typing import Any

from ortools.sat.python import cp_model

from planner.schedule.optimise.board import Board, BoardSlot
from planner.schedule.optimise.master import setup_costs
from planner.schedule.optimise.unit_conflicts import dry_as_at, keep_apart
from planner.schedule.partial_schedule import FOREVER, PartialSchedule
from planner.values.step import Bound


class Exact:
    """Minutes of the first stretch of a board: of the passes whose literal says they are in it.

    Attributes
    ----------
    starts
        Start variable of each pass that may be done in it.
    """

    def __init__(
        self,
        model: cp_model.CpModel,
        board: Board,
        candidates: dict[int, Any],
        here: PartialSchedule,
    ) -> None:
        self.model, self.board, self.here = model, board, here
        self.costs = setup_costs(board)
        self.starts: dict[int, Any] = {}
        self.present: dict[int, Any] = {}
        self.hands: list[Any] = []
        self.begin, self.end = self.board.starts[0], self.board.ends[0]
        self._no_pass_outside_its_hours(candidates)
        self._no_gate_broken()
        dry = dry_as_at(board, self.begin)
        keep_apart(model, board, self.starts, dry, self.present)
        self._colour_loaded_where_sprayed()
        self._no_drying_place_overfull()
        self.model.add_no_overlap(self.hands)

    def order(self, solver: cp_model.CpSolver) -> list[int]:
        """Return the passes that are done in this stretch, by their start."""
        chosen = [i for i, literal in self.present.items() if solver.boolean_value(literal)]
        return sorted(chosen, key=lambda index: solver.value(self.starts[index]))

    def _no_pass_outside_its_hours(self, candidates: dict[int, Any]) -> None:
        board, here = self.board, self.here
        for index, literal in candidates.items():
            pass_ = board.problem.activities[index].pass_
            least = pass_.hands
            if all(before in here.end for before in board.problem.activities[index].before):
                release = max(here.fingers_from(index), here.floor(index))
            else:
                release = 0
            slots = [
                BoardSlot(max(slot.start, release, board.head[index]), slot.end)
                for slot in board.slots(index)[0]
            ]
            spans = [[slot.start, slot.end - least] for slot in slots]
            spans = [span for span in spans if span[0] <= span[1]]
            deadline = here.deadline(index)
            if not spans or deadline <= spans[0][0]:
                self.model.add_bool_or([literal.negated()])
                continue
            start = self.model.new_int_var_from_domain(cp_model.Domain.from_intervals(spans), "")
            self.starts[index], self.present[index] = start, literal
            interval = self.model.new_optional_fixed_size_interval_var(start, least, literal, "")
            self.hands.append(interval)
            if deadline < FOREVER:
                ends = _ends_by(here, index)
                room = deadline - pass_.minutes if ends else deadline - 1
                self.model.add(start <= room).only_enforce_if(literal)

    def _no_gate_broken(self) -> None:
        """Hold pairs done in this stretch to the minute, with their lags as at its beginning."""
        problem, board = self.board.problem, self.board
        for number, (before, after) in enumerate(problem.ends):
            if before not in self.starts or after not in self.starts:
                continue
            gate = problem.gates[number]
            minutes = problem.activities[before].pass_.minutes
            size = problem.activities[after].pass_.minutes if gate.closing is Bound.END else 1
            both = [self.present[before], self.present[after]]
            options = []
            for window in gate.windows:
                end = max(board.head[before], self.begin) + minutes
                lag = board.opens(number, window, end) - end
                if lag > self.end - self.begin:
                    continue
                closes = board.closes(number, window, end - minutes)
                open_ = self.model.new_bool_var("")
                options.append(open_)
                gap = self.starts[after] - self.starts[before]
                self.model.add(gap >= minutes + lag).only_enforce_if([open_, *both])
                if closes < FOREVER:
                    most = closes - (end - minutes) - size
                    self.model.add(gap <= most).only_enforce_if([open_, *both])
            self.model.add_bool_or([*options, *(literal.negated() for literal in both)])
        for after in self.starts:
            for before in problem.activities[after].before:
                if before in self.starts:
                    minutes = problem.activities[before].pass_.minutes
                    both = [self.present[before], self.present[after]]
                    gap = self.starts[after] - self.starts[before]
                    self.model.add(gap >= minutes).only_enforce_if(both)

    def _colour_loaded_where_sprayed(self) -> None:
        """Give each colour used a block, with its set-up before it and a cleaning after all."""
        problem = self.board.problem
        by_colour: dict[str, list[int]] = defaultdict(list)
        for index in self.starts:
            if load := problem.activities[index].pass_.load:
                by_colour[load].append(index)
        held = {cup.coating for cup in self.here.cups.values() if cup.coating}
        if not by_colour and not held:
            return
        families: dict[str, list[str]] = defaultdict(list)
        for load in by_colour:
            families[problem.coatings[load].family.value].append(load)
        model, costs = self.model, self.costs
        airbrush = min(problem.book.gear.airbrushes, key=lambda airbrush: airbrush.load_minutes)
        clean = model.new_int_var(self.begin, self.end - airbrush.clean_minutes, "")
        any_load = model.new_bool_var("")
        cleaning = model.new_optional_fixed_size_interval_var(
            clean, airbrush.clean_minutes, model.new_constant(1) if held else any_load, ""
        )
        self.hands.append(cleaning)
        opening = model.new_int_var(self.begin, self.end, "")
        self._no_work_while_loading(opening, clean + airbrush.clean_minutes, any_load)
        blocks, family_blocks, firsts = [], [], []
        for loads in families.values():
            family_used = model.new_bool_var("")
            spans = []
            family_firsts = []
            for load in loads:
                used, low, high = self._block(by_colour[load])
                model.add_implication(used, any_load)
                model.add_implication(used, family_used)
                model.add(high <= clean).only_enforce_if(used)
                first, leads = model.new_bool_var(""), model.new_bool_var("")
                firsts.append(first)
                family_firsts.append(leads)
                model.add_implication(first, leads)
                model.add_implication(leads, used)
                setup = model.new_int_var(0, 240, "")
                lead = airbrush.load_minutes
                if held:  # washing the cup out comes on top, or it is changed
                    lead = 0 if load in held else min(costs.other, lead + airbrush.clean_minutes)
                model.add(setup == lead).only_enforce_if(first)
                model.add(setup == max(1, costs.other)).only_enforce_if([leads, first.negated()])
                model.add(setup == max(1, costs.same)).only_enforce_if(leads.negated())
                begins = model.new_int_var(self.begin - 240, self.end, "")
                self.hands.append(model.new_optional_interval_var(begins, setup, low, used, ""))
                model.add(begins >= opening).only_enforce_if(used)
                span = model.new_int_var(0, self.end - self.begin + 240, "")
                blocks.append(model.new_optional_interval_var(begins, span, high, used, ""))
                spans.append((used, begins, high))
            model.add_exactly_one([*family_firsts, family_used.negated()])
            family_blocks.append(self._family(family_used, spans))
        model.add_exactly_one([*firsts, any_load.negated()])
        model.add_no_overlap(blocks)
        if len(family_blocks) > 1:
            model.add_no_overlap(family_blocks)

    def _no_work_while_loading(self, opening: Any, closed: Any, any_load: Any) -> None:
        """Hand work that outlasts the idle limit goes before the first load or after cleaning."""
        problem = self.board.problem
        idle = min(airbrush.idle_limit_minutes for airbrush in problem.book.gear.airbrushes)
        for index, start in self.starts.items():
            activity = problem.activities[index]
            if activity.pass_.load or activity.pass_.hands <= idle:
                continue
            both, before = [self.present[index], any_load], self.model.new_bool_var("")
            end = start + activity.pass_.hands
            self.model.add(end <= opening).only_enforce_if([*both, before])
            self.model.add(start >= closed).only_enforce_if([*both, before.negated()])

    def _block(self, indices: list[int]) -> tuple[Any, Any, Any]:
        """Return (used, start of the first coat, end of the last) of one colour."""
        model, problem = self.model, self.board.problem
        used = model.new_bool_var("")
        low = model.new_int_var(self.begin, self.end, "")
        high = model.new_int_var(self.begin, self.end, "")
        for index in indices:
            literal, start = self.present[index], self.starts[index]
            minutes = problem.activities[index].pass_.minutes
            model.add_implication(literal, used)
            model.add(low <= start).only_enforce_if(literal)
            model.add(high >= start + minutes).only_enforce_if(literal)
        model.add_bool_or([used.negated(), *(self.present[index] for index in indices)])
        return used, low, high

    def _family(self, used: Any, spans: list[tuple[Any, Any, Any]]) -> Any:
        model = self.model
        low = model.new_int_var(self.begin - 240, self.end, "")
        high = model.new_int_var(self.begin - 240, self.end, "")
        size = model.new_int_var(0, self.end - self.begin + 240, "")
        for literal, begins, ends in spans:
            model.add(low <= begins).only_enforce_if(literal)
            model.add(high >= ends).only_enforce_if(literal)
        return model.new_optional_interval_var(low, size, high, used, "")

    def _no_drying_place_overfull(self) -> None:
        """Count drying places from a pass to the end of the stretch or until dry to handle."""
        problem, here = self.board.problem, self.here
        places: dict[str, list[int]] = defaultdict(list)
        for index in self.starts:
            if problem.activities[index].wet:
                places[problem.activities[index].location].append(index)
        for location, indices in places.items():
            room = problem.places[location].drying_places
            if sum(_stands(here, index) for index in indices) + _taken(here, location) <= room:
                continue
            intervals, demands = [], []
            for index in indices:
                activity = problem.activities[index]
                stays = activity.pass_.minutes + self._dry_to_handle_after(index)
                start, literal = self.starts[index], self.present[index]
                interval = self.model.new_optional_fixed_size_interval_var(
                    start, stays, literal, ""
                )
                intervals.append(interval)
                demands.append(_stands(here, index))
            for until, stands, where in here.drying.values():
                if where == location and until > self.begin:
                    size = min(until, self.end + 1440) - self.begin
                    intervals.append(self.model.new_fixed_size_interval_var(self.begin, size, ""))
                    demands.append(stands)
            self.model.add_cumulative(intervals, demands, room)

    def _dry_to_handle_after(self, index: int) -> int:
        """Return the minutes until a pass's films may be held, as if laid at the beginning."""
        return self.board.problem.handle_minutes(index, self.begin)


def _ends_by(here: PartialSchedule, index: int) -> bool:
    problem = here.problem
    return any(
        problem.gates[number].closing is Bound.END for number in problem.activities[index].closing
    )


def _stands(here: PartialSchedule, index: int) -> int:
    return sum(stands for _, stands in here.problem.activities[index].wet)


def _taken(here: PartialSchedule, location: str) -> int:
    return sum(
        stands
        for until, stands, where in here.drying.values()
        if where == location and until > here.time
    )
