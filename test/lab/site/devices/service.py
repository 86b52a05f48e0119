"""The service: meets cameras and viewers (UDP and TLS on 443), relays, tells the time, and answers the check page."""
import asyncio
import json
import os
import signal
import ssl
import struct
import sys
import time
import uuid

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from words import hear, http_head, http_request, http_text, say, settings, within  # noqa: E402

FILE = os.path.join(os.getcwd(), "service.json")
LATE = 3.4
cameras = {}
waiting = {}


def camera(name):
    return cameras.setdefault(name, {"udp": None, "udpAt": -1e9, "every": 1, "link": None, "linkAt": -1e9, "lan": None})


def udp_alive(one):
    return one["udp"] is not None and time.monotonic() - one["udpAt"] < max(LATE, 2.4 * one["every"] + 1)


def link_alive(one):
    return one["link"] is not None and time.monotonic() - one["linkAt"] < LATE


def welcome(message):
    return settings(FILE)["cameras"].get(message.get("id")) == message.get("key")


class Meeting(asyncio.DatagramProtocol):
    def connection_made(self, transport):
        self.transport = transport

    def datagram_received(self, data, addr):
        try:
            message = json.loads(data)
        except ValueError:
            return
        config = settings(FILE)
        if not config["open"]:
            return
        if message.get("t") == "keep":
            if not welcome(message):
                self.transport.sendto(b'{"t":"refused"}', addr)
                return
            one = camera(message["id"])
            one.update(udp=addr, udpAt=time.monotonic(), every=message.get("every", 1), lan=message.get("lan"))
            self.transport.sendto(json.dumps({"t": "kept", "seen": addr}).encode(), addr)
        elif message.get("t") == "find":
            one = camera(message["id"])
            if udp_alive(one):
                self.transport.sendto(json.dumps({"t": "found", "camera": one["udp"], "seen": addr}).encode(), addr)
                self.transport.sendto(json.dumps({"t": "meet", "viewer": addr}).encode(), one["udp"])
            else:
                self.transport.sendto(b'{"t":"not-found"}', addr)


async def pour(reader, writer):
    """Passes bytes on until either side ends."""
    try:
        while True:
            data = await within(reader.read(65536), 8)
            if not data:
                break
            writer.write(data)
            await writer.drain()
    finally:
        writer.close()


async def serve_camera(message, reader, writer):
    one = camera(message["id"])
    one.update(link=writer, linkAt=time.monotonic(), lan=message.get("lan"))
    await say(writer, {"t": "registered"})
    try:
        while True:
            await hear(reader, LATE)
            one["linkAt"] = time.monotonic()
            await say(writer, {"t": "pong"})
    finally:
        if one["link"] is writer:
            one["link"] = None


async def serve_viewer(message, reader, writer):
    config = settings(FILE)
    account = config["accounts"].get(message.get("account"))
    if account is None or account["password"] != message.get("password"):
        return await say(writer, {"t": "wrong-password"})
    mine = []
    for name in account["cameras"]:
        one = camera(name)
        mine.append({"id": name, "lan": one["lan"], "punch": udp_alive(one), "relay": link_alive(one)})
    await say(writer, {"t": "account", "cameras": mine})
    wish = await hear(reader, 6)
    one = camera(wish["id"])
    if wish.get("t") != "relay" or wish["id"] not in account["cameras"]:
        return None
    if not config["relay"]:
        return await say(writer, {"t": "relay-full"})
    if not link_alive(one):
        return await say(writer, {"t": "offline"})
    token = uuid.uuid4().hex
    waiting[token] = asyncio.get_running_loop().create_future()
    try:
        await say(one["link"], {"t": "open", "token": token, "password": wish.get("cameraPassword")})
        source, done = await within(waiting[token], 4)
        try:
            await pour(source, writer)
        finally:
            done.set()
    finally:
        waiting.pop(token, None)
    return None


async def serve_secure(reader, writer):
    try:
        message = await hear(reader, 4)
        kind = message.get("t")
        if kind == "camera":
            if welcome(message):
                await serve_camera(message, reader, writer)
            else:
                await say(writer, {"t": "refused"})
        elif kind == "viewer":
            await serve_viewer(message, reader, writer)
        elif kind == "bring" and message.get("token") in waiting:
            done = asyncio.Event()
            waiting[message["token"]].set_result((reader, done))
            await within(done.wait(), 10)
        elif kind == "hello":
            await say(writer, {"t": "hello"})
    except Exception:  # noqa: BLE001
        pass
    finally:
        writer.close()


async def serve_check(reader, writer):
    """204 at /check, as a phone asks to find out whether a login page stands in the way; a page of words elsewhere."""
    try:
        _, path, _ = await http_request(reader)
        if path.startswith("/check"):
            writer.write(http_head("204 No Content"))
            await writer.drain()
        else:
            peer = writer.get_extra_info("peername")[0]
            await http_text(writer, "200 OK", f"This page opens.\nYour address as seen from here: {peer}\n")
    except Exception:  # noqa: BLE001
        pass
    finally:
        writer.close()


class Clock(asyncio.DatagramProtocol):
    """The time by SNTP (RFC 4330)."""

    def connection_made(self, transport):
        self.transport = transport

    def datagram_received(self, data, addr):
        if len(data) < 48:
            return
        now = time.time() + 2208988800
        stamp = struct.pack("!II", int(now), int((now % 1) * 2**32))
        self.transport.sendto(b"\x24\x01\x00\xec" + 8 * b"\0" + b"LAB." + stamp + data[40:48] + stamp + stamp, addr)


def forget():
    """Gives up registrations not heard since the moment in the file `forget` (monotonic seconds), as time would."""
    with open("forget", encoding="utf8") as file:
        since = float(file.read())
    for one in cameras.values():
        if one["udpAt"] < since:
            one["udp"] = None
        if one["linkAt"] < since:
            one["link"] = None


async def main():
    loop = asyncio.get_running_loop()
    loop.add_signal_handler(signal.SIGUSR1, forget)
    with open("ready", "w", encoding="utf8") as file:
        file.write(str(os.getpid()))
    config = settings(FILE)
    await loop.create_datagram_endpoint(Meeting, local_addr=("203.0.113.10", 443))
    await loop.create_datagram_endpoint(Clock, local_addr=("203.0.113.10", 123))
    for address in ("203.0.113.10", "203.0.113.40"):
        await asyncio.start_server(serve_check, address, 80)
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(config["certificate"], config["privateKey"])
    server = await asyncio.start_server(serve_secure, "203.0.113.10", 443, ssl=context)
    await server.serve_forever()


if __name__ == "__main__":
    asyncio.run(main())
