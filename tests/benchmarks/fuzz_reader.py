"""Bytes chosen by which code they reach, into the reader of exchange files.

``python tests/benchmarks/fuzz_reader.py -max_total_time=60 [CORPUS]``

The fuzzer (extra ``bench``) keeps what reaches new code and changes it
further; every input must be read or refused in one line.  It ends with the
input beside it at the first that is not, or that takes over five seconds.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
from pathlib import Path

import atheris

ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

with atheris.instrument_imports(include=["storage", "planner"]):
    from planner.values.refusal import Refused
    from storage.exchange import dump, load


def read(data: bytes) -> None:
    """Read bytes; what is read must be written and read again as it was."""
    try:
        exchange = load(data)
    except Refused as problem:
        if "\n" in str(problem):
            raise AssertionError(str(problem)) from problem
        return
    assert load(dump(exchange)) == exchange


def main() -> None:
    """Fuzz until told to stop, from the demonstrations on where no corpus is named."""
    given = [*sys.argv, "-timeout=5", "-rss_limit_mb=1024", "-max_len=60000"]
    if all(one.startswith("-") for one in sys.argv[1:]):
        corpus = tempfile.mkdtemp(prefix="tackfree-corpus-")  # the fuzzer adds to it
        for demo in (ROOT / "demo_projects").glob("*.json"):
            shutil.copy(demo, corpus)
        given.append(corpus)
    atheris.Setup(given, read)
    atheris.Fuzz()


if __name__ == "__main__":
    main()
