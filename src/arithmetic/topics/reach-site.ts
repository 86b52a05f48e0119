import { say } from '../../messages/say.js';
import { type Address, isBlank } from '../../values/address.js';
import type { Mask } from '../../values/mask.js';
import type { Interface, Site } from '../walk/site.js';

/** The addresses of a camera, a computer and a router, and how the first two are joined. */
export interface Joined {
  readonly camera: EndPoint;
  readonly computer: EndPoint;
  readonly router: { readonly address: Address; readonly mask: Mask };
  /** On one segment, on two that the router joins, or on two that it keeps apart. */
  readonly segments: 'same' | 'routed' | 'guest';
  readonly isIsolated: boolean;
  readonly isStateful: boolean;
}

interface EndPoint {
  readonly address: Address;
  readonly mask: Mask;
  readonly gateway: Address;
}

const SLASH_28: Mask = { kind: 'mask', prefix: 28 };
/** 198.51.100.1, 198.51.100.2 and 203.0.113.10: addresses for examples (RFC 5737) in the provider's place. */
const PROVIDER: Address = { kind: 'ipv4', bits: 0xc6336401 };
const OUTSIDE: Address = { kind: 'ipv4', bits: 0xc6336402 };
export const SOMEWHERE: Address = { kind: 'ipv4', bits: 0xcb00710a };

/** A site with one router to the internet, as a walk needs it: devices `camera`, `computer`, `router`, `internet`. */
export function siteOf({ camera, computer, router, segments, isIsolated, isStateful }: Joined): Site {
  const other = segments === 'same' ? 'local' : 'other';
  const inside: readonly Interface[] = [{ segment: 'local', ...router }];
  const second: readonly Interface[] =
    segments === 'same' || isBlank(computer.gateway)
      ? []
      : [{ segment: 'other', address: computer.gateway, mask: computer.mask }];
  return {
    segments: [
      { id: 'local', name: say('reckon.segment-local'), isolated: isIsolated },
      { id: 'other', name: say('reckon.segment-other'), isolated: isIsolated },
      { id: 'outside', name: say('reckon.segment-outside') },
    ],
    devices: [
      host('camera', say('reckon.camera'), 'local', camera),
      host('computer', say('reckon.computer'), other, computer),
      {
        kind: 'router',
        id: 'router',
        name: say('reckon.router'),
        interfaces: [...inside, ...second, { segment: 'outside', address: OUTSIDE, mask: SLASH_28 }],
        gateway: PROVIDER,
        natOn: 'outside',
        dropsUnasked: isStateful,
        ...(segments === 'guest' && { keepsApart: [['local', 'other']] as const }),
      },
      {
        kind: 'internet',
        id: 'internet',
        name: say('reckon.internet'),
        address: SOMEWHERE,
        interfaces: [{ segment: 'outside', address: PROVIDER, mask: SLASH_28 }],
      },
    ],
  };
}

function host(id: string, name: string, segment: string, { address, mask, gateway }: EndPoint) {
  return { kind: 'host', id, name, interfaces: [{ segment, address, mask }], gateway } as const;
}
