"""`tackfree card`: a scrap coated and tried by the command line."""

from __future__ import annotations

import json

import pytest
from small_book import small_book

from app.command_line import main
from storage.bench_book import BenchBook

PRIMER = "grey primer"


@pytest.fixture
def card(tmp_path, capsys):
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()

    def run(*argv):
        status = main(["card", *argv, "--book", str(path)])
        said = capsys.readouterr()
        return status, said.out, said.err

    return run


def test_a_card_from_its_coat_to_the_bottle(card):
    assert "no card yet" in card()[1]
    status, out, _ = card("coat", PRIMER, "--at", "2031-03-06T19:35")
    assert (status, out.splitlines()[0]) == (0, f"drying card: {PRIMER}")
    assert "try it Thu 6 Mar" in out
    status, out, _ = card("try", PRIMER, "thumb", "--not-yet", "--at", "2031-03-06T21:30")
    assert status == 0
    assert f"{PRIMER} dries ×" in out
    _, out, _ = card("use", PRIMER, "--at", "2031-03-06T21:31", "--json")
    told = json.loads(out)
    (bottle,) = told["bottles"]
    assert bottle["reckoned"] == round(bottle["factor"], 2) > 1
    (one,) = told["cards"]
    assert [trial["held"] for trial in one["trials"]] == [False]
    assert {times["trial"] for times in one["stands"]} == {"finger", "thumb", "tape", "rub"}
    status, out, _ = card("drop", PRIMER, "--at", "2031-03-06T21:32")
    assert "no card yet" in out


def test_tonight_tells_what_a_card_asks(tmp_path, capsys):
    path = tmp_path / "bench.tackfree"
    BenchBook.create(path, small_book()).close()
    book = ("--book", str(path))
    main(["card", "coat", PRIMER, "--at", "2031-03-06T19:35", *book])
    capsys.readouterr()
    now = ("--now", "2031-03-06T19:36", *book)
    assert main(["tonight", *now]) == 0
    text = capsys.readouterr().out
    assert "Try a drying card" in text
    assert f"{PRIMER}: thumb" in text
    assert main(["tonight", "--json", *now]) == 0
    asks = json.loads(capsys.readouterr().out)["cards"]
    assert {"thumb"} <= {ask["trial"] for ask in asks}
    main(["card", "drop", PRIMER, *book])
    capsys.readouterr()
    main(["tonight", *now])
    assert "drying card" not in capsys.readouterr().out


@pytest.mark.parametrize(
    ("argv", "piece"),
    [
        (("coat",), "COATING: goes with"),
        (("coat", "nothing"), "coating"),
        (("list", PRIMER), "COATING: goes with"),
        (("try", PRIMER, "--held"), "TRIAL: goes with try"),
        (("try", PRIMER, "tape"), "--held: or --not-yet"),
        (("try", PRIMER, "tape", "--held"), "no card was coated"),
        (("use", "nothing"), "COATING: no coating"),
        (("use", PRIMER), "was looked at yet"),
        (("drop", PRIMER), "no card was coated"),
        (("use", PRIMER, "--in", "bench"), "--in: goes with coat"),
        (("coat", PRIMER, "--at", "2231-03-06T19:35"), "year"),
        (("coat", PRIMER, "--film-um", "0"), "dry_film_um"),
    ],
)
def test_what_does_not_go_together_is_refused_in_one_line(card, argv, piece):
    status, out, err = card(*argv)
    assert (status, out, err.count("\n")) == (2, "", 1)
    assert piece in err
    assert "no card yet" in card()[1]
