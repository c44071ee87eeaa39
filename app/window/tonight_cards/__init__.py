"""Tonight by loads: a card for each cup of colour or kind of hand work, with places to tick."""
