import { useState } from 'preact/hooks';
import { holdsMore } from '../../call/outcome.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import type { Prompt } from '../prompt.js';

interface Props {
  readonly prompt: Prompt;
  readonly was: string | undefined;
  readonly title: string;
  readonly busy: boolean;
}

/** A line to type; what does not fit is said under it, and Enter answers. */
export function Field({ prompt, was, title, busy }: Props) {
  const { desk, store } = useFace();
  const [text, setText] = useState(was ?? '');
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  const take = (event: Event): void => {
    event.preventDefault();
    const { call, mode } = store.get();
    const isPage = call !== undefined && mode.kind === 'step' && holdsMore(call, text);
    const problem = isPage ? undefined : prompt.wrong(text);
    setWrong(problem);
    if (isPage) desk.takeText(text);
    else if (problem === undefined) void desk.reply({ kind: 'text', text });
  };
  const pasted = (event: ClipboardEvent): void => {
    const whole = event.clipboardData?.getData('text/plain') ?? '';
    // A page of text is no answer to one question.
    if (!/[\r\n]/.test(whole.trim())) return;
    event.preventDefault();
    desk.takeText(whole);
  };
  return (
    <form class="field" onSubmit={take}>
      <label for="answer">{title}</label>
      <div class="line">
        <input
          id="answer"
          data-field
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={text}
          onInput={({ currentTarget }) => setText(currentTarget.value)}
          onPaste={pasted}
          aria-invalid={wrong !== undefined}
          aria-describedby={wrong === undefined ? undefined : 'answer-wrong'}
        />
        <button type="submit" class="main" disabled={busy}>
          <span class="key" aria-hidden="true">
            {say('page.enter')}
          </span>
          <span>{say('page.take')}</span>
        </button>
      </div>
      {wrong !== undefined && (
        <p id="answer-wrong" class="wrong" role="alert">
          {wrong}
        </p>
      )}
    </form>
  );
}
