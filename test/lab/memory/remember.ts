import type { Question } from '../../../src/rulebase/records.js';
import type { SiteFault } from '../faults/fault.js';
import { partsOf } from '../faults/pair.js';
import { triedBefore } from '../run/tried-before.js';
import { look } from '../technician/eyes.js';
import type { AskedQuestion, Lab } from '../types.js';
import type { BrokenSite, Seen } from './remembered.js';

/** Breaks a site and writes down what people there say to every question, before anything is tried. */
export async function remember(
  lab: Lab,
  questions: readonly Question[],
  fault: SiteFault,
): Promise<BrokenSite> {
  const injected = await fault.inject(lab);
  const tried = triedBefore(fault.id, injected.mends, injected.story.everWorked);
  const scene = { story: { ...injected.story, tried }, plain: injected.plain ?? {}, role: 'site' as const };
  try {
    const sees: Record<string, Seen> = {};
    for (const question of questions) {
      const { answer } = await look(question as unknown as AskedQuestion, lab, scene);
      // Names of namespaces are new each time, and would make every paste look like another one.
      sees[question.id] =
        answer.kind === 'paste' ? { ...answer, text: answer.text.replaceAll(lab.id, 'site') } : answer;
    }
    return { causes: fault.causes, parts: partsOf(injected).map(({ mends }) => mends), sees };
  } finally {
    await lab.restore();
  }
}
