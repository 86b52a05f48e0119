import { sampleText } from '../intake/every-sample.js';
import { type ReadText, written } from './read-texts.js';

const KAMERA =
  'Kamera Küche\r\nIP-Adresse: 172.23.40.77\r\nSubnetzmaske: 255.255.255.0\r\nÜberwachung läuft\r\n';

const SEEN_OF_KAMERA: Pick<ReadText, 'devices' | 'observations'> = {
  devices: ['camera 172.23.40.77 255.255.255.0'],
  observations: { 'camera.address': '172.23.40.77', 'camera.mask': '255.255.255.0' },
};

/** With its byte order mark (the Unicode standard, section 23.8). */
function utf16(text: string, isBigEndian: boolean): Uint8Array {
  const marked = `\ufeff${text}`;
  const view = new DataView(new ArrayBuffer(2 * marked.length));
  for (let at = 0; at < marked.length; at++) view.setUint16(2 * at, marked.charCodeAt(at), !isBigEndian);
  return new Uint8Array(view.buffer);
}

/** `ü`, `Ü` and `ä` as code page 850 has them: 0x81, 0x9a and 0x84; in 1252 as in Unicode. */
function oneByteEach(text: string, of: ReadonlyMap<string, number>): Uint8Array {
  return Uint8Array.from(text, (character) => of.get(character) ?? character.charCodeAt(0));
}

const IN_850 = new Map([
  ['ü', 0x81],
  ['Ü', 0x9a],
  ['ä', 0x84],
]);

function encoded(name: string, bytes: Uint8Array): ReadText {
  return { ...written('German', name, '', SEEN_OF_KAMERA), bytes };
}

const IP_ADDR = [
  'mira@den:~$ ip addr',
  '1: lo: <LOOPBACK,UP,LOWER_UP> mtu 65536 qdisc noqueue state UNKNOWN group default qlen 1000',
  '    link/loopback 00:00:00:00:00:00 brd 00:00:00:00:00:00',
  '    inet 127.0.0.1/8 scope host lo',
  '2: eth0: <BROADCAST,MULTICAST,UP,LOWER_UP> mtu 1500 qdisc fq_codel state UP group default qlen 1000',
  '    link/ether 02:00:5e:10:00:57 brd ff:ff:ff:ff:ff:ff',
  '    inet 172.23.40.57/24 brd 172.23.40.255 scope global dynamic eth0',
  'mira@den:~$ ip route',
  'default via 172.23.40.1 dev eth0 proto dhcp metric 100',
  '172.23.40.0/24 dev eth0 proto kernel scope link src 172.23.40.57',
].join('\n');

const SEEN_OF_IP_ADDR: Pick<ReadText, 'devices' | 'observations'> = {
  devices: ['computer 127.0.0.1 255.0.0.0', 'computer 172.23.40.57 255.255.255.0, gateway 172.23.40.1'],
  observations: {
    'computer.address': '172.23.40.57',
    'computer.mask': '255.255.255.0',
    'computer.by-hand': false,
    'computer.links': 'lead',
    'router.address': '172.23.40.1',
    'router.mask': '255.255.255.0',
  },
};

const ALL_GERMAN: Pick<ReadText, 'devices' | 'observations'> = {
  devices: [
    'computer 172.23.40.57 255.255.255.0, gateway 172.23.40.1, dns 172.23.40.3 172.23.40.4',
    'computer 169.254.77.12 255.255.0.0',
  ],
  observations: {
    'computer.address': '172.23.40.57',
    'computer.mask': '255.255.255.0',
    'computer.by-hand': true,
    'computer.links': 'both',
  },
};

const PING = [
  'Camera: 172.23.40.77 255.255.255.0',
  '',
  'PING 172.23.40.77 (172.23.40.77) 56(84) bytes of data.',
  '64 bytes from 172.23.40.77: icmp_seq=1 ttl=64 time=0.512 ms',
  '',
  '--- 172.23.40.77 ping statistics ---',
  '25 packets transmitted, 20 received, 20% packet loss, time 24037ms',
  'rtt min/avg/max/mdev = 0.402/0.512/0.640/0.050 ms',
].join('\n');

/** Texts that came by mail, by chat or from a file, and languages of which no table knows a word. */
export const ODD_TEXTS: readonly ReadText[] = [
  encoded('UTF-16, little end first', utf16(KAMERA, false)),
  encoded('UTF-16, big end first', utf16(KAMERA, true)),
  encoded('code page 850', oneByteEach(KAMERA, IN_850)),
  encoded('code page 1252', oneByteEach(KAMERA, new Map())),
  encoded(
    'UTF-8 read as 1252',
    new TextEncoder().encode(KAMERA.replaceAll('ü', 'Ã¼').replaceAll('Ü', 'Ãœ').replaceAll('ä', 'Ã¤')),
  ),
  written('English', 'ip addr', IP_ADDR, SEEN_OF_IP_ADDR),
  written('English', 'ip addr, quoted in a mail', IP_ADDR.replace(/^/gm, '> '), SEEN_OF_IP_ADDR),
  written('English', 'ip addr, quoted twice', IP_ADDR.replace(/^/gm, '> > '), SEEN_OF_IP_ADDR),
  written(
    'English',
    'ip addr, between code fences',
    `Here it is:\n\`\`\`console\n${IP_ADDR}\n\`\`\`\nThanks`,
    SEEN_OF_IP_ADDR,
  ),
  written('English', 'ip addr, with CRLF', IP_ADDR.replaceAll('\n', '\r\n'), SEEN_OF_IP_ADDR),
  written(
    'German',
    'ipconfig, quoted in a mail',
    sampleText('ipconfig/all-german.txt').replace(/^/gm, '> '),
    ALL_GERMAN,
  ),
  written('English', 'the camera and a long ping of it', PING, {
    devices: ['camera 172.23.40.77 255.255.255.0'],
    tries: ['172.23.40.77 20/25'],
    observations: {
      'camera.address': '172.23.40.77',
      'camera.mask': '255.255.255.0',
      'camera.answers': true,
      'camera.loss': 20,
    },
  }),
  written(
    'Finnish',
    'a page',
    'Verkkoasetukset\nIP-osoite: 172.23.40.77\nAliverkon peite: 255.255.255.0\nYhdyskäytävä: 172.23.40.1\n',
    {
      devices: ['unknown 172.23.40.77 255.255.255.0'],
    },
  ),
  written('Greek', 'a page', 'Δίκτυο\nΔιεύθυνση IP: 172.23.40.77\nΜάσκα υποδικτύου: 255.255.255.0\n', {
    devices: ['unknown 172.23.40.77 255.255.255.0'],
  }),
  written(
    'Finnish',
    'a ping',
    [
      'Lähetetään pakettia 172.23.40.77, jossa on 32 tavua tietoa:',
      'Vastaus isännältä 172.23.40.77: tavuja=32 aika=1ms TTL=64',
      'Vastaus isännältä 172.23.40.77: tavuja=32 aika=1ms TTL=64',
      '',
    ].join('\n'),
    { tries: ['172.23.40.77 2/2'] },
  ),
];
