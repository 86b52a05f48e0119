import type { ObservationId } from '../../src/intake/observations.js';
import type { RuleBase } from '../../src/rulebase/records.js';
import { TINY } from './tiny-rule-base.js';

const READS: Readonly<Record<string, ObservationId>> = {
  'camera-address': 'camera.address',
  'camera-gateway': 'camera.gateway',
  'camera-mask': 'camera.mask',
  loose: 'camera.answers',
};

/** The tiny rule base, whose questions about the camera read it out of a text. */
export const READING: RuleBase = {
  ...TINY,
  questions: TINY.questions.map((question) => {
    const reads = READS[question.id];
    return reads === undefined ? question : { ...question, reads };
  }),
};
