"""Brings the files of all languages up to date: ``python -m app.window.translations``.

New texts come in unfinished, old ones go, and what is finished is compiled by
Qt's ``pyside6-lrelease``.  The exit status is 1 while anything is unfinished.
"""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

from app.window.message_translation import KEPT
from app.window.translations.catalogue import HERE, all_texts, read, write
from app.window.translations.planner_texts import kept_as_text


def main() -> int:
    """Update and compile every file of this folder."""
    texts = all_texts()
    kept = json.dumps(kept_as_text(), ensure_ascii=False, indent=0)
    KEPT.write_text(kept + "\n", encoding="utf-8")
    unfinished = 0
    for path in sorted(HERE.glob("*.ts")):
        write(path, texts, read(path), path.stem.rpartition("_")[2])
        compile_(path, path.with_suffix(".qm"))
        for (context, source), text in read(path).items():
            if not text:
                unfinished += 1
                sys.stdout.write(f"{path.name}: {context}: {source!r}\n")
    return 1 if unfinished else 0


def compile_(path: Path, to: Path) -> None:
    """Compile the file of a language with the tool beside this Python."""
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    half = to.with_suffix(".part")
    subprocess.run([tool, "-silent", path, "-qm", half], check=True)  # noqa: S603
    # A window that runs has the file mapped into its memory: writing into it would end that
    # window, while another file of the same name does it no harm.
    half.replace(to)


if __name__ == "__main__":
    sys.exit(main())
