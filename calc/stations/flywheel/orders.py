"""What is ordered for a flywheel, by its sizes."""

from calc.stations.shared.orders.worn import Worn

WORN = Worn({"flywheel.face_thickness": "Flywheel", "flywheel.register": "Flywheel"})
