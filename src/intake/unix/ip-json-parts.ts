import type { Adapter, Neighbour, Route } from '../seen.js';
import { addAddress, draftOf } from './adapter-draft.js';
import { kindOfAdapter } from './adapter-kind.js';
import type { Json } from './json.js';
import { field, listField, numberField, textField, wordsField } from './json-fields.js';
import { neighbourState } from './neighbour-state.js';
import { destinationOf } from './route-words.js';
import { address4, macOf } from './words.js';

/** The adapter that an object of `ip -j addr` or `ip -j link` is. */
export function jsonAdapter(json: Json): Adapter | undefined {
  const name = textField(json, 'ifname');
  if (name === undefined) return undefined;
  const flags = wordsField(json, 'flags');
  const draft = draftOf(name, kindOfAdapter(name, flags));
  const line = field(json, 'flags')?.line;
  const isUp = flags.includes('UP') && flags.includes('LOWER_UP');
  if (line !== undefined) draft.isUp = { value: isUp, line };
  const mac = macOf(textField(json, 'address'));
  const macLine = field(json, 'address')?.line;
  const isEthernet = textField(json, 'link_type') === 'ether';
  if (mac !== undefined && macLine !== undefined && isEthernet) draft.mac = { value: mac, line: macLine };
  for (const one of listField(json, 'addr_info')) {
    const local = field(one, 'local');
    const length = numberField(one, 'prefixlen');
    if (local === undefined) continue;
    addAddress(draft, textField(one, 'local') ?? '', length?.toString(), local.line);
    const dynamic = field(one, 'dynamic');
    const isIpv4 = textField(one, 'family') === 'inet';
    if (isIpv4 && dynamic?.kind === 'plain' && dynamic.value === true) {
      draft.isByHand = { value: false, line: dynamic.line };
    }
  }
  return draft;
}

/** The neighbour that an object of `ip -j neigh` is. */
export function jsonNeighbour(json: Json): Neighbour | undefined {
  const states = wordsField(json, 'state');
  const address = address4(textField(json, 'dst'));
  const state = neighbourState(states[0]);
  if (address === undefined || state === undefined) return undefined;
  const mac = macOf(textField(json, 'lladdr'));
  const adapter = textField(json, 'dev');
  const line = field(json, 'dst')?.line ?? json.line;
  return {
    address,
    ...(mac !== undefined && { mac }),
    state,
    ...(adapter !== undefined && { adapter }),
    line,
  };
}

/** The routes that an object of `ip -j route` is: several where it has several next hops. */
export function jsonRoutes(json: Json): readonly Route[] {
  const destination = destinationOf(textField(json, 'dst'));
  const type = textField(json, 'type') ?? 'unicast';
  if (destination === undefined || type !== 'unicast' || field(json, 'state') !== undefined) return [];
  const metric = numberField(json, 'metric');
  const hops = listField(json, 'nexthops');
  return (hops.length > 0 ? hops : [json]).flatMap((hop) => {
    const via = address4(textField(hop, 'gateway'));
    const adapter = textField(hop, 'dev');
    if (adapter === undefined && via === undefined) return [];
    const line = field(hop, 'dst')?.line ?? field(hop, 'gateway')?.line ?? hop.line;
    return [
      {
        ...destination,
        ...(via !== undefined && { via }),
        ...(adapter !== undefined && { adapter }),
        ...(metric !== undefined && { metric }),
        line,
      },
    ];
  });
}
