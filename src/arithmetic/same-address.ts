import { type Address, isBlank, showAddress } from '../values/address.js';
import type { Worked } from './worked.js';

/**
 * Whether two devices were given one and the same address, which only one of them may use (RFC 5227,
 * section 1). Two empty fields are not the same address: 0.0.0.0 is nobody's (RFC 1122, section 3.2.1.3).
 */
export function sameAddress(a: Address, b: Address): Worked<'same' | 'different'> {
  if (isBlank(a) || isBlank(b)) return { value: 'different', lines: [{ id: 'subnet.address-blank' }] };
  const isSame = a.bits === b.bits;
  const said = { address: showAddress(a), other: showAddress(b) };
  return {
    value: isSame ? 'same' : 'different',
    lines: [{ id: isSame ? 'subnet.same-address' : 'subnet.different-addresses', with: said }],
  };
}
