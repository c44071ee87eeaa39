"""The parser of ``tackfree`` and the exit status of whatever it runs.

0: fine.  1: the answer is "not sound" or "not possible".  2: bad input,
told in one line that names file, place and mend, or a disk that is full.
130 and 141: ended by Ctrl-C, or by whoever read the answer, as shells count.
"""

from __future__ import annotations

import argparse
import contextlib
import io
import os
import sys
from collections.abc import Callable, Sequence
from importlib import import_module
from keyword import iskeyword
from pathlib import Path
from types import ModuleType
from typing import NoReturn

from app.command_line.book_source import add_book
from app.command_line.output import BAD_INPUT, NOT_SOUND, Unheard, answer, heard, note
from app.service.planning_errors import Unsound
from planner.values.refusal import Refused

OpenWindow = Callable[..., int]
COMMANDS = (  # each a module, imported when it is asked for
    *("demo", "open", "plan", "advise", "tonight", "log", "card", "pace", "check", "verify"),
    *("cure", "shop", "change", "reached", "another", "export", "import", "backup", "restore"),
    "desktop",
)
INTERRUPTED = 130  # as of a command that a shell ends with Ctrl-C, 128 + 2
HUNG_UP = 141  # likewise where the reader of a pipe has gone, 128 + 13

DESCRIPTION = """\
Tackfree plans the finishing of scale models: many thin coats, few short
evenings, a changing room, a date. Without a command it opens the window on
your bench book.
"""
EPILOG = """\
first steps:
  tackfree demo                          look at an invented project
  tackfree plan harbour.json             plan an exchange file
  tackfree tonight                       what to do at the bench tonight
  tackfree COMMAND --help                how a command is used, with examples

exit status: 0 fine, 1 not sound or not possible, 2 bad input
"""


class Parser(argparse.ArgumentParser):
    """A parser that refuses in one line."""

    def error(self, message: str) -> NoReturn:
        """Refuse the arguments."""
        note(f"{self.prog}: {message}; see {self.prog} --help")
        raise SystemExit(BAD_INPUT)


class _Version(argparse.Action):
    """Tells the version; what knows it is loaded only then."""

    def __call__(
        self, parser: argparse.ArgumentParser, *_given: object, **_named: object
    ) -> NoReturn:
        version = import_module("app.service.program_version").program_version()
        answer(f"{parser.prog} {version or '(not installed)'}")
        parser.exit()


def module_of(command: str) -> ModuleType:
    """Return the module of a command."""
    name = f"{command}_" if iskeyword(command) else command
    return import_module(f"app.command_line.{name}")


def parser(names: Sequence[str] = COMMANDS) -> argparse.ArgumentParser:
    """Return the parser of some commands, at first all."""
    whole = Parser(
        prog="tackfree",
        description=DESCRIPTION,
        epilog=EPILOG,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    whole.add_argument(
        "--version", action=_Version, nargs=0, help="show program's version number and exit"
    )
    add_book(whole)
    commands = whole.add_subparsers(
        dest="command", metavar="COMMAND", title="commands", parser_class=Parser
    )
    for name in names:
        module = module_of(name)
        words = (module.__doc__ or "").strip()
        parser = commands.add_parser(
            name,
            help=words.partition("\n")[0].rstrip(".").lower(),
            description=words.partition("\n")[0],
            epilog=f"examples:\n{module.EXAMPLES}",
            formatter_class=argparse.RawDescriptionHelpFormatter,
        )
        module.add_arguments(parser)
        parser.set_defaults(run=module.run)
    return whole


def main(argv: Sequence[str] | None = None, *, open_window: OpenWindow | None = None) -> int:
    """Run one command and return its exit status.

    Parameters
    ----------
    open_window
        Opens the window on a book (None: the person's own) as of a minute
        (None: the real clock), may take in an exchange file as its third
        argument, and returns when it is closed.  Absent where no window can
        be had.
    """
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")
    try:
        given = sys.argv[1:] if argv is None else list(argv)
        args = parser(_needed(given)).parse_args(given)
        args.open_window = open_window
        status = _window(args) if args.command is None else args.run(args)
        _flush()
    except SystemExit as end:
        status = end.code if isinstance(end.code, int) else BAD_INPUT
    except Refused as problem:
        note(f"tackfree: {problem}{_way_back(problem)}")
        status = BAD_INPUT
    except Unsound as problem:
        note(f"tackfree: internal error: {problem}")
        status = NOT_SOUND
    except BrokenPipeError:
        _forget_stdout()
        status = HUNG_UP
    except Unheard as problem:
        _forget_stdout()
        note(f"tackfree: the answer: {problem}")
        status = BAD_INPUT
    except OSError as problem:  # the machine's, not ours: a folder gone, a disk full
        note(f"tackfree: {_blocked(problem)}")
        status = BAD_INPUT
    except KeyboardInterrupt:
        status = INTERRUPTED
    return int(status)


def _way_back(problem: Refused) -> str:
    """Return what brings a damaged book back; "" for any other refusal."""
    if "storage.errors" not in sys.modules:  # it is slow to load
        return ""
    from app.service.book_copies import offered  # noqa: PLC0415
    from storage.errors import BookDamaged  # noqa: PLC0415

    if not isinstance(problem, BookDamaged):
        return ""
    offers = offered(Path(problem.place))
    if offers:
        return f"; tackfree restore {offers[0][0].path.name}: {offers[0][1].lower()}"
    return "; tackfree restore --readable FILE writes what can be read of it"


def _needed(given: Sequence[str]) -> tuple[str, ...]:
    """Return the commands that must be known to read what was typed: one, or none for the window.

    What names no command first may ask for help or be wrong: that needs all of them.
    """
    rest = given[2:] if given[:1] == ["--book"] else given
    if not rest:
        return ()
    return (rest[0],) if rest[0] in COMMANDS else COMMANDS


def _window(args: argparse.Namespace) -> int:
    if args.open_window is None:
        raise Refused("", "no window can be opened here; try tackfree --help")
    return int(args.open_window(getattr(args, "book", None), None))


def _flush() -> None:
    """Send the rest of the answer on its way, while what hinders it can still be told."""
    if sys.stdout is not None:
        with heard():
            sys.stdout.flush()


def _blocked(problem: OSError) -> Refused:
    """Return what the system holds against a file, as a refusal."""
    where = os.fspath(problem.filename) if isinstance(problem.filename, str) else ""
    why = problem.strerror or type(problem).__name__
    return Refused(
        where, f"cannot be used ({why}); look whether it is there, and the disk not full"
    )


def _forget_stdout() -> None:
    """Let the interpreter end without another try to write to a closed pipe."""
    with contextlib.suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
