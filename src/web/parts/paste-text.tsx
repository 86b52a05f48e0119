import { useState } from 'preact/hooks';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';

/** Where a text is pasted by hand, or taken from the clipboard. */
export function PasteText() {
  const { desk, device, store } = useFace();
  const [text, setText] = useState('');
  const take = (event: Event): void => {
    event.preventDefault();
    desk.takeText(text);
  };
  const fromClipboard = async (): Promise<void> => {
    const found = await device.clipboard();
    if (found === undefined) store.set({ notice: say('page.paste-no-clipboard') });
    else desk.takeText(found);
  };
  const pasted = (event: ClipboardEvent): void => {
    const whole = event.clipboardData?.getData('text/plain') ?? '';
    if (text !== '' || whole.trim() === '') return;
    event.preventDefault();
    desk.takeText(whole);
  };
  return (
    <form class="field" onSubmit={take}>
      <label for="pasted">{say('page.paste-field')}</label>
      <textarea
        id="pasted"
        data-field
        rows={6}
        spellcheck={false}
        value={text}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
        onPaste={pasted}
      />
      <div class="row">
        <button type="submit" class="main">
          {say('page.paste-read')}
        </button>
        <button type="button" onClick={fromClipboard}>
          {say('page.paste-clipboard')}
        </button>
      </div>
    </form>
  );
}
