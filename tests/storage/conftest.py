"""Bench books for the tests of storage."""

import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from planner.values.book import Book
from storage.bench_book import BenchBook
from storage.exchange import load

DEMO = Path(__file__).parents[2] / "demo_projects" / "lone_lamplighter.json"


@pytest.fixture(scope="session")
def demo_book() -> Book:
    return load(DEMO.read_bytes()).book


@pytest.fixture(scope="session")
def pristine(demo_book: Book, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A closed bench book to copy; making one takes far longer."""
    path = tmp_path_factory.mktemp("pristine") / "bench.tackfree"
    BenchBook.create(path, demo_book).close()
    return path


@pytest.fixture
def book_path(pristine: Path, tmp_path: Path) -> Path:
    return Path(shutil.copy(pristine, tmp_path / "bench.tackfree"))


@pytest.fixture
def opened(book_path: Path) -> Iterator[Callable[[], BenchBook]]:
    """Open the same book, as often as wanted."""
    every: list[BenchBook] = []

    def again() -> BenchBook:
        every.append(BenchBook.open(book_path))
        return every[-1]

    yield again
    for one in every:
        one.close()
