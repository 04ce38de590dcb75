"""How a job is handed on: the link that holds all of it, the ways to send that, and a link that is opened."""

from calc.job import codes, share
from calc.job.contents import JobError
from calc.page.html import Html, children, el
from calc.page.job.pieces import made


def address(asked: dict) -> str:
    """Where others open the handbook: the shop's own address where one is set (`site_url` in mkdocs.yml),
    else the one that it was opened at."""
    return asked.get("address") or asked["root"]


def sending(job: dict, asked: dict) -> tuple[Html, ...]:
    """The buttons that hand it on; the first stays hidden where the device has no way to send."""
    return (
        el(
            "button",
            "Send the link",
            type="button",
            data_job_do="send",
            data_of="job-link",
            data_title=f"Size sheet: {job['name']}",
            hidden=True,
        ),
        el("button", "Copy the link", type="button", data_job_do="copy", data_of="job-link"),
        el("button", "Export as a file", type="button", data_job_do="export", data_key=asked["key"] or None),
    )


def link(job: dict, root: str) -> Html:
    """The link with the whole job in it, however long: a message carries more than a code does."""
    try:
        whole = f"{root.rstrip('/')}/{codes.PAGE}#{codes.FORM}{share.encode(job)}"
    except JobError as error:
        return el("p", str(error), class_="job-note")
    only_here = (
        None
        if codes.reachable(root)
        else el(
            "p",
            f"{codes.here(root)} opens on no other device, so the sheet carries no code, and this link serves"
            " here only. Send the file; or open the handbook at the shop's own address.",
            class_="job-note",
        )
    )
    return el(
        "div",
        el("label", "The link: it holds the sizes themselves, and no server sees them", for_="job-link"),
        el("div", el("input", type="text", id="job-link", value=whole, readonly=True), class_="entry"),
        only_here,
        class_="field job-link",
    )


def opened(asked: dict) -> dict:
    """The job of a link's code; where the sheet has several codes, that of this one with those that were read
    before (`others`). `code` in the reply carries the whole of it, for the address."""
    if not asked["code"].startswith(codes.FORM):
        raise JobError(
            "This link was made by a newer edition of this handbook. Reload this page to get that edition; if"
            " it still does not open, ask the shop for the sheet's file."
        )
    code = asked["code"].removeprefix(codes.FORM)
    part = share.part(code)
    if part is None:
        return made(share.decode(code)) | {"used": [], "code": asked["code"]}
    mates = {
        other: its
        for other in asked["others"]
        if (its := share.part(other.removeprefix(codes.FORM)))
        and its.whole == part.whole
        and other != asked["code"]
    }
    found = {part.number, *(its.number for its in mates.values())}
    if missing := [n for n in range(1, part.count + 1) if n not in found]:
        return {"html": {"view": _more_to_scan(missing, part.count)}}
    whole = share.join([code, *(mate.removeprefix(codes.FORM) for mate in mates)])
    return made(share.decode(whole)) | {"used": [asked["code"], *mates], "code": codes.FORM + whole}


def _more_to_scan(missing: list[int], every: int) -> Html:
    return children(
        el("h2", f"{every - len(missing)} of {every} codes read"),
        el(
            "p",
            "This sheet is too large for one code. Scan ",
            el("strong", "code ", " and ".join(map(str, missing))),
            " as well, in any order: what was read is kept until all are there.",
            class_="job-note",
        ),
    )
