"""A web server on this computer that serves one file, and can break off, forget, or change it."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from http.server import BaseHTTPRequestHandler, HTTPServer

PIECE = 1 << 16


@dataclass
class Served:
    """What it serves and how."""

    content: bytes
    breaks_after: int | None = None
    """Bytes after which the connection is dropped; None: never."""
    version: str = '"one"'
    ranges: bool = True
    """It can go on from the middle."""
    asked: list[str | None] = field(default_factory=list)
    """The Range of each request."""
    address: str = ""


@contextmanager
def web_server(served: Served) -> Iterator[Served]:
    """Running, its address in `served`."""

    class Page(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            wanted = self.headers.get("Range")
            served.asked.append(wanted)
            if self.path == "/gone.zip":
                self.send_error(404)
                return
            begin = int(wanted.removeprefix("bytes=").rstrip("-")) if wanted else 0
            part = bool(wanted) and served.ranges and self.headers.get("If-Range") == served.version
            if part and begin >= len(served.content):
                self.send_error(416)
                return
            content = served.content[begin if part else 0 :]
            self.send_response(206 if part else 200)
            self.send_header("Content-Length", str(len(content)))
            self.send_header("ETag", served.version)
            self.end_headers()
            self.wfile.write(content[: served.breaks_after])

        def log_message(self, *_: object) -> None:
            pass

    with HTTPServer(("127.0.0.1", 0), Page) as server:
        running = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.01}, daemon=True)
        running.start()
        served.address = f"http://127.0.0.1:{server.server_port}/packed.zip"
        try:
            yield served
        finally:
            server.shutdown()
            running.join()
