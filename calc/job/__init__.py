"""A job: sizes carried from the machine to the person who bolts the engine together. Imported only where a
job is asked for."""
