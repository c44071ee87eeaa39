"""The ``tackfree`` command: one module per command, no Qt in any of them."""

from app.command_line.run import main

__all__ = ["main"]
