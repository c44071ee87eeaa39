"""The bench in many runs: the plan kept, and what overruns put off (definition 29)."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from planner.chance.assumptions import assumed
from planner.chance.cups import Cups
from planner.chance.draws import Draws, Flags, Floats, Minutes, Runs
from planner.chance.film_runs import DAY, FilmRuns
from planner.chance.gate_runs import GateRuns
from planner.chance.script import Script, WorkItem
from planner.chance.spreads import Spreads
from planner.evening.missed_closings import LATE_TIMES, LATE_WORDS, SCUFF_MINUTES
from planner.pace.minutes import Work
from planner.schedule.partial_schedule import FOREVER
from planner.values.step import Bound

LEAST_LEFT = 5  # definition 23 [min]
ROUNDS = 3
OLDEST = 60 * DAY  # films laid longer ago count as laid then [min]
REACH = 45 * DAY  # films are followed so far beyond the last session [min]


class BenchRuns:
    """All runs of one script.

    Attributes
    ----------
    start, end
        By activity and run, when a pass was done; -1 where it never was.
    cause
        By activity and run, which pass its start waited for; -1 is none.
    by_film
        Whether it was the film of that pass, not hands.
    done_at
        By item and run, when a piece of a pass was done; `FOREVER` is never.
    sessions_lost
        By session and run, whether it did not take place.
    """

    def __init__(self, script: Script, draws: Draws, spreads: Spreads) -> None:
        self.script, self.draws, self.spreads = script, draws, spreads
        count, runs = len(script.activities), draws.runs
        self.start = np.full((count, runs), -1, dtype=np.int64)
        self.end = np.full((count, runs), -1, dtype=np.int64)
        self.cause = np.full((count, runs), -1, dtype=np.intp)
        self.by_film = np.zeros((count, runs), dtype=bool)
        self.redone = np.zeros((count, runs), dtype=bool)
        self.sessions_lost = np.zeros((len(script.sessions), runs), dtype=bool)
        now = script.plan.now
        oldest = max(now - OLDEST, min((end for _, end in script.facts.values()), default=now))
        last = script.sessions[-1].interval.end if script.sessions else now
        films = FilmRuns(script.problem.cure, min(oldest, now), last + REACH)
        self.gates = GateRuns(script, films, draws, spreads, self.start, self.end)
        self.handled: dict[tuple[str, str, str], Minutes] = {}
        self.dry: dict[tuple[str, str], Minutes] = {}
        self.units: dict[int, Minutes] = {}
        self.units_until: dict[int, int] = {}
        self.alone: dict[int, Minutes] = {}
        self.left: dict[int, Minutes] = {}
        self._factors: dict[tuple[int, bool], Floats] = {}
        self.floor: dict[int, Minutes] = {}
        self.opened: dict[int, tuple[Minutes, Runs]] = {}
        self.done_at = np.full((len(script.items), runs), FOREVER, dtype=np.int64)
        self.done = np.zeros((len(script.items), runs), dtype=bool)
        self.previous = _previous(script.items)
        self.before = [
            {*script.activities[item.activity].before}
            | ({item.activity} if not item.first else set())
            for item in script.items
        ]
        self.busy = np.full(runs, now, dtype=np.int64)
        self.latest = np.full(runs, -1, dtype=np.intp)
        self._facts()

    # -- the evenings -----------------------------------------------------------------------------

    def run(self, stop: Callable[[], bool] = lambda: False) -> bool:
        """Let every session go by in every run; False if ``stop`` said so before the end."""
        share = self.spreads.lost_share(self.draws)
        waiting = list(self.script.items)
        for number, stretch in enumerate(self.script.sessions):
            if not waiting:
                break
            if stop():
                return False
            begun = stretch.interval.start <= self.script.plan.now
            start = self.script.plan.now if begun else stretch.interval.start
            if not begun:
                self.sessions_lost[number] = self.draws.uniform("session", start) < share
            here = [item for item in waiting if item.session <= number]
            if here:
                self._session(number, here)
                waiting = [item for item in waiting if not self.done[item.number].all()]
        return True

    def _session(self, number: int, here: list[WorkItem]) -> None:
        held = ~self.sessions_lost[number]
        stretch = self.script.sessions[number].interval
        self.cursor = np.maximum(self.busy, stretch.start)
        self.cups = Cups(self.script.problem, self.draws, self.spreads)
        self.number = number
        begun = self.latest.copy()
        for turn in range(ROUNDS):
            later: list[WorkItem] = []
            deferred: set[int] = set()
            for item in here:
                for name in item.cleans if turn == 0 and item.session == number else ():
                    self.cups.cleaned(name, self.cursor, held)
                runs = np.flatnonzero(held & ~self.done[item.number])
                follows = self._may_follow(item, runs)
                waits = self.before[item.number]
                hopes = bool(deferred) and not follows.all() and not deferred.isdisjoint(waits)
                runs = runs[follows]
                if runs.size:
                    hopes |= self._try(item, runs, patient=turn > 0)
                if hopes:
                    later.append(item)
                    deferred.add(item.activity)
            if not later:
                break
            here = later
        worked = held & (self.latest != begun)
        self.busy = np.where(worked, self.cursor, self.busy)

    def _may_follow(self, item: WorkItem, runs: Runs) -> Flags:
        """Tell in which runs all that an item waits for is done."""
        found = np.ones(len(runs), dtype=bool)
        before = self.previous.get(item.number)
        if before is not None:
            found &= self.done[before][runs]
        elif item.first:
            for index in self.script.activities[item.activity].before:
                found &= self.end[index][runs] >= 0
        return found

    # -- one piece of work ------------------------------------------------------------------------

    def _try(self, item: WorkItem, runs: Runs, *, patient: bool) -> bool:
        """Do an item in all runs in which it fits; tell whether any may still have it later on."""
        index = item.activity
        slots = self.script.slots(index, self.number)
        if not slots:
            return False
        floor, cause = self._floor(item, runs)
        soon = floor < slots[-1].end
        if not soon.all():
            runs, floor, cause = runs[soon], floor[soon], cause[soon]
            if not runs.size:
                return False
        planned = np.full(len(runs), item.minutes, dtype=np.int64)
        lead, tail = self.cups.around(self.script, index, self.cursor, runs)
        extra = np.zeros(len(runs), dtype=np.int64)
        if item.first:
            floor, prepare, extra = self._choose(item, runs, floor, lead)
            lead = lead + prepare
        left = self._left(item, runs) + extra
        again = self.redone[index][runs] if item.last else np.zeros(len(runs), dtype=bool)
        planned = planned + extra + again * SCUFF_MINUTES
        at = self._start(item, runs, floor, lead, planned, tail)
        hands = at - lead
        fits = at < FOREVER
        fits &= self._leaves_time(item, runs, at, planned, tail)
        soon = fits
        if not patient:
            soon = fits & (hands - self.cursor[runs] <= item.wait + assumed("patience"))
        if soon.any():
            self._do(item, runs[soon], at[soon], left[soon], cause[soon], floor[soon])
        return bool((fits & ~soon).any() or (soon.any() and self.redone[index][runs].any()))

    def _left(self, item: WorkItem, runs: Runs) -> Minutes:
        """Return the minutes that an item really takes, or what is left of it."""
        known = self.left.get(item.number)
        if known is None:
            known = np.maximum(1, np.rint(item.minutes * self._factor(item.activity)))
            known = self.left[item.number] = known.astype(np.int64)
        return known[runs]

    def _factor(self, index: int, again: bool = False) -> Floats:
        """Return the factor on the minutes of a pass in each run, or of doing it again."""
        known = self._factors.get((index, again))
        if known is None:
            one = self.script.activities[index].pass_
            key = one.key._replace(coat=-one.key.coat) if again else one.key
            work = Work(one.step.stage, one.step.tool)
            known = self.spreads.minutes_factor(self.draws, work, key)
            self._factors[index, again] = known
        return known

    def _floor(self, item: WorkItem, runs: Runs) -> tuple[Minutes, Runs]:
        """Return when films and fingers let an item begin, and the pass that it waits for."""
        script, index = self.script, item.activity
        activity = script.activities[index]
        floor = np.zeros(len(runs), dtype=np.int64)
        cause = np.full(len(runs), -1, dtype=np.intp)
        extra = self.floor.get(item.number)
        if extra is not None:
            floor = np.maximum(floor, extra[runs])
        if not item.first:
            return floor, cause
        opens, cause = self._opens(item, runs)
        floor = np.maximum(floor, opens)
        for number in activity.leaving:
            before, after = script.problem.ends[number]
            stay = (self.end[before][runs] >= 0) & (self.end[after][runs] < 0)
            if stay.any():
                stays = runs[stay]
                floor[stay] = np.maximum(floor[stay], self.gates.opens_once(number, stays))
        for spot in activity.fingers:
            wet = self.handled.get(spot)
            if wet is not None:
                floor = np.maximum(floor, wet[runs])
        for before in activity.before:
            if script.activities[before].pass_.alone:
                later = self.end[before][runs] > floor
                cause = np.where(later, before, cause)
                floor = np.maximum(floor, self.end[before][runs])
        for unit in activity.held:
            alone = self.alone.get(unit)
            if alone is not None:
                floor = np.maximum(floor, alone[runs])
        return floor, cause

    def _opens(self, item: WorkItem, runs: Runs) -> tuple[Minutes, Runs]:
        """Return when the gates that open once have, and the pass whose film was the last."""
        known = self.opened.get(item.number)
        if known is None:
            size = self.draws.runs
            known = np.full(size, -1, dtype=np.int64), np.full(size, -1, dtype=np.intp)
            self.opened[item.number] = known
        opened, by = known
        fresh = runs[opened[runs] < 0]
        if fresh.size:
            floor = np.zeros(len(fresh), dtype=np.int64)
            cause = np.full(len(fresh), -1, dtype=np.intp)
            for number in self.script.activities[item.activity].opening:
                opens = self.gates.opens_once(number, fresh)
                later = opens > floor
                cause[later] = self.script.problem.ends[number][0]
                floor = np.maximum(floor, opens)
            opened[fresh], by[fresh] = floor, cause
        return opened[runs], by[runs]

    def _choose(
        self, item: WorkItem, runs: Runs, floor: Minutes, lead: Minutes
    ) -> tuple[Minutes, Minutes, Minutes]:
        """Return start, preparation and more minutes as the windows of gates have them.

        A closing that has gone by makes the work longer: what is wiped,
        pressed, rubbed or unmasked late takes twice as long, anything else
        is scuffed first.
        """
        problem = self.script.problem
        activity = problem.activities[item.activity]
        prepare = np.zeros(len(runs), dtype=np.int64)
        extra = np.zeros(len(runs), dtype=np.int64)
        for number in activity.choosing:
            floor = np.maximum(floor, self.cursor[runs] + lead)
            gate = problem.gates[number]
            needs = item.minutes if gate.closing is Bound.END else 1
            chosen = np.full(len(runs), FOREVER, dtype=np.int64)
            wants = np.zeros(len(runs), dtype=np.int64)
            windows = self.gates.windows(number, runs)
            for window in windows:
                begin = np.maximum(floor, np.maximum(window.opens, 0))
                aimed = np.maximum(floor, window.best)
                begin = np.where(aimed + needs <= window.closes, aimed, begin)
                if window.preparation:
                    begin = np.maximum(begin, np.maximum(window.opens, 0) + window.preparation)
                good = (chosen >= FOREVER) & (begin + needs <= window.closes)
                chosen = np.where(good, begin, chosen)
                wants = np.where(good, window.preparation, wants)
            missed = chosen >= FOREVER
            if missed.any():
                opens = windows[0].opens if windows else floor
                late = gate.closing is Bound.END or activity.pass_.step.stage in LATE_WORDS
                more = (LATE_TIMES - 1) * item.minutes if late else SCUFF_MINUTES
                chosen = np.where(missed, np.maximum(floor, opens), chosen)
                extra = np.where(missed, np.maximum(extra, more), extra)
            floor = np.maximum(floor, chosen)
            prepare = np.maximum(prepare, wants)
        return floor, prepare, extra

    def _start(
        self,
        item: WorkItem,
        runs: Runs,
        floor: Minutes,
        lead: Minutes,
        planned: Minutes,
        tail: Minutes,
    ) -> Minutes:
        """Return when an item can begin in this session; `FOREVER` where it cannot."""
        activity = self.script.activities[item.activity]
        wish = np.maximum(self.cursor[runs] + lead, floor)
        if activity.wet and item.first:
            wish = self._drying_place(item.activity, runs, wish)
        end = self.script.sessions[self.number].interval.end
        spare = int(assumed("stays on"))
        found = np.full(len(runs), FOREVER, dtype=np.int64)
        for slot in self.script.slots(item.activity, self.number):
            loud = activity.loud
            begin = np.maximum(wish, slot.start + (lead if loud else 0))
            last = slot.end + (spare if slot.end == end else 0)
            needs = planned + (tail if loud or slot.end == end else 0)
            good = (found >= FOREVER) & (begin + needs <= last)
            found = np.where(good, begin, found)
        return found

    def _drying_place(self, index: int, runs: Runs, wish: Minutes) -> Minutes:
        """Return the first start at which the drying places are not all taken (definition 18)."""
        script = self.script
        activity = script.activities[index]
        stands = script.stands
        room = script.problem.places[activity.location].drying_places
        room -= sum(one for _, one in activity.wet)
        soonest = int(wish.min())  # what is free by then in every run takes no place
        others = [
            unit
            for unit in self.units
            if self.units_until[unit] > soonest
            and script.unit_place[unit] == activity.location
            and unit not in activity.held
        ]
        if sum(stands[unit] for unit in others) <= room:
            return wish
        used = np.zeros(len(runs), dtype=np.int64)
        for unit in others:
            used += stands[unit] * (self.units[unit][runs] > wish)
        if (used <= room).all():
            return wish
        until = np.stack([self.units[unit][runs] for unit in others])
        weight = np.array([stands[unit] for unit in others])[:, None]
        order = np.argsort(until, axis=0, kind="stable")
        sorted_ = np.take_along_axis(until, order, axis=0)
        freed = np.take_along_axis(np.broadcast_to(weight, until.shape), order, axis=0)
        over = np.maximum(0, used - room)
        gone = np.where(sorted_ > wish, freed, 0).cumsum(axis=0)
        enough = (gone >= over) & (sorted_ > wish)
        first = np.argmax(enough, axis=0)
        later = np.take_along_axis(sorted_, first[None, :], axis=0)[0]
        return np.where(over > 0, np.maximum(wish, later), wish)

    def _leaves_time(
        self, item: WorkItem, runs: Runs, at: Minutes, planned: Minutes, tail: Minutes
    ) -> Flags:
        """Tell in which runs what must follow soon, or in this session, can still follow."""
        problem, index = self.script.problem, item.activity
        end = self.script.sessions[self.number].interval.end + int(assumed("stays on"))
        after = self.script.next_session(self.number)
        fits = np.ones(len(runs), dtype=bool)
        if item.last:
            for number in problem.closing_from.get(index, ()):
                follower = problem.ends[number][1]
                if any(
                    b != index and (self.end[b][runs] < 0).all()
                    for b in problem.activities[follower].before
                ):
                    continue  # it waits for more than this
                closes = self.script.least_closing(number)
                wait, takes = self.script.least_opening(number), problem.activities[follower].pass_
                needs = takes.minutes if problem.gates[number].closing is Bound.END else 0
                here = at + planned + wait + takes.hands + tail <= end
                fits &= here | (at + closes >= after + needs)
        group = problem.activities[index].together
        if group and item.first and not any((self.start[o][runs] >= 0).all() for o in group):
            rest = sum(
                problem.activities[o].pass_.hands for o in group if not (self.end[o] >= 0).all()
            )
            fits &= at + planned + rest + tail <= end
        return fits

    def _do(
        self,
        item: WorkItem,
        runs: Runs,
        at: Minutes,
        minutes: Minutes,
        cause: Runs,
        floor: Minutes,
    ) -> None:
        """Record that an item was done."""
        script, index = self.script, item.activity
        activity = script.activities[index]
        session = script.sessions[self.number].interval
        limit = session.end + int(assumed("finishes"))
        end = at + minutes
        over = end > np.maximum(limit, at + item.minutes)
        if over.any():  # the rest is done first thing next time
            after = script.next_session(self.number)
            end = np.where(over, after + np.maximum(LEAST_LEFT, end - limit), end)
        idle = at > self.cursor[runs] + 0
        first = self.cursor[runs] <= session.start
        reached = self._previous_end()
        by_film = (cause >= 0) & (
            (idle & (at <= floor)) | (first & (floor + item.minutes > reached))
        )
        self.cups.used(script, index, at, end, runs)
        if item.first:
            self.start[index][runs] = at
            self.cause[index][runs] = np.where(by_film, cause, self.latest[runs])
            self.by_film[index][runs] = by_film
        self.cursor[runs] = end
        self.latest[runs] = index
        if activity.pass_.alone and item.last:
            end = self._goes_on_alone(item, runs, end)
        if not item.last:
            self.done[item.number][runs] = True
            self.done_at[item.number][runs] = end
            return
        wrong = ~self.redone[index][runs]
        wrong &= self.draws.uniform("mishap", *activity.pass_.key)[
            runs
        ] < self.spreads.redone_share(activity.pass_.step.stage)
        if not wrong.all():
            self._finish(item, runs[~wrong], end[~wrong])
        if wrong.any():
            self._over_again(item, runs[wrong], end[wrong])

    def _previous_end(self) -> int:
        """Return when the session before this one ended."""
        if not self.number:
            return 0
        return self.script.sessions[self.number - 1].interval.end

    def _goes_on_alone(self, item: WorkItem, runs: Runs, end: Minutes) -> Minutes:
        """Return when work ends that goes on without hands; it takes longer as its hands do."""
        one = self.script.activities[item.activity].pass_
        alone = np.rint(one.alone * self._factor(item.activity)[runs])
        whole: Minutes = end + alone.astype(np.int64)
        for unit in self.script.activities[item.activity].held:
            known = self.alone.setdefault(unit, np.zeros(self.draws.runs, dtype=np.int64))
            known[runs] = np.maximum(known[runs], whole)
        return whole

    def _finish(self, item: WorkItem, runs: Runs, end: Minutes) -> None:
        self.done[item.number][runs] = True
        self.done_at[item.number][runs] = end
        self.end[item.activity][runs] = end
        self._lay(item.activity, runs)

    def _over_again(self, item: WorkItem, runs: Runs, end: Minutes) -> None:
        """Let a pass that came out wrong be done again, once it can be touched and scuffed."""
        index = item.activity
        self.redone[index][runs] = True
        self.end[index][runs] = end  # its film dries from here
        ready = end
        for _, dry in self.gates.handled(index, runs).values():
            ready = np.maximum(ready, dry)
        self.end[index][runs] = -1
        floor = self.floor.setdefault(item.number, np.zeros(self.draws.runs, dtype=np.int64))
        floor[runs] = ready
        again = np.maximum(1, np.rint(item.minutes * self._factor(index, again=True)))
        self.left[item.number][runs] = again[runs].astype(np.int64) + SCUFF_MINUTES

    def _lay(self, index: int, runs: Runs) -> None:
        """Record what films a pass left behind, and until when they take their places."""
        activity = self.script.activities[index]
        key = activity.pass_.key
        handle = np.zeros(len(runs), dtype=np.int64)
        shape = self.draws.runs
        whole = self.dry.setdefault((key.project, key.model), np.zeros(shape, dtype=np.int64))
        for place, (reckoned, truly) in self.gates.handled(index, runs).items():
            known = self.handled.setdefault(
                (key.project, key.model, place), np.zeros(shape, dtype=np.int64)
            )
            known[runs] = np.maximum(known[runs], reckoned)
            handle = np.maximum(handle, known[runs])
            whole[runs] = np.maximum(whole[runs], np.where(truly < FOREVER, truly, 0))
        if activity.pass_.unit_after is not None:
            for unit in activity.held:
                if unit in self.units:
                    handle = np.maximum(handle, self.units[unit][runs])
                    self.units[unit][runs] = 0
        for unit, _ in activity.wet:
            taken = self.units.setdefault(unit, np.zeros(shape, dtype=np.int64))
            taken[runs] = np.maximum(taken[runs], handle)
            self.units_until[unit] = max(self.units_until.get(unit, 0), int(handle.max()))

    def _facts(self) -> None:
        """Take what was logged; work under way ends sooner or later than it should."""
        every = np.arange(self.draws.runs)
        now = self.script.plan.now
        for index, (start, end) in sorted(self.script.facts.items(), key=lambda one: one[1]):
            self.start[index] = start
            self.end[index] = end
            if index in self.script.under_way:
                left = np.maximum(LEAST_LEFT, np.rint((end - now) * self._factor(index)))
                self.end[index] = now + left.astype(np.int64)
                if not self.script.activities[index].pass_.alone:
                    self.busy = np.maximum(self.busy, self.end[index])
            self._lay(index, every)


def _previous(items: tuple[WorkItem, ...]) -> dict[int, int]:
    """Return, for each piece but the first of a pass, the piece before it."""
    last: dict[int, int] = {}
    found = {}
    for item in items:
        if not item.first:
            found[item.number] = last[item.activity]
        last[item.activity] = item.number
    return found
