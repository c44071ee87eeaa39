"""Whether a window can be shown here, found out without risking this process."""

from __future__ import annotations

import os
import subprocess
import sys

UNSEEN = frozenset({"offscreen", "minimal", "vnc"})
PROBE = "from PySide6.QtWidgets import QApplication; QApplication([]); print('usable')"
PROBE_SECONDS = 20


def no_display() -> str:
    """Return why no window can be shown, "" if one can.

    A missing platform library aborts the process that loads it, so a child
    process tries.
    """
    platform = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0].partition(";")[0]
    if platform in UNSEEN:
        return f"QT_QPA_PLATFORM={platform} is no display"
    if sys.platform.startswith("linux") and not (
        os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY") or platform
    ):
        return "neither DISPLAY nor WAYLAND_DISPLAY is set"
    try:
        probe = subprocess.run(  # noqa: S603 - our own interpreter and text
            [sys.executable, "-c", PROBE],
            capture_output=True,
            text=True,
            timeout=PROBE_SECONDS,
            check=False,
        )
    except (OSError, subprocess.TimeoutExpired):
        return "Qt did not answer"
    if probe.returncode == 0 and "usable" in probe.stdout:
        return ""
    said = [line.strip() for line in probe.stderr.splitlines() if line.strip()]
    return said[0][:200] if said else "Qt cannot open a window"
