"""A slow line between browser and server, on this machine: so many bits a second, so long a way.

The browser's own throttling does not reach the requests of workers, and those are what counts here. Every
connection of the line shares its capacity. Not imitated: TCP's slow start and lost packets.
"""

from __future__ import annotations

import asyncio
import threading
from contextlib import suppress

CHUNK = 4096  # bytes: small, so that connections share the line fairly


class Link:
    """Forwards a free local port (`port`) to `server_port`, while in use as a context manager."""

    def __init__(self, server_port: int, bits_per_second: float, round_trip: float):
        self.server_port, self.rate, self.round_trip = server_port, bits_per_second / 8, round_trip
        self.received = 0  # bytes that reached the browser, headers included
        self._free_at = 0.0

    def __enter__(self) -> Link:
        self._loop = asyncio.new_event_loop()
        self._thread = threading.Thread(target=self._loop.run_forever, daemon=True)
        self._thread.start()
        self._server = asyncio.run_coroutine_threadsafe(
            asyncio.start_server(self._connect, "127.0.0.1", 0), self._loop
        ).result()
        self.port = self._server.sockets[0].getsockname()[1]
        return self

    def __exit__(self, *_) -> None:
        async def stop():
            self._server.close()
            for task in asyncio.all_tasks() - {asyncio.current_task()}:
                task.cancel()
            await asyncio.sleep(0)

        asyncio.run_coroutine_threadsafe(stop(), self._loop).result()
        self._loop.call_soon_threadsafe(self._loop.stop)
        self._thread.join()
        self._loop.close()

    async def _connect(self, browser_reader, browser_writer) -> None:
        await asyncio.sleep(self.round_trip)  # the handshake
        try:
            server_reader, server_writer = await asyncio.open_connection("127.0.0.1", self.server_port)
        except OSError:
            browser_writer.close()
            return
        with suppress(asyncio.CancelledError):  # the line is taken down
            await asyncio.gather(
                self._carry(browser_reader, server_writer, self._way),
                self._carry(server_reader, browser_writer, self._narrow_way),
            )

    async def _carry(self, reader, writer, way) -> None:
        """Read on while earlier chunks are still under way."""
        under_way: asyncio.Queue = asyncio.Queue(maxsize=256)

        async def deliver():
            while True:
                arrives, chunk = await under_way.get()
                await asyncio.sleep(max(0, arrives - self._loop.time()))
                if not chunk:
                    break
                writer.write(chunk)
                await writer.drain()
            writer.close()

        delivering = asyncio.create_task(deliver())
        try:
            while chunk := await reader.read(CHUNK):
                await under_way.put((await way(len(chunk)), chunk))
            await under_way.put((self._loop.time(), b""))
            await delivering
        except (ConnectionError, asyncio.CancelledError):
            delivering.cancel()
            writer.close()

    async def _way(self, size: int) -> float:
        return self._loop.time() + self.round_trip / 2

    async def _narrow_way(self, size: int) -> float:
        """When a chunk arrives at the browser; waits while the line is full."""
        self._free_at = max(self._free_at, self._loop.time()) + size / self.rate
        self.received += size
        await asyncio.sleep(max(0, self._free_at - self._loop.time()))
        return self._free_at + self.round_trip / 2
