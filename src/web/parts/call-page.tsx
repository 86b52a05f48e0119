import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Call } from '../../call/call.js';
import { changeable } from '../../call/outcome.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { promptOf } from '../prompt.js';
import { VIEWS } from '../state.js';
import { Answers } from './answers.js';
import { Causes } from './causes.js';
import { Path } from './path.js';
import { PromptBox } from './prompt-box.js';
import { Ticket } from './ticket.js';

/** A call: the step, the path, the causes, the answers and the ticket. */
export function CallPage({ call }: { readonly call: Call }) {
  const { store } = useFace();
  const { view } = store.get();
  return (
    <div
      class="call"
      data-entries={call.state.events.length}
      data-view={view}
      data-closed={call.state.closed !== undefined ? true : undefined}
    >
      <nav class="views" aria-label={say('page.views')}>
        {VIEWS.map((one) => (
          <button
            key={one}
            type="button"
            aria-current={view === one ? 'page' : undefined}
            onClick={() => store.set({ view: one })}
          >
            {say(`page.${one}`)}
          </button>
        ))}
      </nav>
      <Path call={call} />
      <div class="left">
        <div class="part step">{call.state.closed === undefined ? <Now call={call} /> : <Closed />}</div>
        <Answers call={call} />
      </div>
      <div class="right">
        <Causes call={call} />
        <Ticket call={call} />
      </div>
    </div>
  );
}

/** What is asked now; while an answer is changed in the list, the step waits without its buttons. */
function Now({ call }: { readonly call: Call }) {
  const { mode } = useFace().store.get();
  const isInList =
    mode.kind === 'pick' ||
    (mode.kind === 'change' && changeable(call).some(({ id }) => id === mode.question));
  if (mode.kind !== 'pick' && !isInList) return <PromptBox prompt={promptOf(call, mode)} level={2} />;
  const { screen } = promptOf(call, { kind: 'step' });
  return (
    <div class="waiting">
      <h2>{screen.heading}</h2>
      {screen.say.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </div>
  );
}

function Closed() {
  const { desk } = useFace();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  return (
    <section class="prompt" data-prompt aria-labelledby="closed-heading">
      <h2 id="closed-heading" ref={heading} tabIndex={-1}>
        {say('page.closed')}
      </h2>
      <p>{say('page.closed-say')}</p>
      <div class="row">
        <button type="button" onClick={() => desk.saveRecord()}>
          {say('page.save-record')}
        </button>
        <button type="button" onClick={() => desk.leave()}>
          {say('page.new-call')}
        </button>
      </div>
    </section>
  );
}
