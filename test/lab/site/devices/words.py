"""What every device of the site shares: its settings, its errors in plain words, the picture's size."""
import asyncio
import errno
import json
import os
import socket
import ssl
import subprocess

FRAMES = 10
FRAME_BYTES = 24000
FRAME_GAP = 0.05
PIECE = 1412


async def within(work, seconds):
    """As asyncio.wait_for, which up to Python 3.11 may swallow a cancellation that comes with the result."""
    async with asyncio.timeout(seconds):
        return await work


def settings(path):
    with open(path, encoding="utf8") as file:
        return json.load(file)


def write_whole(path, value):
    with open(path + ".new", "w", encoding="utf8") as file:
        json.dump(value, file, indent=1)
    os.replace(path + ".new", path)


def plain(error):
    """An error of the network or of TLS as a device would print it."""
    if isinstance(error, (asyncio.TimeoutError, TimeoutError)):
        return "no answer (time-out)"
    if isinstance(error, ssl.SSLCertVerificationError):
        return "certificate refused: " + (error.verify_message or "not trusted")
    if isinstance(error, ssl.SSLError):
        return "secure connection failed"
    if isinstance(error, socket.gaierror):
        if error.errno == socket.EAI_AGAIN:
            return "name server does not answer"
        return "name not found"
    if isinstance(error, OSError):
        known = {
            errno.ENETUNREACH: "network unreachable (no route)",
            errno.EHOSTUNREACH: "host unreachable",
            errno.ECONNREFUSED: "connection refused",
            errno.ECONNRESET: "connection reset",
            errno.ETIMEDOUT: "no answer (time-out)",
            errno.EPERM: "blocked on this device",
            errno.EADDRNOTAVAIL: "no address",
        }
        return known.get(error.errno or 0, "connection failed")
    if isinstance(error, (asyncio.IncompleteReadError, EOFError)):
        return "connection closed by the other side"
    return str(error) or "failed"


async def address_of(name):
    """The IPv4 address of a name, asked anew."""
    loop = asyncio.get_running_loop()
    found = await within(
        loop.getaddrinfo(name, None, family=socket.AF_INET, type=socket.SOCK_STREAM), 3
    )
    return found[0][4][0]


async def either_of(name):
    """Family and address of a name: IPv4, or IPv6 where its name server knows no other."""
    try:
        return socket.AF_INET, await address_of(name)
    except socket.gaierror as error:
        if error.errno == socket.EAI_AGAIN:
            raise
        try:
            found = await within(asyncio.get_running_loop().getaddrinfo(
                name, None, family=socket.AF_INET6, type=socket.SOCK_STREAM), 3)
        except (OSError, asyncio.TimeoutError):
            raise error from None
        return socket.AF_INET6, found[0][4][0]


def trusting(ca):
    context = ssl.create_default_context(cafile=ca)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    return context


async def say(writer, message):
    writer.write(json.dumps(message).encode() + b"\n")
    await writer.drain()


async def hear(reader, seconds):
    line = await within(reader.readline(), seconds)
    if not line:
        raise EOFError
    return json.loads(line)


def shell(*argv):
    """What a command prints. It runs without a preloaded library (a shifted clock), which may hang it at its start; and
    with no time limit, for the waiting of one is a sleep that the shifted clock refuses now and then (EINVAL): the
    page then came to nothing."""
    clean = {name: value for name, value in os.environ.items() if name != "LD_PRELOAD"}
    return subprocess.run(argv, capture_output=True, text=True, check=False, env=clean).stdout


def network_of(interface):
    """Address, mask, gateway and name servers as the kernel holds them: a list of (word, value)."""
    shown = json.loads(shell("ip", "-j", "-4", "addr", "show", "dev", interface) or "[]")
    held = [a for link in shown for a in link.get("addr_info", [])]
    routes = json.loads(shell("ip", "-j", "-4", "route", "show", "default", "dev", interface) or "[]")
    gateways = [r["gateway"] for r in routes if "gateway" in r]
    with open("/etc/resolv.conf", encoding="utf8") as file:
        servers = [l.split()[1] for l in file if l.startswith("nameserver") and len(l.split()) > 1]
    with open(f"/sys/class/net/{interface}/address", encoding="utf8") as file:
        mac = file.read().strip()
    first = held[0] if held else None
    return [
        ("IP address", first["local"] if first else "not set"),
        ("Subnet mask", mask(first["prefixlen"]) if first else "not set"),
        ("Default gateway", gateways[0] if gateways else "not set"),
        ("DNS servers", ", ".join(servers) if servers else "not set"),
        ("MAC address", mac),
    ]


def mask(length):
    bits = (0xFFFFFFFF << (32 - length)) & 0xFFFFFFFF
    return ".".join(str((bits >> shift) & 255) for shift in (24, 16, 8, 0))


def page(title, rows):
    return title + "\n\n" + "".join(f"{word}: {value}\n" for word, value in rows)


async def http_request(reader):
    """Method, path and headers of one request."""
    head = await within(reader.readuntil(b"\r\n\r\n"), 3)
    lines = head.decode("latin1").split("\r\n")
    method, path, *_ = lines[0].split(" ") + ["", ""]
    headers = {}
    for line in lines[1:]:
        word, _, value = line.partition(":")
        headers[word.strip().lower()] = value.strip()
    return method, path, headers


def http_head(status, length=None, extra=()):
    lines = [f"HTTP/1.1 {status}", "Connection: close", *extra]
    if length is not None:
        lines += ["Content-Type: text/plain; charset=utf-8", f"Content-Length: {length}"]
    return ("\r\n".join(lines) + "\r\n\r\n").encode()


async def http_text(writer, status, text, extra=()):
    body = text.encode()
    writer.write(http_head(status, len(body), extra) + body)
    await writer.drain()
