/** The worked lines of the subnet sums. */
export const SUBNET_WORDS = {
  'subnet.network': '{address} with mask {mask} (/{prefix}) belongs to the network {network}.',
  'subnet.block':
    'The mask cuts number {position} of the address into blocks of {size}: {number} falls into the block from {from} to {to}.',
  'subnet.hosts': 'Devices there have addresses from {first} to {last}.',
  'subnet.hosts-two': 'A /31 has two addresses only, {first} and {last}, and devices may have both.',
  'subnet.hosts-one': 'A /32 has one address only, {first}: the device has no neighbours.',
  'subnet.inside': '{other} is inside it.',
  'subnet.outside': '{other} is outside it.',

  'subnet.address-blank': 'The address is empty (0.0.0.0).',
  'subnet.is-host': '{address} may be the address of a device.',
  'subnet.is-network-address':
    '{address} is the name of the network itself. No device may have it as its address.',
  'subnet.is-broadcast-address':
    '{address} is the broadcast address of the network. No device may have it as its address.',

  'subnet.gateway-blank': 'The default gateway is empty (0.0.0.0). Nothing can leave the local network.',
  'subnet.gateway-own-address':
    "The default gateway {other} is the device's own address. It should be the router's.",
  'subnet.gateway-network-address': '{other} is the name of the network itself. No router can have it.',
  'subnet.gateway-broadcast-address':
    '{other} is the broadcast address of the network. No router can have it.',
  'subnet.gateway-is-router': 'The default gateway {gateway} is the router.',
  'subnet.gateway-is-another': 'The default gateway is {gateway}. The router is {router}.',

  'subnet.same-address': 'Both have the address {address}. Only one device may have it.',
  'subnet.different-addresses': '{address} and {other} are two different addresses.',

  'subnet.dns-blank': 'The DNS server is empty (0.0.0.0). No name can be looked up.',
  'subnet.dns-router': 'The DNS server {dns} is the router.',
  'subnet.dns-private-elsewhere': 'The DNS server {dns} is neither on this network nor on the internet.',
  'subnet.dns-public': 'The DNS server {dns} is reached through the router.',

  'subnet.in-block': '{address} lies in the block {block} ({rfc}).',
  'subnet.kind-private': '{address} is a private address. It works on a local network only.',
  'subnet.kind-self-assigned':
    '{address} is an address a device gives itself when nobody gives it one. No router passes it on.',
  'subnet.kind-shared':
    '{address} is an address that many customers of a provider share. It cannot be called from the internet.',
  'subnet.kind-documentation': '{address} is an address for examples. It is not in use on the internet.',
  'subnet.kind-loopback': '{address} is a device talking to itself.',
  'subnet.kind-multicast': '{address} is for groups of devices. No single device may have it.',
  'subnet.kind-reserved': '{address} is kept for special uses. A device should not have it.',
  'subnet.kind-this-network': '{address} stands for no address yet.',
  'subnet.kind-public': '{address} is a public address on the internet.',
} as const;
