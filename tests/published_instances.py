"""Published scheduling instances with known answers, for the plain face of the engine.

The numbers are as published; where a table prints them in columns they stand
here one after the other.  Sources:

- H. Fisher and G. L. Thompson (1963), "Probabilistic learning combinations of
  local job-shop scheduling rules", in J. F. Muth and G. L. Thompson (eds),
  Industrial Scheduling, Prentice-Hall, 225-251: six jobs on six machines.
- R. Kolisch and A. Sprecher (1997), "PSPLIB - a project scheduling problem
  library", European Journal of Operational Research 96, 205-216: sets j30
  and j60 with their least makespans.
- R. Kolisch, C. Schwindt and A. Sprecher (1999), "Benchmark instances for
  project scheduling problems", in J. Weglarz (ed.), Project Scheduling,
  Kluwer, 197-212: least and greatest time lags, sets j10, j30 and ubo50.
"""

from __future__ import annotations

from dataclasses import dataclass

from planner.schedule.optimise.resource_constrained import PlainProblem, TimeLag


@dataclass(frozen=True)
class Published:
    """An instance and what is printed of its least makespan.

    ``low`` and ``high`` are the published bounds; equal where it is settled,
    None where the instance is known to have no schedule.
    """

    problem: PlainProblem
    low: int | None
    high: int | None


def job_shop(text: str) -> PlainProblem:
    """Read one job per line, as pairs of machine (from 0) and duration."""
    jobs = [[int(number) for number in line.split()] for line in text.split("\n") if line.strip()]
    machines = len(jobs[0]) // 2
    durations: list[int] = []
    demands: list[tuple[int, ...]] = []
    lags: list[TimeLag] = []
    for job in jobs:
        for at in range(0, len(job), 2):
            if at:
                lags.append(TimeLag(len(durations) - 1, len(durations), durations[-1]))
            durations.append(job[at + 1])
            demands.append(tuple(int(machine == job[at]) for machine in range(machines)))
    return PlainProblem(tuple(durations), tuple(demands), (1,) * machines, tuple(lags))


def project(text: str) -> PlainProblem:
    """Read counts of activities and resources and the capacities, then each activity.

    That is its duration, its demands, the number of its successors and these,
    counted from 1.  The first and the last activity are dummies.
    """
    numbers = iter([int(number) for number in text.split()])
    count, resources = next(numbers), next(numbers)
    capacities = tuple(next(numbers) for _ in range(resources))
    durations: list[int] = []
    demands: list[tuple[int, ...]] = []
    lags: list[TimeLag] = []
    for index in range(count):
        durations.append(next(numbers))
        demands.append(tuple(next(numbers) for _ in range(resources)))
        after = [next(numbers) - 1 for _ in range(next(numbers))]
        lags += [TimeLag(index, other, durations[index]) for other in after]
    assert next(numbers, None) is None, "numbers are left over"
    return PlainProblem(tuple(durations), tuple(demands), capacities, tuple(lags))


def project_with_lags(text: str) -> PlainProblem:
    """Read successors with their lags from start to start, then durations and demands.

    Each activity (two dummies beside those counted) is its number, its one
    mode, the number of successors, these, and as many lags, a negative one
    being the greatest lag the other way; then its number, mode, duration and
    demands; the capacities come last.
    """
    numbers = iter([int(number) for number in text.split()])
    count, resources, _, _ = (next(numbers) for _ in range(4))
    lags: list[TimeLag] = []
    for _ in range(count + 2):
        index, _, followers = next(numbers), next(numbers), next(numbers)
        after = [next(numbers) for _ in range(followers)]
        lags += [TimeLag(index, other, next(numbers)) for other in after]
    durations: list[int] = []
    demands: list[tuple[int, ...]] = []
    for index in range(count + 2):
        assert (next(numbers), next(numbers)) == (index, 1), "the columns do not fit"
        durations.append(next(numbers))
        demands.append(tuple(next(numbers) for _ in range(resources)))
    capacities = tuple(next(numbers) for _ in range(resources))
    assert next(numbers, None) is None, "numbers are left over"
    return PlainProblem(tuple(durations), tuple(demands), capacities, tuple(lags))


SIX_BY_SIX = """
2 1 0 3 1 6 3 7 5 3 4 6
1 8 2 5 4 10 5 10 0 10 3 4
2 5 3 4 5 8 0 9 1 1 4 7
1 5 0 5 2 5 3 3 4 8 5 9
2 9 1 3 4 5 5 4 0 3 3 1
1 3 3 3 5 9 0 10 4 4 2 1
"""

J303_9 = """
32 4 15 21 11 13 0 0 0 0 0 3 2 3 4 1 0 1 0 0 3 9 14 22 6 0 7 0 0 3 5 13 25 1 0 0 6 0 2 7 24 5 0 7
0 0 2 6 10 3 0 7 0 0 3 8 19 22 1 7 0 0 0 3 11 12 18 7 1 0 0 0 2 16 21 7 0 0 0 3 2 17 30 4 0 0 0 4
1 31 5 0 0 0 2 1 27 3 0 0 4 0 1 16 7 0 0 4 0 2 15 29 3 9 0 0 0 1 27 2 0 0 0 10 1 22 1 0 0 6 0 1
20 5 0 10 0 0 1 28 9 7 0 0 0 1 23 7 7 0 0 0 1 27 10 0 0 1 0 1 26 7 8 0 0 0 1 26 1 0 0 0 4 1 24 9
9 0 0 0 2 26 30 2 0 0 0 9 1 31 4 0 8 0 0 1 30 10 0 0 6 0 2 28 29 10 0 0 7 0 1 28 9 0 0 0 2 1 31 5
9 0 0 0 1 32 5 0 0 0 9 1 32 9 0 0 0 8 1 32 0 0 0 0 0 0
"""

J307_1 = """
32 4 18 32 18 10 0 0 0 0 0 3 2 3 4 6 2 0 10 0 2 6 28 2 9 0 3 2 1 17 8 2 3 0 0 3 5 8 9 2 0 8 0 0 2
11 21 6 4 5 0 1 2 7 15 4 1 0 7 0 2 10 20 5 0 0 0 4 2 12 19 3 9 10 5 2 2 25 30 10 0 0 2 0 2 16 18
2 1 8 1 0 1 14 7 1 0 1 0 1 13 4 0 0 3 3 2 18 26 3 6 0 8 0 2 18 29 9 0 10 2 7 1 19 3 0 8 4 0 1 24
6 0 7 0 0 1 26 1 8 0 0 0 1 30 3 2 0 0 6 1 23 6 0 1 0 0 2 23 25 1 0 8 0 2 2 22 23 10 10 3 0 0 2 25
29 3 0 0 5 9 1 30 6 0 0 0 2 2 26 27 5 2 0 3 0 1 27 10 0 4 6 0 1 31 6 0 2 4 0 1 31 8 3 10 4 0 1 29
10 9 6 3 0 1 32 8 3 7 2 0 1 32 10 0 0 0 4 1 32 0 0 0 0 0 0
"""

J3032_4 = """
32 4 28 39 31 27 0 0 0 0 0 3 2 3 4 10 4 8 10 10 3 5 12 15 9 9 1 1 4 1 24 7 10 9 10 9 1 19 10 5 7
3 1 3 6 7 18 4 5 9 10 2 1 26 9 2 3 7 10 3 8 19 24 7 7 1 2 8 3 9 10 20 10 8 7 4 5 3 21 22 26 6 10
1 8 1 3 11 13 21 3 3 10 9 7 2 17 22 10 7 6 7 1 3 14 16 20 2 1 8 10 2 3 14 17 23 2 10 8 4 10 2 22
27 3 5 1 8 10 1 18 9 7 4 10 1 2 18 29 8 1 5 4 10 1 28 6 1 4 10 10 2 21 25 2 8 6 3 8 1 30 6 10 7 5
9 2 23 31 10 5 7 8 4 1 23 8 2 10 6 2 2 25 28 6 2 2 7 3 1 30 7 1 4 5 1 3 25 26 29 9 2 1 2 4 1 31 3
7 7 6 5 1 31 10 6 10 7 1 2 28 30 1 7 5 6 5 1 29 5 2 3 4 3 1 32 4 6 7 7 9 1 32 5 4 6 10 6 1 32 0 0
0 0 0 0
"""

J604_6 = """
62 4 23 31 16 24 0 0 0 0 0 3 2 3 4 9 0 0 0 4 3 6 11 27 2 0 1 0 0 3 5 10 17 5 2 0 0 0 3 7 13 28 1
0 2 0 0 3 12 15 19 7 5 0 0 0 3 8 9 18 2 0 5 0 0 1 36 5 10 0 0 0 2 20 34 4 0 0 0 1 1 44 2 0 0 5 0
1 57 9 0 3 0 0 3 14 30 35 6 0 0 0 7 3 22 32 33 4 3 0 0 0 2 16 37 1 0 9 0 0 1 29 2 0 0 4 0 2 33 35
4 5 0 0 0 1 59 9 0 0 0 2 2 24 45 5 0 0 7 0 1 42 5 0 0 4 0 2 21 31 1 0 0 10 0 1 23 1 0 10 0 0 1 46
8 0 1 0 0 1 49 5 0 7 0 0 2 26 55 5 0 0 0 1 2 25 43 8 0 5 0 0 2 44 58 1 1 0 0 0 1 29 1 0 0 2 0 3
29 52 61 3 0 0 0 5 3 41 49 57 3 0 0 0 10 1 53 10 0 0 0 4 1 52 7 0 0 1 0 1 58 1 4 0 0 0 1 58 6 0 0
1 0 1 42 8 0 0 0 1 1 38 4 0 0 0 1 1 37 1 0 0 0 6 1 39 6 0 8 0 0 1 43 10 0 0 0 2 2 47 48 7 2 0 0 0
1 40 7 0 7 0 0 1 46 5 7 0 0 0 1 50 6 0 0 4 0 1 59 9 4 0 0 0 1 54 6 0 0 0 3 1 56 5 0 7 0 0 1 57 8
6 0 0 0 1 54 3 0 0 0 2 2 51 53 4 4 0 0 0 1 60 7 0 0 0 6 2 50 51 5 0 0 3 0 1 59 7 0 0 7 0 1 56 7 0
5 0 0 2 53 55 9 0 0 9 0 1 54 2 9 0 0 0 1 56 2 1 0 0 0 1 60 9 0 8 0 0 1 60 5 0 10 0 0 1 61 3 3 0 0
0 1 61 3 0 0 2 0 1 62 9 0 0 0 8 1 62 7 2 0 0 0 1 62 0 0 0 0 0 0
"""

J10_PSP2 = """
10 5 0 0 0 1 5 3 2 4 1 5 0 0 0 0 0 1 1 1 7 0 2 1 1 10 6 3 1 1 8 -3 4 1 1 6 3 5 1 1 8 11 6 1 1 10
2 7 1 2 1 10 -1 0 8 1 1 9 5 9 1 2 11 5 8 -17 10 1 2 2 11 -10 9 11 1 0 0 1 0 0 0 0 0 0 1 1 4 3 4 5
4 0 2 1 9 0 3 0 2 5 3 1 10 0 3 4 1 0 4 1 1 0 5 0 0 0 5 1 9 0 0 1 0 4 6 1 10 4 3 4 3 4 7 1 2 2 0 0
4 0 8 1 9 0 0 0 0 5 9 1 8 1 0 0 0 2 10 1 9 3 3 0 0 0 11 1 0 0 0 0 0 0 4 5 5 5 5
"""

J10_PSP6 = """
10 5 0 0 0 1 6 4 2 3 6 1 5 0 0 0 0 0 0 1 1 3 8 9 10 2 -1 4 2 1 1 6 -4 3 1 2 9 8 9 -3 4 1 2 10 7 5
17 5 1 3 10 7 11 -9 -5 10 6 1 2 8 2 13 -2 7 1 2 4 11 -19 5 8 1 1 11 1 9 1 1 11 9 10 1 2 1 11 -4 6
11 1 0 0 1 0 0 0 0 0 0 1 1 2 0 0 0 0 3 2 1 5 0 0 1 5 0 3 1 4 3 5 0 4 2 4 1 6 1 2 0 0 5 5 1 10 5 3
0 0 0 6 1 10 0 0 2 5 5 7 1 5 5 0 0 5 4 8 1 1 0 4 0 1 2 9 1 9 1 0 5 1 0 10 1 6 0 1 0 0 0 11 1 0 0
0 0 0 0 5 5 5 5 5
"""

J30_PSP149 = """
30 5 0 0 0 1 14 1 9 5 6 2 4 10 3 14 11 13 7 8 12 0 0 0 0 0 0 0 0 0 0 0 0 0 0 1 1 3 19 27 25 0 3 0
2 1 1 23 4 3 1 1 18 0 4 1 1 18 6 5 1 1 30 -1 6 1 3 15 19 25 8 7 3 7 1 3 25 29 19 -2 6 4 8 1 2 26
19 16 20 9 1 2 20 16 -6 -6 10 1 3 29 19 25 -2 -2 4 11 1 3 28 17 19 10 -4 10 12 1 2 24 20 -1 6 13
1 3 19 25 15 -5 4 15 14 1 1 18 0 15 1 3 22 13 17 0 -18 2 16 1 2 9 24 -19 10 17 1 3 24 20 25 6 5
-21 18 1 3 4 14 30 -11 -3 2 19 1 2 11 20 -12 2 20 1 1 21 2 21 1 4 20 28 23 16 -32 -58 10 -54 22 1
2 20 28 -1 1 23 1 7 21 28 18 26 22 24 20 -27 -66 1 -67 -60 -67 -36 24 1 2 26 16 0 -48 25 1 2 22
17 15 18 26 1 1 21 20 27 1 3 29 15 10 -14 11 -13 28 1 2 22 16 -54 13 29 1 1 27 12 30 1 2 5 31 -1
8 31 1 0 0 1 0 0 0 0 0 0 1 1 2 1 0 0 1 0 2 1 2 4 5 0 2 1 3 1 8 1 2 4 1 1 4 1 2 0 0 2 1 2 5 1 3 0
2 4 5 1 6 1 3 0 4 0 0 1 7 1 5 3 2 2 2 4 8 1 9 4 0 1 4 2 9 1 8 1 5 1 0 2 10 1 3 1 5 2 1 1 11 1 5 4
4 2 5 5 12 1 3 3 5 4 3 3 13 1 6 3 3 0 4 0 14 1 4 5 1 4 2 2 15 1 4 4 2 1 5 5 16 1 7 4 0 1 0 3 17 1
2 0 0 4 3 1 18 1 9 0 4 3 2 0 19 1 5 4 5 3 2 4 20 1 3 2 1 0 3 4 21 1 6 0 0 0 0 1 22 1 2 5 4 0 1 1
23 1 1 2 5 3 2 2 24 1 3 5 1 1 1 0 25 1 10 5 0 5 3 0 26 1 10 1 1 4 5 5 27 1 8 5 4 0 3 3 28 1 8 2 0
5 5 1 29 1 6 5 0 0 0 0 30 1 8 0 3 5 0 3 31 1 0 0 0 0 0 0 11 12 9 9 9
"""

UBO50_PSP89 = """
50 5 0 0 0 1 8 2 38 4 5 6 1 37 3 0 0 0 0 0 0 0 0 1 1 3 30 50 29 0 22 13 2 1 3 9 35 39 0 -6 0 3 1
4 24 49 41 15 7 4 10 -1 4 1 4 11 33 46 47 -1 2 6 6 5 1 3 45 48 49 15 -2 11 6 1 3 46 37 10 12 -3 6
7 1 3 19 12 14 24 1 17 8 1 2 33 26 -63 1 9 1 1 47 16 10 1 5 22 28 34 7 16 2 -1 -1 -104 4 11 1 7
35 16 23 21 27 43 42 20 -162 -6 16 -100 -148 1 12 1 3 9 47 22 16 8 17 13 1 6 47 12 49 48 15 45 0
-164 4 -6 -4 10 14 1 4 17 49 41 20 1 3 2 6 15 1 1 49 28 16 1 5 44 28 18 7 11 -132 4 20 -87 14 17
1 4 15 20 23 14 22 26 -9 -24 18 1 3 15 26 30 16 -4 8 19 1 5 39 27 36 1 28 -111 0 27 -162 0 20 1 2
35 42 5 0 21 1 4 15 13 49 23 5 6 -4 14 22 1 4 9 48 23 47 5 10 1 12 23 1 6 49 13 47 48 25 45 5 0
-1 5 -125 6 24 1 3 50 41 48 0 0 1 25 1 6 46 22 36 45 9 15 22 13 0 21 0 16 26 1 5 23 15 47 21 48
23 16 -4 20 -7 27 1 1 10 13 28 1 6 23 19 37 32 10 18 -7 -80 -109 -6 -121 22 29 1 3 44 45 31 6 6 2
30 1 5 25 47 26 15 13 -1 3 0 6 2 31 1 3 42 43 46 2 7 11 32 1 4 45 26 40 48 -4 -6 -6 6 33 1 3 9 14
34 2 1 4 34 1 5 22 36 41 9 15 0 2 -158 2 0 35 1 4 48 45 13 8 3 3 0 2 36 1 3 12 47 23 2 0 3 37 1 3
8 12 31 -4 14 -3 38 1 3 41 47 23 18 10 -1 39 1 3 15 29 38 5 23 -2 40 1 2 33 47 14 -2 41 1 1 34 0
42 1 7 46 8 26 45 18 13 48 26 16 -4 26 20 -6 13 43 1 4 7 14 39 11 13 12 -140 -2 44 1 2 33 16 0 10
45 1 3 49 48 21 -4 18 -176 46 1 2 51 18 8 -119 47 1 2 24 51 -147 6 48 1 4 34 13 51 24 -148 -177 2
-139 49 1 1 51 7 50 1 1 51 2 51 1 0 0 1 0 0 0 0 0 0 1 1 8 3 1 6 0 2 2 1 7 0 8 1 1 7 3 1 5 4 9 0 3
3 4 1 4 7 1 10 4 0 5 1 9 7 5 6 0 5 6 1 7 0 6 0 4 9 7 1 8 5 0 9 0 4 8 1 7 2 0 9 9 0 9 1 8 0 9 5 0
0 10 1 3 4 2 6 6 6 11 1 7 5 9 0 2 5 12 1 6 1 2 9 2 7 13 1 9 0 8 3 4 3 14 1 3 6 6 0 7 0 15 1 10 1
0 5 3 4 16 1 7 3 10 5 10 0 17 1 10 4 5 5 3 3 18 1 7 0 0 0 0 3 19 1 9 0 8 2 0 0 20 1 2 10 7 6 8 5
21 1 5 9 3 1 2 3 22 1 6 0 0 8 0 0 23 1 3 0 6 0 0 0 24 1 2 0 0 0 6 6 25 1 8 10 2 8 1 10 26 1 8 2 5
1 4 0 27 1 5 6 0 3 9 0 28 1 8 1 3 9 10 6 29 1 2 7 0 0 0 5 30 1 3 10 8 7 7 6 31 1 5 8 10 10 5 6 32
1 8 2 0 0 4 3 33 1 2 5 1 7 2 8 34 1 1 3 9 7 7 10 35 1 1 0 9 3 0 0 36 1 1 2 9 0 5 0 37 1 7 2 5 9 1
6 38 1 6 0 8 8 4 1 39 1 8 1 0 6 2 3 40 1 5 7 1 3 8 8 41 1 8 3 0 8 7 1 42 1 10 3 5 0 3 1 43 1 5 2
1 3 1 1 44 1 9 2 6 1 0 0 45 1 6 10 1 7 9 1 46 1 8 5 10 0 4 3 47 1 6 4 0 0 6 4 48 1 2 7 2 3 10 8
49 1 7 2 0 7 6 0 50 1 2 4 2 1 3 7 51 1 0 0 0 0 0 0 17 27 28 19 23
"""


PUBLISHED = {
    "Fisher and Thompson 6x6": Published(job_shop(SIX_BY_SIX), 55, 55),
    "j303_9": Published(project(J303_9), 65, 65),
    "j307_1": Published(project(J307_1), 55, 55),
    "j3032_4": Published(project(J3032_4), 68, 68),
    "j604_6": Published(project(J604_6), 71, 71),
    "j30 psp149": Published(project_with_lags(J30_PSP149), 95, 105),
    "ubo50 psp89": Published(project_with_lags(UBO50_PSP89), 218, 218),
    "j10 psp2": Published(project_with_lags(J10_PSP2), None, None),
    "j10 psp6": Published(project_with_lags(J10_PSP6), None, None),
}
