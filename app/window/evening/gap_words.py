"""What a gap is good for, in words.  No Qt."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from app.window import reasons, words
from planner.evening.gaps import FreeGap, GapOffer, GapUse


def offer_words(offer: GapOffer) -> str:
    """Return one thing that fits into a gap, with the minutes that it takes."""
    forms = {
        GapUse.BRUSH: words.tr("{work} ({length})"),
        GapUse.DRY_FIT: words.tr("a dry fit before {work} ({length})"),
        GapUse.CUT_DECALS: words.tr("cut the decals for {work} ({length})"),
        GapUse.SPRAY: words.tr("{work} at the price of one more cleaning ({length})"),
    }
    return forms[offer.use].format(
        work=reasons.key_name(offer.key), length=words.span(offer.minutes)
    )


def earlier_words(gap: FreeGap, offer: GapOffer) -> str:
    """Return how much earlier than planned it would be done; "" for what is no pass."""
    if offer.use not in (GapUse.BRUSH, GapUse.SPRAY):
        return ""
    return words.tr("{length} earlier than planned").format(
        length=words.span(offer.planned - gap.start)
    )


def gap_title(gap: FreeGap, zone: ZoneInfo, now: int) -> str:
    """Return how long a gap is, and when."""
    told = words.tr("{length} free, {time}")
    return told.format(
        length=words.span(gap.minutes), time=words.today_or_when(gap.start, zone, now)
    )


def gap_sentence(gap: FreeGap) -> str:
    """Return a gap in one line, without its time: "37 min free: …"."""
    told = "; ".join(offer_words(offer) for offer in gap.offers)
    return words.tr("{length} free: {offers}").format(length=words.span(gap.minutes), offers=told)
