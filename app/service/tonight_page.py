"""Tonight as one HTML page for a phone: it needs no network, keeps its ticks, counts down.

The page holds everything in itself.  Ticks are kept by the browser under a
name of this very sheet; the minutes to each opening follow the phone's clock.
"""

from __future__ import annotations

import hashlib
import json
from base64 import b64encode
from collections.abc import Iterator
from html import escape
from zoneinfo import ZoneInfo

from app.service import run_sheet_text, wording
from app.service.run_sheet_text import by_part
from app.service.sanitize_text import tame
from app.service.shopping import load_text
from planner.tonight import (
    BenchRow,
    DryingFilm,
    LoadCard,
    RunSheet,
    WorkRow,
    cards_of,
    loose_set_up,
    run_sheet,
)
from planner.values.book import Book
from planner.values.message import Translate, message
from planner.values.message import row as row_of
from planner.values.moment import zone_named
from planner.values.plan import PassKey, Plan

STYLE = """\
:root { color-scheme: light dark; --ink: #25211c; --soft: #5c554a; --paper: #f5f1e8;
  --sheet: #fefcf7; --frame: #857b6b; --rule: #ddd5c4; --edge: #0072b2; --word: #005e94;
  --closes: #9c3e00; }
@media (prefers-color-scheme: dark) { :root { --ink: #ede8dd; --soft: #b8b1a4; --paper: #17191b;
  --sheet: #23272a; --frame: #8a8479; --rule: #383d41; --edge: #56b4e9; --word: #7cc7f2;
  --closes: #ff9a57; } }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 12px; max-width: 40rem; color: var(--ink);
  background: var(--paper); font: 16px/1.4 system-ui, sans-serif; overflow-wrap: anywhere; }
h1 { font-size: 22px; line-height: 1.2; margin: 4px 0; } h2 { font-size: 17px; margin: 0; }
h3 { font-size: 15px; margin: 10px 0 2px; }
section { background: var(--sheet); border: 1px solid var(--rule); border-radius: 6px;
  padding: 12px; margin: 12px 0; }
p { margin: 2px 0; } .soft { color: var(--soft); } .next { color: var(--word); font-weight: 600; }
.swatch { display: inline-block; width: 24px; height: 24px; border-radius: 50%;
  border: 1px solid var(--frame); vertical-align: -6px; margin-right: 8px; }
.work { color: var(--soft); margin-top: 10px; }
.places { display: grid; grid-template-columns: repeat(auto-fill, minmax(9rem, 1fr));
  column-gap: 8px; border-top: 1px solid var(--rule); }
label { display: flex; align-items: center; gap: 8px; line-height: 1.25; min-height: 44px;
  border-bottom: 1px solid var(--rule); }
input { width: 24px; height: 24px; flex: none; accent-color: var(--edge); }
input:checked + span { color: var(--soft); text-decoration: line-through; }
li { margin: 4px 0; } ul { padding-left: 18px; margin: 4px 0; }
.left { color: var(--word); font-weight: 600; white-space: nowrap; }
"""

SCRIPT = """\
"use strict";
(() => {
  const sheet = JSON.parse(document.getElementById("sheet").textContent);
  const boxes = [...document.querySelectorAll("input[data-place]")];
  let kept = {};
  const read = text => { try { return JSON.parse(text) || {}; } catch { return {}; } };
  try { kept = read(localStorage.getItem(sheet.name)); } catch { }
  if (!Object.keys(kept).length && location.hash.length > 1)
    kept = read(decodeURIComponent(location.hash.slice(1)));
  const count = () => {
    const done = boxes.filter(box => box.checked).length;
    document.getElementById("done").textContent =
      sheet.words.done.replace("{done}", done).replace("{all}", boxes.length);
  };
  for (const box of boxes) {
    box.checked = kept[box.dataset.place] === 1;
    box.addEventListener("change", () => {
      if (box.checked) kept[box.dataset.place] = 1; else delete kept[box.dataset.place];
      const text = JSON.stringify(kept);
      try { localStorage.setItem(sheet.name, text); } catch { }
      try { history.replaceState(null, "", "#" + encodeURIComponent(text)); } catch { }
      count();
    });
  }
  const span = minutes => minutes < 120 ? sheet.words.minutes.replace("{n}", minutes)
    : sheet.words.hours.replace("{h}", Math.floor(minutes / 60)).replace("{m}", minutes % 60);
  const tick = () => {
    const now = Date.now() / 60000;
    let next = null;
    for (const film of document.querySelectorAll("[data-opens]")) {
      const left = Math.ceil(film.dataset.opens - now);
      film.querySelector(".left").textContent = left > 0 ? span(left) : sheet.words.ready;
      if (left > 0 && (next === null || left < next.left))
        next = { left, name: film.dataset.name };
    }
    document.getElementById("next").textContent = next === null ? sheet.words.none
      : sheet.words.next.replace("{name}", next.name).replace("{left}", span(next.left));
  };
  count(); tick(); setInterval(tick, 5000);
})();
"""


def tonight_page(
    book: Book, plan: Plan, now: int, *, language: str = "en", translate: Translate = str
) -> bytes:
    """Return the page of the evening in which ``now`` lies, or of the next, in UTF-8.

    Parameters
    ----------
    language
        That of the texts (BCP 47).
    translate
        Puts each text into it.
    """
    zone = zone_named(book.bench_time.zone)
    sheet = run_sheet(book, plan, now)
    cards = cards_of(sheet.rows)
    said = _Said(translate, zone)
    films = [film for film in sheet.drying if film.opens is not None]
    body = [
        f"<h1>{said(run_sheet_text.stretch_title(sheet.interval, zone))}</h1>",
        *(f"<p>{said(line)}</p>" for line in run_sheet_text.finish_lines(plan, book)),
        '<p id="done" class="soft" role="status"></p>',
        '<p id="next" class="next" role="status"></p>',
        *_evening(sheet, cards, said),
        *_films(films, said, sheet.now),
        *_lines(said, message("Take care"), run_sheet_text.caution_lines(sheet)),
    ]
    if not cards:
        body.append(f"<p>{said(run_sheet_text.NOTHING)}</p>")
    told = {
        "done": said.plain(message("{done} of {all} ticked", done="{done}", all="{all}")),
        "minutes": said.plain(message("{n} min", n="{n}")),
        "hours": said.plain(message("{h} h {m} min", h="{h}", m="{m}")),
        "ready": said.plain(message("expected ready")),
        "none": said.plain(message("Nothing more opens tonight.")),
        "next": said.plain(message("Next: {name} in {left}", name="{name}", left="{left}")),
    }
    name = "tackfree-" + hashlib.sha256("".join(body).encode()).hexdigest()[:16]
    return _page("\n".join(body), {"name": name, "words": told}, language, said)


class _Said:
    """Puts texts into a language, tame and escaped."""

    def __init__(self, translate: Translate, zone: ZoneInfo) -> None:
        self._translate, self.zone = translate, zone

    def plain(self, text: str) -> str:
        return " ".join(tame(self._translate(text), lines=False).split())

    def __call__(self, text: str) -> str:
        return escape(self.plain(text))


def _evening(sheet: RunSheet, cards: tuple[LoadCard, ...], said: _Said) -> Iterator[str]:
    """Yield cards and what belongs to none, in order of the clock."""
    parts = [(card.start, [*_card(card, said)]) for card in cards]
    for row in loose_set_up(sheet.rows, cards):
        clock = wording.clock_time(row.start, said.zone)
        parts.append((row.start, [f'<p class="soft">{clock} · {_set_up(row, said)}</p>']))
    for _, lines in sorted(parts, key=lambda timed: timed[0]):
        yield from lines


def _set_up(row: BenchRow, said: _Said) -> str:
    return said(message("{work}, {n} min", work=run_sheet_text.bench_text(row), n=row.minutes))


def _card(card: LoadCard, said: _Said) -> Iterator[str]:
    clock = wording.clock_time(card.start, said.zone)
    first, filling = card.rows[0], card.filling
    title = filling.coating if filling else run_sheet_text.card_work(card)
    swatch = escape(card.swatch)
    dab = f'<span class="swatch" style="background:{swatch}"></span>' if swatch else ""
    heading = said(title)
    yield f"<section>\n<h2>{dab}{heading[:1].upper()}{heading[1:]}</h2>"
    about = [clock, said(message("{n} min", n=card.minutes))]
    about += [said(run_sheet_text.bench_text(filling))] if filling else []
    yield f'<p class="soft">{" · ".join(about)}</p>'
    if filling and filling.load:
        yield f"<p>{said(load_text(filling.load))}</p>"
    elif filling is None:
        for coat in first.coats:
            yield f"<p>{said(run_sheet_text.coat_text(coat, first))}</p>"
            yield from (
                f"<p>{said(each)}</p>" for each in run_sheet_text.put_out(card, coat.coating)
            )
    work, named = "" if filling or run_sheet_text.differ(card) else _work(first), ""
    for row in card.rows:
        if _work(row) != work:
            work, named = _work(row), ""
            yield f'<p class="work">{said(work)}</p>'
        if _model(row) != named:
            named = _model(row)
            yield f"<h3>{said(named)}</h3>"
        yield '<div class="places">'
        yield from _ticks(row, said)
        yield "</div>"
    for other in card.around:
        if other is not filling:
            yield f'<p class="soft">{_set_up(other, said)}</p>'
    yield "</section>"


def _work(row: WorkRow) -> str:
    return row.title or row_of((row.stage,))


def _model(row: WorkRow) -> str:
    told: str = row.key.model
    if row.key.coat > 1:
        told = message("{work}, coat {coat}", work=told, coat=row.key.coat)
    return told


def _ticks(row: WorkRow, said: _Said) -> Iterator[str]:
    for part, names in by_part(row.places).items():
        for name in names:
            place = escape(_place(row.key, row.piece, part, name), quote=True)
            label = said(f"{part}: {name}" if name else part)
            on = " checked" if row.logged else ""
            yield (
                f'<label><input type="checkbox" data-place="{place}"{on}>'
                f"<span>{label}</span></label>"
            )


def _place(key: PassKey, piece: int, part: str, name: str) -> str:
    return "/".join((key.project, key.model, key.step, str(key.coat), str(piece), part, name))


def _films(films: list[DryingFilm], said: _Said, now: int) -> Iterator[str]:
    if not films:
        return
    yield f"<section>\n<h2>{said(message('Drying'))}</h2>\n<ul>"
    for film in sorted(films, key=lambda film: film.opens or 0):
        name = said(message("{coating} on {model}", coating=film.coating, model=film.key.model))
        opens = wording.opening(film.opens, now, said.zone)
        yield (
            f'<li data-opens="{film.opens}" data-name="{name}">{name} '
            f'<span class="soft">{said(opens)}</span> <span class="left"></span></li>'
        )
    yield "</ul>\n</section>"


def _lines(said: _Said, title: str, lines: list[str]) -> Iterator[str]:
    if lines:
        points = "\n".join(f"<li>{said(line)}</li>" for line in lines)
        yield f"<section>\n<h2>{said(title)}</h2>\n<ul>\n{points}\n</ul>\n</section>"


def _page(body: str, sheet: dict[str, object], language: str, said: _Said) -> bytes:
    # Only this script runs, and nothing is loaded, whatever stands in the text.
    mark = b64encode(hashlib.sha256(SCRIPT.encode()).digest()).decode()
    policy = f"default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{mark}'"
    data = json.dumps(sheet, ensure_ascii=True).replace("<", "\\u003c")
    page = (
        f'<!DOCTYPE html>\n<html lang="{escape(language)}">\n<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        '<meta name="generator" content="Tackfree">\n'
        f"<title>{said(message('Tonight at the bench'))}</title>\n"
        f"<style>\n{STYLE}</style>\n</head>\n<body>\n{body}\n"
        f'<script type="application/json" id="sheet">{data}</script>\n'
        f"<script>{SCRIPT}</script>\n</body>\n</html>\n"
    )
    return page.encode()
