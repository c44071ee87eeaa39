"""Which version of the program this is; apart, for the library that knows is slow to load."""

from __future__ import annotations

from importlib.metadata import PackageNotFoundError, version


def program_version() -> str:
    """Return the version that is installed, "" if none is."""
    try:
        return version("tackfree")
    except PackageNotFoundError:
        return ""
