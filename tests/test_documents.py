"""The documents say what is so, and nothing tells where it was made."""

from __future__ import annotations

import doctest
import re
import shlex
import subprocess
import tomllib
from functools import cache
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from app.command_line import main
from app.command_line.run import COMMANDS

ROOT = Path(__file__).parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
DEFINITIONS = (ROOT / "planner" / "DEFINITIONS.md").read_text(encoding="utf-8")
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
LAYOUT = {
    *("README.md", "DEVELOPERS.md", "LICENSE", "MANIFEST.in", "pyproject.toml"),
    *("app", "planner", "storage", "tests", "demo_projects"),
}
SESSIONS = re.findall(r"^```console\n\$ tackfree (.*?)\n(.*?)^```", README, re.M | re.S)
# Written in halves, so that this file does not find itself.
FOLDERS = ("work", "tmp", "home", "root", "opt", "Users", "var", "farm", "mnt")
MACHINE_PATHS = re.compile(rf"(?<![\w.])/({'|'.join(FOLDERS)})/|[A-Z]:\\+Users")
REGISTRIES = re.compile("py" + r"pi\.org|python" + r"hosted\.org|npm" + r"js\.|cra" + r"tes\.io")


@cache
def tracked() -> tuple[Path, ...]:
    """Return the files of the repository."""
    asked = subprocess.run(
        ["git", "-c", f"safe.directory={ROOT}", "ls-files", "-z"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    if asked.returncode:
        pytest.skip("this is no clone: git does not list its files")
    return tuple(Path(name) for name in asked.stdout.split("\0") if name)


def test_the_two_commands_are_single_lines() -> None:
    lines = [line for line in README.splitlines() if line.startswith("python3 -m venv")]
    assert len(lines) == 2
    assert lines[0].endswith("tackfree demo")
    assert "[test]" in lines[1]
    assert lines[1].endswith("pytest")


def test_the_system_packages_are_named_once() -> None:
    (line,) = [line for line in README.splitlines() if line.startswith("apt-get install ")]
    # Needed by Qt's offscreen platform on Debian 12: tried there.
    needed = "libegl1 libgl1 libxkbcommon0 libfontconfig1 libglib2.0-0 libdbus-1-3"
    assert {"python3-venv", "fonts-dejavu-core", *needed.split()} <= set(line.split())


def test_every_command_is_in_the_readme() -> None:
    told = re.findall(r"^\| `tackfree (\w+)", README, re.M)
    assert sorted(told) == sorted(COMMANDS)


@pytest.mark.parametrize(("command", "printed"), SESSIONS, ids=[said for said, _ in SESSIONS])
def test_what_the_readme_shows_is_what_is_printed(
    command: str,
    printed: str,
    capsys: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.chdir(ROOT)
    assert main(shlex.split(command)) == 0
    got = capsys.readouterr().out
    checker = doctest.OutputChecker()
    assert checker.check_output(printed, got, doctest.ELLIPSIS), got


def test_the_readme_shows_real_output() -> None:
    assert len(SESSIONS) >= 4


def test_what_a_document_points_at_is_there() -> None:
    missing = []
    for path in tracked():
        if path.suffix != ".md" or not (ROOT / path).is_file():
            continue
        text = (ROOT / path).read_text(encoding="utf-8")
        links = [ROOT / path.parent / link for link in re.findall(r"\]\(([^)#:]+)\)", text)]
        named = re.findall(r"`((?:app|planner|storage|tests)/[\w/]+(?:\.\w+)?)`", text)
        wanted = [*links, *(ROOT / name for name in named)]
        missing += [f"{path}: {name}" for name in wanted if not name.exists()]
    assert not missing


def test_developers_can_be_read_in_a_few_minutes() -> None:
    assert len(DEVELOPERS.split()) <= 1500


def test_every_demonstration_is_in_the_readme() -> None:
    told = set(re.findall(r"`(\w+\.json)`", README))
    assert told == {path.name for path in (ROOT / "demo_projects").glob("*.json")}


def test_every_dependency_has_its_reason() -> None:
    extras = PROJECT["optional-dependencies"].values()
    wanted = [*PROJECT["dependencies"], *(one for extra in extras for one in extra)]
    names = {re.split(r"[<>=~!\[; ]", one)[0] for one in wanted}
    section = DEVELOPERS.partition("## Why each dependency is there")[2].partition("\n## ")[0]
    reasons = dict(re.findall(r"^\| `([^`]+)` \| (.+) \|$", section, re.M))
    assert set(reasons) == names
    assert all(len(reason.split()) >= 3 for reason in reasons.values())


def test_each_library_is_pinned_and_may_not_break_us_with_its_next_minor() -> None:
    lines = (ROOT / ".ci" / "constraints.txt").read_text(encoding="utf-8").splitlines()
    assert [line for line in lines if not re.fullmatch(r"[\w.-]+==[\w.]+", line)] == []
    pairs = (line.split("==") for line in lines)
    pins = {canonicalize_name(name): version for name, version in pairs}
    extras = PROJECT["optional-dependencies"].values()
    for text in (*PROJECT["dependencies"], *(one for extra in extras for one in extra)):
        wanted = Requirement(text)
        pinned = pins[canonicalize_name(wanted.name)]
        assert wanted.specifier.contains(pinned), text
        major, minor = pinned.split(".")[:2]
        if major == "0":  # such a library may change anything then
            assert not wanted.specifier.contains(f"0.{int(minor) + 1}"), text


def test_every_definition_is_written_down_once() -> None:
    section = DEFINITIONS.partition("## Definitions")[2].partition("\n## ")[0]
    numbers = re.findall(r"^(\d+)\. \*\*", section, re.M)
    assert numbers == [str(number) for number in range(1, 31)]


def test_code_names_only_definitions_that_exist() -> None:
    named = {
        int(number)
        for path in tracked()
        if path.suffix == ".py"
        for numbers in re.findall(
            r"[Dd]efinitions? (\d+(?:(?:,| and|, and) \d+)*)",
            (ROOT / path).read_text(encoding="utf-8"),
        )
        for number in re.findall(r"\d+", numbers)
    }
    assert named
    assert named <= set(range(1, 31))


def test_the_layout_is_what_it_should_be() -> None:
    top = {path.parts[0] for path in tracked()}
    assert {name for name in top if not name.startswith(".")} == LAYOUT
    assert Path(".ci/run") in tracked()


def test_no_file_tells_where_it_was_made() -> None:
    found = []
    for path in tracked():
        if path.suffix in {".png", ".db", ".sqlite", ".book"} or not (ROOT / path).is_file():
            continue
        text = (ROOT / path).read_text(encoding="utf-8", errors="replace")
        for number, line in enumerate(text.splitlines(), 1):
            if (MACHINE_PATHS.search(line) and not line.startswith("#!")) or REGISTRIES.search(
                line
            ):
                found.append(f"{path}:{number}: {line.strip()[:100]}")
    assert not found
