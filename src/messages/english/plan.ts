/** The address plan of a site. */
export const PLAN_WORDS = {
  'plan.title': 'An address for each new camera of a site',
  'plan.ask-cameras': 'How many cameras are to be added? A number, or their names with commas.',
  'plan.ask-shared': 'Do the new cameras all come with one and the same address? Which?',
  'plan.router-in-dhcp':
    'Conflict: the router itself, {address}, stands in the range it hands out. Make that range begin above it.',
  'plan.same-as-router': 'Conflict: a device has {address}, the address of the router.',
  'plan.twice':
    'Conflict: {address} stands twice in the list of devices. Two devices on one address go dark in turn.',
  'plan.outside': 'Conflict: {address} is outside this network (mask {mask}). The router cannot pass it on.',
  'plan.no-host': 'Conflict: {address} is no address for a device with mask {mask}.',
  'plan.in-dhcp':
    'Conflict: {address} stands in the range the router hands out. Reserve it on the router, or give the device another.',
  'plan.head': '| Camera | Address | Subnet mask | Default gateway |',
  'plan.rule': '| --- | --- | --- | --- |',
  'plan.row': '| {camera} | {address} | {mask} | {gateway} |',
  'plan.dns':
    'First DNS server for each: the router. Second: one that the provider names; the page of the router shows it.',
  'plan.reserve':
    'On the router, note these addresses as taken; where it can reserve addresses, reserve them by hardware address.',
  'plan.room': 'Free addresses left after that, outside the range the router hands out: {room}.',
  'plan.too-few':
    'There is room for {fits}; {missing} have no address. Make the range the router hands out smaller by {missing}, and reckon again.',
  'plan.shared':
    'All {count} new cameras come with {address}. Together on one switch they answer over one another.',
  'plan.one-at-a-time': 'Have one new camera on the switch at a time. Leave the leads of the others out.',
  'plan.set-test-next':
    'Set its address by the table, wait until it answers there, write its name on its lead, then plug in the next one.',
  'plan.cameras-wrong':
    '"{text}" is neither a number from 1 to {most} nor a list of names with commas. Type one of the two.',
  'plan.camera': 'Camera {number}',
} as const;
