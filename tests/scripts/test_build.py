"""The build: what it refuses, and that a failed one leaves the old site in place."""

from types import SimpleNamespace

import pytest

from scripts import build, environment, theme
from scripts.build import BuildFailed
from scripts.mdx import hooks, place
from scripts.runtime import bundle, split

CHANGE = theme.change


@pytest.fixture
def checkout(tmp_path, monkeypatch):
    """A checkout of one source file, whose pages are 'made' by copying it."""
    (tmp_path / "docs").mkdir()
    source = tmp_path / "docs/index.md"
    source.write_text("first")
    monkeypatch.setattr(build, "ROOT", tmp_path)
    monkeypatch.setattr(build, "CACHE", tmp_path / ".cache")
    monkeypatch.setattr(build, "SOURCES", ("docs",))
    monkeypatch.setattr(build, "_runtime", lambda fresh, strict, draft: "")
    monkeypatch.setattr(theme, "change", lambda fresh, wanted: None)

    def pages(fresh, draft):
        fresh.mkdir()
        (fresh / "index.html").write_text(f"<p>{source.read_text()}</p>")

    monkeypatch.setattr(build, "_pages", pages)
    return SimpleNamespace(
        source=source, site=tmp_path / "site", built=lambda: (tmp_path / "site/index.html").read_text()
    )


def test_builds_only_when_something_changed(checkout, monkeypatch):
    first = build.build(checkout.site)
    assert checkout.built() == "<p>first</p>"
    monkeypatch.setattr(build, "_pages", lambda fresh, draft: pytest.fail("built though nothing changed"))
    assert build.build(checkout.site) == first


def test_builds_again_when_a_source_changed(checkout):
    first = build.build(checkout.site)
    checkout.source.write_text("second")
    assert build.build(checkout.site) != first
    assert checkout.built() == "<p>second</p>"


def test_builds_again_when_a_source_was_renamed(checkout):
    first = build.sources_digest()
    checkout.source.rename(checkout.source.with_name("other.md"))
    assert build.sources_digest() != first


def test_builds_again_when_forced(checkout):
    build.build(checkout.site)
    (checkout.site / "index.html").write_text("spoilt")
    build.build(checkout.site, force=True)
    assert checkout.built() == "<p>first</p>"


@pytest.fixture
def without_memory(tmp_path, monkeypatch):
    """A folder with a page, for a runtime whose program is another one than that which is known."""
    (tmp_path / "index.html").write_text("<html><head></head><body></body></html>")
    monkeypatch.setattr(bundle, "memory", lambda cache, calc: bundle.program(cache))
    monkeypatch.setattr(split, "trimmed", lambda *_: split.Module(b"another kind of program"))
    cache = tmp_path / "cache"
    cache.mkdir()
    for kept in ("npm", "bytecode", "library"):
        (environment.CACHE / kept).mkdir(parents=True, exist_ok=True)
        (cache / kept).symlink_to(environment.CACHE / kept)
    monkeypatch.setattr(build, "CACHE", cache)
    return tmp_path


def test_where_pythons_memory_cannot_be_made_the_site_is_built_without_and_says_so(without_memory, capsys):
    assert build._runtime(without_memory, strict=False, draft=False) == build.NO_MEMORY
    assert "not WebAssembly of version 1" in capsys.readouterr().err
    assert 'name="sizebook-start" content="bytecode"' in (without_memory / "index.html").read_text()
    names = {path.name for path in (without_memory / "runtime").rglob("*")}
    assert {"calc.zip", "heads.zip", "pyodide.asm.wasm", "python_stdlib.zip"} <= names
    assert not {"memory.wasm", "hot.wasm", "cold.wasm"} & names


def test_a_release_is_not_built_without_pythons_memory(without_memory):
    with pytest.raises(BuildFailed, match="not WebAssembly of version 1"):
        build._runtime(without_memory, strict=True, draft=False)


def test_what_a_build_lacks_counts_only_for_whoever_asks_for_it(checkout, monkeypatch):
    monkeypatch.setattr(build, "_runtime", lambda fresh, strict, draft: build.NO_MEMORY)
    build.build(checkout.site)
    assert build.built_from(checkout.site).endswith("Python's memory is missing)")
    checkout.site.joinpath("index.html").write_text("as it is")
    build.build(checkout.site)
    assert checkout.built() == "as it is"
    build.build(checkout.site, strict=True)
    assert checkout.built() == "<p>first</p>"


def test_a_draft_is_no_build_for_anyone_else(checkout, monkeypatch):
    monkeypatch.setattr(build, "_runtime", lambda fresh, strict, draft: build.DRAFT if draft else "")
    build.build(checkout.site, draft=True)
    assert build.built_from(checkout.site).endswith(build.DRAFT)
    checkout.site.joinpath("index.html").write_text("a draft")
    build.build(checkout.site, draft=True)
    assert checkout.built() == "a draft"
    build.build(checkout.site)
    assert checkout.built() == "<p>first</p>"


def test_a_failed_build_leaves_the_old_site(checkout):
    build.build(checkout.site)
    checkout.source.write_text("{size: nothing}")
    with pytest.raises(BuildFailed):
        build.build(checkout.site)
    assert checkout.built() == "<p>first</p>"
    assert not list((checkout.site.parent / ".cache").glob("site-*"))


def test_another_theme_leaves_the_old_site_and_tells_what_was_looked_for(checkout, monkeypatch):
    build.build(checkout.site)
    checkout.source.write_text("second")
    monkeypatch.setattr(theme, "change", CHANGE)
    with pytest.raises(BuildFailed, match=r"scripts/theme.py changes. There are 0 files"):
        build.build(checkout.site)
    assert checkout.built() == "<p>first</p>"


@pytest.mark.parametrize(
    "left",
    [
        "<p>/// calculater | seat-fit</p>",
        "<p>prose\n///</p>",
        "<p>is {size: head.pocket low} wide</p>",
        "<li>{result: seat-fit",
    ],
)
def test_a_form_left_as_text_is_refused(left, tmp_path):
    (tmp_path / "heads").mkdir()
    (tmp_path / "heads/page.html").write_text(f"<html><body>{left}</body></html>")
    with pytest.raises(BuildFailed, match=r"heads/page.html: .* was left as text"):
        build.check_pages(tmp_path)


@pytest.mark.parametrize(
    "fine",
    [
        "<pre><code>/// calculator | seat-fit\n///</code></pre>",
        "<p>write <code>{size: head.pocket low}</code></p>",
        "<script>/// a comment</script>",
        "<p>https://example.org/ and a // b</p>",
        '<textarea>{result: x}</textarea><p title="/// x">text</p>',
    ],
)
def test_what_is_shown_as_code_is_not(fine, tmp_path):
    (tmp_path / "page.html").write_text(f"<html><body>{fine}</body></html>")
    build.check_pages(tmp_path)


@pytest.mark.parametrize(
    ("source", "above"),
    [
        ("# Title\n\ntext\n", 0),
        ("---\ntitle: Title\n---\n# Title\n", 3),
        ("---\ntitle: Title\n---\n\n\n# Title\n", 5),
        ("\ufeff---\ntitle: Title\n---\n# Title\n", 3),
    ],
)
def test_the_hook_counts_the_lines_of_the_front_matter(source, above, tmp_path, monkeypatch):
    from mkdocs.utils.meta import get_data

    monkeypatch.setattr(hooks, "ROOT", tmp_path)
    path = tmp_path / "page.md"
    path.write_text(source, encoding="utf-8")
    markdown, _ = get_data(path.read_text(encoding="utf-8-sig"))
    with place.page("before"):
        hooks.on_page_markdown(markdown, page=SimpleNamespace(file=SimpleNamespace(abs_src_path=str(path))))
        error = place.MarkdownError(1, "wrong")
    assert str(error) == f"page.md:{above + 1}: wrong"
