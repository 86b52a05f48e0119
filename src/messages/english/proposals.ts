/** Addresses that are proposed, how to use them and what to check. */
export const PROPOSAL_WORDS = {
  'proposal.mask-assumed': 'The mask of the camera {camera} is not known. {mask} is taken, the usual one.',
  'proposal.temporary':
    'A computer with the address {address} and the mask {mask} is in the range of the camera {camera}.',
  'proposal.temporary-none':
    'The range of the camera {camera} with mask {mask} has no other address to give. Read the mask again.',
  'proposal.temporary-no-internet':
    'While it has this address the computer has no internet, and a remote session on it ends. If somebody helps through such a session, do not begin.',
  'proposal.temporary-note-old':
    'Write down or photograph the network settings of the computer as they are now.',
  'proposal.temporary-cable':
    'Connect the computer by cable to the switch that the camera is on. Turn its Wi-Fi off.',
  'proposal.temporary-set':
    'In the settings of its cable adapter, turn automatic addressing (DHCP) off. Type the address {address} and the mask {mask}. Leave gateway and DNS empty.',
  'proposal.temporary-open': 'Type {camera} into the address line of a browser on that computer.',
  'proposal.temporary-put-back':
    'When done, put the old settings back. Mostly that is automatic addressing (DHCP). Take {address} out.',
  'proposal.temporary-check':
    'Turn its Wi-Fi on again, if it was on. Open any web page to be sure that the internet is back.',

  'proposal.dhcp':
    'The router gives out the addresses from {from} to {to} by itself (DHCP). None of those is taken.',
  'proposal.dhcp-unknown':
    'Which addresses the router gives out by itself (DHCP) is not known. Look at its page first: the proposed address must not be among them.',
  'proposal.free': '{address} is free, as far as these numbers say.',
  'proposal.free-settings':
    'Type into the camera: address {address}, subnet mask {mask}, default gateway {router}.',
  'proposal.free-dns':
    'First DNS server: {router}, the router. Second: one that the provider names; the page of the router shows it under its internet connection.',
  'proposal.free-none':
    'No address is free. Make the DHCP range of the router smaller, or let the router reserve an address for the camera.',
  'proposal.check-unplug':
    'Before you use it, unplug the camera and ping {address} from a computer on this network. Nothing should answer.',
  'proposal.check-arp':
    'Right after the ping, look {address} up in the ARP table of that computer. There should be no hardware address beside it.',
  'proposal.check-list':
    'Silence is no proof: a device may be switched off. Look for {address} in the device list of the router too.',
} as const;
