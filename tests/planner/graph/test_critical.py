"""The critical path method against published and independently solved networks."""

from __future__ import annotations

from dataclasses import astuple

import networkx as nx
import pytest
from drawn_examples import drawn
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linprog

from planner.graph.critical import Infeasible, Lag, Link, critical_path

WIDGET_DURATIONS = {
    "Approve Plan": 5,
    "Drawings": 10,
    "Study Market": 5,
    "Write Specs": 5,
    "Prototype": 15,
    "Mkt. Strat.": 10,
    "Materials": 10,
    "Facility": 10,
    "Init. Prod.": 10,
    "Evaluate": 10,
    "Test Market": 15,
    "Changes": 5,
    "Production": 0,
    "Marketing": 0,
}
WIDGET_ARCS = {
    "Approve Plan": ["Drawings", "Study Market", "Write Specs"],
    "Drawings": ["Prototype"],
    "Study Market": ["Mkt. Strat."],
    "Write Specs": ["Prototype"],
    "Prototype": ["Materials", "Facility"],
    "Mkt. Strat.": ["Test Market", "Marketing"],
    "Materials": ["Init. Prod."],
    "Facility": ["Init. Prod."],
    "Init. Prod.": ["Test Market", "Marketing", "Evaluate"],
    "Evaluate": ["Changes"],
    "Test Market": ["Changes"],
    "Changes": ["Production"],
}


def network(durations, arcs, lags=None):
    """Build a graph; arcs without a lag of their own are plain finish-start."""
    graph = nx.DiGraph()
    for node, minutes in durations.items():
        graph.add_node(node, minutes=minutes)
    for before, afters in arcs.items():
        for after in afters:
            graph.add_edge(before, after, lags=(lags or {}).get((before, after), (Lag(),)))
    return graph


def starts(found):
    return {node: times.early_start for node, times in found.times.items()}


def total_floats(found):
    return {node: times.total_float for node, times in found.times.items()}


def test_widget_manufacture_has_the_published_floats():
    """SAS/OR User's Guide, Project Management, PROC CPM, Examples 4.1 to 4.3.

    The guide prints dates; the floats of 30, 5 and 30 days and the end on day
    70 are printed, the other days follow from its calendar.
    """
    found = critical_path(network(WIDGET_DURATIONS, WIDGET_ARCS))
    columns = {node: astuple(times) for node, times in found.times.items()}
    assert found.finish == 70
    assert columns == {
        "Approve Plan": (0, 0),
        "Drawings": (5, 0),
        "Study Market": (5, 30),
        "Write Specs": (5, 5),
        "Prototype": (15, 0),
        "Mkt. Strat.": (10, 30),
        "Materials": (30, 0),
        "Facility": (30, 0),
        "Init. Prod.": (40, 0),
        "Evaluate": (50, 5),
        "Test Market": (50, 0),
        "Changes": (65, 0),
        "Production": (70, 0),
        "Marketing": (50, 20),
    }
    assert found.critical[:3] == ("Approve Plan", "Drawings", "Prototype")
    assert set(found.critical) == {node for node, row in columns.items() if row[1] == 0}


def test_widget_manufacture_with_lags():
    """The same guide, Example 4.11: network and lags as printed there.

    The days (working-day index) were recomputed from them by hand and with
    networkx; the printed output was not seen.
    """
    nine_days = (Lag(9, link=Link.START_START),)
    lags = {
        ("Prototype", "Materials"): nine_days,
        ("Prototype", "Facility"): nine_days,
        ("Facility", "Init. Prod."): (Lag(2),),
    }
    found = critical_path(network(WIDGET_DURATIONS, WIDGET_ARCS, lags))
    assert found.finish == 66
    assert {
        node: starts(found)[node]
        for node in ("Materials", "Facility", "Init. Prod.", "Test Market", "Evaluate", "Marketing")
    } == {
        "Materials": 24,
        "Facility": 24,
        "Init. Prod.": 36,
        "Test Market": 46,
        "Evaluate": 46,
        "Marketing": 46,
    }
    assert starts(found)["Changes"] == 61
    assert {node: float_ for node, float_ in total_floats(found).items() if float_} == {
        "Materials": 2,
        "Study Market": 26,
        "Mkt. Strat.": 26,
        "Write Specs": 5,
        "Evaluate": 5,
        "Marketing": 20,
    }


def test_cpmexample1_of_the_critpath_vignette():
    """CRAN package critpath 0.2.2, vignette "CPM and PERT", data set cpmexample1 (printed)."""
    durations = {"A": 3, "B": 2, "C": 5, "D": 1, "E": 1, "F": 3}
    found = critical_path(network(durations, {"A": "D", "B": "E", "C": "F", "D": "F", "E": "F"}))
    assert found.finish == 8
    assert found.critical == ("C", "F")
    assert total_floats(found) == {"A": 1, "B": 2, "C": 0, "D": 1, "E": 2, "F": 0}


def test_nine_classroom_activities():
    """Hendrickson, Project Management for Construction, chapter 10: data from memory."""
    durations = {"A": 4, "B": 3, "C": 8, "D": 7, "E": 9, "F": 12, "G": 2, "H": 5, "I": 6}
    arcs = {"A": "CD", "B": "EF", "C": "EF", "D": "GH", "E": "GH", "F": "I", "G": "I"}
    found = critical_path(network(durations, arcs))
    assert found.finish == 30
    assert found.critical == ("A", "C", "F", "I")
    assert total_floats(found) == dict(zip("ABCDEFGHI", (0, 9, 0, 11, 1, 0, 1, 4, 0), strict=True))


CHAIN = {"prime": 1, "base": 2, "clear": 1, "decal": 2, "matte": 1}
CHAIN_ARCS = {"prime": ["base"], "base": ["clear"], "clear": ["decal"], "decal": ["matte"]}
CHAIN_LAGS = {
    ("prime", "base"): (Lag(4, most=24),),
    ("base", "clear"): (Lag(6),),
    ("clear", "decal"): (Lag(12),),
    ("decal", "matte"): (Lag(24),),
}


def test_a_finishing_chain_with_least_and_greatest_lags():
    """Constructed; solved apart by a linear programme (scipy) and by hand, in hours."""
    found = critical_path(network(CHAIN, CHAIN_ARCS, CHAIN_LAGS))
    assert list(starts(found).values()) == [0, 5, 13, 26, 52]
    assert found.finish == 53


def test_its_infeasible_twin_is_named():
    """Clear needs 13 h after prime; at most 12 h are one too few."""
    arcs = {**CHAIN_ARCS, "prime": ["base", "clear"]}
    lags = {**CHAIN_LAGS, ("prime", "clear"): (Lag(0, most=12, link=Link.START_START),)}
    with pytest.raises(Infeasible, match="prime") as refusal:
        critical_path(network(CHAIN, arcs, lags))
    assert set(refusal.value.cycle) == {"prime", "base", "clear"}
    assert refusal.value.excess == 1
    lags["prime", "clear"] = (Lag(0, most=13, link=Link.START_START),)
    assert critical_path(network(CHAIN, arcs, lags)).finish == 53


@pytest.mark.parametrize("finish_finish", [4, 6])
def test_precedence_diagram_with_all_kinds_of_lag(finish_finish):
    """Constructed: A->B SS+3 and FF+4, B->C FS+2, C within 10 (or 7) of A's finish."""
    graph = network(
        {"A": 5, "B": 6, "C": 4},
        {"A": "BC", "B": "C"},
        {
            ("A", "B"): (
                Lag(3, link=Link.START_START),
                Lag(finish_finish, link=Link.FINISH_FINISH),
            ),
            ("B", "C"): (Lag(2),),
            ("A", "C"): (Lag(most=10 if finish_finish == 4 else 7),),
        },
    )
    if finish_finish == 4:
        found = critical_path(graph)
        assert starts(found) == {"A": 0, "B": 3, "C": 11}
        assert found.finish == 15
    else:
        with pytest.raises(Infeasible):
            critical_path(graph)


def test_a_greatest_lag_pulls_the_earlier_work_later():
    """B waits for C until 20; A, at most 5 before B, can then not begin at 0."""
    graph = network(
        {"A": 1, "B": 1, "C": 20}, {"A": "B", "C": "B"}, {("A", "B"): (Lag(0, most=5),)}
    )
    assert starts(critical_path(graph)) == {"A": 14, "B": 20, "C": 0}


def test_releases_and_a_date():
    graph = network({"A": 2, "B": 3}, {"A": "B"})
    found = critical_path(graph, release={"A": 10}, finish=17)
    assert found.finish == 15
    assert total_floats(found) == {"A": 2, "B": 2}
    late = critical_path(graph, release={"A": 10}, finish=14)
    assert total_floats(late) == {"A": -1, "B": -1}
    assert late.critical == ("A", "B")


def test_nothing_to_do_ends_at_once():
    assert critical_path(nx.DiGraph()).finish == 0


LINKS = {
    Link.FINISH_START: lambda d, i, j: d[i],
    Link.START_START: lambda d, i, j: 0,
    Link.FINISH_FINISH: lambda d, i, j: d[i] - d[j],
}


@st.composite
def networks(draw):
    count = draw(st.integers(2, 7))
    durations = {node: draw(st.integers(0, 9)) for node in range(count)}
    graph = network(durations, {})
    for i in range(count):
        for j in range(i + 1, count):
            if draw(st.booleans()):
                least = draw(st.integers(-2, 6))
                most = draw(st.none() | st.integers(least, least + 8))
                graph.add_edge(i, j, lags=(Lag(least, most, draw(st.sampled_from(list(Link)))),))
    return graph


@drawn(60)
@given(networks())
def test_any_network_agrees_with_a_linear_programme(graph):
    """Earliest starts minimise the sum of starts, latest ones maximise it (scipy, HiGHS)."""
    count = len(graph)
    durations = [graph.nodes[node]["minutes"] for node in range(count)]
    rows, bounds = [], []
    for i, j, lags in graph.edges(data="lags"):
        for lag in lags:
            offset = LINKS[lag.link](durations, i, j)
            row = [0] * count
            row[i], row[j] = 1, -1
            rows.append(row)
            bounds.append(-(offset + lag.least))
            if lag.most is not None:
                rows.append([-value for value in row])
                bounds.append(offset + lag.most)
    limits = {"A_ub": rows or None, "b_ub": bounds or None}
    earliest = linprog([1] * count, **limits, bounds=(0, None))
    try:
        found = critical_path(graph)
    except Infeasible:
        assert earliest.status == 2  # scipy: proven infeasible
        return
    assert [found.times[node].early_start for node in range(count)] == pytest.approx(earliest.x)
    upper = [(0, found.finish - duration) for duration in durations]
    latest = linprog([-1] * count, **limits, bounds=upper)
    late = [found.times[node].early_start + found.times[node].total_float for node in range(count)]
    assert late == pytest.approx(latest.x)
    assert all(times.total_float >= 0 for times in found.times.values())
