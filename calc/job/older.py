"""Jobs of older versions, each brought to the one after it."""

from calc.job.contents import FORMAT, MOST_DONE, check_keys, name_of_line


def _from_0(old: dict) -> dict:
    """Form 0, of the trials: one line a size with both stages in it, and no history."""
    readings = []
    for size in old["sizes"]:
        check_keys("A size", size, ("feature",), ("place", "as_received", "as_finished", "at", "by"))
        told = (
            {"feature": size["feature"], "place": str(size.get("place", ""))},
            {"at": size.get("at", old["started"]), "by": size.get("by", ""), "why": ""},
        )
        readings += [
            told[0] | {"stage": stage, "text": size[key]} | told[1]
            for key, stage in (("as_received", "received"), ("as_finished", "finished"))
            if size.get(key)
        ]
    return {
        "format": FORMAT,
        "version": 1,
        "id": old["id"],
        "name": old["customer"],
        "engine": old["engine"],
        "received": old.get("parts", ""),
        "started": old["started"],
        "by": "",
        "done": [],
        "readings": readings,
    }


def _from_1(old: dict) -> dict:
    """Form 1: what was done as bare texts, without a name to strike them by."""
    if not isinstance(old["done"], list):
        return {**old, "version": 2}  # told by whoever looks at it next
    entries: dict = {}
    for text in old["done"][: MOST_DONE + 1]:
        name = name_of_line(text, "", "", entries)
        entries[name] = {"line": name, "text": text, "at": "", "by": ""}
    return {**old, "version": 2, "done": [*entries.values()]}


OLDER = {0: _from_0, 1: _from_1}
