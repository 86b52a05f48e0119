import { always, type Eyes, nobodyKnows, value } from './eye.js';
import { complaint } from './phones.js';

/** Whether the picture is too heavy for its way. */
export const STREAM_EYES: Eyes = {
  'screens-watching': always(1),
  'others-closed': async (seat) => value((await complaint(seat)).shows === 'picture'),
  'low-quality-try': nobodyKnows('this app has one quality only'),
  'low-stream-size': nobodyKnows('the page of this camera shows no such line'),
  'stream-rate': nobodyKnows('the page of this camera shows no such line'),
  'upload-speed': nobodyKnows('there is no page here that measures it'),
};
