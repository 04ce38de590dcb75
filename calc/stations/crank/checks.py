"""What is checked of a crank before it goes into its case."""

from calc.job.view import View
from calc.stations.shared.checks import Check, size_check


def straight(view: View) -> Check | None:
    if not view.has("crank"):
        return None
    return size_check(
        view,
        "Crank straight, journals round",
        "A bowed crank wipes its centre main, an oval journal its shells.",
        "End mains in V-blocks, dial on the centre main; then each journal in two directions at both ends.",
        "crank.bow",
        "crank.journal_round",
        "crank.journal_taper",
        shop="V-blocks on a plate with a dial gauge, and micrometers.",
    )
