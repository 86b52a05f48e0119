/** What must be found in no record and no ticket once `SITE` was pasted: as it stands there, or in part. */
export const PRIVATE: readonly string[] = [
  'rosa',
  'kettle',
  'quay-pc-7',
  'harbour.example',
  '02-00-5e',
  '02:00:5e',
  'demo2041',
  'boathouse',
  'herring',
  '4711',
];

/** A computer, its neighbours, a ping and the page of a camera, as one person pastes it in one go. */
export const SITE = `C:\\Users\\Rosa Kettle>ipconfig /all

Windows IP Configuration

   Host Name . . . . . . . . . . . . : QUAY-PC-7
   Primary Dns Suffix  . . . . . . . : harbour.example
   Node Type . . . . . . . . . . . . : Hybrid
   IP Routing Enabled. . . . . . . . : No
   WINS Proxy Enabled. . . . . . . . : No

Ethernet adapter Ethernet:

   Connection-specific DNS Suffix  . : harbour.example
   Description . . . . . . . . . . . : Gigabit Network Connection
   Physical Address. . . . . . . . . : 02-00-5E-10-00-05
   DHCP Enabled. . . . . . . . . . . : Yes
   Autoconfiguration Enabled . . . . : Yes
   IPv4 Address. . . . . . . . . . . : 172.23.40.5(Preferred)
   Subnet Mask . . . . . . . . . . . : 255.255.255.0
   Default Gateway . . . . . . . . . : 172.23.40.1
   DHCP Server . . . . . . . . . . . : 172.23.40.2
   DHCPv6 Client DUID. . . . . . . . : 00-01-00-01-2A-11-22-33-02-00-5E-10-00-05
   DNS Servers . . . . . . . . . . . : 172.23.40.1
   NetBIOS over Tcpip. . . . . . . . : Enabled

C:\\Users\\Rosa Kettle>arp -a

Interface: 172.23.40.5 --- 0xb
  Internet Address      Physical Address      Type
  172.23.40.1           02-00-5e-10-00-01     dynamic
  172.23.40.57          02-00-5e-10-00-57     dynamic
  172.23.40.255         ff-ff-ff-ff-ff-ff     static

C:\\Users\\Rosa Kettle>ping 172.23.40.57

Pinging 172.23.40.57 with 32 bytes of data:
Reply from 172.23.40.57: bytes=32 time=2ms TTL=64
Reply from 172.23.40.57: bytes=32 time=1ms TTL=64
Reply from 172.23.40.57: bytes=32 time=1ms TTL=64
Reply from 172.23.40.57: bytes=32 time=1ms TTL=64

Ping statistics for 172.23.40.57:
    Packets: Sent = 4, Received = 4, Lost = 0 (0% loss),
Approximate round trip times in milli-seconds:
    Minimum = 1ms, Maximum = 2ms, Average = 1ms

C:\\Users\\Rosa Kettle>

Camera
Address type: fixed
IP address: 172.23.40.57
Subnet mask: 255.255.255.0
Default gateway: 172.23.41.1
DNS server: 172.23.40.1
MAC address: 02:00:5e:10:00:57
Serial number: DEMO20417733
User name: boathouse
Password: herring-and-chips
PIN: 4711
`;

/** The number of the only line that holds this, counted from 1. */
export function lineWith(part: string, text = SITE): number {
  const found = text.split('\n').flatMap((line, at) => (line.includes(part) ? [at + 1] : []));
  const [line] = found;
  if (line === undefined || found.length > 1) throw new Error(`${found.length} lines hold ${part}`);
  return line;
}
