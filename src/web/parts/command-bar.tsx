import { COMMAND_KEYS, type CommandId } from '../../call/commands.js';
import { answered } from '../../call/outcome.js';
import { say } from '../../messages/say.js';
import { type Face, useFace } from '../face.js';
import type { Prompt } from '../prompt.js';

/** The commands of a prompt, each with its letter. */
export function CommandBar({ prompt, busy }: { readonly prompt: Prompt; readonly busy: boolean }) {
  const face = useFace();
  const isStep = face.store.get().mode.kind === 'step';
  const nameOf = (id: CommandId): string =>
    id === 'back' && !isStep ? say('page.leave') : say(`cli.command.${id}`);
  return (
    <fieldset class="commands">
      <legend class="heard">{say('page.commands')}</legend>
      {prompt.commands.map((id) => (
        <button
          key={id}
          type="button"
          data-key={COMMAND_KEYS[id]}
          data-leave={id === 'back' && !isStep ? true : undefined}
          aria-expanded={id === 'how' ? face.store.get().reading.length > 0 : undefined}
          disabled={busy}
          onClick={() => give(face, id, prompt)}
        >
          <span class="key" aria-hidden="true">
            {COMMAND_KEYS[id]}
          </span>
          <span>{nameOf(id)}</span>
        </button>
      ))}
    </fieldset>
  );
}

function give({ desk, store }: Face, id: CommandId, { screen }: Prompt): unknown {
  const { call, mode, reading } = store.get();
  const asked = mode.kind === 'change' ? mode.question : call?.step.kind === 'ask' ? call.step.question : '';
  switch (id) {
    case 'cant-tell':
      return desk.happen(answered(asked, null));
    case 'back':
      return mode.kind === 'step' ? desk.happen({ type: 'undone' }) : desk.turnTo({ kind: 'step' });
    case 'change':
      return desk.turnTo({ kind: 'pick' });
    case 'told':
      return desk.turnTo({ kind: 'told' });
    case 'note':
      return desk.turnTo({ kind: 'note' });
    case 'paste':
      return desk.turnTo({ kind: 'paste', pasting: { stage: 'text' } });
    case 'stop':
      return desk.turnTo({ kind: 'stop' });
    case 'how':
      return store.set({ reading: reading.length > 0 ? [] : screen.reads });
    case 'other':
      return desk.happen({ type: 'passed-over', step: `ask:${asked}` });
    case 'why':
      return show(store, 'causes');
    case 'view':
      return show(store, 'path');
    default:
      return undefined;
  }
}

/** On a wide screen the part is there already, so the eye and the reader are led to it. */
function show(store: Face['store'], view: 'causes' | 'path'): void {
  store.set({ view });
  requestAnimationFrame(() => document.getElementById(`part-${view}`)?.focus());
}
