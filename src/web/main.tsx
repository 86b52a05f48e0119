import { render } from 'preact';
import { say } from '../messages/say.js';
import { App } from './app.js';
import { deskOf } from './desk.js';
import { DEVICE } from './device.js';
import { FACE, type Face } from './face.js';
import { keeperIn } from './keep.js';
import { isField, onKey } from './keyboard.js';
import { holdsLink } from './link.js';
import { packedRules } from './packed.js';
import { FRESH, storeOf } from './state.js';
import './style/colours.css';
import './style/page.css';
import './style/prompt.css';
import './style/path.css';
import './style/parts.css';
import './style/hand.css';
import './style/pictures.css';
import './style/narrow.css';
import './style/print.css';

function start(page: Document, root: Element): void {
  const packed = packedRules(page);
  const keeper = keeperIn(window);
  const store = storeOf(FRESH, show);
  const desk = deskOf(packed, store, keeper, DEVICE);
  const face: Face = { packed, store, desk, keeper, device: DEVICE };

  function show(): void {
    // A new value each time, so that every part that reads the face is drawn anew.
    render(
      <FACE.Provider value={{ ...face }}>
        <App />
      </FACE.Provider>,
      root,
    );
  }

  page.addEventListener('keydown', (event) => onKey(event, page, store));
  page.addEventListener('paste', (event) => {
    if (event.defaultPrevented || isField(event.target)) return;
    const text = event.clipboardData?.getData('text/plain') ?? '';
    const isLink = holdsLink(text);
    if (!isLink && store.get().place !== 'call') return;
    event.preventDefault();
    if (isLink) void desk.openLink(text);
    else desk.takeText(text);
  });
  const openFragment = (): void => {
    const { hash } = location;
    if (!holdsLink(hash)) return;
    // A call has no business in the history of the browser.
    history.replaceState(null, '', location.pathname + location.search);
    void desk.openLink(hash);
  };
  window.addEventListener('hashchange', openFragment);
  keeper.watch((id) => {
    if (store.get().call?.state.header.id === id) store.set({ notice: say('page.other-tab') });
  });
  show();
  openFragment();
}

function keepForOffline(page: Document): void {
  // Only the served folder has a manifest; a file from disk needs no worker.
  if (page.querySelector('link[rel=manifest]') && 'serviceWorker' in navigator)
    navigator.serviceWorker.register('./sw.js').catch(() => undefined);
}

const root = document.getElementById('page');
if (root) {
  try {
    start(document, root);
    keepForOffline(document);
  } catch (error) {
    root.textContent = say('page.damaged', { problem: error instanceof Error ? error.message : '' });
  }
}
