import { useState } from 'preact/hooks';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import type { Kept } from '../keep.js';
import { keyOf } from '../keyboard.js';

/** Where the page begins: a new call, one that was left open, one from a file, or a sum alone. */
export function Start() {
  const { desk, store, keeper } = useFace();
  const kept = keeper.list();
  return (
    <div class="start">
      <section class="part" data-prompt aria-labelledby="begin-heading">
        <h2 id="begin-heading" tabIndex={-1}>
          {say('page.begin')}
        </h2>
        <p>{say('page.about')}</p>
        <ol class="choices">
          {(['desk', 'site'] as const).map((role, at) => (
            <li key={role}>
              <button type="button" data-choice onClick={() => desk.begin(role)}>
                <span class="key" aria-hidden="true">
                  {keyOf(at)}
                </span>
                <span>{say(`page.begin-${role}`)}</span>
              </button>
            </li>
          ))}
          {kept.map((one, at) => (
            <li key={one.id} class="kept">
              <KeptCall kept={one} at={at + 2} />
            </li>
          ))}
        </ol>
        <div class="row">
          <OpenFile />
          <button type="button" onClick={() => store.set({ place: 'sums', notice: '' })}>
            {say('page.sums')}
          </button>
        </div>
        <OpenLink />
        <p class="small">{say('page.offline')}</p>
      </section>
    </div>
  );
}

function KeptCall({ kept: { id, opened, entries }, at }: { readonly kept: Kept; readonly at: number }) {
  const { desk } = useFace();
  const [isSure, setSure] = useState(false);
  const when = opened.slice(0, 16).replace('T', ' ');
  return (
    <>
      <button type="button" data-choice onClick={() => desk.openKept(id)}>
        <span class="key" aria-hidden="true">
          {keyOf(at)}
        </span>
        <span>{say('cli.unfinished-one', { opened: when, events: entries })}</span>
      </button>
      <button type="button" class="forget" onClick={() => (isSure ? desk.forget(id) : setSure(true))}>
        {say(isSure ? 'page.forget-yes' : 'page.forget')}
        <span class="heard">{say('page.forget-one', { opened: when })}</span>
      </button>
    </>
  );
}

function OpenFile() {
  const { desk } = useFace();
  const take = async (field: HTMLInputElement): Promise<void> => {
    const [file] = field.files ?? [];
    if (file) await desk.open(new Uint8Array(await file.arrayBuffer()), file.name);
    field.value = '';
  };
  return (
    <label class="button">
      {say('page.open-file')}
      <input
        type="file"
        class="heard"
        accept=".jsonl,.json,.txt"
        onChange={({ currentTarget }) => void take(currentTarget)}
      />
    </label>
  );
}

/** A link that cannot be followed, as from a page that was opened from disk, is pasted here. */
function OpenLink() {
  const { desk } = useFace();
  const [text, setText] = useState('');
  const take = (event: Event): void => {
    event.preventDefault();
    void desk.openLink(text);
  };
  return (
    <details>
      <summary>{say('page.open-link')}</summary>
      <form class="field" onSubmit={take}>
        <label for="link-text">{say('page.open-link-field')}</label>
        <div class="line">
          <input
            id="link-text"
            type="text"
            autocomplete="off"
            autocapitalize="off"
            spellcheck={false}
            value={text}
            onInput={({ currentTarget }) => setText(currentTarget.value)}
          />
          <button type="submit">{say('page.open-link-take')}</button>
        </div>
      </form>
    </details>
  );
}
