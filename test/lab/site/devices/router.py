"""The router's own page: what its owner sees at its address on the site's network."""
import asyncio
import os
import re
import sys

sys.path.insert(0, os.path.dirname(os.path.abspath(__file__)))
from words import http_request, http_text, network_of, page, shell  # noqa: E402

HOME = os.getcwd()


def kept(name):
    try:
        with open(os.path.join(HOME, name), encoding="utf8") as file:
            return file.read()
    except OSError:
        return ""


def rows():
    outside, inside = dict(network_of("wan0")), dict(network_of("lan0"))
    with open("/sys/class/net/wan0/operstate", encoding="utf8") as file:
        plugged = file.read().strip() == "up"
    conf = kept("dhcp.conf")
    pool = re.search(r"^dhcp-range=set:site,([\d.]+),([\d.]+)", conf, re.M)
    running = bool(shell("ss", "-Hulpn", "sport = :67"))
    servers = re.findall(r"^server=([\d.]+)", kept("dns.conf"), re.M)
    yield "Internet socket", "cable connected" if plugged else "no cable"
    yield "Internet address", outside["IP address"]
    yield "Internet subnet mask", outside["Subnet mask"]
    yield "Internet gateway", outside["Default gateway"]
    yield "Internet DNS servers", ", ".join(servers) or "not set"
    yield "Local address", inside["IP address"]
    yield "Local subnet mask", inside["Subnet mask"]
    yield "Giving out addresses (DHCP)", "on" if running else "off"
    yield "Address range", f"{pool.group(1)} to {pool.group(2)}" if pool else "not set"
    for ports in re.findall(r"tcp dport (\d+) dnat to ([\d.]+):(\d+)", shell("nft", "list", "table", "ip", "opened")):
        yield "Port forwarding", "TCP {} to {} port {}".format(*ports)
    leases = [line.split() for line in kept("leases").splitlines()]
    named = {lease[1]: lease[2:4] for lease in leases if len(lease) > 3}
    for line in shell("ip", "-4", "neigh", "show", "dev", "lan0").splitlines():
        part = line.split()
        if "lladdr" in part and "FAILED" not in part:
            mac = part[part.index("lladdr") + 1]
            named.setdefault(mac, [part[0], "*"])
    for mac, (address, name) in sorted(named.items(), key=lambda one: one[1][0]):
        yield "Device", f"{address}  {mac}  {'' if name == '*' else name}".rstrip()


async def serve(reader, writer):
    try:
        await http_request(reader)
        await http_text(writer, "200 OK", page("Router - status", rows()))
    except Exception:  # noqa: BLE001
        pass
    finally:
        writer.close()


async def main():
    server = await asyncio.start_server(serve, "0.0.0.0", 80)
    await server.serve_forever()


if __name__ == "__main__":
    asyncio.run(main())
