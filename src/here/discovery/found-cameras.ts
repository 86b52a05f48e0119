import type { Adapter } from '../../intake/seen.js';
import { inWords } from '../../messages/say.js';
import type { AddressWithMask } from '../../values/address.js';
import type { Answered } from './answers.js';
import { explain } from './explain.js';

/** A sentence for each camera that answered, and its address as of a camera, on the line of its sentence. */
export function foundCameras(
  found: readonly Answered[],
  own: readonly AddressWithMask[],
): { readonly words: readonly string[]; readonly adapters: readonly Adapter[] } {
  const explained = explain(found, own);
  return {
    words: explained.map(({ sentence }) => inWords(sentence)),
    adapters: explained.flatMap(({ camera, address }, at): Adapter[] =>
      address === undefined
        ? []
        : [
            {
              name: camera.names[0] ?? '',
              owner: 'camera',
              kind: 'unknown',
              addresses: [{ address, line: at + 1 }],
              addresses6: [],
              gateways: [],
              gateways6: [],
              dns: [],
              dns6: [],
            },
          ],
    ),
  };
}
