"""A result or a declaration as plain data (for JSON) and as text (for the terminal). The schema is in
calc/COMMAND.md; keep it stable."""

from calc.core.result import VERDICT_WORDS
from calc.core.working import Number
from calc.core.writing import to_unit
from calc.declare.calculator import Calculator
from calc.declare.choice import Choice
from calc.declare.grid import Grid
from calc.declare.open_input import Open
from calc.declare.result import Result
from calc.declare.taken import Taken
from calc.page.formula import line_text

VERSION = 2  # of the schema: 1 took what was not entered from the example, unsaid


def _written(n: Number, system: str) -> dict:
    assert n.form, "what is told has a form"
    unit = n.form.unit(system)
    return {"value": to_unit(n.value, unit), "unit": unit.symbol, "si": n.value, "text": n.text(system)}


def result_data(result: Result, system: str = "metric") -> dict:
    """A result as JSON-ready data, in one unit system."""
    return {
        "version": VERSION,
        "calculator": result.calculator.id,
        "title": result.calculator.title,
        "units": system,
        "example": result.example,
        "engine": result.sheet.name if result.sheet else None,
        "next": list(result.next),
        "inputs": {t.input.name: _input(t, system) for t in result.taken},
        "outputs": {key: _output(n, result.doubts.get(key), system) for key, n in result.outputs.items()},
        "verdict": {
            "state": result.verdict.state,
            "headline": result.verdict.headline.plain(system),
            "do": result.verdict.do.plain(system),
        },
        "working": [
            {
                "symbol": n.symbol,
                "label": n.label,
                "line": line_text(n, system),
                "source": n.source.id if n.source else None,
            }
            for n in result.working
        ],
        "remarks": [
            {"level": r.level, "text": r.text.plain(system), "field": r.field or None} for r in result.remarks
        ],
        "tables": [
            {
                "title": t.title,
                "columns": [_cell(c, system) for c in t.columns],
                "rows": [[_cell(c, system) for c in row] for row in t.rows],
                "states": list(t.states),
            }
            for t in result.tables
        ],
        "cautions": [{"id": c.id, "text": c.text} for c in result.cautions],
        "sources": [
            {"id": s.id, "text": s.text, "kind": s.kind, "from_memory": s.from_memory} for s in result.sources
        ],
    }


def _input(t: Taken, system: str) -> dict:
    return {
        "label": t.input.label,
        "symbol": t.input.symbol,
        "entered": t.entered,
        "entry": t.text,
        **_beside(t),
        "origin": {"from": t.origin.kind, "words": t.origin.words},
        **_span(t, system),
        **_taken(t.value, system),
    }


def _output(n: Number, doubt: float | None, system: str) -> dict:
    return {"label": n.label, "symbol": n.symbol, **_written(n, system), **_doubt(n, doubt, system)}


def _taken(value, system) -> dict:
    """An input's value: a number with its unit, an option's id, or a grid's rows of numbers."""
    if isinstance(value, Number):
        return _written(value, system)
    if isinstance(value, tuple):
        return {
            "rows": [
                None if row is None else [None if n is None else _written(n, system) for n in row]
                for row in value
            ]
        }
    return {"value": value}


def _span(t, system) -> dict:
    """Least and greatest of what stands in by the engine's sheet."""
    return {"span": [to_unit(x, t.input.form.unit(system)) for x in t.span]} if t.span else {}


def _beside(t) -> dict:
    """What was entered beside an input: cells of a grid, temperatures of a warm reading."""
    beside = {part: text for part, text in t.texts.items() if part}
    return {"beside": beside} if beside else {}


def _doubt(n: Number, U: float | None, system: str) -> dict:
    """Expanded uncertainty (k = 2) of an output, where the readings have one."""
    if not U or n.form is None:
        return {}
    shape = n.form.difference
    unit = shape.unit(system)
    return {"doubt": to_unit(U, unit), "text": f"{n.text(system)} ± {shape.write(U, system)}"}


def _cell(cell, system) -> str:
    return (
        cell.text(system)
        if isinstance(cell, Number)
        else cell.plain(system)
        if hasattr(cell, "plain")
        else str(cell)
    )


def result_text(result: Result, system: str = "metric") -> str:
    """A result for the terminal."""
    d = result_data(result, system)
    wide = max((len(o["label"]) for o in d["outputs"].values()), default=0)
    lines = [
        d["title"],
        (
            f"{'Example. ' if result.example else ''}{VERDICT_WORDS[d['verdict']['state']]}:"
            f" {d['verdict']['headline']}"
        ),
        d["verdict"]["do"],
        *_granted(result, system),
        "",
    ]
    lines += [f"  {o['label']:<{wide}}  {o['text']}" for o in d["outputs"].values()]
    for t in d["tables"]:
        said = [
            "",
            *(
                "" if state in ("", "pass") else f"  ({VERDICT_WORDS[state]})"
                for state in t["states"] or [""] * len(t["rows"])
            ),
        ]
        lines += [
            "",
            t["title"],
            *("  " + "  ".join(row) + state for row, state in zip([t["columns"], *t["rows"]], said)),
        ]
    for title, rows in (
        ("Remarks", [r["text"] for r in d["remarks"]]),
        ("Working", [w["line"] for w in d["working"]]),
        ("Take care", [c["text"] for c in d["cautions"]]),
        ("Sources", [s["text"] for s in d["sources"]]),
    ):
        if rows:
            lines += ["", title, *(f"  {r}" for r in rows)]
    return "\n".join(lines)


def _granted(result: Result, system: str):
    """What the verdict takes for granted, a line each."""
    if result.stand_ins:
        yield (
            "Not read, so any size that the sheet allows was counted:"
            f" {', '.join(t.input.name for t in result.stand_ins)}."
        )
    if result.assumed:
        yield (
            "Taken: "
            + ", ".join(
                f"{t.input.name} {t.value.text(system) if isinstance(t.value, Number) else t.value}"
                for t in result.assumed
            )
            + "."
        )
    if result.sheet:
        yield f"Limits: {result.sheet.name}’s sheet{', which is invented' if result.sheet.invented else ''}."


def declaration_data(calculator: Calculator) -> dict:
    """A calculator's declaration: inputs with kind, units, ranges; outputs."""
    return {
        "version": VERSION,
        "calculator": calculator.id,
        "title": calculator.title,
        "station": calculator.station,
        "purpose": calculator.purpose,
        "finds": list(calculator.finds),
        "inputs": {i.name: _input_data(i) for i in calculator.inputs},
        "outputs": {
            o.key: {"label": o.label, "symbol": o.symbol, **_output_data(o), "main": o.main}
            for o in calculator.outputs
        },
        "sources": [
            {"id": s.id, "text": s.text, "kind": s.kind, "from_memory": s.from_memory}
            for s in calculator.sources
        ],
        "cautions": [{"id": c.id, "text": c.text} for c in calculator.cautions],
    }


def _output_data(o) -> dict:
    if o.form is None:
        return {"kind": "any", "unit": None, "unit_inch": None, "decimals": None}
    return {
        "kind": o.form.kind.name,
        "unit": o.form.metric.symbol,
        "unit_inch": o.form.inch.symbol,
        "decimals": o.form.decimals,
    }


def _input_data(i, with_default: bool = True) -> dict:
    common = {
        "label": i.label,
        "symbol": i.symbol,
        "hint": i.hint,
        "feature": i.feature or None,
        "limit": getattr(i, "limit", "") or None,
        "assumed": getattr(i, "assumed", "") or None,
        "stands_in": getattr(i, "stands_in", False),
        "when": list(i.when) or None,
    }
    if isinstance(i, Choice):
        return {**common, "type": "choice", "options": i.options, "default": i.default}
    if isinstance(i, Open):
        return {**common, "type": "open", "kinds": [kind.name for kind in i.kinds], "default": i.default}
    if isinstance(i, Grid):
        return {
            **common,
            "type": "grid",
            "rows": list(i.rows),
            "least": i.least,
            "default": i.default_text("metric"),
            "tool": i.tool or None,
            "columns": [
                {
                    k: v
                    for k, v in _input_data(i.cells[0, c], False).items()
                    if k not in ("hint", "feature", "tool", "limit", "assumed", "stands_in", "when")
                }
                for c in range(len(i.columns))
            ],
        }
    low, high = i.hard_range
    unit = i.form.metric

    def shown(si):
        return None if si is None else to_unit(si, unit)

    return {
        **common,
        "type": "quantity",
        "kind": i.form.kind.name,
        "unit": unit.symbol,
        "unit_inch": i.form.inch.symbol,
        "units": [u.symbol for u in i.form.kind.units],
        "decimals": i.form.decimals,
        "optional": i.optional,
        **({"default": shown(i.default_value)} if with_default else {}),
        "least": shown(low),
        "most": shown(high),
        "usual": [shown(x) for x in i.usual_range] if i.usual_range else None,
        "tool": i.tool or None,
    }


def declaration_text(calculator: Calculator) -> str:
    d = declaration_data(calculator)
    lines = [f"{d['calculator']}: {d['title']}", d["purpose"], "", "Inputs"]
    for name, i in d["inputs"].items():
        if i["type"] == "choice":
            lines.append(f"  {name:<24} {i['label']} (default {i['default']}): {', '.join(i['options'])}")
        elif i["type"] == "open":
            lines.append(f"  {name:<24} {i['label']}: {', '.join(i['kinds'])}, default {i['default']}")
        elif i["type"] == "grid":
            lines.append(
                f"  {name:<24} {i['label']}: rows {', '.join(i['rows'])} of"
                f" {', '.join(c['label'] for c in i['columns'])}; default {i['default']}"
            )
        else:
            unit = f" {i['unit']}" if i["unit"] else ""
            default = "may be left out" if i["default"] is None else f"default {i['default']:.10g}{unit}"
            lines.append(
                f"  {name:<24} {i['label']}: {i['kind']}, {default}, {i['least']:.10g} to"
                f" {i['most']:.10g}{unit}"
            )
    return "\n".join(
        lines
        + ["", "Outputs"]
        + [
            f"  {name:<24} {o['label']}: {o['kind']}, {o['unit'] or 'no unit'}"
            for name, o in d["outputs"].items()
        ]
    )
