"""What is said beside the verdict on a bearing's clearance."""

from calc.core.result import Remark, note, warning
from calc.stations.crank.bearing_clearance.asked import In
from calc.stations.crank.bearing_clearance.clearance import Clearance

GENEROUS = 3e-3  # clearance over journal: more is no oil-fed bearing's; common practice, no source


def remarks_on(i: In, c: Clearance) -> tuple[Remark | None, ...]:
    b = c.bearing
    one = i.bore_most is None or i.journal_least is None
    return (
        (
            note(
                "The crush opens the housing by {u}: a gauge in the fitted shells, or a plastic strip, finds"
                " {f}. The sheet's limits are those of the sizes, without it.",
                u=c.held.cold.opened,
                f=c.fitted,
            )
            if c.known
            else warning(
                "How far the shells stand proud, or how thick the housing's wall is, is not known here. Their"
                " crush opens the housing, by 0.003 mm in a steel rod to 0.02 mm in a soft case, and that is"
                " left out."
            )
        ),
        (
            note(
                "With one reading of bore and journal, tight and loose are the same: read the bore in three"
                " directions, none within 30° of the joint, and the journal at both ends."
            )
            if one
            else None
        ),
        (
            warning("More than 3 ‰ of the journal: is it the right undersize?")
            if float(c.loose) > GENEROUS * float(b.journal)
            else None
        ),
    )
