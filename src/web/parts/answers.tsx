import type { Call } from '../../call/call.js';
import { changeable } from '../../call/outcome.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { keyOf } from '../keyboard.js';
import { promptOf } from '../prompt.js';
import { PromptBox } from './prompt-box.js';

/** Every answer that holds, the last first. One is changed where it stands. */
export function Answers({ call }: { readonly call: Call }) {
  const { desk, store } = useFace();
  const { mode, busy } = store.get();
  const answers = changeable(call);
  const isPicking = mode.kind === 'pick';
  const isOpen = call.state.closed === undefined;
  return (
    <section
      class="part answers"
      aria-labelledby="answers-heading"
      data-prompt={isPicking ? true : undefined}
    >
      <h2 id="answers-heading" tabIndex={-1}>
        {isPicking ? say('cli.change.heading') : say('page.answers')}
      </h2>
      {isPicking && (
        <button type="button" data-choice data-leave onClick={() => desk.turnTo({ kind: 'step' })}>
          <span class="key" aria-hidden="true">
            {keyOf(0)}
          </span>
          <span>{say('cli.change.none')}</span>
        </button>
      )}
      {answers.length === 0 ? (
        <p class="small">{say('page.no-answers')}</p>
      ) : (
        <ol class="given">
          {answers.map(({ id, title, answer }, at) => (
            <li key={id}>
              {mode.kind === 'change' && mode.question === id ? (
                <PromptBox prompt={promptOf(call, mode)} level={3} />
              ) : (
                <>
                  <span class="title">{title}</span> <span class="value">{answer}</span>
                  {isOpen && (
                    <button
                      type="button"
                      data-choice={isPicking ? true : undefined}
                      disabled={busy}
                      onClick={() => desk.turnTo({ kind: 'change', question: id })}
                    >
                      {isPicking && keyOf(at + 1) !== '' && (
                        <span class="key" aria-hidden="true">
                          {keyOf(at + 1)}
                        </span>
                      )}
                      <span>
                        {say('page.change')}
                        <span class="heard">{say('page.of', { title })}</span>
                      </span>
                    </button>
                  )}
                </>
              )}
            </li>
          ))}
        </ol>
      )}
      {isOpen && answers.length > 0 && <p class="small">{say('page.set-aside')}</p>}
    </section>
  );
}
