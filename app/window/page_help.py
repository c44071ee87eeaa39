"""What each page is for and which keys work there, in a few lines: the help on F1."""

from __future__ import annotations

from app.window.words import tr

Keys = list[tuple[str, str]]


def about_page(name: str) -> str:
    """Return what a page is for, by its name in the settings."""
    told = {
        "tonight": tr(
            "What to do in this session, in order, with mixes and places to tick. "
            "Beside it stands what dries meanwhile and what closes soon."
        ),
        "timeline": tr(
            "The whole plan: sessions at the bench are wide, the hours between narrow. "
            "Choose a piece to see why it stands there; drag it to wish it elsewhere."
        ),
        "room": tr(
            "How long each coating takes in the air of a place, and how its film comes on. "
            "F3 changes the air; a reading counts for the rest of the day."
        ),
        "stack": tr(
            "Every film on one place, from the bare part up, and what is thought of each on the "
            "one below. A finding says how it can be mended."
        ),
        "build": tr(
            "Models, parts, places and steps. Choose one line to change it, several steps to "
            "change them at once; drag or move them as far as gates allow. “Copy to” puts steps "
            "into other models, “Same again” makes another model alike."
        ),
        "sequences": tr(
            "Finishing orders with options. Give one to any number of models; change it, and the "
            "change is offered to the models that came from it. Your own edits are told apart."
        ),
        "what if": tr(
            "Try a change beside the plan: an evening more, a step left out, a warm box. Compare "
            "the ends, then keep it or drop it."
        ),
        "wishes": tr(
            "What you want of the plan: pieces pinned to a time, one vehicle ahead of the others, "
            "and what counts most where two plans differ."
        ),
        "drying": tr(
            "Films that dry at this hour, and when each opens or closes. Say what you see, and "
            "the times follow."
        ),
        "logbook": tr(
            "What was really done. From it the program learns how long your work takes, and how "
            "fast your films dry."
        ),
        "stock": tr(
            "Coatings by family, mixes, consumables, leftovers and sample cards: what there is, "
            "what the plan needs, and where each drying time comes from."
        ),
        "shopping": tr(
            "What runs out along the plan, when, and what to buy. Where an area is missing, the "
            "amount is a guess and says so."
        ),
        "bench time": tr(
            "When you are at the bench: every week, once, or not at all; with quiet hours and "
            "daylight. Each day shows how much of it is planned."
        ),
        "gear": tr(
            "Airbrushes with the minutes that loading and cleaning take, and the places where "
            "films dry, a warm box among them. Warm air bends thin plastic: stay below 40 °C."
        ),
    }
    return told[name]


def page_keys(name: str) -> Keys:
    """Return the keys that work on a page alone."""
    keys: dict[str, Keys] = {
        "tonight": [
            ("B", tr("bench mode: one piece of work at a time, in large letters")),
            ("Alt+1, Alt+2, Alt+3", tr("first questions: to the table, the days, the room")),
            (tr("Enter, Ctrl+Enter"), tr("first questions: another line, plan it")),
        ],
        "timeline": [
            (tr("← →"), tr("timeline: piece before and after in the lane")),
            (tr("↑ ↓"), tr("timeline: nearest piece in the lane above and below")),
            (tr("Home, End"), tr("timeline: first and last piece")),
            (tr("Enter"), tr("timeline: go to the reason and the gates")),
            ("+, −, 0", tr("timeline: larger, smaller, fit the whole plan")),
            ("P, S", tr("timeline: pin the piece where it stands, or to a session")),
            ("[ ]", tr("timeline: pin the piece a session sooner, later")),
            ("N, T", tr("timeline: not before a session, together with another piece")),
            ("Shift+P", tr("timeline: take the wishes of the piece back")),
            ("F", tr("timeline: finish this vehicle first")),
            (tr("drag a piece"), tr("timeline: pin it to another session")),
            (tr("Ctrl + wheel"), tr("timeline: zoom")),
            (tr("Shift + wheel, drag"), tr("timeline: move along")),
        ],
        "build": [
            (tr("Ins, Shift+Ins, Del, F2"), tr("build: add a step, a model; remove, rename")),
            ("Alt+↑, Alt+↓", tr("build: what is chosen up, down, as gates allow")),
            ("Ctrl+C, Ctrl+V", tr("build: copy steps, put them into the models chosen")),
            ("Ctrl+D", tr("build: same again, other markings")),
            (tr("Ctrl+F"), tr("build: show only models with these words")),
        ],
        "what if": [
            ("Ctrl+T, Ctrl+Shift+T", tr("what if: try a change, alone or with the chosen one")),
            (tr("Ctrl+Enter, Del"), tr("what if: keep, drop what is chosen")),
        ],
        "wishes": [("Alt+↑, Alt+↓", tr("wishes: what is chosen counts more, less"))],
        "stock": [
            (tr("Enter, Del"), tr("lists of stock, gear, hours: change, remove what is chosen")),
            (tr("Ctrl+F"), tr("stock: show only what has these words")),
        ],
        "bench time": [
            (
                tr("← → ↑ ↓, Page Up, Page Down"),
                tr("bench time: to another day, to other weeks"),
            ),
            (tr("Enter, Del"), tr("lists of stock, gear, hours: change, remove what is chosen")),
        ],
        "gear": [
            (tr("Enter, Del"), tr("lists of stock, gear, hours: change, remove what is chosen")),
        ],
    }
    return keys.get(name, [])


PAGES_WITH_KEYS = ("timeline", "wishes", "what if", "tonight", "build", "stock", "bench time")


def general_keys() -> Keys:
    """Return the keys that work everywhere."""
    return [
        ("F1, Shift+F1", tr("what this page is for; every key")),
        ("Ctrl+1 … Ctrl+5", tr("go to a room")),
        ("Ctrl+Shift+1 … Ctrl+Shift+9", tr("straight to the page that View, Pages names with it")),
        (tr("Ctrl+Page Down, Ctrl+Page Up"), tr("the next page of the room, the one before")),
        (tr("Alt+Left"), tr("back to the page where one was before")),
        ("F3", tr("change the air: temperature and humidity")),
        ("F4", tr("fold the inspector away, or bring it back")),
        ("Ctrl+Shift+O, Ctrl+Shift+H", tr("days off; bench time beside the usual")),
        ("F6", tr("take the better plan that was found")),
        ("F11", tr("bench mode: one piece of work at a time, in large letters")),
        ("Ctrl+Shift+D", tr("I did something else: one line tells what was painted")),
        ("Ctrl+H", tr("an hour more at the bench")),
        ("Ctrl+Shift+G", tr("free time: what the gaps of the coming days are good for")),
        ("Ctrl+Shift+C", tr("close the evening: what is done, left over and next")),
        ("Ctrl+Shift+E, Ctrl+Shift+L", tr("stop for tonight; this evening is lost")),
        (tr("Ctrl+Backspace"), tr("take back the last, also from the logbook")),
        ("Ctrl+Z, Ctrl+Shift+Z", tr("undo, redo")),
        ("Ctrl+L", tr("the last edits, and back to any of them")),
        ("Ctrl+Shift+N, Ctrl+Shift+A", tr("more vehicles; another painted as one was")),
        ("Ctrl+Shift+R, Ctrl+Shift+F", tr("change the order of models; how far they are")),
        ("Ctrl+Shift+P", tr("dates and priorities of the models")),
        ("F8", tr("the next finding, which Enter mends")),
        ("Ctrl+P", tr("print tonight's sheet")),
        ("Ctrl+I, Ctrl+E", tr("import, export a project file")),
        ("Tab", tr("go to the next control")),
        (tr("Space"), tr("tick off a place; press a button")),
    ]
