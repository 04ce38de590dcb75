export * from "idb"; // which the build puts there (scripts/runtime/bundle.py)
