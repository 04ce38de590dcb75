"""What is ordered for threads: inserts, where the words of what was done name a thread with them."""

import re

from calc.core.result import say
from calc.job.record import done
from calc.job.sizes import Sizes
from calc.stations.shared.orders.order import Order

_THREAD = re.compile(r"\bM\d+(?:\.\d+)?(?:\s?[x×]\s?\d+(?:\.\d+)?)?|\b(?:\d+/\d+|\d+)-\d+\b")


class Inserts:
    """Thread inserts that what was done speaks of."""

    def rows(self, sizes: Sizes, before: tuple[Order, ...] = ()) -> list[Order]:
        standing = [line.text for line in done(sizes.job) if not line.struck]
        return [
            Order(
                "Thread insert",
                say("{thread}", thread=thread),
                (),
                say("As done: {line}", line=line),
                "attention",
                say("Order it unless it is in already."),
            )
            for line in standing
            if re.search(r"\binserts?\b", line, re.IGNORECASE)
            for thread in dict.fromkeys(_THREAD.findall(line))
        ]


INSERTS = Inserts()
