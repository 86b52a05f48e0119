import type { AskedQuestion, Lab, Look } from '../types.js';
import { ADDRESS_EYES } from './addresses.js';
import { APP_EYES } from './app.js';
import { CLOCK_EYES } from './clock.js';
import { type Eyes, type Scene, seatOf } from './eye.js';
import { HISTORY_EYES } from './history.js';
import { INTERNET_EYES } from './internet.js';
import { KIT_EYES } from './kit.js';
import { LIGHT_EYES } from './lights.js';
import { PAGE_EYES } from './pages.js';
import { PHONE_EYES } from './phone.js';
import { plainAnswer } from './plain-sight.js';
import { POWER_EYES } from './power.js';
import { REACH_EYES } from './reach.js';
import { RECORDING_EYES } from './recording.js';
import { REMOTE_EYES } from './remote.js';
import { ROUTER_EYES } from './router-eyes.js';
import { SIGN_IN_EYES } from './sign-in.js';
import { STREAM_EYES } from './stream.js';

/** Who looks, by the id of the question. */
export const EYES: Eyes = {
  ...ADDRESS_EYES,
  ...APP_EYES,
  ...CLOCK_EYES,
  ...HISTORY_EYES,
  ...INTERNET_EYES,
  ...KIT_EYES,
  ...LIGHT_EYES,
  ...PAGE_EYES,
  ...PHONE_EYES,
  ...POWER_EYES,
  ...REACH_EYES,
  ...RECORDING_EYES,
  ...REMOTE_EYES,
  ...ROUTER_EYES,
  ...SIGN_IN_EYES,
  ...STREAM_EYES,
};

export type { Scene } from './eye.js';

/**
 * What somebody on site does to answer one question, and what they say. What the scene tells wins over every look.
 * Throws for a question that nobody has eyes for, and where the scene names a choice that the question does not have.
 */
export async function look(question: AskedQuestion, lab: Lab, scene: Scene): Promise<Look> {
  const given = scene.plain[question.id];
  if (given !== undefined) return { ran: [], answer: plainAnswer(question, given) };
  const eye = EYES[question.id];
  if (eye === undefined) throw new Error(`nobody on site has eyes for ${question.id}`);
  const seat = seatOf(lab, question, scene);
  const answer = await eye(seat);
  return { ran: seat.ran, answer };
}
