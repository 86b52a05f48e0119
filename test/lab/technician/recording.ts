import { always, type Eyes, nobodyKnows } from './eye.js';

const NO_CLIPS = 'nobody on this site keeps clips, and the page shows no line for them';

/** The live picture is what is missing here; clips are nothing that this world has. */
export const RECORDING_EYES: Eyes = {
  'what-is-dark': always('live'),
  'recordings-safe': always(true),
  'plan-ended': always(false),
  'card-says': nobodyKnows(NO_CLIPS),
  'card-size': nobodyKnows(NO_CLIPS),
  'clips-kept-where': nobodyKnows(NO_CLIPS),
  'days-wanted': nobodyKnows(NO_CLIPS),
  'movement-watch': nobodyKnows(NO_CLIPS),
  'when-it-records': nobodyKnows(NO_CLIPS),
  'which-clips': nobodyKnows(NO_CLIPS),
};
