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
} as const;
