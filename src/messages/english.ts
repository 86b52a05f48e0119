import { SUBNET_WORDS } from './english/subnet.js';
import { TYPED_WORDS } from './english/typed.js';

/** Every sentence of ours, by id. A test holds that no id stands in two of the lists. */
export const ENGLISH = { ...TYPED_WORDS, ...SUBNET_WORDS } as const;
