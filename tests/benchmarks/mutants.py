"""Small faults put into a module by rule, one at a time: what `mutation.py` draws from.

A mutant changes one node of a module's syntax tree:

- a comparison: to its neighbour at the boundary (``<`` to ``<=``) or to its opposite (``<`` to
  ``>=``), ``==`` to ``!=``, ``is`` to ``is not``, ``in`` to ``not in``;
- a number: one more and one less, or a tenth more and less where it has a decimal point;
- ``and`` to ``or`` and back; the sign of a sum, or a product for a quotient; a minus left out;
- ``min`` to ``max`` and back;
- a returned ``True`` to ``False`` and back.

Left alone, since nothing that the planner answers hangs on it: annotations and decorators (types,
slots, sizes of caches), ``if TYPE_CHECKING``, asserts and what is raised (they document what
cannot be), and whatever stands within a formatted string or is added to one (wording, indices of
what a message names).
"""

from __future__ import annotations

import ast
import hashlib
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

BOUNDARY = {ast.Lt: ast.LtE, ast.LtE: ast.Lt, ast.Gt: ast.GtE, ast.GtE: ast.Gt}
OPPOSITE = {
    ast.Lt: ast.GtE,
    ast.LtE: ast.Gt,
    ast.Gt: ast.LtE,
    ast.GtE: ast.Lt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
}
SIGN = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.FloorDiv: ast.Mult,
}
SWAPPED = {"min": "max", "max": "min"}
SIGNS: dict[type[ast.AST], str] = {
    ast.Lt: "<",
    ast.LtE: "<=",
    ast.Gt: ">",
    ast.GtE: ">=",
    ast.Eq: "==",
    ast.NotEq: "!=",
    ast.Is: "is",
    ast.IsNot: "is not",
    ast.In: "in",
    ast.NotIn: "not in",
    ast.Add: "+",
    ast.Sub: "-",
    ast.Mult: "*",
    ast.Div: "/",
    ast.FloorDiv: "//",
}
TENTH = 0.1

Change = Callable[[ast.AST], None]


@dataclass(frozen=True)
class Mutant:
    """One fault.

    ``key`` names it without a line number, so that it outlasts edits elsewhere in its file;
    ``number`` is that of its node in the walk of the tree, ``change`` what is done to the node.
    """

    path: str
    line: int
    key: str
    number: int
    change: Change

    @property
    def module(self) -> str:
        """The name under which the module is imported."""
        return self.path.removesuffix(".py").removesuffix("/__init__").replace("/", ".")

    def compiled(self, root: Path) -> object:
        """Return the code of the module with the fault in it."""
        tree = ast.parse((root / self.path).read_text(encoding="utf-8"))
        for number, node in enumerate(ast.walk(tree)):
            if number == self.number:
                self.change(node)
                break
        return compile(ast.fix_missing_locations(tree), str(root / self.path), "exec")


def mutants_of(root: Path, path: str) -> list[Mutant]:
    """Return every mutant of a file, by its place."""
    source = (root / path).read_text(encoding="utf-8")
    tree = ast.parse(source)
    names, left_alone = _names(tree), _left_alone(tree)
    seen: Counter[str] = Counter()
    found = []
    nodes = [pair for pair in enumerate(ast.walk(tree)) if hasattr(pair[1], "lineno")]
    for number, node in sorted(nodes, key=lambda pair: (pair[1].lineno, pair[1].col_offset)):
        if node in left_alone:
            continue
        for told, change in _changes(node):
            text = " ".join((ast.get_source_segment(source, node) or "").split())
            key = f"{path} {names[node]}: {_short(text)} [{told}]"
            seen[key] += 1
            if seen[key] > 1:
                key += f" #{seen[key]}"
            found.append(Mutant(path, node.lineno, key, number, change))
    return found


def drawn_order(mutants: list[Mutant], seed: int) -> list[Mutant]:
    """Return mutants in an order that hangs on the seed and each one's own name alone.

    So an edit elsewhere redraws nothing.
    """
    return sorted(
        mutants, key=lambda mutant: hashlib.sha256(f"{seed} {mutant.key}".encode()).digest()
    )


def _short(text: str, longest: int = 70) -> str:
    return text if len(text) <= longest else text[: longest - 1] + "…"


def _names(tree: ast.Module) -> dict[ast.AST, str]:
    """Return of each node the function or class that it stands in, and of constants the name."""
    names: dict[ast.AST, str] = {}

    def visit(node: ast.AST, name: str) -> None:
        names[node] = name or "module"
        for child in ast.iter_child_nodes(node):
            own = name
            if isinstance(child, ast.FunctionDef | ast.ClassDef):
                own = f"{name}.{child.name}".lstrip(".")
            elif not name and isinstance(child, ast.Assign | ast.AnnAssign):
                target = child.targets[0] if isinstance(child, ast.Assign) else child.target
                first = target.elts[0] if isinstance(target, ast.Tuple) else target
                own = first.id if isinstance(first, ast.Name) else name
            visit(child, own)

    visit(tree, "")
    return names


def _left_alone(tree: ast.Module) -> set[ast.AST]:
    """Return the nodes on which no answer hangs (see above)."""
    return {
        inner for node in ast.walk(tree) for root in _of_no_answer(node) for inner in ast.walk(root)
    }


def _of_no_answer(node: ast.AST) -> list[ast.AST]:
    if isinstance(node, ast.FunctionDef):
        return [*node.decorator_list, *([node.returns] if node.returns else [])]
    if isinstance(node, ast.ClassDef):
        return [*node.decorator_list]
    if isinstance(node, ast.AnnAssign | ast.arg):
        return [node.annotation] if node.annotation else []
    if isinstance(node, ast.BinOp):
        return [node] if _is_text(node.left) or _is_text(node.right) else []
    left = isinstance(node, ast.Assert | ast.Raise | ast.JoinedStr) or _is_for_types(node)
    return [node] if left else []


def _is_for_types(node: ast.AST) -> bool:
    return isinstance(node, ast.If) and ast.unparse(node.test) == "TYPE_CHECKING"


def _is_text(node: ast.AST) -> bool:
    return isinstance(node, ast.JoinedStr) or (
        isinstance(node, ast.Constant) and isinstance(node.value, str)
    )


def _changes(node: ast.AST) -> Iterator[tuple[str, Change]]:
    """Yield what may be done to a node, each with its name."""
    if isinstance(node, ast.Compare):
        for at, op in enumerate(node.ops):
            for table in (BOUNDARY, OPPOSITE):
                if type(op) in table:
                    yield _told(op, table[type(op)]), _compared(at, table[type(op)])
    elif isinstance(node, ast.BoolOp):
        other: type[ast.boolop] = ast.Or if isinstance(node.op, ast.And) else ast.And
        told = "and → or" if isinstance(node.op, ast.And) else "or → and"
        yield told, _set("op", other)
    elif isinstance(node, ast.BinOp | ast.AugAssign) and type(node.op) in SIGN:
        if not any(isinstance(side, ast.Tuple | ast.List) for side in _sides(node)):
            yield _told(node.op, SIGN[type(node.op)]), _set("op", SIGN[type(node.op)])
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.USub):
        yield "minus left out", _set("op", ast.UAdd)
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in SWAPPED:
        yield f"{node.func.id} → {SWAPPED[node.func.id]}", _renamed(SWAPPED[node.func.id])
    elif isinstance(node, ast.Constant) and type(node.value) in (int, float):
        for value in _near(node.value):
            yield f"→ {value}", _valued(value)
    elif isinstance(node, ast.Return) and isinstance(node.value, ast.Constant):
        for value in (True, False) if isinstance(node.value.value, bool) else ():
            if value is not node.value.value:
                yield f"→ {value}", _returned(value)


def _told(old: ast.AST, new: type[ast.AST]) -> str:
    return f"{SIGNS[type(old)]} → {SIGNS[new]}"


def _sides(node: ast.BinOp | ast.AugAssign) -> tuple[ast.AST, ...]:
    return (node.left, node.right) if isinstance(node, ast.BinOp) else (node.value,)


def _near(value: float) -> tuple[float, ...]:
    if isinstance(value, int):
        return value + 1, value - 1
    if value == 0:
        return (TENTH,)
    return float(f"{value * (1 + TENTH):.12g}"), float(f"{value * (1 - TENTH):.12g}")


def _compared(at: int, op: type[ast.cmpop]) -> Change:
    def change(node: ast.AST) -> None:
        assert isinstance(node, ast.Compare)
        node.ops[at] = op()

    return change


def _set(name: str, value: type[ast.AST]) -> Change:
    return lambda node: setattr(node, name, value())


def _valued(value: float) -> Change:
    return lambda node: setattr(node, "value", value)


def _renamed(name: str) -> Change:
    def change(node: ast.AST) -> None:
        assert isinstance(node, ast.Call)
        node.func = ast.Name(name, ast.Load())

    return change


def _returned(value: bool) -> Change:
    return lambda node: setattr(node, "value", ast.Constant(value))
