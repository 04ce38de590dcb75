"""Metal off the pads of a rod, and what each end then weighs. Masses in kg, numbers or lines of a working
alike."""


def off_pads(over_big, over_small, beyond_big, beyond_small):
    """Metal to take off the pads so that the ends' readings fall by `over_big` and `over_small`.

    A pad that lies beyond its bore's centre, by a share of the centre distance, weighs more on its own end
    than it is, and lifts the other: both balances of moments, solved. The two add up to what the readings are
    over.
    """
    both = 1 + beyond_big + beyond_small
    return (over_big * (1 + beyond_small) + over_small * beyond_small) / both, (
        over_small * (1 + beyond_big) + over_big * beyond_big
    ) / both


def reading_after(reading, own, beyond_own, other, beyond_other):
    """What an end weighs once `own` is off its own pad and `other` off that of the other end."""
    return reading - own * (1 + beyond_own) + other * beyond_other
