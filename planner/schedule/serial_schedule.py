"""One run of one rule: a constructive schedule generation scheme.

Time runs forward through the bench time.  At each moment the passes whose
forerunners are placed are fitted; the rule's favourite goes next, unless it
would leave a window that closes (wiping back, unmasking) unmet.
"""

from __future__ import annotations

from collections.abc import Iterator
from heapq import heapify, heappop
from itertools import combinations
from random import Random
from typing import NamedTuple

from planner.bench import AIRED, Stretch
from planner.schedule.compiled_book import LAST_MINUTE
from planner.schedule.cups_at_start import left_in_cups
from planner.schedule.fit import Fit, earliest_fit, fit_in, gates_open, setup_for
from planner.schedule.partial_schedule import EMPTY, FOREVER, Cup, PartialSchedule
from planner.schedule.placing import place, put_away
from planner.schedule.priority_rules import Rule
from planner.schedule.problem import Activity, Problem
from planner.schedule.rival import Rival
from planner.schedule.window_lookahead import SOON, keeps_windows
from planner.values.message import message
from planner.values.moment import Interval, minute_of
from planner.values.plan import Placement, Unplaced

PATIENT_STRETCHES = 3  # stretches left unused before a closing is risked
LEAST_LEFT = 5  # definition 23 [min]
AIR_TRIED = 30  # stretches in which the air is asked before it is blamed
WAITS = message("waits for {step}, which has no place", step="").template


_Turn = tuple[tuple[float, ...], int]  # a sort key, smaller first, and the activity


class _Setups(NamedTuple):
    """What follows from what is in the cups.

    By load, the least minutes that must go before a pass, and what the rule
    gives for them; by activity, its turn if nothing else changes that.
    """

    lead: dict[str, int]
    worth: dict[str, float]
    turns: dict[int, _Turn]


class SerialSchedule:
    """One run of one rule over a problem."""

    def __init__(
        self,
        problem: Problem,
        rule: Rule,
        seed: int,
        guarded: frozenset[int],
        rival: Rival | None = None,
    ) -> None:
        self.problem = problem
        self.rule = rule
        self.random = Random(seed)  # noqa: S311 - a seeded search, not a secret
        self.guarded = guarded
        self.rival = rival
        self.beaten = False  # the rival ends sooner, whatever is still to come
        self._hands = 0  # still to be done [min]
        self.table = PartialSchedule(problem, problem.now)
        self.unplaced: list[Unplaced] = []
        self.missed: set[int] = set()
        self.waits = [len(activity.before) for activity in problem.activities]
        self.ready: set[int] = set()
        self.dead: set[int] = set()
        self.floor: dict[int, int] = {}
        self.idle_stretches = 0
        self._stretch: Stretch | None = None
        self._doomed: list[int] = []
        self._by_cups: dict[tuple[tuple[str, str], ...], _Setups] = {}
        own = problem.book.gear.airbrushes
        self._anew = min((one.clean_minutes + one.load_minutes for one in own), default=0)
        self._longest_lead = problem.frame.longest_preparation + max(
            (
                max(one.load_minutes, one.change_same_family, one.change_other_family)
                for one in problem.book.gear.airbrushes
            ),
            default=0,
        )

    def run(self) -> None:
        """Place all that can be placed."""
        self.take_facts()
        self._go_on()

    def resume(self, table: PartialSchedule) -> None:
        """Place what a table has not yet, from its time on."""
        self.table = table
        self.waits = [
            sum(before not in table.end for before in activity.before)
            for activity in self.problem.activities
        ]
        self._go_on()

    def _go_on(self) -> None:
        for activity in self.problem.activities:
            if activity.index not in self.table.end:
                self._hands += activity.pass_.hands
                if self.waits[activity.index] == 0:
                    self._make_ready(activity.index)
        while self.ready:
            fit = self._choose()
            if self.beaten:
                return
            if fit is None:
                continue
            if fit.stretch.interval.start > self.table.time:
                put_away(self.table)
            place(self.table, fit)
            self._hands -= fit.free - fit.start
            self.idle_stretches = 0
            if fit.last:
                self._release(fit.index)
            else:
                for setups in self._by_cups.values():
                    setups.turns.pop(fit.index, None)
        put_away(self.table)
        for activity in self.problem.activities:
            if activity.index not in self.table.end and activity.index not in self.dead:
                why = activity.blocked or self._waits_for(activity.index)
                self.unplaced.append(Unplaced(activity.pass_.key, why))
        self.unplaced.sort(key=lambda lost: self.problem.index[lost.key])

    def _waits_for(self, index: int) -> str:
        names = [
            self.problem.activities[before].pass_.key.step
            for before in self.problem.activities[index].before
            if before not in self.table.end
        ]
        return (
            message("waits for {step}, which has no place", step=names[0])
            if names
            else message("has no place")
        )

    def take_facts(self) -> None:
        """Lay what was logged; work under way is finished first (definitions 22, 23)."""
        problem, table = self.problem, self.table
        known = problem.index
        logged = {known[key]: entry for key, entry in problem.logged.items() if key in known}
        for index, entry in sorted(logged.items()):  # what lies below goes first
            start = minute_of(entry.start, up=False)
            if entry.end is not None:
                end = max(start + 1, minute_of(entry.end))
            else:
                one = problem.activities[index].pass_
                now = max(problem.now, start)
                end = now + max(one.minutes - (now - start), LEAST_LEFT)
                free = start + one.hands if one.alone else end
                table.time = max(table.time, free)
            table.pieces[index] = (Interval(start, end),)
            key = problem.activities[index].pass_.key
            done = Placement(key, (Interval(start, end),), entry.airbrush, logged=True)
            table.placements.append(done)
            table.lay(index, start, end)
        ends = {problem.activities[index].pass_.key: end for index, end in table.end.items()}
        for name, held in left_in_cups(problem.book, problem.calendar, table.time, ends).items():
            table.cups[name] = Cup(*held)
        for index in table.end:
            for after in problem.after[index]:
                self.waits[after] -= 1

    def _release(self, index: int) -> None:
        self.ready.discard(index)
        for after in self.problem.after[index]:
            self.waits[after] -= 1
            if self.waits[after] == 0 and after not in self.table.end:
                self._make_ready(after)

    def _make_ready(self, index: int) -> None:
        """Offer a pass whose forerunners are placed; no start before its floor is possible."""
        self.ready.add(index)
        if self.problem.activities[index].blocked:
            self._doomed.append(index)
        opens = gates_open(self.table, index, 0)
        self.floor[index] = 0 if opens is None else opens

    def _bury(self, index: int) -> None:
        """Give up a pass that fits nowhere any more, saying why."""
        activity = self.problem.activities[index]
        self.ready.discard(index)
        self.dead.add(index)
        self.unplaced.append(Unplaced(activity.pass_.key, self._why(index)))

    def _why(self, index: int) -> str:
        activity = self.problem.activities[index]
        if activity.blocked:
            return activity.blocked
        if self.problem.calendar.next_stretch(self.table.time) is None:
            return message("there is no more bench time; add an evening")
        for number in activity.gates:
            openings = self.table.windows(number)
            gate = self.problem.gates[number]
            shut = self.table.shut_before_open(number)
            if shut is None and (not openings or openings[-1].opens >= FOREVER):
                return message(
                    "the coat of {step} never gets there in this air: {why}",
                    step=gate.before.step,
                    why=gate.why,
                )
            if shut or openings[-1].closes <= self.table.time + activity.pass_.minutes:
                self.missed.add(index)
                return message(
                    "the window after {step} closes before it can be done", step=gate.before.step
                )
        if self._ended(index):
            return message("there is no more bench time; add an evening")
        air = self._air(activity)
        if air:
            return air
        clash = self._clash(activity)
        if clash:
            return clash
        if activity.allowed is not None:
            return message("its pin leaves no room; move or remove the pin")
        if activity.pass_.step.helper:
            return message("needs two people, and no session has a helper")
        if activity.smells and self.problem.book.bench_time.quiet:
            return message(
                "it smells for {minutes} minutes, and no session has room for them and "
                "{aired} more to air the room before quiet hours",
                minutes=activity.pass_.minutes,
                aired=AIRED,
            )
        return message(
            "no session is long enough for its {minutes} minutes", minutes=activity.pass_.hands
        )

    def _ended(self, index: int) -> bool:
        """Tell whether a pass can come no sooner than in the last session, and too late in that."""
        opens, calendar = gates_open(self.table, index, self.table.time), self.problem.calendar
        stretch = None if opens is None else calendar.next_stretch(opens)
        if opens is None or stretch is None:
            return opens is not None
        enough = self.problem.activities[index].pass_.hands <= stretch.interval.minutes
        return enough and calendar.next_stretch(stretch.interval.end) is None

    def _air(self, activity: Activity) -> str:
        """Say what the air has against a pass, if it never lets it be laid in bench time."""
        problem = self.problem
        airs = problem.fit_airs[activity.index]
        stretch = problem.calendar.next_stretch(self.table.time)
        for _ in range(AIR_TRIED if airs else 0):
            if stretch is None:
                break
            begin = max(stretch.interval.start, self.table.time)
            if problem.fair_from(activity.index, begin, 1, stretch.interval.end) < (
                stretch.interval.end
            ):
                return ""
            stretch = problem.calendar.next_stretch(stretch.interval.end)
        reason = next((text for air in airs if (text := air.against(self.table.time))), "")
        if not reason:
            return ""
        return message(
            "the air is unfit for it in all bench time: {reason}; warm or dry it, or tick "
            "“in any air” on the step",
            reason=reason,
        )

    def _clash(self, activity: Activity) -> str:
        """Say which two of a pass's gates leave it no moment together, if two do."""
        gates = [(number, self.table.windows(number)) for number in activity.gates]
        for (first, ones), (second, others) in combinations(gates, 2):
            if all(max(a.opens, b.opens) >= min(a.closes, b.closes) for a in ones for b in others):
                whys = [self.problem.gates[number].why for number in (first, second)]
                return message("no moment suits both: {one}; {other}", one=whys[0], other=whys[1])
        return ""

    def _choose(self) -> Fit | None:
        """Return the next piece of work; None after moving on or giving something up."""
        table = self.table
        for index in self._doomed:
            self._bury(index)
        self._doomed.clear()
        stretch = self._stretch
        if stretch is None or stretch.interval.end <= table.time:
            stretch = self._stretch = self.problem.calendar.next_stretch(table.time)
            if self.rival and stretch and not self.missed:
                self.beaten = self.rival.beats(stretch, self._hands)
                if self.beaten:
                    return None
        if stretch is None:
            for index in sorted(self.ready):
                self._bury(index)
            return None
        late = max(table.time, stretch.interval.start) + self.rule.patience
        waiting: list[Fit] = []
        refused: list[Fit] = []
        for index in self._in_turn(stretch, late + self._longest_lead):
            fit = fit_in(table, index, stretch, table.time)
            if fit is None:
                continue
            if fit.work > late:
                waiting.append(fit)
            elif self._keeps_windows(fit):
                return fit
            else:
                refused.append(fit)
        for fit in sorted(waiting, key=lambda fit: fit.work):
            if self._keeps_windows(fit):
                return fit
            refused.append(fit)
        self.idle_stretches += 1
        if refused and self.idle_stretches > PATIENT_STRETCHES:
            # Nothing keeps every window: the most urgent closing decides.
            return min(refused, key=lambda fit: (table.deadline(fit.index), fit.work))
        self._move_on(stretch)
        return None

    def _in_turn(self, stretch: Stretch, soon: int) -> Iterator[int]:
        """Yield the passes for which a stretch may have room, the rule's favourite first.

        What cannot begin by ``soon`` comes last: it is fitted only if nothing
        else can be done.
        """
        setups = self._setups()
        drawn = {i: self._turn(i, setups) for i in self.ready} if self.rule.noise else setups.turns
        for some in self._roomy(stretch, setups.lead, soon):
            turns = [drawn.get(i) or self._turn(i, setups) for i in some]
            heapify(turns)  # the first few are all that is mostly asked for
            while turns:
                yield heappop(turns)[1]

    def _roomy(
        self, stretch: Stretch, lead: dict[str, int], soon: int
    ) -> tuple[list[int], list[int]]:
        """Return the ready passes that a stretch is long enough for, by ``soon`` and later.

        Set-up and cleaning are counted in.  Most passes are sorted out here,
        at a fraction of the cost of fitting them.
        """
        table, floor, asks = self.table, self.floor, self.problem.frame.asks
        begin, end = max(table.time, stretch.interval.start), stretch.interval.end
        now: list[int] = []
        later: list[int] = []
        for index in self.ready:
            least, load = asks[index]
            start, opens = begin + lead[load], floor[index]
            if opens > start:  # noqa: PLR1730 - max() costs thrice as much
                start = opens
            if start + least <= end and index not in table.left:
                (now if opens <= soon else later).append(index)
        if table.left:
            now = [*table.left, *(i for i in now if not table.held_up(i))]
            later = [i for i in later if not table.held_up(i)]
        return now, later

    def _setups(self) -> _Setups:
        """Return the set-up for each load as the cups are at this moment."""
        held = tuple([(name, cup.coating) for name, cup in self.table.cups.items()])
        known = self._by_cups.get(held)
        if known is None:
            known = self._by_cups[held] = _Setups({"": 0}, {"": 0.0}, {})
            for load in self.problem.frame.loads:
                if load:
                    known.lead[load], known.worth[load] = self._setup(load)
        return known

    def _setup(self, load: str) -> tuple[int, float]:
        table, own = self.table, self.problem.book.gear.airbrushes
        minutes = min(
            [setup_for(table, one, table.cups.get(one.name, EMPTY), load)[1] for one in own]
        )
        worth = -self.rule.setup * minutes if minutes else self.rule.same_load
        return min(minutes, self._anew), worth

    def _move_on(self, stretch: Stretch) -> None:
        """Leave a stretch in which nothing more can be done, for the next that helps."""
        put_away(self.table)
        later = stretch.interval.end
        following = self.problem.calendar.next_stretch(later)
        starts = []
        for index in sorted(self.ready, key=lambda one: (self.floor[one], one)):
            if self.table.held_up(index):
                continue
            fit = earliest_fit(self.table, index, later)
            if fit is None:
                self._bury(index)
            else:
                starts.append(fit.stretch.interval.start)
                if fit.stretch == following:
                    break  # sooner it cannot be
        self.table.time = max(min(starts, default=later), later)

    def _turn(self, index: int, setups: _Setups) -> _Turn:
        """Return when an activity is to be tried, among those that are ready."""
        problem, rule, table = self.problem, self.rule, self.table
        activity = problem.activities[index]
        tail = problem.tails[index]
        value = float(tail)
        own = problem.due_of[index]
        if own is not None:
            due = problem.dues[own]
            over, weight = max(-20_000, table.time + tail - due.at), min(due.weight, 10)
            # While there is time a weight makes it seem less, and never more.
            value += rule.due * (over * weight if over > 0 else over / weight)
        value += setups.worth[activity.pass_.load]
        if rule.noise:
            value += self.random.gauss(0, rule.noise)
        bound = activity.closing or activity.together
        deadline = table.deadline(index) if bound else FOREVER
        urgent = index in table.left or deadline < table.time + SOON
        allowed = activity.allowed
        pinned = allowed is not None and not any(one.end >= LAST_MINUTE for one in allowed)
        turn = (not urgent, deadline if urgent else 0, not pinned, -value), index
        if not (bound or rule.noise or own is not None or urgent):
            setups.turns[index] = turn  # the same whenever the cups are
        return turn

    def _keeps_windows(self, fit: Fit) -> bool:
        return keeps_windows(self.table, fit, self.dead, self.guarded)
