"""The file of a language: its texts by context, as Qt's own tools read and write them."""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree as ET

from app.window.translations.extract import Texts, texts_of_window
from app.window.translations.values import values_shown

HERE = Path(__file__).parent
Catalogue = dict[tuple[str, str], str]  # (context, source): translation, "" for none yet


def all_texts() -> Texts:
    """Return every text that people may read, by context: those of the window and values."""
    found = texts_of_window()
    for context, sources in values_shown().items():
        known = found.setdefault(context, [])
        known.extend(source for source in sources if source not in known)
    return dict(sorted(found.items()))


def read(path: Path) -> Catalogue:
    """Return what a file holds; an unfinished translation counts as none."""
    found: Catalogue = {}
    root = ET.parse(path).getroot()  # noqa: S314 -- our own file
    for context in root.iter("context"):
        name = context.findtext("name", "")
        for message in context.iter("message"):
            translation = message.find("translation")
            done = translation is not None and translation.get("type") is None
            text = translation.text or "" if translation is not None and done else ""
            found[name, message.findtext("source", "")] = text
    return found


def write(path: Path, texts: Texts, known: Catalogue, language: str) -> None:
    """Write all texts with their translations; what is in no text any more is left out."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    for name, sources in texts.items():
        context = ET.SubElement(root, "context")
        ET.SubElement(context, "name").text = name
        for source in sources:
            message = ET.SubElement(context, "message")
            ET.SubElement(message, "source").text = source
            translation = ET.SubElement(message, "translation")
            translation.text = known.get((name, source)) or None
            if not translation.text:
                translation.set("type", "unfinished")
    ET.indent(root, " ")
    head = '<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n'
    path.write_text(head + ET.tostring(root, encoding="unicode") + "\n", encoding="utf-8")
