import { useState } from 'preact/hooks';
import type { Input, Option } from '../../call/screen.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { keyOf } from '../keyboard.js';

type Listed = Extract<Input, { kind: 'choice' | 'several' }>;

/** One of a few, or several of a few; each with the digit that stands for it. */
export function Choices({ input, busy }: { readonly input: Listed; readonly busy: boolean }) {
  return input.kind === 'choice' ? (
    <One choices={input.choices} busy={busy} />
  ) : (
    <Several choices={input.choices} busy={busy} />
  );
}

interface Props {
  readonly choices: readonly Option[];
  readonly busy: boolean;
}

function One({ choices, busy }: Props) {
  const { desk } = useFace();
  return (
    <ol class="choices">
      {choices.map(({ id, title }, at) => (
        <li key={id}>
          <button type="button" data-choice disabled={busy} onClick={() => desk.reply({ kind: 'one', id })}>
            <Key at={at} />
            <span>{title}</span>
          </button>
        </li>
      ))}
    </ol>
  );
}

function Several({ choices, busy }: Props) {
  const { desk } = useFace();
  const [ticked, setTicked] = useState<readonly string[]>([]);
  const toggle = (id: string): void =>
    setTicked((now) => (now.includes(id) ? now.filter((one) => one !== id) : [...now, id]));
  const ids = choices.map(({ id }) => id).filter((id) => ticked.includes(id));
  return (
    <>
      <ol class="choices">
        {choices.map(({ id, title }, at) => (
          <li key={id}>
            {/* biome-ignore lint/a11y/useSemanticElements: a button takes the digits as the choices of one do */}
            <button
              type="button"
              role="checkbox"
              aria-checked={ticked.includes(id)}
              data-choice
              onClick={() => toggle(id)}
            >
              <Key at={at} />
              <span class="box" aria-hidden="true" />
              <span>{title}</span>
            </button>
          </li>
        ))}
      </ol>
      <button
        type="button"
        class="main"
        data-done
        disabled={busy}
        onClick={() => desk.reply({ kind: 'several', ids })}
      >
        <span class="key" aria-hidden="true">
          {say('page.enter')}
        </span>
        <span>{ids.length === 0 ? say('call.none-of-these') : say('page.done')}</span>
      </button>
    </>
  );
}

/** The digit on a button; it is a shortcut, so a screen reader need not read it with every choice. */
export function Key({ at }: { readonly at: number }) {
  const key = keyOf(at);
  return key === '' ? null : (
    <span class="key" aria-hidden="true">
      {key}
    </span>
  );
}
