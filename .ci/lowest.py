"""Print the lowest version of each library that pyproject.toml lets in, as constraints for pip."""

from __future__ import annotations

import re
import sys
import tomllib
from pathlib import Path

RANGE = re.compile(r"([\w.-]+)\s*(?:~=|==|>=)\s*([\d.]+)")


def lowest(requirement: str) -> str:
    """Return ``name==version`` of the lower bound of one requirement."""
    found = RANGE.match(requirement)
    if found is None:
        sys.exit(f"pyproject.toml: {requirement} has no lower bound; begin it with ~= or >=")
    return "==".join(found.groups())


if __name__ == "__main__":
    project = tomllib.loads(Path("pyproject.toml").read_text(encoding="utf-8"))["project"]
    for one in (*project["dependencies"], *project["optional-dependencies"]["test"]):
        print(lowest(one))
