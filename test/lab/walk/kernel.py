"""One pool of namespaces: five hosts, two routers and a switch with three bridges.

Reads one request a line (JSON), re-addresses the pool, runs `ping` for each probe and writes what was seen, one
line. The namespaces have no name: file handles of this process hold them, so they go when it ends, however it ends.
"""

import json
import os
import signal
import subprocess
import sys
import time

from device import DEVICES, FAST, LINKS, ROUTERS, SLOW, Batch, Device, enter, new_namespace, reading, run, sysctl

SECONDS = 900


class Pool:
    def __init__(self):
        self.switch = new_namespace()
        for path in ("bridge/bridge-nf-call-iptables", "bridge/bridge-nf-call-arptables"):
            if os.path.exists("/proc/sys/net/" + path):
                sysctl(path, 0)
        sysctl("ipv6/conf/default/disable_ipv6", 1)
        sysctl("ipv6/conf/all/disable_ipv6", 1)
        self.devices = {name: Device(name) for name in DEVICES}
        enter(self.switch)
        lines = []
        for n, link in enumerate(LINKS):
            lines.append("link add name b%d type bridge mcast_snooping 0" % n)
            lines.append("link set b%d up" % n)
        for d, name in enumerate(DEVICES):
            holder = "/proc/%d/fd/%d" % (os.getpid(), self.devices[name].handle)
            for n, link in enumerate(LINKS):
                port, mac = name + link, "02:00:00:00:%02x:%02x" % (d, n)
                lines.append(
                    "link add name %s type veth peer name %s address %s netns %s" % (port, link, mac, holder)
                )
                lines.append("link set %s master b%d up" % (port, n))
        run("ip", "-batch", "-", text="\n".join(lines) + "\n")
        for device in self.devices.values():
            enter(device.handle)
            run("ip", "-batch", "-", text="".join("link set %s up\n" % link for link in LINKS))
            device.start()
        enter(self.switch)
        self.ports = Batch()
        self.isolated = []
        for _ in range(100):
            if run("bridge", "link").count("state forwarding") == len(DEVICES) * len(LINKS):
                return
            time.sleep(0.05)
        raise RuntimeError("the switch does not forward")

    def isolate(self, ports):
        if ports == self.isolated:
            return
        lines = ["link set dev %s type bridge_slave isolated off" % port for port in self.isolated]
        lines += ["link set dev %s type bridge_slave isolated on" % port for port in ports]
        self.ports.send(lines)
        said = self.ports.done()
        if said:
            raise RuntimeError("; ".join(said))
        self.isolated = ports

    def answer(self, request):
        devices = request["devices"]
        for name, device in self.devices.items():
            wanted = devices.get(name, {})
            device.batch.send(device.clean() + wanted.get("ip", []))
            device.is_clean = not wanted
            # A router that is not there has no address, so its rules may stay.
            if name in ROUTERS and wanted:
                device.shape(wanted.get("nft", ""), wanted.get("proxyArp", []))
        self.isolate(request.get("isolated", []))
        refused = {name: device.batch.done() for name, device in self.devices.items()}
        undo = [(name, path, value) for name, path, value in self.settings(request.get("settings", []))]
        if request.get("slow"):
            for device in self.devices.values():
                device.arp(SLOW)
        probes = [self.probe(*probe, request.get("slow", False)) for probe in request["probes"]]
        if request.get("slow"):
            for device in self.devices.values():
                device.arp(FAST)
        self.settings(reversed(undo))
        return {"refused": {name: said for name, said in refused.items() if said}, "probes": probes}

    def settings(self, wanted):
        before = []
        for name, path, value in wanted:
            enter(self.devices[name].handle)
            before.append((name, path, reading(path)))
            sysctl(path, value)
        return before

    def probe(self, name, address, slow):
        for device in self.devices.values():
            device.neighbours()
            device.seen([], [], [])
        enter(self.devices[name].handle)
        done = subprocess.run(
            ["/usr/bin/ping", "-n", "-c1", "-W", "1.5" if slow else "0.06", address],
            capture_output=True,
            text=True,
            close_fds=False,
        )
        echoes, asked, answered, failed = [], [], [], []
        for device in self.devices.values():
            device.seen(echoes, asked, answered)
            failed += device.neighbours()
        return {
            "code": done.returncode,
            "said": (done.stdout + done.stderr).strip(),
            "echoes": echoes,
            "asked": asked,
            "answered": answered,
            "failed": failed,
        }


def main():
    signal.alarm(SECONDS)
    pool = Pool()
    print(json.dumps({"ready": True}), flush=True)
    for line in sys.stdin:
        print(json.dumps(pool.answer(json.loads(line))), flush=True)


main()
