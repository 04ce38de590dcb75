"""The Python that runs in the reader's browser: made (`bundle`), named in every page (`stamp`), kept offline
(`offline`)."""
