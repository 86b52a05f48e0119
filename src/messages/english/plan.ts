/** The address plan of a site. */
export const PLAN_WORDS = {
  'plan.title': 'An address for each new camera of a site',
  'plan.ask-cameras': 'How many cameras are to be added? A number, or their names with commas.',
  'plan.ask-default': 'With which address do the new cameras come, if they all come with the same one?',
  'plan.router-in-dhcp':
    'Conflict: the router itself, {address}, stands in the range it hands out. Make that range begin above it.',
  'plan.same-as-router': 'Conflict: a device has {address}, the address of the router.',
  'plan.twice':
    'Conflict: {address} stands twice in the list of devices. Two devices on one address go dark in turn.',
  'plan.outside': 'Conflict: {address} is outside this network (mask {mask}). The router cannot pass it on.',
  'plan.no-host': 'Conflict: {address} is no address for a device with mask {mask}.',
  'plan.in-dhcp':
    'Conflict: {address} stands in the range the router hands out. Reserve it on the router, or give the device another.',
  'plan.dhcp-outside':
    'Conflict: the range the router hands out reaches past {first} to {last}, the addresses for devices here.',
  'plan.default-taken':
    'Conflict: {address}, with which the new cameras come, is in use here or may be handed out. Set them on a switch that is not connected to this network.',
  'plan.column-camera': 'Camera',
  'plan.column-address': 'Address',
  'plan.column-mask': 'Subnet mask',
  'plan.column-gateway': 'Default gateway',
  'plan.no-address': 'none free',
  'plan.row': '| {camera} | {address} | {mask} | {gateway} |',
  'plan.dns':
    'First DNS server for each: {router}, the router. Second: one that the provider names; the page of the router shows it.',
  'plan.reserve':
    'On the router, note these addresses as taken. Where it can reserve addresses, reserve each by the hardware address on the label of its camera.',
  'plan.check':
    'Before you use one, ping it from a computer on this network. Nothing should answer. Silence is no proof: look in the device list of the router too.',
  'plan.room': 'Free addresses left after that, outside the range the router hands out: {room}.',
  'plan.too-few': 'Cameras that get an address: {fits}. Without one: {missing}.',
  'plan.smaller-range':
    'To make room, let the router hand out {from} to {to} only. That leaves {count} for its own devices. Then reckon again.',
  'plan.smaller-range-leases':
    'A device may keep an address from the old range until its lease ends. Look in the device list of the router before you use one.',
  'plan.too-small':
    'This network is too small. With nothing handed out there would be room for {most} in all. Ask whoever looks after it for a wider mask or a second network.',
  'plan.default-shared':
    'All {count} new cameras come with {address}. Together on one switch they answer over one another.',
  'plan.default-one': 'The new camera comes with {address}.',
  'plan.before-they-go-up':
    'Set and name a camera that does not hang yet on the ground. That saves a way up the ladder.',
  'plan.one-at-a-time': 'Have one new camera on the switch at a time. Leave the leads of the others out.',
  'plan.set':
    'Set its address, mask, gateway and DNS by the table, and save. The page then stops answering at the old address. That is as it should be.',
  'plan.test':
    'From a phone or computer that has its address from the router, open the new address. When it answers, write name and address on the lead.',
  'plan.next': 'Only then plug in the next camera, and do the same with it.',
  'plan.next-silent':
    'The computer remembers the camera before for some minutes. If the next one does not answer, take the network lead out of the computer, wait ten seconds and put it back.',
  'plan.cameras-wrong':
    '"{text}" is neither a number from 1 to {most} nor a list of names with commas. Type one of the two.',
  'plan.name-twice': 'The name "{name}" stands twice. Give each camera a name of its own.',
  'plan.camera': 'Camera {number}',
} as const;
