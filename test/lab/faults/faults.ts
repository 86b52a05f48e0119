import { ADDRESS } from './address.js';
import { CAMERA } from './camera.js';
import { CLOCK } from './clock.js';
import type { SiteFault } from './fault.js';
import { GATEWAY } from './gateway.js';
import { INTERNET } from './internet.js';
import { LINK } from './link.js';
import { LOCAL_REACH } from './local-reach.js';
import { NAME_LOOKUP } from './name-lookup.js';
import type { SitePair } from './pair.js';
import { pairsOf } from './pairs.js';
import { PHONE_NETWORK } from './phone-network.js';
import { RENDEZVOUS } from './rendezvous.js';
import { SIGN_IN } from './sign-in.js';
import { JUST_SO } from './stories.js';
import { STREAM } from './stream.js';

/** Single faults, stage by stage. */
export const FAULTS: readonly SiteFault[] = [
  ...CAMERA,
  ...LINK,
  ...ADDRESS,
  ...LOCAL_REACH,
  ...GATEWAY,
  ...NAME_LOOKUP,
  ...CLOCK,
  ...INTERNET,
  ...RENDEZVOUS,
  ...PHONE_NETWORK,
  ...SIGN_IN,
  ...STREAM,
];

/** Two faults at once. */
export const PAIRS: readonly SitePair[] = pairsOf(FAULTS);

/** The control: nothing is wrong. */
export const HEALTHY: SiteFault = {
  id: 'healthy',
  causes: [],
  title: 'Nothing is wrong',
  breaks: 'nothing',
  realism: 'real',
  inject: async () => ({ story: JUST_SO, mends: [], mend: async () => {} }),
};
