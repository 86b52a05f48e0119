import { sampleText } from '../intake/every-sample.js';

/** A text in a language, and what a person reads in it. */
export interface ReadText {
  readonly name: string;
  readonly language: string;
  readonly bytes: Uint8Array;
  /** `owner address mask, gateway ..., dns ...` of each device that has an address. */
  readonly devices: readonly string[];
  /** `target received/sent`, and what was looked up: `name from server: addresses or outcome`. */
  readonly tries: readonly string[];
  readonly observations: Readonly<Record<string, string | number | boolean>>;
}

type Told = Pick<ReadText, 'devices' | 'tries' | 'observations'>;

const NOTHING: Told = { devices: [], tries: [], observations: {} };

/** A text of one's own, in UTF-8. */
export function written(language: string, name: string, text: string, told: Partial<Told>): ReadText {
  return {
    name: `${language}: ${name}`,
    language,
    bytes: new TextEncoder().encode(text),
    ...NOTHING,
    ...told,
  };
}

function sample(language: string, path: string, told: Partial<Told>): ReadText {
  return written(language, path, sampleText(path), told);
}

interface Ipconfig {
  readonly address: string;
  readonly mask: string;
  readonly gateway: string;
  readonly dns: string;
  readonly isByHand: boolean;
  /** Where another box than the gateway gave the address. */
  readonly hasSecondBox?: true;
}

function computer(language: string, path: string, { isByHand, ...one }: Ipconfig): ReadText {
  const { address, mask, gateway, dns } = one;
  return sample(language, path, {
    devices: [`computer ${address} ${mask}, gateway ${gateway}, dns ${dns}`],
    observations: {
      'computer.address': address,
      'computer.mask': mask,
      'computer.by-hand': isByHand,
      'computer.links': 'lead',
      // A gateway that somebody typed in need not be the router.
      ...(isByHand ? {} : { 'router.address': gateway, 'router.mask': mask }),
      ...(one.hasSecondBox && { 'site.second-router': true }),
    },
  });
}

const USUAL = { address: '172.23.40.57', mask: '255.255.255.0', gateway: '172.23.40.1' };
const BY_HAND = { ...USUAL, isByHand: true };
const GIVEN = { ...USUAL, isByHand: false, hasSecondBox: true as const };

const IPCONFIG: readonly ReadText[] = [
  computer('English', 'ipconfig/all-english.txt', { ...GIVEN, dns: '172.23.40.3 198.51.100.53' }),
  computer('French', 'ipconfig/all-french.txt', { ...GIVEN, dns: '172.23.40.3 198.51.100.53' }),
  computer('Spanish', 'ipconfig/all-spanish-wrapped.txt', { ...GIVEN, dns: '172.23.40.3 198.51.100.53' }),
  computer('Italian', 'ipconfig/all-italian-wrapped.txt', {
    ...GIVEN,
    address: '172.23.40.34',
    dns: '198.51.100.222 198.51.100.220',
  }),
  computer('Portuguese', 'ipconfig/all-portuguese.txt', {
    address: '10.77.5.68',
    mask: '255.255.255.128',
    gateway: '10.77.5.1',
    dns: '10.77.5.2 10.77.5.3',
    isByHand: true,
  }),
  computer('Polish', 'ipconfig/all-polish.txt', { ...BY_HAND, dns: '172.23.40.3 172.23.40.4' }),
  computer('Turkish', 'ipconfig/all-turkish.txt', { ...BY_HAND, mask: '255.255.0.0', dns: '172.23.40.3' }),
  computer('Russian', 'ipconfig/all-russian.txt', { ...GIVEN, dns: '172.23.40.3 198.51.100.8' }),
  computer('Chinese', 'ipconfig/all-chinese.txt', { ...GIVEN, dns: '172.23.40.3 198.51.100.8' }),
  computer('Japanese', 'ipconfig/all-japanese.txt', { ...BY_HAND, dns: '172.23.40.3 198.51.100.8' }),
  computer('Dutch', 'ipconfig/xp-dutch.txt', {
    ...GIVEN,
    address: '172.23.40.97',
    mask: '255.255.254.0',
    dns: '198.51.100.37 198.51.100.144',
  }),
  sample('German', 'ipconfig/all-german.txt', {
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
  }),
];

const LANGUAGES = [
  'german',
  'french',
  'spanish',
  'portuguese',
  'italian',
  'dutch',
  'polish',
  'turkish',
  'russian',
  'chinese',
  'japanese',
] as const;

function titled(language: string): string {
  return `${language.charAt(0).toUpperCase()}${language.slice(1)}`;
}

const NETSH: readonly ReadText[] = LANGUAGES.map((language) =>
  computer(titled(language), `netsh-config/${language}.txt`, { ...BY_HAND, dns: '172.23.40.3 172.23.40.4' }),
);

const PINGS: readonly ReadText[] = LANGUAGES.map((language) =>
  sample(titled(language), `windows-ping/every-kind-${language}.txt`, {
    // Windows counts what others answer as received (3 and 1): the camera itself answered two, and none.
    tries: ['cam.example 2/4', 'nosuch.example 0/0', '203.0.113.9 0/4'],
  }),
);

const LOOKUPS: readonly ReadText[] = LANGUAGES.map((language) =>
  sample(titled(language), `windows-nslookup/${language}.txt`, {
    tries: ['cam.example from 172.23.40.1: 203.0.113.9', 'nosuch.example from 172.23.40.1: no-such-name'],
  }),
);

const PAGES: readonly ReadText[] = (
  [
    ['german', 'phone'],
    ['dutch', 'phone'],
    ['chinese', 'phone'],
    ['french', 'fixed'],
    ['italian', 'fixed'],
    ['japanese', 'fixed'],
    ['polish', 'fixed'],
    ['spanish', 'fixed'],
    ['turkish', 'fixed'],
    ['portuguese', 'automatic'],
    ['russian', 'automatic'],
  ] as const
).map(([language, what]) =>
  sample(titled(language), `retyped/page-${language}.txt`, {
    devices: [
      `${what === 'phone' ? 'phone' : 'camera'} 172.23.40.57 255.255.255.0, gateway 172.23.40.1, dns 9.9.9.9`,
    ],
    observations:
      what === 'phone'
        ? {}
        : {
            'camera.address': '172.23.40.57',
            'camera.mask': '255.255.255.0',
            'camera.gateway': '172.23.40.1',
            'camera.dns': '9.9.9.9',
            'camera.set-by': what,
          },
  }),
);

/** A camera whose mask is too narrow, and a phone in another range than it. */
const TWO_DEVICES: readonly (readonly [language: string, text: string])[] = [
  [
    'English',
    'Camera\nIP address: 10.77.5.68\nSubnet mask: 255.255.255.128\nGateway: 10.77.5.1\nDHCP: off\n\nPhone\nIP address: 172.23.40.61\nSubnet mask: 255.255.255.0\n',
  ],
  [
    'German',
    'Kamera\nIP-Adresse: 10.77.5.68\nSubnetzmaske: 255.255.255.128\nGateway: 10.77.5.1\nDHCP: aus\n\nHandy\nIP-Adresse: 172.23.40.61\nSubnetzmaske: 255.255.255.0\n',
  ],
  [
    'French',
    'Caméra\nAdresse IP : 10.77.5.68\nMasque de sous-réseau : 255.255.255.128\nPasserelle : 10.77.5.1\nDHCP : désactivé\n\nTéléphone\nAdresse IP : 172.23.40.61\nMasque de sous-réseau : 255.255.255.0\n',
  ],
  [
    'Spanish',
    'Cámara\nDirección IP: 10.77.5.68\nMáscara de subred: 255.255.255.128\nPuerta de enlace: 10.77.5.1\nDHCP: desactivado\n\nMóvil\nDirección IP: 172.23.40.61\nMáscara de subred: 255.255.255.0\n',
  ],
  [
    'Portuguese',
    'Câmera\nEndereço IP: 10.77.5.68\nMáscara de sub-rede: 255.255.255.128\nGateway: 10.77.5.1\nDHCP: desativado\n\nCelular\nEndereço IP: 172.23.40.61\nMáscara de sub-rede: 255.255.255.0\n',
  ],
  [
    'Italian',
    'Telecamera\nIndirizzo IP: 10.77.5.68\nMaschera di sottorete: 255.255.255.128\nGateway: 10.77.5.1\nDHCP: disattivato\n\nCellulare\nIndirizzo IP: 172.23.40.61\nMaschera di sottorete: 255.255.255.0\n',
  ],
  [
    'Dutch',
    'Camera\nIP-adres: 10.77.5.68\nSubnetmasker: 255.255.255.128\nGateway: 10.77.5.1\nDHCP: uit\n\nTelefoon\nIP-adres: 172.23.40.61\nSubnetmasker: 255.255.255.0\n',
  ],
  [
    'Polish',
    'Kamera\nAdres IP: 10.77.5.68\nMaska podsieci: 255.255.255.128\nBrama: 10.77.5.1\nDHCP: wyłączone\n\nTelefon\nAdres IP: 172.23.40.61\nMaska podsieci: 255.255.255.0\n',
  ],
  [
    'Turkish',
    'Kamera\nIP adresi: 10.77.5.68\nAlt ağ maskesi: 255.255.255.128\nAğ geçidi: 10.77.5.1\nDHCP: kapalı\n\nTelefon\nIP adresi: 172.23.40.61\nAlt ağ maskesi: 255.255.255.0\n',
  ],
  [
    'Russian',
    'Камера\nIP-адрес: 10.77.5.68\nМаска подсети: 255.255.255.128\nШлюз: 10.77.5.1\nDHCP: выключен\n\nТелефон\nIP-адрес: 172.23.40.61\nМаска подсети: 255.255.255.0\n',
  ],
  [
    'Chinese',
    '摄像头\nIP地址：10.77.5.68\n子网掩码：255.255.255.128\n网关：10.77.5.1\nDHCP：关闭\n\n手机\nIP地址：172.23.40.61\n子网掩码：255.255.255.0\n',
  ],
  [
    'Japanese',
    'カメラ\nIPアドレス：10.77.5.68\nサブネットマスク：255.255.255.128\nゲートウェイ：10.77.5.1\nDHCP：無効\n\nスマホ\nIPアドレス：172.23.40.61\nサブネットマスク：255.255.255.0\n',
  ],
];

const DEVICES: readonly ReadText[] = TWO_DEVICES.map(([language, text]) =>
  written(language, 'a camera and a phone', text, {
    devices: ['camera 10.77.5.68 255.255.255.128, gateway 10.77.5.1', 'phone 172.23.40.61 255.255.255.0'],
    observations: {
      'camera.address': '10.77.5.68',
      'camera.mask': '255.255.255.128',
      'camera.gateway': '10.77.5.1',
      'camera.set-by': 'fixed',
      'phone.same-range': false,
    },
  }),
);

/** All samples of shipped formats and the pages, one kind after another. */
export const USUAL_TEXTS: readonly ReadText[] = [
  ...IPCONFIG,
  ...NETSH,
  ...PINGS,
  ...LOOKUPS,
  ...PAGES,
  ...DEVICES,
];
