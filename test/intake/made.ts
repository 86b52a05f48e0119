import type { Adapter, At, Ping, Route } from '../../src/intake/seen.js';
import type { Address } from '../../src/values/address.js';
import { address, mask } from '../arithmetic/given.js';

/** A value with its line. */
export function at<T>(value: T, line: number): At<T> {
  return { value, line };
}

/** An adapter of the computer with an address such as `172.23.40.5/24`, or none, and what differs. */
export function adapter(text: string, line: number, differs: Partial<Adapter> = {}): Adapter {
  const [own = '', prefix] = text.split('/');
  const first = { address: address(own || '0.0.0.0'), ...(prefix ? { mask: mask(`/${prefix}`) } : {}), line };
  return {
    name: '',
    owner: 'computer',
    kind: 'unknown',
    addresses: own === '' ? [] : [first],
    addresses6: [],
    gateways: [],
    gateways6: [],
    dns: [],
    dns6: [],
    ...differs,
  };
}

export function addressAt(text: string, line: number): At<Address> {
  return at(address(text), line);
}

export function ping(text: string, sent: number, received: number, line: number): Ping {
  return { target: text, address: address(text), sent, received, troubles: [], hasDuplicates: false, line };
}

/** A route such as `0.0.0.0/0`. */
export function route(text: string, via: string, name: string | undefined, line: number): Route {
  const [to = '', prefix = ''] = text.split('/');
  const named = name === undefined ? {} : { adapter: name };
  return { to: address(to), mask: mask(`/${prefix}`), via: address(via), ...named, line };
}
