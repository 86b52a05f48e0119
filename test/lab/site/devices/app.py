"""The app on a phone: opens the account's camera and says what a person would see. Prints one JSON line."""
import asyncio
import base64
import json
import os
import socket
import ssl
import struct
import sys
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from words import FRAMES, FRAME_BYTES, PIECE, either_of, hear, plain, say, settings, trusting, within  # noqa: E402

LIMIT = 4.0
GAP = 0.8
# SO_RCVBUFFORCE of socket(7), which Python has no name for.
RCVBUFFORCE = 33
START = time.monotonic()

WORDS = {
    "picture": "Live picture.",
    "camera-offline": "The camera is offline.",
    "waiting": "Connecting to the camera ... please wait.",
    "no-connection": "No connection to the service. Check the internet connection of this phone.",
    "wrong-password": "The user name or password is wrong.",
    "empty-list": "There is no camera in this account yet.",
    "stutters": "The picture stops and starts. The connection is slow.",
}


def left():
    return max(0.05, LIMIT - (time.monotonic() - START))


class Seen(Exception):
    """What the screen shows, by which way."""

    def __init__(self, shows, way="none", words=None):
        super().__init__(shows)
        self.shows, self.way, self.words = shows, way, words


async def frames(reader, way):
    """Reads the whole picture; a long gap between frames, or an unfinished picture, stutters."""
    answer = await hear(reader, left())
    if answer.get("t") == "wrong-password":
        raise Seen("wrong-password", "none", "The camera does not accept the saved password.")
    if answer.get("t") == "busy":
        raise Seen("waiting", "none", "The camera is busy: too many viewers. Please wait.")
    if answer.get("t") == "relay-full":
        raise Seen("waiting", "none")
    if answer.get("t") == "offline":
        raise Seen("camera-offline", "none")
    got, slow = 0, False
    try:
        for _ in range(answer["frames"]):
            before = time.monotonic()
            await within(reader.readexactly(answer["bytes"]), left())
            slow = slow or (got > 0 and time.monotonic() - before > GAP)
            got += 1
    except (asyncio.TimeoutError, asyncio.IncompleteReadError, OSError):
        if got == 0:
            raise
        slow = True
    raise Seen("stutters" if slow else "picture", way)


async def page_of(address, port, app, way, patience, wanted=""):
    """The camera's own picture page, where something is at that address and really is a camera (or the one wanted)."""
    reader, writer = await within(asyncio.open_connection(address, port), patience)
    try:
        token = base64.b64encode(f"admin:{app['cameraPassword']}".encode()).decode()
        writer.write(f"GET /picture HTTP/1.1\r\nHost: {address}\r\nAuthorization: Basic {token}\r\n\r\n".encode())
        head = await within(reader.readuntil(b"\r\n\r\n"), patience)
        if f"x-camera: {wanted}".encode() not in head.lower():
            raise EOFError
        if b" 401 " in head.split(b"\r\n")[0]:
            raise Seen("wrong-password", "none", "The camera does not accept the saved password.")
        if b" 200 " not in head.split(b"\r\n")[0]:
            raise EOFError
        await frames(reader, way)
    finally:
        writer.close()


class Punch(asyncio.DatagramProtocol):
    def __init__(self):
        self.found = asyncio.get_running_loop().create_future()
        self.here = asyncio.get_running_loop().create_future()
        self.refused = False
        self.pieces = set()
        self.last = None
        self.slow = False

    def connection_made(self, transport):
        self.transport = transport

    def error_received(self, exc):
        pass

    def datagram_received(self, data, addr):
        if data[:4] == b"PIC!":
            now = time.monotonic()
            self.slow = self.slow or (self.last is not None and now - self.last > GAP)
            self.last = now
            self.pieces.add(struct.unpack("!HH", data[4:8]))
            return
        message = json.loads(data)
        if message["t"] in ("found", "not-found") and not self.found.done():
            self.found.set_result(message)
        elif message["t"] == "here" and not self.here.done():
            self.here.set_result(addr)
        elif message["t"] == "wrong-password":
            self.refused = True


async def opened(app):
    """The camera at an address that somebody typed, by a way opened in the router. Nobody is asked where it is."""
    name, _, port = app["address"].rpartition(":")
    try:
        _, address = await either_of(name)
        await page_of(address, int(port), app, "forwarded", 2)
    except Exception as error:  # noqa: BLE001
        raise error if isinstance(error, Seen) else Seen(
            "no-connection", "none", f"Cannot connect to {app['address']}.") from error


async def punched(camera, app, family, service):
    """UDP between the two, after the service has told each where the other is."""
    loop = asyncio.get_running_loop()
    sock = socket.socket(family, socket.SOCK_DGRAM)
    sock.setsockopt(socket.SOL_SOCKET, RCVBUFFORCE, 2 * 2**20)
    sock.bind(("", 0))
    sock.setblocking(False)
    transport, me = await loop.create_datagram_endpoint(Punch, sock=sock)
    try:
        transport.sendto(json.dumps({"t": "find", "id": camera["id"]}).encode(), (service, 443))
        found = await within(me.found, 0.6)
        if found["t"] != "found":
            raise EOFError
        for _ in range(8):
            transport.sendto(b'{"t":"hello"}', tuple(found["camera"]))
            done, _ = await asyncio.wait([me.here], timeout=0.08)
            if done:
                break
        if not me.here.done():
            raise asyncio.TimeoutError
        peer = me.here.result()
        transport.sendto(json.dumps({"t": "play", "password": app["cameraPassword"]}).encode(), peer)
        wanted = FRAMES * -(-FRAME_BYTES // (PIECE - 8))
        began = time.monotonic()
        while len(me.pieces) < wanted and not me.refused and left() > 0.1:
            quiet = time.monotonic() - (me.last or began)
            if quiet > (0.5 if me.pieces else 0.7):
                break
            await asyncio.sleep(0.03)
        if me.refused:
            raise Seen("wrong-password", "none", "The camera does not accept the saved password.")
        if not me.pieces:
            raise asyncio.TimeoutError
        good = len(me.pieces) >= 0.97 * wanted and not me.slow
        raise Seen("picture" if good else "stutters", "punched")
    finally:
        transport.close()


async def attempt(work):
    """The screen of one way, or None where that way does not open."""
    try:
        await work
    except Seen as seen:
        return seen
    except Exception:  # noqa: BLE001
        return None
    return None


def on_wifi():
    try:
        with open("/sys/class/net/wlan0/operstate", encoding="utf8") as file:
            return file.read().strip() == "up"
    except OSError:
        return False


async def look(app):
    try:
        family, service = await either_of(app["service"])
        reader, writer = await within(asyncio.open_connection(
            service, 443, ssl=trusting(app["ca"]), server_hostname=app["service"]), min(1.5, left()))
        await say(writer, {"t": "viewer", "account": app["account"], "password": app["password"]})
        answer = await hear(reader, min(1.5, left()))
    except ssl.SSLCertVerificationError as error:
        raise Seen("no-connection", "none", f"No secure connection to the service: {plain(error)}.") from error
    except Exception as error:  # noqa: BLE001
        raise Seen("no-connection", "none", f"{WORDS['no-connection']} ({plain(error)})") from error
    try:
        await choose(app, answer, (family, service), reader, writer)
    finally:
        writer.transport.abort()


async def choose(app, answer, service, reader, writer):
    if answer.get("t") == "wrong-password":
        raise Seen("wrong-password")
    if not answer["cameras"]:
        raise Seen("empty-list")
    camera = answer["cameras"][0]
    if on_wifi() and camera["lan"] and camera["lan"] != "not set":
        seen = await attempt(page_of(camera["lan"], 80, app, "direct", 0.7, camera["id"]))
        if seen is not None:
            raise seen
    if not camera["punch"] and not camera["relay"]:
        raise Seen("camera-offline")
    seen = await attempt(punched(camera, app, *service)) if camera["punch"] else None
    if seen is not None and seen.shows != "stutters":
        raise seen
    try:
        await say(writer, {"t": "relay", "id": camera["id"], "cameraPassword": app["cameraPassword"]})
        await frames(reader, "relayed")
    except Seen as relayed:
        raise (seen if seen is not None and relayed.shows not in ("picture",) else relayed) from relayed
    except Exception as error:  # noqa: BLE001
        raise (seen or Seen("waiting")) from error


async def main():
    app = settings(os.path.join(os.getcwd(), "app.json"))
    try:
        await within(opened(app) if app.get("address") else look(app), LIMIT)
        seen = Seen("waiting")
    except Seen as what:
        seen = what
    except asyncio.TimeoutError:
        seen = Seen("waiting")
    words = seen.words or WORDS[seen.shows]
    sys.stdout.write(json.dumps({"shows": seen.shows, "way": seen.way, "words": words}) + "\n")
    sys.stdout.flush()
    os._exit(0)


if __name__ == "__main__":
    asyncio.run(main())
