import type { AdapterKind } from '../seen.js';

/**
 * Words in the heading, the name or the description of an adapter, in small letters. The first row that fits wins: a
 * VPN calls itself an Ethernet adapter, too. Bluetooth leads to no camera, and is no lead either.
 */
const WORDS: readonly (readonly [AdapterKind, readonly string[]])[] = [
  ['loopback', ['loopback', 'km-test', 'замыкания на себя', '环回', 'ループバック']],
  ['vpn', ['vpn', 'wireguard', 'wintun', 'tap-', 'wan miniport', 'впн']],
  [
    'virtual',
    ['vethernet', 'hyper-v', 'virtu', 'wirtual', 'sanal', 'виртуал', '虚拟', '仮想', 'vmware', 'docker'],
  ],
  ['virtual', ['teredo', 'isatap', '6to4', 'ip-https', 'kernel debug', 'hosted network']],
  ['virtual', ['tunnel', 'túnel', 'tunel', 'tünel', 'туннель', '隧道', 'トンネル']],
  ['unknown', ['bluetooth', '蓝牙']],
  [
    'mobile',
    ['mobile broadband', 'breitband', 'mobilfunk', 'haut débit mobile', 'banda ancha móvil', 'cellular'],
  ],
  [
    'mobile',
    ['banda larga móvel', 'banda larga mobile', 'mobiel breedband', 'szerokopasmow', 'mobil geniş bant'],
  ],
  [
    'mobile',
    ['wwan', 'cellulaire', 'мобильн', '移动宽带', 'モバイル ブロードバンド', '手机网络', '携帯電話'],
  ],
  ['wifi', ['wi-fi', 'wifi', 'wlan', 'wireless', '802.11', 'drahtlos', 'sans fil', 'inalámbric', 'sem fio']],
  ['wifi', ['draadlo', 'bezprzewodow', 'kablosuz', 'беспроводн', '无线', 'ワイヤレス']],
  ['lead', ['ethernet', '以太网', 'イーサネット', 'gigabit', 'gbe']],
];

/** The second name of a radio that Windows makes for itself: `Local Area Connection* 2`. */
const MADE_BY_WINDOWS = /\* ?\d{0,4}$/;
const PPP = /(?:^|[^a-z])ppp(?:[^a-z]|$)/;

/** What an adapter hangs on, as far as its heading and its description tell. */
export function kindOfWindowsAdapter(heading: string, description: string): AdapterKind {
  const text = `${heading}\n${description}`.toLowerCase().replaceAll('i\u0307', 'i');
  const found = WORDS.find(([, words]) => words.some((word) => text.includes(word)))?.[0];
  if (found === 'loopback' || found === 'vpn') return found;
  if (PPP.test(heading.toLowerCase())) return 'vpn';
  return MADE_BY_WINDOWS.test(heading) ? 'virtual' : (found ?? 'unknown');
}
