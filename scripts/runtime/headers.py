"""What a host says beside every file: the policy that also holds in workers, and who may put the site into a
frame.

A page holds its policy itself (stamp.py), which reaches neither a worker nor the service worker, and cannot
say who may frame it (W3C CSP Level 3: `frame-ancestors` counts in a header only). So the same headers are
written for the common hosts: `_headers` is read by several static hosts as it lies there, `.htaccess` by
Apache; `headers.nginx.conf` is to be included in a `server` block of nginx. scripts/server.py reads
`_headers` too.
"""

from __future__ import annotations

from pathlib import Path

HOSTS, APACHE, NGINX = "_headers", ".htaccess", "headers.nginx.conf"
FILES = (HOSTS, APACHE, NGINX)


def write(site_dir: Path, policy: str) -> None:
    """Write the headers for each host; `policy` is that of the pages."""
    found = headers(policy)
    text = {
        HOSTS: "/*\n" + "".join(f"  {name}: {value}\n" for name, value in found.items()),
        APACHE: (
            "<IfModule mod_headers.c>\n"
            + "".join(f'  Header always set {name} "{value}"\n' for name, value in found.items())
            + "</IfModule>\nOptions -Indexes\n"
        ),
        NGINX: "".join(f'add_header {name} "{value}" always;\n' for name, value in found.items()),
    }
    for name, content in text.items():
        (site_dir / name).write_text(content, encoding="utf-8")


def headers(policy: str) -> dict[str, str]:
    return {
        "Content-Security-Policy": f"{policy}; frame-ancestors 'none'",
        "X-Frame-Options": "DENY",  # for browsers that do not know frame-ancestors
        "X-Content-Type-Options": "nosniff",
        "Referrer-Policy": "no-referrer",
    }


def read(site_dir: Path) -> dict[str, str]:
    """The headers that a site brings along; none where it was not built by us."""
    try:
        lines = (site_dir / HOSTS).read_text(encoding="utf-8").splitlines()
    except OSError:
        return {}
    return dict(line.strip().split(": ", 1) for line in lines[1:] if ": " in line)
