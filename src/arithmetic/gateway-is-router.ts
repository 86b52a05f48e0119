import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Worked } from './worked.js';

/** Whether a default gateway names the router's own address. An empty gateway names nobody: `another`. */
export function gatewayIsRouter(gateway: Address, router: Address): Worked<'router' | 'another'> {
  const said = { gateway: showAddress(gateway), router: showAddress(router) };
  if (isBlank(gateway)) return { value: 'another', lines: [{ id: 'subnet.gateway-blank' }] };
  return gateway.bits === router.bits
    ? { value: 'router', lines: [{ id: 'subnet.gateway-is-router', with: said }] }
    : { value: 'another', lines: [{ id: 'subnet.gateway-is-another', with: said }] };
}
