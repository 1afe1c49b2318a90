from __future__ import annotations

from furbelow.s4_cut.problem import Bolt
from furbelow.s4_cut.trade_off import trade_off

from tests.s4_cut.cases import PRICES, cm
from tests.s4_cut.test_exact import FLOUNCES
from tests.s4_cut.verify_plan import faults


def test_the_trade_off_lists_least_cloth_for_joins_and_sections() -> None:
    bolt = Bolt(cm(140), cm(10))
    plans = trade_off(FLOUNCES, bolt, PRICES)
    assert [(plan.laid_length / 1000, plan.joins, plan.setups) for plan in plans] == [
        (cm("1080") / 1000, 0, 1),
        (cm("810") / 1000, 0, 2),
        (cm("810") / 1000, 1, 1),
        (cm("720") / 1000, 2, 1),
        (cm("680") / 1000, 3, 2),
        (cm("650") / 1000, 4, 2),
    ]
    assert all(plan.proven for plan in plans)
    assert [fault for plan in plans for fault in faults(plan, FLOUNCES, bolt, PRICES)] == []
