import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Call } from '../../call/call.js';
import { handedOver } from '../../call/record/handed-over.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { Code } from './code.js';
import { holdsWords } from './holds.js';

/** The ways to hand a call over: a file, a link, a code. What goes along is said before it is made. */
export function HandOver({ call }: { readonly call: Call }) {
  const { desk, store } = useFace();
  const { link } = store.get();
  const [unmasked, setUnmasked] = useState(false);
  const held = useMemo(() => handedOver(call, { unmasked }), [call, unmasked]);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <section class="part handing" aria-labelledby="handing-heading">
      <h2 id="handing-heading" ref={heading} tabIndex={-1}>
        {say('page.hand-over')}
      </h2>
      <p>{say('page.holds', { list: holdsWords(held) })}</p>
      <h3>{say('page.by-file')}</h3>
      <p>{say('page.by-file-say')}</p>
      <div class="row">
        <button type="button" onClick={() => desk.saveRecord()}>
          {say('page.save-record')}
        </button>
      </div>
      <h3>{say('page.by-link')}</h3>
      <p>{say(unmasked ? 'page.by-link-unmasked' : 'page.by-link-masked')}</p>
      {held.untold > 0 && (
        <p>
          {say(held.untold === 1 ? 'page.by-link-untold-one' : 'page.by-link-untold-many', {
            count: held.untold,
          })}
        </p>
      )}
      <p>{say('page.by-link-who')}</p>
      <label class="tick">
        <input
          type="checkbox"
          checked={unmasked}
          onChange={({ currentTarget }) => {
            setUnmasked(currentTarget.checked);
            store.set({ link: undefined });
          }}
        />
        {say('page.unmasked')}
      </label>
      <div class="row">
        <button type="button" class="main" onClick={() => desk.makeLink(unmasked)}>
          {say('page.make-link')}
        </button>
      </div>
      {link && <Made />}
      <div class="row">
        <button type="button" data-leave onClick={() => store.set({ handing: false, link: undefined })}>
          {say('page.hand-over-close')}
        </button>
      </div>
    </section>
  );
}

/** The link that was made, and the code of it. */
function Made() {
  const { desk, store } = useFace();
  const { link } = store.get();
  if (!link) return null;
  const isFromDisk = link.address.startsWith('file:');
  return (
    <div class="made">
      <label for="link">{say('page.link')}</label>
      <input
        id="link"
        type="text"
        readOnly
        value={link.address}
        onFocus={({ currentTarget }) => currentTarget.select()}
      />
      <div class="row">
        <button type="button" onClick={() => desk.copyLink()}>
          {say('page.copy-link')}
        </button>
      </div>
      {isFromDisk && <p>{say('page.link-from-disk')}</p>}
      <Code
        text={isFromDisk ? link.fragment : link.address}
        caption={say(isFromDisk ? 'page.code-part' : 'page.code')}
      />
    </div>
  );
}
