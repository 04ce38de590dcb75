"""Markup as a browser would take it: parsed to the HTML standard, with every parse error."""

from tinyhtml5.parser import HTMLParser

_SVG, _MATHML = "{http://www.w3.org/2000/svg}", "{http://www.w3.org/1998/Math/MathML}"


def page(*fragments: str):
    """The <body> of a page that holds these fragments; fails where the markup is not right."""
    parser = HTMLParser(namespace_html_elements=False)
    tree = parser.parse(
        "<!doctype html><html lang='en'><head><title>Page</title></head><body><main>"
        + "".join(fragments)
        + "</main></body></html>"
    )
    assert not parser.errors, parser.errors
    for element in tree.iter():
        if isinstance(element.tag, str):
            element.tag = element.tag.removeprefix(_SVG).removeprefix(_MATHML)
    return tree.find("body")


def words(element) -> str:
    return " ".join("".join(element.itertext()).split())


def inside(element, system: str) -> str:
    """The words that a reader of that unit system sees."""
    hidden = {"metric": "u-inch", "inch": "u-metric"}[system]

    def read(e):
        if hidden in e.get("class", "").split():
            return e.tail or ""
        return (e.text or "") + "".join(map(read, e)) + (e.tail or "")

    return " ".join((element.text or "").split() + "".join(map(read, element)).split())


def classed(root, name: str) -> list:
    return [e for e in root.iter() if isinstance(e.tag, str) and name in e.get("class", "").split()]
