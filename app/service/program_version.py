"""Which version of the program this is; apart, for the library that knows is slow to load."""

from __future__ import annotations

from importlib.metadata import PackageNotFoundError, version


def program_version() -> str:
    """Return the version that is installed, "" if none is."""
    return version_of("tackfree")


def version_of(package: str) -> str:
    """Return the version of an installed package, "" if there is none."""
    try:
        return version(package)
    except PackageNotFoundError:
        return ""
