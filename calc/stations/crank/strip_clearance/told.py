"""What comes out: the clearance at the strip's widest and narrowest place, and the taper between them."""

from calc.declare.calculator import Output, Outputs
from calc.stations.shared.forms import SIZE


class Out(Outputs):
    read = Output("Clearance that the strip shows, tightest", "c_s", SIZE, main=True)
    sizes = Output("The same by the sizes, as the sheet counts", "c_t", SIZE, main=True)
    loose = Output("By the sizes, at the narrowest place", "c_l", SIZE)
    taper = Output("Taper of journal and bore together", "k", SIZE)
