import { givenAddress } from '../call/given-address.js';
import { inWords, say } from '../messages/say.js';
import type { Ask, Terminal } from './ask.js';
import { foundText } from './found-text.js';
import type { LookDesk } from './look-here.js';

/** Where somebody is asked about this computer. */
export interface HereDesk extends LookDesk {
  readonly wants: (what: 'call') => Promise<boolean>;
}

/** Asks on a terminal. */
export function deskOn({ output }: Terminal, ask: Ask): HereDesk {
  const tell = (found: readonly string[]): unknown => output.write(`${foundText(found, output.columns)}\n`);
  const isYes = async (yes: string, no: string): Promise<boolean> => {
    const choices = [
      { id: 'yes', title: yes },
      { id: 'no', title: no },
    ];
    const reply = await ask({ kind: 'choice', choices }, []);
    return reply.kind === 'one' && reply.id === 'yes';
  };
  return {
    tell,
    offers: () => true,
    agrees: (to) => {
      tell([say(`here.may-${to}`)]);
      return isYes(say(`here.yes-${to}`), say(`here.no-${to}`));
    },
    wants: async () => {
      tell([say('here.may-call')]);
      return isYes(say('here.yes-call'), say('here.no-call'));
    },
    camera: async () => {
      tell([say('here.camera-say')]);
      const reply = await ask({ kind: 'field' }, [], (text) => {
        const parsed = givenAddress(text);
        return parsed.ok ? undefined : inWords(parsed.problem);
      });
      const parsed = reply.kind === 'text' ? givenAddress(reply.text) : undefined;
      return parsed?.ok ? parsed.value : undefined;
    },
  };
}
