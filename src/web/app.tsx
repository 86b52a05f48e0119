import { VERSION } from '../call/version.js';
import { say } from '../messages/say.js';
import { useFace } from './face.js';
import { CallPage } from './parts/call-page.js';
import { Start } from './parts/start.js';
import { Sums } from './parts/sums.js';

/** The whole page: its head, what is open, and a place where things are said once. */
export function App() {
  const { store, packed } = useFace();
  const { place, call, notice, letters } = store.get();
  const version = {
    version: VERSION,
    rules: packed.rules.manifest.version,
    digest: packed.digest.slice(0, 12),
  };
  return (
    <>
      <header class="top">
        <h1>{say('page.title')}</h1>
        {place === 'call' && call && <CallTools isOpen={call.state.closed === undefined} />}
      </header>
      <p class="notice" role="status">
        {notice}
      </p>
      <main>
        {place === 'call' && call ? <CallPage call={call} /> : place === 'sums' ? <Sums /> : <Start />}
      </main>
      <footer>
        <button type="button" aria-pressed={letters} onClick={() => store.set({ letters: !letters })}>
          {say(letters ? 'page.letters-on' : 'page.letters-off')}
        </button>
        <p>{say('page.version', version)}</p>
      </footer>
    </>
  );
}

function CallTools({ isOpen }: { readonly isOpen: boolean }) {
  const { desk } = useFace();
  return (
    <div class="row">
      <button type="button" onClick={() => desk.saveRecord()}>
        {say('page.save-record')}
      </button>
      {isOpen && (
        <button type="button" onClick={() => desk.turnTo({ kind: 'forget' })}>
          {say('page.forget')}
        </button>
      )}
    </div>
  );
}
