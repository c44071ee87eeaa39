"""Put a menu entry, the icon and file types into your desktop, or take them away.

Everything goes into your own data folder.
"""

from __future__ import annotations

import argparse

from app.command_line.output import FINE, answer, note

EXAMPLES = """\
  tackfree desktop install    a menu entry; a double-click opens your books
  tackfree desktop remove     takes all of it away again
"""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Say what the command takes."""
    parser.add_argument("act", choices=("install", "remove"), help="what to do")


def run(args: argparse.Namespace) -> int:
    """Install or remove the files of the desktop."""
    from app.service import desktop  # noqa: PLC0415

    install = args.act == "install"
    outcome = desktop.install() if install else desktop.remove()
    for path in outcome.files:
        answer(f"{'written' if install else 'removed'}: {path}")
    if not outcome.files:
        answer("nothing was there")
    for line in outcome.left:
        note(line)
    return FINE
