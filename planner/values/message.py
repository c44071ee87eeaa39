"""Sentences that remember how they were made, so that a window can say them in another language.

Whoever is told something here reads English: a `Message` is that text and compares, hashes
and prints as it does.  It also keeps the literal that it was made of and what was put in,
which is all that a translator needs.  A person's own words are put in as plain text and
are never translated.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

Translate = Callable[[str], str]  # from what is said to a language; `str` leaves it English


class Message(str):
    """An English text with the ``template`` and ``arguments`` that it was made of.

    Without arguments the template is the text, braces and all.  An argument may be
    `Message` itself, a word of the program (an enumeration), a number, a date or a
    person's own text.  Adding to it, cutting and joining give plain text.
    """

    __slots__ = ("arguments", "template")

    template: str
    arguments: dict[str, object]

    def __new__(cls, template: str, arguments: Mapping[str, object] | None = None) -> Message:
        """Put the arguments in."""
        text = template.format(**arguments) if arguments else template
        made = super().__new__(cls, text)
        made.template = template
        made.arguments = dict(arguments or {})
        return made

    def __str__(self) -> str:
        return self  # so that an exception, too, hands it on whole

    def __reduce__(self) -> tuple[type[Message], tuple[str, dict[str, object]]]:
        return Message, (self.template, self.arguments)


def message(template: str, /, **arguments: object) -> Message:
    """Return a sentence of the program; ``template`` is a literal, for translators read it."""
    return Message(template, arguments)


def called(template: str, /, **arguments: object) -> Message:
    """Return what an edit is called, or a part of that.

    The journal keeps the bare text.  What shows it finds the template again among all
    that stand in a call of this function.
    """
    return Message(template, arguments)


def titled(template: str, /, **arguments: object) -> Message:
    """Return what the program calls a step that it adds to a book, which keeps the bare text.

    Found again as for `called`.
    """
    return Message(template, arguments)


def told(text: str) -> Message:
    """Return a literal of the program that was handed over as plain text; what is said stays."""
    return text if isinstance(text, Message) else Message(str(text))


def row(texts: Iterable[str], between: str = ", ") -> Message:
    """Return texts one after the other, each still to be translated by itself."""
    every = {f"text{number}": text for number, text in enumerate(texts)}
    return Message(between.join(f"{{{name}}}" for name in every), every)


def within(most: int, text: str) -> str:
    """Return a text that is no longer than ``most`` characters; one that is cut is plain."""
    return text if len(text) <= most else text[:most]
