import type { Address } from '../values/address.js';
import { inRange } from './in-range.js';
import type { Adapter, Seen } from './seen.js';

/** Why an adapter of the computer is taken for the one that leads to the camera; or why none is. */
export type Why =
  /** The camera's address lies in its range. */
  | 'same-range'
  /** No other adapter that could lead anywhere is up and has an address. */
  | 'only-one-up'
  /** The only one that knows a gateway. */
  | 'has-gateway'
  /** The only one that is called a lead. */
  | 'named-lead'
  /** Several are as good as each other. */
  | 'several'
  /** The text tells of no adapter of a computer that could. */
  | 'none';

/** Why an adapter was passed over. */
export type PassedOver =
  | 'vpn'
  | 'virtual'
  | 'loopback'
  | 'down'
  | 'no-address'
  | 'other-range'
  | 'less-likely';

export interface Choice {
  /** Its place among the adapters seen. */
  readonly adapter: number | undefined;
  readonly why: Why;
  /** The computer's other adapters, in the order in which they were seen. */
  readonly passedOver: readonly { readonly index: number; readonly why: PassedOver }[];
}

interface Candidate {
  readonly index: number;
  readonly adapter: Adapter;
}

/** Which of the computer's adapters leads to the camera. Never a VPN or a virtual one, whatever its range. */
export function chooseAdapter(seen: Seen, camera?: Address): Choice {
  const own = seen.adapters
    .map((adapter, index) => ({ index, adapter }))
    .filter(({ adapter }) => adapter.owner === 'computer');
  const unfit = own.flatMap(({ index, adapter }) => {
    const why = unfitness(adapter);
    return why === undefined ? [] : [{ index, why }];
  });
  const fit = own.filter(({ adapter }) => unfitness(adapter) === undefined);
  const near = camera === undefined ? [] : fit.filter(({ adapter }) => holds(adapter, camera));
  const { one, why } = near.length > 0 ? nearest(near) : likeliest(fit);
  const left = fit
    .filter((candidate) => candidate !== one)
    .map((candidate) => ({ index: candidate.index, why: aside(candidate, near) }));
  const passedOver = [...unfit, ...left].sort((a, b) => a.index - b.index);
  return { adapter: one?.index, why, passedOver };
}

function unfitness({ kind, isUp, addresses }: Adapter): PassedOver | undefined {
  if (kind === 'vpn' || kind === 'virtual' || kind === 'loopback') return kind;
  if (isUp?.value === false) return 'down';
  return addresses.every(({ address }) => address.bits === 0) ? 'no-address' : undefined;
}

function aside(candidate: Candidate, near: readonly Candidate[]): PassedOver {
  return near.length > 0 && !near.includes(candidate) ? 'other-range' : 'less-likely';
}

interface Pick {
  readonly one?: Candidate;
  readonly why: Why;
}

/** Two in one range: the lead, since Wi-Fi is there beside it. */
function nearest(near: readonly Candidate[]): Pick {
  if (near.length === 1) return picked(near, 'same-range');
  const leads = near.filter(({ adapter }) => adapter.kind === 'lead');
  return leads.length === 1 ? picked(leads, 'same-range') : { why: 'several' };
}

function likeliest(fit: readonly Candidate[]): Pick {
  if (fit.length === 0) return { why: 'none' };
  if (fit.length === 1) return picked(fit, 'only-one-up');
  const open = fit.filter(({ adapter }) => adapter.gateways.length > 0);
  if (open.length === 1) return picked(open, 'has-gateway');
  const leads = (open.length === 0 ? fit : open).filter(({ adapter }) => adapter.kind === 'lead');
  return leads.length === 1 ? picked(leads, 'named-lead') : { why: 'several' };
}

function picked(candidates: readonly Candidate[], why: Why): Pick {
  const [one] = candidates;
  return one === undefined ? { why: 'none' } : { one, why };
}

function holds({ addresses }: Adapter, camera: Address): boolean {
  return addresses.some(({ address, mask }) => mask !== undefined && inRange(address, mask, camera));
}
