"""A figure with its caption: a drawing to scale, or a plot."""

from calc.core.drawing import Drawing, Plot
from calc.page.drawing import drawn, scale_note
from calc.page.html import Html, el
from calc.page.plot import plotted


def figure(shown: Drawing | Plot, id: str) -> Html:
    """`id` keeps pattern names apart on one page."""
    if isinstance(shown, Drawing):
        return el(
            "figure", drawn(shown, id), el("figcaption", shown.title, scale_note(shown)), class_="drawing"
        )
    return el("figure", plotted(shown), el("figcaption", shown.title, None), class_="plot")
