"""Runs ``tackfree`` as ``python -m app``."""

import sys

from app.entry import main

if __name__ == "__main__":
    sys.exit(main())
