/** What is said about looking at this computer: what is run, what is tried, and which cameras answered. */
export const HERE_WORDS = {
  'here.why-addresses': 'Shows the addresses, masks and adapters of this computer.',
  'here.why-everything': 'Shows the addresses, masks, adapters, gateways and DNS servers of this computer.',
  'here.why-routes': 'Shows which way this computer sends what is not on its own network.',
  'here.why-neighbours': 'Shows which devices this computer has spoken to on its own network.',
  'here.why-dns': 'Shows whom this computer asks for names.',

  'here.missing': 'This computer has no command {command}.',
  'here.no-file': 'This computer has no readable file {file}.',
  'here.late': '{command} gave no answer within {seconds} seconds.',
  'here.too-long': '{command} printed more than can be read.',
  'here.failed': '{command} ended with the fault {status}.',
  'here.not-started': '{command} could not be started.',

  'here.ping-camera': 'Ping the camera at {address} three times.',
  'here.ping-router': 'Ping the router at {address} three times.',
  'here.port-camera': 'Knock at port {port} of the camera at {address}, and hang up at once.',
  'here.port-router': 'Knock at port {port} of the router at {address}, and hang up at once.',
  'here.lookup': 'Ask for the address of the name {name}, as a browser on this computer would.',
  'here.refused-address':
    '{address} is left alone. Only a camera and a router on site are tried, and this is no address of a local network.',
  'here.refused-number': 'What was given as an address is none, so nothing is tried there.',
  'here.refused-name': '"{name}" is no name that can be looked up, so it is left out.',
  'here.not-tried': 'This computer could not do it: {probe}',

  'here.camera-without-name': 'A camera that gives no name',
  'here.camera-named': 'The camera {name}',
  'here.camera-inside':
    '{camera} answered from {address}. That is in the range {range} of this computer, so a browser here can open it.',
  'here.camera-outside':
    '{camera} answered. Its address {address} is in none of the ranges of this computer, so a browser here cannot open it. Give this computer the address {temporary} with the mask {mask} for a while.',
  'here.camera-outside-no-room':
    '{camera} answered. Its address {address} is in none of the ranges of this computer, and there is no address beside it to give this computer for a while.',
  'here.camera-elsewhere':
    '{camera} answered, but the address {address} that it gives is not one of a local network. Look at its network settings.',
  'here.camera-no-address':
    '{camera} answered, but gives no IPv4 address. Look for it in the device list of the router.',
  'here.search-no-network':
    'The search for cameras could not be sent from {address}. Check that this adapter is plugged in and has that address.',

  'here.plan': 'These commands would be run on this computer. They only look, and change nothing:',
  'here.plan-one': '{command}: {why}',
  'here.may-read': 'Run them now?',
  'here.yes-read': 'Yes, read this computer',
  'here.no-read': 'No, leave it alone',
  'here.unknown-system': 'It is not known how this system is read. Paste what its network settings show.',
  'here.nothing-read': 'This computer gave nothing to read.',
  'here.camera-say': 'Which address does the camera have? Leave the line empty if nobody knows it.',
  'here.plan-try': 'These can be tried from here, each once. They go to nobody else:',
  'here.may-try': 'Try them now?',
  'here.yes-try': 'Yes, try them',
  'here.no-try': 'No, leave them',
  'here.trying': 'Trying. This takes up to 15 seconds.',
  'here.tried': 'What came of it:',
  'here.plan-search':
    'Cameras that follow the ONVIF standard answer a call to everybody on this network. One message is sent, and answers are taken for four seconds. Nothing leaves this network.',
  'here.may-search': 'Call for cameras now?',
  'here.yes-search': 'Yes, call for cameras',
  'here.no-search': 'No, leave it',
  'here.searching': 'Listening for four seconds.',
  'here.found-none':
    'No camera answered. That says little: many have this turned off, and some networks hold such calls back.',

  'here.next-several': 'Next: unplug what does not lead to the camera, and read this computer again.',
  'here.next-no-network':
    'Next: put the network lead of this computer in, or join the Wi-Fi of the site. Then read it again.',
  'here.next-self-assigned':
    'Next: {name} gave itself {address}, so nobody hands out addresses there. See that the lead is in and the router is on. Then read this computer again.',
  'here.next-gateway-none':
    'Next: {name} has no gateway, so this computer does not get beyond its own network. Let it fetch its address from the router, or type in the address of the router as the gateway.',
  'here.next-gateway-outside':
    'Next: put the gateway of {name} right. {gateway} lies outside its range {range}, so this computer does not get beyond its own network. The gateway has to be the address of the router.',
  'here.next-gateway-no-host':
    'Next: put the gateway of {name} right. {gateway} is no other device in its range {range}. The gateway has to be the address of the router.',
  'here.next-gateway-silent':
    'Next: compare the gateway of {name} with the address of the router. Nothing answers at {gateway}. If the two are the same, see that the router is on.',
  'here.next-tunnel': 'Next: turn the VPN {name} off, and read this computer again.',
  'here.next-call': 'Nothing is wrong with this computer itself. Next: hold the call.',
  'here.may-call': 'Begin a call with what was read?',
  'here.yes-call': 'Yes, begin a call',
  'here.no-call': 'No, that is all',
  'here.no-terminal':
    'Nobody can be asked here. Say beforehand what may be done: --agree read, or --agree read,try,search.',
  'here.agree-what': '--agree takes read, try and search, with commas between them; not {word}.',
  'here.bad-address': '--{option}: {problem}',
} as const;
