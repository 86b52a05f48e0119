import { useState } from 'preact/hooks';
import { questionsWith } from '../../call/questions-with.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';

/** More than so many nobody looks through; another word makes them fewer. */
const SHOWN = 8;

/** Finds the question to something that a caller told before it was asked. Enter takes the first that is found. */
export function Told() {
  const { desk, packed } = useFace();
  const [words, setWords] = useState('');
  const found = questionsWith(packed.rules, words).slice(0, SHOWN);
  const choose = (question: string): void => desk.turnTo({ kind: 'change', question });
  const first = (event: Event): void => {
    event.preventDefault();
    if (found[0]) choose(found[0].id);
  };
  return (
    <form class="field" onSubmit={first}>
      <label for="told">{say('page.told-field')}</label>
      <input
        id="told"
        data-field
        type="text"
        autocomplete="off"
        value={words}
        onInput={({ currentTarget }) => setWords(currentTarget.value)}
      />
      <div aria-live="polite">
        {words.trim() !== '' && found.length === 0 && <p>{say('page.told-none')}</p>}
        <ul class="choices">
          {found.map(({ id, title }) => (
            <li key={id}>
              <button type="button" data-choice onClick={() => choose(id)}>
                <span>{title}</span>
              </button>
            </li>
          ))}
        </ul>
      </div>
    </form>
  );
}
