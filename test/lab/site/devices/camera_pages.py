"""What the camera serves on the site's network: its page, its picture, RTSP and discovery."""
import asyncio
import base64
import os
import socket
import struct
import time
import uuid

from words import (
    FRAME_BYTES, FRAME_GAP, FRAMES, http_head, http_request, http_text, network_of, page, say, settings, within,
)

FILE = os.path.join(os.getcwd(), "camera.json")


async def picture(service, writer, password, config):
    """Refuses in one line, or sends frames: `frame <bytes>` and the bytes."""
    if password != config["password"]:
        return await say(writer, {"t": "wrong-password"})
    if service.viewers >= config["maxViewers"]:
        return await say(writer, {"t": "busy"})
    service.viewers += 1
    try:
        await within(frames(writer, config), 8)
    finally:
        service.viewers -= 1


async def frames(writer, config):
    await say(writer, {"t": "playing", "id": config["id"], "frames": FRAMES, "bytes": FRAME_BYTES})
    if not config["encoder"]:
        return await asyncio.sleep(6)
    for _ in range(FRAMES):
        writer.write(os.urandom(FRAME_BYTES))
        await writer.drain()
        await asyncio.sleep(FRAME_GAP)


def status_page(service, config):
    offset = service.clock_offset
    clock = time.strftime("%Y-%m-%d %H:%M:%S", time.gmtime()) + " UTC"
    return page(f"{config['title']} - status", network_of("eth0") + [
        ("Clock", clock),
        ("Time server", service.state["time"] + ("" if offset is None or abs(offset) < 2 else f", clock off by {offset} s")),
        ("Service connection", "online" if service.online() else "off" if service.state["tcp"] == "off" else "offline"),
        ("Service name look-up", service.state["name"]),
        ("Service UDP keepalive", service.state["udp"]),
        ("Service TCP secure connection", service.state["tcp"]),
        ("Viewers", f"{service.viewers} of {config['maxViewers']}"),
        ("Last error", service.last_error),
    ])


def allowed(writer, config):
    peer = writer.get_extra_info("peername")
    return not config["allow"] or (peer and any(peer[0].startswith(start) for start in config["allow"]))


def basic(headers, config):
    wanted = base64.b64encode(f"admin:{config['password']}".encode()).decode()
    given = headers.get("authorization", "")
    return "right" if given == "Basic " + wanted else "wrong" if given else "none"


def serve_http(service):
    async def serve(reader, writer):
        try:
            config = settings(FILE)
            _, path, headers = await http_request(reader)
            name = (f"X-Camera: {config['id']}",)
            if not allowed(writer, config):
                await http_text(writer, "403 Forbidden", "Your address is not on this camera's list.\n", name)
            elif path == "/" or path.startswith("/status"):
                await http_text(writer, "200 OK", status_page(service, config), name)
            elif path.startswith("/picture"):
                if basic(headers, config) != "right":
                    await http_text(writer, "401 Unauthorized", "User name or password is wrong.\n",
                                    (*name, 'WWW-Authenticate: Basic realm="camera"'))
                else:
                    writer.write(http_head("200 OK", None, (*name, "Content-Type: application/octet-stream")))
                    await picture(service, writer, config["password"], config)
            else:
                await http_text(writer, "404 Not Found", "No such page.\n", name)
        except Exception:  # noqa: BLE001
            pass
        finally:
            writer.close()
    return serve


async def serve_rtsp(reader, writer):
    """OPTIONS and DESCRIBE of RTSP 1.0 (RFC 2326)."""
    try:
        while True:
            method, path, headers = await http_request(reader)
            config = settings(FILE)
            lines, body = [f"CSeq: {headers.get('cseq', '0')}"], ""
            status = "200 OK"
            if method == "OPTIONS":
                lines.append("Public: OPTIONS, DESCRIBE, SETUP, PLAY, TEARDOWN")
            elif method != "DESCRIBE":
                status = "501 Not Implemented"
            elif basic(headers, config) != "right":
                status = "401 Unauthorized"
                lines.append('WWW-Authenticate: Basic realm="camera"')
            else:
                body = "v=0\r\no=- 0 0 IN IP4 0.0.0.0\r\ns=live\r\nt=0 0\r\nm=video 0 RTP/AVP 96\r\na=rtpmap:96 H264/90000\r\n"
                lines += ["Content-Type: application/sdp", f"Content-Length: {len(body)}"]
            writer.write((f"RTSP/1.0 {status}\r\n" + "\r\n".join(lines) + "\r\n\r\n" + body).encode())
            await writer.drain()
    except Exception:  # noqa: BLE001
        pass
    finally:
        writer.close()


class Discovery(asyncio.DatagramProtocol):
    """Answers a WS-Discovery Probe (OASIS WS-Discovery 1.1) on UDP 3702."""

    def connection_made(self, transport):
        self.transport = transport

    def datagram_received(self, data, addr):
        if b"Probe" not in data or b"ProbeMatches" in data:
            return
        config = settings(FILE)
        mine = dict(network_of("eth0"))["IP address"]
        start = data.find(b"MessageID")
        related = data[data.find(b">", start) + 1:data.find(b"<", start)].decode("ascii", "replace") if start >= 0 else ""
        self.transport.sendto((
            '<?xml version="1.0"?><s:Envelope xmlns:s="http://www.w3.org/2003/05/soap-envelope" '
            'xmlns:a="http://schemas.xmlsoap.org/ws/2004/08/addressing" '
            'xmlns:d="http://schemas.xmlsoap.org/ws/2005/04/discovery"><s:Header>'
            f'<a:MessageID>urn:uuid:{uuid.uuid4()}</a:MessageID><a:RelatesTo>{related}</a:RelatesTo>'
            '<a:Action>http://schemas.xmlsoap.org/ws/2005/04/discovery/ProbeMatches</a:Action></s:Header><s:Body>'
            f'<d:ProbeMatches><d:ProbeMatch><a:EndpointReference><a:Address>urn:uuid:{uuid.uuid5(uuid.NAMESPACE_DNS, config["id"])}'
            f'</a:Address></a:EndpointReference><d:XAddrs>http://{mine}/</d:XAddrs></d:ProbeMatch></d:ProbeMatches>'
            '</s:Body></s:Envelope>').encode(), addr)


def discovery_socket():
    sock = socket.socket(socket.AF_INET, socket.SOCK_DGRAM)
    sock.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
    sock.bind(("", 3702))
    index = socket.if_nametoindex("eth0")
    member = struct.pack("4s4si", socket.inet_aton("239.255.255.250"), socket.inet_aton("0.0.0.0"), index)
    sock.setsockopt(socket.IPPROTO_IP, socket.IP_ADD_MEMBERSHIP, member)
    sock.setblocking(False)
    return sock
