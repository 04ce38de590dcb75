"""Checks the types of the site's own JavaScript: `python -m scripts.typecheck`."""
