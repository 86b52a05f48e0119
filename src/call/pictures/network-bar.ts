import { subnetOf } from '../../arithmetic/subnet.js';
import { parseAddresses } from '../../arithmetic/topics/parse-addresses.js';
import type { Given } from '../../arithmetic/topics/topic.js';
import { type MessageId, say } from '../../messages/say.js';
import { type Address, parseAddress, showAddress } from '../../values/address.js';
import { parseMask } from '../../values/mask.js';
import { textWithin, within } from './within.js';

/** What a mark on the bar stands for. */
export type MarkKind = 'router' | 'camera' | 'computer' | 'other' | 'proposed';

/** A device on the bar, or off it. */
export interface Mark {
  readonly kind: MarkKind;
  /** Where on the bar, 0 to 1; `undefined` off it. */
  readonly at: number | undefined;
  readonly title: string;
}

/** The addresses of a network as a bar, with what lies on it. */
export interface NetworkBar {
  readonly kind: 'network';
  readonly title: string;
  readonly first: string;
  readonly last: string;
  readonly marks: readonly Mark[];
  /** What the router gives out, as two places on the bar. */
  readonly dhcp: { readonly from: number; readonly to: number; readonly title: string } | undefined;
  readonly free: string | undefined;
  readonly says: string;
}

type Named = readonly [kind: MarkKind, title: MessageId, addresses: string | undefined];

/** Where the addresses of a topic stand: whose network it is, and what is marked on it. */
function namedOf(
  topic: string,
  given: Given,
  data: unknown,
): { of: string; mask: string; marks: readonly Named[] } {
  switch (topic) {
    case 'subnet':
      return {
        of: given.address ?? '',
        mask: given.mask ?? '',
        marks: [
          ['camera', 'picture.device', given.address],
          ['router', 'picture.gateway', given.gateway],
          ['other', 'picture.other', given.other],
        ],
      };
    case 'temporary-address':
      return {
        of: given['camera-address'] ?? '',
        mask: textWithin(data, 'mask') ?? given['camera-mask'] ?? '',
        marks: [
          ['camera', 'picture.camera', given['camera-address']],
          ['other', 'picture.known', given.avoid],
          ['proposed', 'picture.proposed', textWithin(data, 'address')],
        ],
      };
    default:
      return {
        of: given['router-address'] ?? '',
        mask: given['router-mask'] ?? '',
        marks: [
          ['router', 'picture.router', given['router-address']],
          ['other', 'picture.known', given.known],
          ['proposed', 'picture.proposed', textWithin(data, 'address') ?? plannedIn(data)],
        ],
      };
  }
}

function plannedIn(data: unknown): string | undefined {
  const cameras = within(data, 'cameras');
  if (!Array.isArray(cameras)) return undefined;
  return cameras.map((one) => textWithin(one, 'address') ?? '').join(' ');
}

/** The bar of a topic about one network; `undefined` where its address or mask is none. */
export function networkBar(topic: string, given: Given, data: unknown): NetworkBar | undefined {
  const { of, mask: typed, marks: named } = namedOf(topic, given, data);
  const [own, mask] = [parseAddress(of), parseMask(typed)];
  if (!own.ok || !mask.ok) return undefined;
  const { network, first, last, hosts } = subnetOf(own.value, mask.value);
  const size = 2 ** (32 - mask.value.prefix);
  const placeOf = ({ bits }: Address): number | undefined => {
    const at = (bits - network.bits + 0.5) / size;
    return at >= 0 && at <= 1 ? at : undefined;
  };
  const marks = named.flatMap(([kind, title, text]) =>
    addressesIn(text).map((address): Mark => {
      const at = placeOf(address);
      const says = say(title, { address: showAddress(address) });
      return { kind, at, title: at === undefined ? say('picture.off', { part: says }) : says };
    }),
  );
  const dhcp = dhcpOf(given, placeOf);
  const ends = { first: showAddress(first), last: showAddress(last) };
  const inside = marks.filter(({ at }) => at !== undefined);
  const isInDhcp = ({ at = -1 }: Mark): boolean => dhcp !== undefined && at >= dhcp.from && at <= dhcp.to;
  const places = new Set(inside.filter((one) => !isInDhcp(one)).map(({ at }) => at));
  const freeCount = hosts - (dhcp?.count ?? 0) - places.size;
  const free = dhcp && freeCount >= 0 ? say('picture.free', { count: freeCount }) : undefined;
  const titles = (list: readonly string[]): string =>
    list.length === 0 ? say('picture.nothing') : list.join('; ');
  return {
    kind: 'network',
    title: say('picture.network', ends),
    ...ends,
    marks,
    dhcp,
    free,
    says: say('picture.network-says', {
      ...ends,
      parts: titles([
        ...inside.map(({ title }) => title),
        ...(dhcp ? [dhcp.title] : []),
        ...(free ? [free] : []),
      ]),
      outside: titles(marks.filter(({ at }) => at === undefined).map(({ title }) => title)),
    }),
  };
}

function addressesIn(text: string | undefined): readonly Address[] {
  const read = parseAddresses(text ?? '');
  return read.ok ? read.value : [];
}

function dhcpOf(given: Given, placeOf: (address: Address) => number | undefined) {
  const [first, last] = [parseAddress(given['dhcp-first'] ?? ''), parseAddress(given['dhcp-last'] ?? '')];
  if (!first.ok || !last.ok) return undefined;
  const [from, to] = [placeOf(first.value), placeOf(last.value)];
  if (from === undefined || to === undefined || to < from) return undefined;
  return {
    from,
    to,
    count: last.value.bits - first.value.bits + 1,
    title: say('picture.dhcp', { first: showAddress(first.value), last: showAddress(last.value) }),
  };
}
