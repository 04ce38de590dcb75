"""What stands in the site while its sources are being changed."""

import sys

from scripts.serve import build_if_changed

BUILD = """
import sys, pathlib
source, site = map(pathlib.Path, sys.argv[1:])
if source.read_text() == "wrong":
    sys.exit("Not built. It is wrong.")
site.write_text(source.read_text())
"""


def test_a_change_is_built_once_and_one_that_cannot_be_leaves_the_site_as_it_was(tmp_path, capfd):
    source, site = tmp_path / "source", tmp_path / "site"
    command = [sys.executable, "-c", BUILD, str(source), str(site)]

    def after(built: str, text: str) -> tuple[str, str, str]:
        """What counts as built, what the site holds and what was said, when the source says `text`."""
        source.write_text(text)
        built = build_if_changed(built, text, command)
        said = capfd.readouterr()
        return built, site.read_text() if site.exists() else "", said.out + said.err

    assert after("first", "first") == ("first", "", "")
    built, held, said = after("first", "second")
    assert (built, held) == ("second", "second") and "Load the page again" in said
    built, held, said = after("second", "wrong")
    assert (built, held) == ("wrong", "second") and "It is wrong" in said and "as it was before" in said
    assert after("wrong", "wrong") == ("wrong", "second", "")
    assert after("wrong", "third")[:2] == ("third", "third")
