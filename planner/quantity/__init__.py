"""How much of each coating the work takes: areas, films, mixes, loads, stock, shopping.

Figures are estimates.  Each share and loss that is assumed says so.
"""

from planner.quantity.areas import (
    Area,
    Found,
    area_of,
    areas_of,
    box_m2,
    measure_cm2,
    read_scale,
    scale_of,
    scaled_cm2,
)
from planner.quantity.enough import Enough, Short, Taker
from planner.quantity.film import amount_ml, spreading_rate_m2_l, wet_film_um
from planner.quantity.kept import Kept
from planner.quantity.loads import Load, fill, filled, loads, planned_use, served, used_by
from planner.quantity.mixing import (
    Measure,
    drops_of,
    drops_per_ml,
    measured,
    measures_of,
    mixed_solids,
    parts_text,
    read_parts,
    solids_of,
)
from planner.quantity.shares import Share, share_of
from planner.quantity.shopping import ConsumableLine, Line, NoArea, RunsOut, Shopping, shopping
from planner.quantity.stirring import Stirring, stirrings
from planner.quantity.stock import ConsumableNow, Stock, consumables_now, old_bottle, stock_now
from planner.quantity.takes import NOT_BY_VOLUME, Take, takes
from planner.quantity.transfer import Transfer, transfer

__all__ = [
    "NOT_BY_VOLUME",
    "Area",
    "ConsumableLine",
    "ConsumableNow",
    "Enough",
    "Found",
    "Kept",
    "Line",
    "Load",
    "Measure",
    "NoArea",
    "RunsOut",
    "Share",
    "Shopping",
    "Short",
    "Stirring",
    "Stock",
    "Take",
    "Taker",
    "Transfer",
    "amount_ml",
    "area_of",
    "areas_of",
    "box_m2",
    "consumables_now",
    "drops_of",
    "drops_per_ml",
    "fill",
    "filled",
    "loads",
    "measure_cm2",
    "measured",
    "measures_of",
    "mixed_solids",
    "old_bottle",
    "parts_text",
    "planned_use",
    "read_parts",
    "read_scale",
    "scale_of",
    "scaled_cm2",
    "served",
    "share_of",
    "shopping",
    "solids_of",
    "spreading_rate_m2_l",
    "stirrings",
    "stock_now",
    "takes",
    "transfer",
    "used_by",
    "wet_film_um",
]
