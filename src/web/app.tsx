import type { Call } from '../call/call.js';
import { VERSION } from '../call/version.js';
import { say } from '../messages/say.js';
import { useFace } from './face.js';
import { ArrivedCall } from './parts/arrived.js';
import { CallPage } from './parts/call-page.js';
import { HandOver } from './parts/hand-over.js';
import { Keys } from './parts/keys.js';
import { Sign } from './parts/sign.js';
import { Start } from './parts/start.js';
import { Sums } from './parts/sums.js';
import { Timer } from './parts/timer.js';

/** The whole page: its head, what is open, and a place where things are said once. */
export function App() {
  const { store, packed } = useFace();
  const { place, call, notice, letters, keys, handing } = store.get();
  const version = {
    version: VERSION,
    rules: packed.rules.manifest.version,
    digest: packed.digest.slice(0, 12),
  };
  return (
    <>
      <header class="top" data-place={place}>
        <h1>
          <Sign />
          <span>{say('page.title')}</span>
        </h1>
        {place === 'call' && call && <CallTools call={call} />}
      </header>
      <p class="notice" role="status">
        {notice}
      </p>
      <main>
        {keys && <Keys />}
        {place === 'call' && call && handing && <HandOver call={call} />}
        <Place />
      </main>
      <footer>
        <button type="button" data-key="?" aria-expanded={keys} onClick={() => store.set({ keys: !keys })}>
          <span class="key" aria-hidden="true">
            ?
          </span>
          <span>{say('page.keys')}</span>
        </button>
        <button type="button" aria-pressed={letters} onClick={() => store.set({ letters: !letters })}>
          {say(letters ? 'page.letters-on' : 'page.letters-off')}
        </button>
        <p>{say('page.version', version)}</p>
      </footer>
    </>
  );
}

function Place() {
  const { place, call } = useFace().store.get();
  if (place === 'call' && call) return <CallPage call={call} />;
  if (place === 'arrived') return <ArrivedCall />;
  return place === 'sums' ? <Sums /> : <Start />;
}

function CallTools({ call: { state } }: { readonly call: Call }) {
  const { desk, store } = useFace();
  const { handing } = store.get();
  const isOpen = state.closed === undefined;
  return (
    <div class="row tools">
      {isOpen && <Timer opened={state.header.opened} />}
      <button
        type="button"
        data-key="g"
        aria-expanded={handing}
        onClick={() => store.set({ handing: !handing, link: undefined })}
      >
        <span class="key" aria-hidden="true">
          g
        </span>
        <span>{say('page.hand-over')}</span>
      </button>
      {isOpen && (
        <button type="button" onClick={() => desk.turnTo({ kind: 'forget' })}>
          {say('page.forget')}
        </button>
      )}
    </div>
  );
}
