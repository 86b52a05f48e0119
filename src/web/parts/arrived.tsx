import { useLayoutEffect, useRef } from 'preact/hooks';
import { handedOver } from '../../call/record/handed-over.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { keyOf } from '../keyboard.js';
import { holdsWords } from './holds.js';

/** What has arrived from outside, and whether it is to be opened. Nothing here has changed before a yes. */
export function ArrivedCall() {
  const { desk, keeper, store } = useFace();
  const { arrived, call } = store.get();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), [arrived]);
  if (!arrived) return null;
  const { header } = arrived.call.state;
  const filling = {
    list: holdsWords(handedOver(arrived.call, { unmasked: true })),
    opened: header.opened.slice(0, 16).replace('T', ' '),
  };
  const isOpen = call !== undefined && call.state.closed === undefined;
  const isSame = call?.state.header.id === header.id;
  return (
    <div class="start">
      <section class="part" data-prompt aria-labelledby="arrived-heading">
        <h2 id="arrived-heading" ref={heading} tabIndex={-1}>
          {say('page.arrived')}
        </h2>
        <p>{say(header.role === 'desk' ? 'page.arrived-desk' : 'page.arrived-site', filling)}</p>
        {arrived.replaces && <p class="block caution">{say('page.arrived-replaces')}</p>}
        {isOpen && !isSame && (
          <p>
            {say(
              keeper.read(call.state.header.id) === undefined ? 'page.arrived-loses' : 'page.arrived-beside',
            )}
          </p>
        )}
        <ol class="choices">
          {(['no', 'yes'] as const).map((id, at) => (
            <li key={id}>
              <button
                type="button"
                data-choice
                data-leave={id === 'no' ? true : undefined}
                onClick={() => desk.decide(id === 'yes')}
              >
                <span class="key" aria-hidden="true">
                  {keyOf(at)}
                </span>
                <span>{say(`page.arrived-${id}`)}</span>
              </button>
            </li>
          ))}
        </ol>
      </section>
    </div>
  );
}
