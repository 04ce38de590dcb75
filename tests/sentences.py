"""What a refusal must be: one sentence that names the input, says what is wrong with it, and what would be accepted."""

import re


def check_sentence(calculator, field: str, sentence: str) -> None:
    assert len(sentence) <= 300 and sentence.isprintable() and sentence.endswith("."), sentence
    declared = calculator.input[field.partition(".")[0]]
    assert sentence.startswith(f"{declared.label}: ") or sentence.startswith(f"{declared.label}, "), sentence
    unquoted = re.sub(r'".*?"(?=[ ,;.]|$)', '""', sentence)  # what was typed may itself hold quotes
    assert not re.search(r"[.?!] [A-Z]", unquoted), f"more than one sentence: {sentence}"
    assert re.search(
        r"; (?:\w+ ){0,3}(?:give|choose|write|name|leave)\b|(?:give|choose|write|name) ", unquoted
    ), f"does not say what is accepted: {sentence}"
