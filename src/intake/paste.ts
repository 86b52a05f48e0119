import type { Address } from '../values/address.js';
import { PARSERS } from './parsers.js';
import { type Reading, read } from './read.js';
import { withoutSecrets } from './secrets.js';
import type { Owner } from './seen.js';
import { type Choice, chooseAdapter } from './the-way-to-the-camera.js';
import { united } from './united.js';

/** A pasted text, understood as far as it goes. */
export interface Paste {
  /** The text as it may be kept: without keys, passwords, host and user names. */
  readonly text: string;
  readonly dropped: number;
  readonly reading: Reading;
  /** Which of the computer's adapters leads to the camera, and why. */
  readonly way: Choice;
}

/** Reads a text that somebody pasted: secrets out first, so that nothing behind this ever sees them. */
export function readPaste(raw: string, camera?: Address): Paste {
  const { text, dropped } = withoutSecrets(raw);
  const reading = read(text, PARSERS);
  const seen = united(reading.seen);
  const own = camera ?? onlyCamera(seen.adapters);
  return { text, dropped, reading: { ...reading, seen }, way: chooseAdapter(seen, own) };
}

/** The same, once somebody has said whose numbers these are that the text gives to nobody. */
export function withOwner(paste: Paste, index: number, owner: Owner, camera?: Address): Paste {
  const { reading } = paste;
  const adapters = reading.seen.adapters.map((one, at) => (at === index ? { ...one, owner } : one));
  const seen = { ...reading.seen, adapters };
  return {
    ...paste,
    reading: { ...reading, seen },
    way: chooseAdapter(seen, camera ?? onlyCamera(adapters)),
  };
}

function onlyCamera(adapters: Reading['seen']['adapters']): Address | undefined {
  const cameras = adapters.filter(({ owner }) => owner === 'camera');
  return cameras.length === 1 ? cameras[0]?.addresses[0]?.address : undefined;
}
