"""The camera: its page, its picture, RTSP, discovery, and its connection to the service."""
import asyncio
import json
import os
import signal
import struct
import sys
import time

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from camera_pages import FILE, Discovery, discovery_socket, picture, serve_http, serve_rtsp  # noqa: E402
from words import (  # noqa: E402
    FRAME_BYTES, FRAME_GAP, FRAMES, PIECE, address_of, hear, network_of, plain, say, settings, trusting, within,
    write_whole,
)

HOME = os.getcwd()
WORD_OK = "ok"


class Service:
    """The connection to the service: name, keepalive and secure connection, each with its own state."""

    def __init__(self):
        self.state = {"name": "not tried", "udp": "not tried", "tcp": "not tried", "time": "not tried"}
        self.last_error = "none"
        self.token = ""
        self.wake = asyncio.Event()
        self.link = None
        self.kept = asyncio.Event()
        self.clock_offset = None
        self.writer = None
        self.viewers = 0

    def note(self, part, words):
        if self.state[part] != words:
            self.state[part] = words
            self.save()
        if words not in (WORD_OK, "off", "not tried"):
            stamp = time.strftime("%Y-%m-%d %H:%M:%S", time.gmtime())
            self.last_error = f"{stamp} UTC service {part}: {words}"

    def save(self):
        write_whole(os.path.join(HOME, "status.json"), {**self.state, "token": self.token, "pid": os.getpid()})

    def online(self):
        return WORD_OK in (self.state["udp"], self.state["tcp"])


class Keepalive(asyncio.DatagramProtocol):
    """The one UDP socket: keepalive to the service, and the picture to viewers that reach it."""

    def __init__(self, service):
        self.service = service
        self.sending = {}

    def connection_made(self, transport):
        self.transport = transport

    def datagram_received(self, data, addr):
        try:
            message = json.loads(data)
        except ValueError:
            return
        kind = message.get("t")
        if kind == "kept":
            self.service.kept.set()
        elif kind == "refused":
            self.service.note("udp", "registration refused")
        elif kind == "meet":
            asyncio.ensure_future(self.meet(tuple(message["viewer"])))
        elif kind == "hello":
            self.transport.sendto(b'{"t":"here"}', addr)
        elif kind == "play" and addr not in self.sending:
            if message.get("password") != settings(FILE)["password"]:
                self.transport.sendto(b'{"t":"wrong-password"}', addr)
            else:
                self.sending[addr] = asyncio.ensure_future(self.play(addr))

    async def meet(self, viewer):
        for _ in range(5):
            self.transport.sendto(b'{"t":"here"}', viewer)
            await asyncio.sleep(0.06)

    async def play(self, addr):
        try:
            for frame in range(FRAMES):
                data = os.urandom(FRAME_BYTES)
                for piece in range(0, FRAME_BYTES, PIECE - 8):
                    self.transport.sendto(
                        b"PIC!" + struct.pack("!HH", frame, piece // (PIECE - 8)) + data[piece:piece + PIECE - 8], addr
                    )
                await asyncio.sleep(FRAME_GAP)
        finally:
            self.sending.pop(addr, None)


async def keep(service, protocol, address, config):
    """One keepalive and its answer."""
    service.kept.clear()
    mine = dict(network_of("eth0"))["IP address"]
    protocol.transport.sendto(
        json.dumps({"t": "keep", "id": config["id"], "key": config["key"], "lan": mine,
                    "every": config["keepaliveSeconds"]}).encode(), (address, 443))
    await within(service.kept.wait(), 1.2)
    service.note("udp", WORD_OK)


async def ask_time(service, config):
    """The offset of the clock by SNTP (RFC 4330), in seconds."""
    loop = asyncio.get_running_loop()
    try:
        address = await address_of(config["timeServer"])
        answer = loop.create_future()

        class Ask(asyncio.DatagramProtocol):
            def connection_made(self, transport):
                transport.sendto(b"\x1b" + 47 * b"\0")

            def datagram_received(self, data, addr):
                if not answer.done():
                    answer.set_result(data)

            def error_received(self, exc):
                if not answer.done():
                    answer.set_exception(exc)

        transport, _ = await loop.create_datagram_endpoint(Ask, remote_addr=(address, 123))
        try:
            data = await within(answer, 1.2)
        finally:
            transport.close()
        seconds = struct.unpack("!I", data[40:44])[0] - 2208988800
        service.clock_offset = round(time.time() - seconds)
        service.note("time", WORD_OK)
    except Exception as error:  # noqa: BLE001
        service.note("time", plain(error))


async def control(service, address, config, ready):
    """The secure connection: registers, answers the service, brings the picture when asked."""
    writer = None
    try:
        reader, writer = await within(asyncio.open_connection(
            address, 443, ssl=trusting(config["ca"]), server_hostname=config["rendezvous"],
            ssl_handshake_timeout=1.6), 1.6)
        mine = dict(network_of("eth0"))["IP address"]
        await say(writer, {"t": "camera", "id": config["id"], "key": config["key"], "lan": mine})
        answer = await hear(reader, 1.6)
        if answer.get("t") != "registered":
            service.note("tcp", "registration refused")
            return
        service.note("tcp", WORD_OK)
        ready.set()

        async def pulse():
            while True:
                await asyncio.sleep(1)
                await say(writer, {"t": "ping"})

        beating = asyncio.ensure_future(pulse())
        try:
            while True:
                message = await hear(reader, 3.2)
                if message.get("t") == "open":
                    asyncio.ensure_future(bring(service, address, message["token"], message.get("password")))
        finally:
            beating.cancel()
    except asyncio.CancelledError:
        raise
    except Exception as error:  # noqa: BLE001
        service.note("tcp", plain(error))
    finally:
        ready.set()
        if writer is not None:
            writer.transport.abort()


async def bring(service, address, token, password):
    """A second secure connection that carries the picture to a viewer through the service."""
    config = settings(FILE)
    writer = None
    try:
        _, writer = await within(asyncio.open_connection(
            address, 443, ssl=trusting(config["ca"]), server_hostname=config["rendezvous"]), 1.6)
        await say(writer, {"t": "bring", "token": token, "id": config["id"]})
        await picture(service, writer, password, config)
    except Exception as error:  # noqa: BLE001
        service.last_error = "picture for a viewer: " + plain(error)
    finally:
        if writer is not None:
            writer.close()


async def connected(service, protocol):
    """Tries, holds and tries again; starts afresh when woken."""
    while True:
        service.wake.clear()
        config = settings(FILE)
        tasks = [asyncio.ensure_future(ask_time(service, config))]
        try:
            if not config["rendezvousOn"]:
                for part in ("name", "udp", "tcp"):
                    service.note(part, "off")
                await rest(service, 1)
                continue
            try:
                address = await address_of(config["rendezvous"])
                service.note("name", WORD_OK)
            except Exception as error:  # noqa: BLE001
                service.note("name", plain(error))
                service.note("udp", "not tried")
                service.note("tcp", "not tried")
                await asyncio.wait(tasks, timeout=1.5)
                await rest(service, 0.5)
                continue
            ready = asyncio.Event()
            link = asyncio.ensure_future(control(service, address, config, ready))
            tasks.append(link)

            async def keeping():
                while True:
                    try:
                        await keep(service, protocol, address, config)
                    except Exception as error:  # noqa: BLE001
                        service.note("udp", plain(error))
                    first.set()
                    await asyncio.sleep(config["keepaliveSeconds"])

            first = asyncio.Event()
            tasks.append(asyncio.ensure_future(keeping()))
            woken = asyncio.ensure_future(service.wake.wait())
            tasks.append(woken)
            both = asyncio.ensure_future(asyncio.wait([
                asyncio.ensure_future(ready.wait()), asyncio.ensure_future(first.wait())]))
            tasks.append(both)
            await asyncio.wait([both, woken], return_when=asyncio.FIRST_COMPLETED)
            if not service.wake.is_set():
                finish(service)
            await asyncio.wait([link, woken], return_when=asyncio.FIRST_COMPLETED)
            if not woken.done():
                await asyncio.wait([woken], timeout=0.7)
        finally:
            while left := [task for task in tasks if not task.done()]:
                for task in left:
                    task.cancel()
                await asyncio.wait(left, timeout=0.2)


def finish(service):
    if service.token_wanted:
        service.token = service.token_wanted
        service.token_wanted = ""
    service.save()


async def rest(service, seconds):
    finish(service)
    try:
        await within(service.wake.wait(), seconds)
    except asyncio.TimeoutError:
        pass


async def main():
    config = settings(FILE)
    loop = asyncio.get_running_loop()
    service = Service()
    service.token_wanted = ""

    def afresh():
        try:
            with open(os.path.join(HOME, "fresh"), encoding="utf8") as file:
                service.token_wanted = file.read().strip()
        except OSError:
            pass
        service.wake.set()

    loop.add_signal_handler(signal.SIGUSR1, afresh)
    service.save()
    _, protocol = await loop.create_datagram_endpoint(
        lambda: Keepalive(service), local_addr=("0.0.0.0", config["udpPort"]))
    try:
        await loop.create_datagram_endpoint(Discovery, sock=discovery_socket())
    except OSError:
        pass
    if config["httpPort"]:
        await asyncio.start_server(serve_http(service), "0.0.0.0", config["httpPort"])
    if config["rtspPort"]:
        await asyncio.start_server(serve_rtsp, "0.0.0.0", config["rtspPort"])
    await connected(service, protocol)


if __name__ == "__main__":
    if sys.argv[1:] == ["network"]:
        sys.stdout.write("".join(f"{word}: {value}\n" for word, value in network_of("eth0")))
    else:
        asyncio.run(main())
