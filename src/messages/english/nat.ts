/** The worked lines of the sums about address translation, and the words that ask for their inputs. */
export const NAT_WORDS = {
  'nat.title': 'Can the camera be reached from outside?',

  'nat.ask-way': 'How does the phone reach the camera: through a service, or through a forwarded port?',
  'nat.way-service': 'Through a service that both call',
  'nat.way-forward': 'Through a port forwarded on the router',
  'nat.ask-wan': "What is the outer (WAN or internet) address on the router's status page?",
  'nat.ask-outer': 'If there is a second router beyond it, what is the outer address of that one?',
  'nat.ask-seen':
    'What address does the internet see? Ask a page that shows it, from a computer on the site, with VPN off.',
  'nat.ask-outer-passes':
    'Does the outer router pass the port on to the inner one, or only bridge the connection?',
  'nat.ask-rule': 'To which address does the forwarding rule send the port?',
  'nat.ask-camera': 'What address does the camera have now?',
  'nat.ask-viewer': 'Where is the phone: on the network of the site, or elsewhere?',
  'nat.viewer-inside': 'On the network of the site',
  'nat.viewer-outside': 'Elsewhere',
  'nat.ask-turns-round': 'Does the router turn traffic round that goes out and comes back in (hairpin)?',
  'nat.ask-phone-network': "What does the phone's network carry?",
  'nat.network-ipv4': 'IPv4, or both',
  'nat.network-ipv6-only': 'IPv6 only',
  'nat.ask-target': 'How does the app call the site: by a name, or by four numbers?',
  'nat.target-name': 'By a name',
  'nat.target-numbers': 'By four numbers with dots',
  'nat.ask-phone-translates': 'Does the phone translate IPv4 itself (464XLAT)?',
  'nat.ask-names': 'Can the site look up names (DNS, port 53)?',
  'nat.ask-https': 'Is the way out open for web traffic (TCP port 443)?',
  'nat.ask-time': 'Is the way out open for the time service (UDP port 123)?',
  'nat.ask-udp': 'Is the way out open for UDP (ports 3478, 5349 and above)?',
  'nat.open': 'Open',
  'nat.closed': 'Closed',
  'nat.yes': 'Yes',
  'nat.no': 'No',
  'nat.dont-know': "Don't know",
  'nat.seen-not-public':
    '{address} is no address that the internet can see. Ask a page outside for it, from a computer on the site.',

  'nat.wan-is': 'The outer address of the router is {address}.',
  'nat.outer-is': 'The outer address of the router beyond it is {address}.',
  'nat.seen-is': 'The internet sees the site as {address}.',
  'nat.direct':
    'The internet sees the address of the router itself: nothing between the router and the internet changes addresses.',
  'nat.direct-unseen':
    'The address is public. Whether the internet sees the same one has not been looked at.',
  'nat.translated':
    'The router has a public address, yet the internet sees another. Something on the way changes addresses, or the outside was asked through a VPN or over mobile data.',
  'nat.carrier':
    'The outer address is one of the provider. The provider changes addresses for many customers at once (carrier-grade NAT; RFC 6598, RFC 7335).',
  'nat.another-router':
    'The router is itself behind another one. That may be a second router here, or equipment of the provider: the address does not tell which (RFC 1918).',
  'nat.double': 'There are two routers in line here, and both change addresses (double NAT).',
  'nat.both': 'There are two routers in line here, and the provider changes addresses as well.',
  'nat.no-address': 'The router has no usable address outside. It has no way to the internet now.',
  'nat.unknown': 'The outer address of the router is not known.',

  'nat.forward-can': 'A forwarded port can be reached from outside.',
  'nat.forward-compare': 'A forwarded port can be reached if the internet sees the same address.',
  'nat.forward-look-again':
    'Ask for the outside address again from a computer on the site, with VPN and mobile data off. If it still differs, a forwarded port cannot be reached.',
  'nat.forward-carrier':
    'No rule on the router here can be reached: the provider does not pass the port on. It takes a public address from the provider, a forwarding the provider offers (RFC 6888, REQ-9), or a service that both ends call.',
  'nat.forward-both': 'The port is passed on by both routers, so it can be reached.',
  'nat.forward-outer-closed':
    'The outer router does not pass the port on, so the rule on the inner one is never reached.',
  'nat.forward-needs-both':
    'Both routers must pass the port on, or the outer one must only bridge (RFC 5128, from memory).',
  'nat.forward-look-beyond':
    'Whether it can work depends on what is beyond. Look up the outer address of the next router.',
  'nat.forward-no-address': 'Nothing outside can reach a router without an address.',
  'nat.forward-wan-needed': 'Whether a forwarded port can work depends on the outer address of the router.',
  'nat.rule-fits': 'The rule points at {rule}, and that is the camera.',
  'nat.rule-elsewhere':
    'The rule points at {rule}, but the camera is {camera} now. Point the rule at the camera, and give the camera an address that stays.',
  'nat.rule-not-compared': 'The rule and the address of the camera have not been compared.',

  'nat.hairpin-works': 'The router turns the traffic round, so the outside address works on the site too.',
  'nat.hairpin-missing':
    'The router does not turn the traffic round, though RFC 4787 (REQ-9) asks for it. On the site use the inside address; test the forward from mobile data.',
  'nat.hairpin-unknown':
    'On the site the outside address only works if the router turns traffic round (RFC 4787, REQ-9). Many do not (common practice, no source). Test from mobile data before anything is called broken.',

  'nat.phone-ipv4': "The phone's network carries IPv4.",
  'nat.phone-by-name':
    'The app calls the site by name. An IPv6-only network translates names (RFC 6147, RFC 6146).',
  'nat.phone-translates':
    'The phone translates IPv4 itself (RFC 6877, from memory), so four numbers work too.',
  'nat.phone-network-unknown':
    'Four numbers in an app do not pass an IPv6-only network unless the phone translates. Find out what the network carries, or use a name.',
  'nat.phone-numbers-lost':
    'The app calls four numbers, the network carries IPv6 only, and the phone does not translate (RFC 6877, from memory). Use a name instead.',
  'nat.phone-numbers-doubtful':
    'The app calls four numbers and the network carries IPv6 only. That only works if the phone translates (RFC 6877, from memory). A name is safe.',
  'nat.phone-embedded': 'There {address} would be called {embedded} (RFC 6052, section 2.4).',

  'nat.need-names': 'Names must be looked up: port {ports}, UDP and TCP, or a name server on the site.',
  'nat.lost-names': 'That is closed: the camera cannot find its service.',
  'nat.need-https': 'The service is called over TLS: TCP port {ports}.',
  'nat.lost-https': 'That is closed: the camera cannot sign in at its service.',
  'nat.need-time': 'The clock is set by NTP: UDP port {ports}.',
  'nat.lost-time':
    'That is closed: the clock will drift, and a clock far off is refused. A time server on the site would do.',
  'nat.need-udp':
    'Camera and phone find a direct way by UDP: ports {ports} (STUN, TURN), then high ports that change.',
  'nat.lost-udp':
    'That is closed: the picture must go through a relay over TCP. Whether the service has one stands in its manual.',
  'nat.keep-alive':
    'Nothing need be open inwards. A router may forget an idle UDP session after 2 minutes (RFC 4787, REQ-5) and an idle TCP session after 2 h 4 min (RFC 5382, REQ-5); some forget UDP after 30 s (from memory).',
  'nat.service-passes':
    'For a service that both call, changed addresses on the way are normal and no fault (RFC 5128, from memory).',
  'nat.own-ports': 'A maker may use other ports besides: its manual says which.',
} as const;
