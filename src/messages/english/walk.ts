/** A question and its answer, followed from device to device. */
export const WALK_WORDS = {
  'walk.question': '{from} calls {to} at {destination}.',
  'walk.answer': '{to} answers to {destination}.',

  'walk.neighbour':
    '{from}: {destination} is inside its own range {range}, so it looks for {destination} itself on {segment}.',
  'walk.own-gateway':
    '{from}: its default gateway is its own address, so it takes every address for a neighbour and looks for {destination} itself on {segment}.',
  'walk.route': '{from}: a route it was given leads to {destination} by way of {asked} on {segment}.',
  'walk.gateway':
    '{from}: {destination} is outside its own range {range}, so it hands it to its default gateway {asked} on {segment}.',

  'walk.source-swapped': '{from} puts its own address {after} in place of the sender {before}.',
  'walk.destination-swapped': '{from} remembers the question and puts {after} back in place of {before}.',

  'walk.nobody-answers': 'ARP: nobody on {segment} answers for {asked}.',
  'walk.answers': 'ARP: {devices} answers for {asked}.',
  'walk.answers-by-proxy': 'ARP: {devices} answers in place of {asked}.',
  'walk.several-answer': 'ARP: {count} devices answer for {asked}: {devices}.',

  'walk.arrived': '{device} has it.',
  'walk.stop-no-address': '{device} has no address. It cannot send and cannot be called.',
  'walk.stop-no-gateway':
    '{device}: {destination} is outside its own range, and it has no default gateway. It cannot send.',
  'walk.stop-gateway-outside':
    '{device}: {destination} is outside its own range, and so is its default gateway. It cannot send.',
  'walk.stop-no-arp-answer': '{device} has nobody to send it to. It stops here.',
  'walk.stop-two-answers': 'Whoever answers first gets it. It may be the wrong device.',
  'walk.stop-not-passed-on': '{device} is no router and passes nothing on. It vanishes without a word.',
  'walk.stop-no-route': '{device} knows no way to {destination}. It stops here.',
  'walk.stop-private-on-internet':
    '{device} does not carry {destination}: that is no public address. It stops here.',
  'walk.stop-unasked-reply': '{device} never saw the question, so it drops the answer.',
  'walk.stop-self-assigned': '{device} passes nothing on from or to a 169.254 address. It stops here.',
  'walk.stop-kept-apart': '{device} keeps these two networks apart and passes nothing between them.',
  'walk.stop-going-round': 'It goes round in a circle. It stops here.',
  'walk.stop-wrong-device': '{device} has it, and not {wanted}.',

  'walk.reaches': '{from} reaches {to}, and the answer comes back.',
  'walk.reply-lost': '{from} reaches {to}, but the answer is lost on its way back.',
  'walk.chance': 'Whether {from} reaches {to} is chance: one address is in use twice.',
  'walk.fails': '{from} does not reach {to}.',

  'walk.both-ways': '{from} and {to} reach each other.',
  'walk.one-way': '{from} reaches {to}, but not the other way round.',
  'walk.neither-way': 'Neither of {from} and {to} reaches the other.',
} as const;
