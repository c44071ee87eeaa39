"""Stock: coatings by family, mixes, consumables, leftovers, sample cards."""
