/** What is said about IPv6 addresses. */
export const ADDRESS6_WORDS = {
  'typed.address6-wrong':
    '"{text}" is not an IPv6 address. Type up to eight groups of the digits 0 to 9 and the letters a to f, with colons between them, such as 2001:db8::57.',
  'typed.address6-is-ipv4':
    '"{text}" is an IPv4 address. The IPv6 address is needed here. It has colons in it, such as 2001:db8::57.',
  'typed.address6-is-mac':
    '"{text}" looks like a hardware address (MAC). The IPv6 address is needed here, such as 2001:db8::57.',
  'typed.address6-with-length':
    '"{text}" is an address and the length of its network together. Type only the address here: {address}.',

  'address6.link-local':
    '{address} works on one cable or one Wi-Fi only. A device gives it to itself, so it proves nothing about the internet.',
  'address6.unique-local': '{address} is a private address. It works on a local network only.',
  'address6.global':
    '{address} is a public IPv6 address. Whether the internet can call it is for the filter of the router to say.',
  'address6.loopback': '{address} is a device talking to itself.',
  'address6.unspecified': '{address} stands for no address yet.',
  'address6.multicast': '{address} is for groups of devices. No single device may have it.',
  'address6.documentation': '{address} is an address for examples. It is not in use on the internet.',
  'address6.nat64':
    '{address} stands for the IPv4 address {embedded}. A network that has IPv6 only translates it on the way.',
  'address6.nat64-local':
    '{address} belongs to a translation between IPv6 and IPv4 inside one network. It is not in use on the internet.',
  'address6.ipv4-mapped':
    '{address} is the IPv4 address {embedded}, written as IPv6 inside one device. It is never on a cable.',
  'address6.tunnel':
    '{address} belongs to an old way of carrying IPv6 over IPv4. It is often slow or dead; the IPv4 address is the better one to look at.',
  'address6.site-local': '{address} is of a kind that was given up. No device should have it.',
  'address6.reserved': '{address} is kept for special uses. A device should not have it.',
  'address6.unallocated': 'Nobody has been given {address} or its neighbours yet. Read it again.',
} as const;
