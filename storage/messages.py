"""Messages as plain data: the template, and what was put in, so that a translator finds both.

A word of the program (an enumeration) is kept as its text; the name of its field tells
of which kind it is.
"""

from __future__ import annotations

from datetime import date, datetime
from enum import Enum
from typing import Any

from planner.values.message import Message

# What a person's own text never is: an object with just this key.
MESSAGE, MOMENT, DAY = "message", "moment", "day"


def arguments_data(message: Message) -> dict[str, Any]:
    """Return what was put into a message as JSON data."""
    return {name: _data(value) for name, value in message.arguments.items()}


def message_of(template: str, arguments: Any) -> Message:
    """Return the message of a template and the data of what was put in.

    Raises
    ------
    LookupError, ValueError, TypeError
        If they do not belong together.
    """
    if not isinstance(arguments, dict):
        raise TypeError("what is put into a message has names")
    return Message(template, {name: _value(data) for name, data in arguments.items()})


def _data(value: object) -> object:
    if isinstance(value, Message):
        return {MESSAGE: [value.template, arguments_data(value)]}
    if isinstance(value, datetime):
        return {MOMENT: value.isoformat()}
    if isinstance(value, date):
        return {DAY: value.isoformat()}
    if isinstance(value, Enum):
        return value.value
    if value is None or isinstance(value, bool | int | float | str):
        return value
    return str(value)


def _value(data: Any) -> object:
    if not isinstance(data, dict):
        return data
    ((kind, inner),) = data.items()
    if kind == MESSAGE:
        template, arguments = inner
        return message_of(template, arguments)
    return datetime.fromisoformat(inner) if kind == MOMENT else date.fromisoformat(inner)
