"""Scripts as readers get them: without the comments that their makers read, types included, which are a
third of them.

Lines stay where they are, so what a browser says of one is found in the source. Comments are told by how our
scripts are written, not by a reading of the language: `tests/scripts/test_typecheck.py` holds that TypeScript
reads the same program before and after.
"""

import re

COMMENT = re.compile(
    r"/\*\*.*?\*/[ ]?"  # for JSDoc, wherever it stands
    r"|^[ \t]*//[^\n]*"  # a line of its own
    r"|(?<=[;,(){}\[\]]) // [^\n]*",  # behind a line of code
    re.DOTALL | re.MULTILINE,
)


def without_comments(script: str) -> str:
    """`script` with its comments gone and every line where it was."""
    return COMMENT.sub(lambda found: "\n" * found[0].count("\n"), script)
