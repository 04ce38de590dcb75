"""Published standards that are tables, each in a module of its own."""
