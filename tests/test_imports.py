"""No module imports itself by way of others, and no two public classes have one name.

The contract of import-linter holds the layers; this holds single modules.
"""

from __future__ import annotations

import ast
from pathlib import Path

import networkx as nx

ROOT = Path(__file__).parent.parent


def imports() -> nx.DiGraph:
    """Return which module imports which, wherever in its text it does so."""
    paths = [
        path for folder in ("app", "planner", "storage") for path in (ROOT / folder).rglob("*.py")
    ]
    names = {
        ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__"): path
        for path in paths
    }
    graph = nx.DiGraph()
    for name, path in names.items():
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            wanted: list[str] = []
            if isinstance(node, ast.ImportFrom) and node.module:
                of = node.module
                wanted = [f"{of}.{alias.name}" for alias in node.names]
                wanted = [each if each in names else of for each in wanted]
            elif isinstance(node, ast.Import):
                wanted = [alias.name for alias in node.names]
            graph.add_edges_from((name, each) for each in wanted if each in names and each != name)
    return graph


def test_no_circle_of_imports() -> None:
    graph = imports()
    assert graph.number_of_edges() > 1000  # it has seen the program
    circles = [sorted(group) for group in nx.strongly_connected_components(graph) if len(group) > 1]
    assert not circles


def public_classes() -> dict[str, list[str]]:
    """Return where each public class is made, by its name."""
    homes: dict[str, list[str]] = {}
    for folder in ("app", "planner", "storage"):
        for path in (ROOT / folder).rglob("*.py"):
            for node in ast.parse(path.read_text(encoding="utf-8")).body:
                if isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
                    homes.setdefault(node.name, []).append(str(path.relative_to(ROOT)))
    return homes


def test_no_two_public_classes_of_one_name() -> None:
    homes = public_classes()
    assert len(homes) > 500  # it has seen the program
    assert {name: paths for name, paths in homes.items() if len(paths) > 1} == {}
