"""Whether a window can be shown here, found out without risking this process."""

from __future__ import annotations

import os
import subprocess
import sys

UNSEEN = frozenset({"offscreen", "minimal", "vnc"})
NO_ANSWER = "Qt did not answer"
PROBE = "from PySide6.QtGui import QGuiApplication; QGuiApplication([]); print('usable')"
PROBE_SECONDS = 20


class Probe:
    """Tries to reach the display, in a child process, while the caller does something else.

    A missing platform library aborts the process that loads it.
    """

    def __init__(self) -> None:
        self._why = _surely_none()
        self._child: subprocess.Popen[str] | None = None
        if not self._why:
            try:
                self._child = subprocess.Popen(  # noqa: S603 - our own interpreter and text
                    [sys.executable, "-c", PROBE],
                    stdout=subprocess.PIPE,
                    stderr=subprocess.PIPE,
                    text=True,
                )
            except OSError:
                self._why = NO_ANSWER

    @property
    def hopeless(self) -> bool:
        """Tell whether it is known already that no window can be shown."""
        return bool(self._why)

    def why(self) -> str:
        """Wait for the answer; return why no window can be shown, "" if one can."""
        if self._child is not None:
            self._why = _answer(self._child)
            self._child = None
        return self._why


def no_display() -> str:
    """Return why no window can be shown, "" if one can."""
    return Probe().why()


def _surely_none() -> str:
    platform = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0].partition(";")[0]
    if platform in UNSEEN:
        return f"QT_QPA_PLATFORM={platform} is no display"
    if sys.platform.startswith("linux") and not (
        os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY") or platform
    ):
        return "neither DISPLAY nor WAYLAND_DISPLAY is set"
    return ""


def _answer(child: subprocess.Popen[str]) -> str:
    try:
        out, err = child.communicate(timeout=PROBE_SECONDS)
    except subprocess.TimeoutExpired:
        child.kill()
        child.communicate()
        return NO_ANSWER
    if child.returncode == 0 and "usable" in out:
        return ""
    said = [line.strip() for line in err.splitlines() if line.strip()]
    return said[0][:200] if said else "Qt cannot open a window"
