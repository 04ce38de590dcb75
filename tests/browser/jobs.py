"""What the browser tests ask of a job: started, measured and looked at as a reader does it."""

from playwright.sync_api import Locator, Page, expect

from calc.job import contents, files, record

NAME = "Orchard frost fan"
HANDBOOK = (
    "https://tern-street.example/sizebook/"  # the shop's own address, which a link or code carries to others
)


def with_own_address(page: Page) -> None:
    """As where the shop has set its address; the tests' own, localhost, is none that others can open."""
    page.add_init_script(f"""new MutationObserver((_, looking) => {{  // before Python is asked, which may run already
        if (!document.head) return;
        looking.disconnect();
        document.head.append(Object.assign(document.createElement("meta"), {{ name: "sizebook-address", content: "{HANDBOOK}" }}));
    }}).observe(document, {{ childList: true, subtree: true }})""")


def start(
    page: Page,
    name: str = NAME,
    engine: str = "TS-16",
    received: str = "two heads, crank, four rods",
    by: str = "MK",
) -> None:
    page.goto("job/")
    view = page.locator("job-view[data-ready]")
    expect(view).to_be_visible()
    if view.locator(".job-fold > summary", has_text="Start another job").is_visible():
        view.locator(".job-fold > summary", has_text="Start another job").click()
    view.locator("#start-name").fill(name)
    view.locator("#start-engine").select_option(engine)
    view.locator("#start-received").fill(received)
    view.locator("#start-initials").fill(by)
    view.get_by_role("button", name="Start this job").click()
    expect(page.locator("#job-now")).to_have_text(name)


def with_job(page: Page, job: dict | str, address: str = "job/") -> str:
    """A page of a device that holds a job already, which is worked on; returns its key."""
    page.goto("about/")  # where nothing starts
    key = put(page, job if isinstance(job, str) else files.dump(job))
    page.goto(address)
    return key


def fresh(name: str = NAME) -> dict:
    """A job without readings."""
    return record.new(
        "k3J9",
        name,
        "TS-16",
        "two heads, crank, four rods",
        "2026-11-25T09:12+01:00",
        "Tern Street Engine Works",
    )


def calculator(page: Page, id: str) -> Locator:
    """A calculator of the page, once the job has had its say."""
    live = page.locator(f"live-calculator[data-calculator={id}]")
    expect(live.locator(".job-strip")).to_be_visible()
    return live


def beside(live: Locator, field: str) -> Locator:
    return live.locator(f"[data-job-field={field}]")


def entry(live: Locator, name: str) -> Locator:
    return live.locator(f"[data-entry][name='{name}']")


def keep(live: Locator, field: str, text: str, stage: str = "finished", place: str = "") -> None:
    """Type a reading and keep it: one tap, once it is said which one it is."""
    entry(live, field).fill(text)
    if place:
        live.locator(f".job-strip [data-job-place='{place}']").click()
        expect(live.locator(f".job-strip [data-job-place='{place}']")).to_have_attribute(
            "aria-pressed", "true"
        )
    beside(live, field).locator(f"[data-job-keep={stage}]").first.click()
    expect(beside(live, field)).to_have_attribute("data-state", "filled")


def stored(page: Page) -> list[dict]:
    """What the device holds, its jobs read."""
    held = page.evaluate("""() => new Promise((done, fail) => {
        const asked = indexedDB.open('sizebook');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
            const all = asked.result.transaction('jobs').objectStore('jobs').getAll();
            all.onsuccess = () => { asked.result.close(); done(all.result); };
        };
    })""")
    for one in held:
        try:
            one["job"] = files.load(one["text"])
        except contents.JobError:
            one["job"] = None
    return held


def readings(page: Page) -> list[tuple]:
    """The readings of the only job on the device, as they were added."""
    (held,) = stored(page)
    return [
        (r["feature"], r["place"], r["stage"], r["text"], r["by"], r["why"]) for r in held["job"]["readings"]
    ]


def put(page: Page, text: str, kind: str = "job") -> str:
    """Lay a text into the store as another edition of the handbook might have left it; returns its key. The page must have the site's address."""
    return page.evaluate(
        """async ([kind, text]) => {
        const store = await import(new URL('/assets/js/jobs.mjs', location));
        const key = await store.keep(kind, text);
        store.makeCurrent(key);
        store.setInitials('MK');
        return key;
    }""",
        [kind, text],
    )


def as_file(job: dict, name: str = "job.json") -> dict:
    return {"name": name, "mimeType": "application/json", "buffer": files.dump(job).encode()}


def raw_file(text: str | bytes, name: str = "job.json") -> dict:
    return {
        "name": name,
        "mimeType": "application/json",
        "buffer": text if isinstance(text, bytes) else text.encode(),
    }
