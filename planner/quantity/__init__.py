"""How much of each coating the work takes: areas, films, mixes, loads, stock, shopping.

Figures are estimates.  Each share and loss that is assumed says so.
"""

from planner.quantity.areas import (
    Area,
    AreaSource,
    areas_of,
    box_m2,
    measure_cm2,
    scale_of,
    scaled_cm2,
)
from planner.quantity.coating_per_pass import NOT_BY_VOLUME, Take, coating_needed
from planner.quantity.coverage import Share, share_of
from planner.quantity.film_volume import amount_ml
from planner.quantity.leftover_mixes import Kept
from planner.quantity.loads import Load, fill, filled, loads, planned_use, served, used_by
from planner.quantity.mix_ratios import (
    MixMeasure,
    drops_of,
    drops_per_ml,
    measured,
    measures_of,
    mixed_solids,
    parts_text,
    read_parts,
    solids_of,
)
from planner.quantity.shared_mixes import Stirring, stirrings
from planner.quantity.shopping import (
    ConsumableLine,
    NoArea,
    RunsOut,
    Shopping,
    ShoppingLine,
    shopping,
)
from planner.quantity.stock import ConsumableNow, Stock, consumables_now, old_bottle, stock_now
from planner.quantity.sufficiency import Enough, Short, StockTaker
from planner.quantity.transfer import Transfer, transfer_efficiency

__all__ = [
    "NOT_BY_VOLUME",
    "Area",
    "AreaSource",
    "ConsumableLine",
    "ConsumableNow",
    "Enough",
    "Kept",
    "Load",
    "MixMeasure",
    "NoArea",
    "RunsOut",
    "Share",
    "Shopping",
    "ShoppingLine",
    "Short",
    "Stirring",
    "Stock",
    "StockTaker",
    "Take",
    "Transfer",
    "amount_ml",
    "areas_of",
    "box_m2",
    "coating_needed",
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
    "scale_of",
    "scaled_cm2",
    "served",
    "share_of",
    "shopping",
    "solids_of",
    "stirrings",
    "stock_now",
    "transfer_efficiency",
    "used_by",
]
