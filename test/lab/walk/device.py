"""One device: a network namespace without a name, and what is asked and heard in it."""

import ctypes
import os
import socket
import struct
import subprocess

HOSTS = ["h1", "h2", "h3", "h4", "h5"]
ROUTERS = ["r1", "r2"]
DEVICES = HOSTS + ROUTERS
LINKS = ["s0", "s1", "s2"]

# What the walk leaves out, or takes for granted, is set here once; README.md says why.
CONF = {
    "rp_filter": 0,
    "arp_ignore": 1,
    "arp_announce": 2,
    "arp_filter": 0,
    "accept_local": 1,
    "accept_redirects": 0,
    "secure_redirects": 0,
    "send_redirects": 0,
    "log_martians": 0,
}
FAST = {"retrans_time_ms": 20, "mcast_solicit": 1}
SLOW = {"retrans_time_ms": 300, "mcast_solicit": 3}

NEWNET = 0x40000000
libc = ctypes.CDLL(None, use_errno=True)


def fail_if(result):
    if result != 0:
        code = ctypes.get_errno()
        raise OSError(code, os.strerror(code))


def enter(handle):
    fail_if(libc.setns(handle, NEWNET))


def new_namespace():
    fail_if(libc.unshare(NEWNET))
    return os.open("/proc/self/ns/net", os.O_RDONLY | os.O_CLOEXEC)


def sysctl(path, value):
    with open("/proc/sys/net/" + path, "w") as file:
        file.write(str(value))


def reading(path):
    with open("/proc/sys/net/" + path) as file:
        return file.read().strip()


def run(*argv, text=None):
    done = subprocess.run(argv, input=text, capture_output=True, text=True)
    if done.returncode != 0:
        raise RuntimeError(" ".join(argv) + ": " + done.stderr)
    return done.stdout


class Batch:
    """A long-lived `ip -batch -` in the namespace that this process is in."""

    def __init__(self):
        self.process = subprocess.Popen(
            ["ip", "-force", "-o", "-batch", "-"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
            bufsize=0,
        )
        os.set_blocking(self.process.stderr.fileno(), False)

    def send(self, lines):
        # The last line prints one line: when it is there, all before it are done.
        text = "".join(line + "\n" for line in lines) + "link show dev lo\n"
        self.process.stdin.write(text.encode())

    def done(self):
        """What was refused, as (number of the line since the start, what was said)."""
        self.process.stdout.readline()
        said = self.process.stderr.read() or b""
        return [line for line in said.decode().splitlines() if not line.startswith("Command failed")]


class Device:
    def __init__(self, name):
        self.name = name
        self.handle = new_namespace()
        for key, value in CONF.items():
            sysctl("ipv4/conf/all/" + key, value)
            # The kernel takes the larger of "all" and the link's own, so a link starts with 0.
            sysctl("ipv4/conf/default/" + key, 0)
        sysctl("ipv6/conf/all/disable_ipv6", 1)
        sysctl("ipv6/conf/default/disable_ipv6", 1)
        sysctl("ipv4/icmp_ratemask", 0)
        sysctl("ipv4/icmp_ratelimit", 0)
        if name in ROUTERS:
            sysctl("ipv4/ip_forward", 1)
            for key in ("accept_redirects", "send_redirects"):
                sysctl("ipv4/conf/all/" + key, 0)
                sysctl("ipv4/conf/default/" + key, 0)
        run("ip", "link", "set", "lo", "up")
        self.batch = Batch()
        self.frames = socket.socket(socket.AF_PACKET, socket.SOCK_RAW, socket.htons(3))
        self.frames.setblocking(False)
        self.netlink = socket.socket(socket.AF_NETLINK, socket.SOCK_RAW, 0)
        self.links = {}
        self.rules = ""
        self.proxies = []
        self.is_clean = True

    def clean(self):
        if self.is_clean:
            return []
        return ["addr flush dev " + link for link in LINKS] + ["route flush table main"]

    def start(self):
        enter(self.handle)
        for link in LINKS:
            self.links[socket.if_nametoindex(link)] = link
            sysctl("ipv4/neigh/%s/proxy_delay" % link, 0)
        self.arp(FAST)

    def arp(self, timing):
        enter(self.handle)
        for link in LINKS:
            for key, value in timing.items():
                sysctl("ipv4/neigh/%s/%s" % (link, key), value)

    def shape(self, rules, proxies):
        """The firewall rules of a router and the links on which it answers ARP for others."""
        if rules != self.rules:
            enter(self.handle)
            run("nft", "-f", "-", text="flush ruleset\n" + rules)
            if "masquerade" in rules or "ct state" in rules:
                sysctl("netfilter/nf_conntrack_icmp_timeout", 1)
            self.rules = rules
        if proxies != self.proxies:
            enter(self.handle)
            for link in LINKS:
                sysctl("ipv4/conf/%s/proxy_arp" % link, int(link in proxies))
            self.proxies = proxies

    def neighbours(self):
        """Reads the neighbour table and empties it; gives the addresses for which ARP failed."""
        self.netlink.send(struct.pack("=IHHII", 28, 30, 0x301, 1, 0) + struct.pack("=BxxxiHBB", 2, 0, 0, 0, 0))
        failed, gone, more = [], [], True
        while more:
            data = self.netlink.recv(65536)
            at = 0
            while at < len(data):
                length, kind = struct.unpack_from("=IH", data, at)
                if kind in (2, 3):
                    more = False
                elif kind == 28:
                    index, state = struct.unpack_from("=iH", data, at + 20)
                    address = attribute(data[at + 28 : at + length], 1)
                    link = self.links.get(index)
                    if link and address and not state & 0x40:
                        gone.append((index, address))
                        if state & 0x20:
                            failed.append([self.name, link, socket.inet_ntoa(address)])
                at += (length + 3) & ~3
        for index, address in gone:
            body = struct.pack("=BxxxiHBB", 2, index, 0, 0, 0) + struct.pack("=HH", 8, 1) + address
            self.netlink.send(struct.pack("=IHHII", 16 + len(body), 29, 5, 2, 0) + body)
            self.netlink.recv(4096)
        return failed

    def seen(self, echoes, asked, answered):
        """Sorts what was heard since the last time: pings that arrived, ARP questions sent, ARP answers heard."""
        while True:
            try:
                data, (link, kind, way, _, _) = self.frames.recvfrom(256)
            except BlockingIOError:
                return
            if kind == 0x0800 and way == 0 and data[23] == 1:
                at = 14 + (data[14] & 15) * 4
                if data[at] in (0, 8):
                    ends = [socket.inet_ntoa(data[26:30]), socket.inet_ntoa(data[30:34])]
                    echoes.append([self.name, link, "reply" if data[at] == 0 else "request", *ends])
            elif kind == 0x0806 and way == 4 and data[21] == 1:
                asked.append([self.name, link, socket.inet_ntoa(data[38:42])])
            elif kind == 0x0806 and way == 0 and data[21] == 2:
                answered.append([self.name, link, socket.inet_ntoa(data[28:32]), DEVICES[data[26]]])


def attribute(data, wanted):
    at = 0
    while at + 4 <= len(data):
        length, kind = struct.unpack_from("=HH", data, at)
        if length < 4:
            return None
        if kind == wanted:
            return data[at + 4 : at + length]
        at += (length + 3) & ~3
    return None
