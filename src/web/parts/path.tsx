import type { Call } from '../../call/call.js';
import { reachOfCall } from '../../call/pictures/reach.js';
import { screenOf } from '../../call/screen.js';
import type { PathStage } from '../../diagnosis/diagnosis.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { ReachPicture } from './pictures/reach.js';
import { Shape } from './shape.js';
import { StagePanel } from './stage-panel.js';

const LANES = ['camera', 'phone', 'joined'] as const;

/** The picture path: the camera's side and the phone's side, and what comes where they have met. */
export function Path({ call }: { readonly call: Call }) {
  const { store } = useFace();
  const open = store.get().stage;
  const { path } = screenOf(call);
  const reach = reachOfCall(call);
  return (
    <section id="part-path" class="part path" aria-labelledby="path-heading" tabIndex={-1}>
      <h2 id="path-heading">{say('page.path')}</h2>
      <div class="lanes">
        {LANES.map((side) => (
          <div key={side} class={`lane ${side}`}>
            <h3>{say(`page.lane-${side}`)}</h3>
            <ol>
              {path
                .filter((stage) => stage.side === side)
                .map((stage) => (
                  <li key={stage.id}>
                    <Stage stage={stage} isOpen={open === stage.id} />
                  </li>
                ))}
            </ol>
          </div>
        ))}
      </div>
      {reach && (
        <details>
          <summary>{say('picture.reach')}</summary>
          <p class="small">{say('picture.reach-by-numbers')}</p>
          <ReachPicture reach={reach} />
        </details>
      )}
      {open !== undefined && <StagePanel call={call} id={open} key={open} />}
    </section>
  );
}

function Stage({ stage, isOpen }: { readonly stage: PathStage; readonly isOpen: boolean }) {
  const { store } = useFace();
  return (
    <button
      type="button"
      class={`stage ${stage.state}`}
      aria-expanded={isOpen}
      onClick={() => store.set({ stage: isOpen ? undefined : stage.id })}
    >
      <Shape state={stage.state} />
      <span class="name">{stage.title}</span>
      <span class="state">{say(`page.state-${stage.state}`)}</span>
    </button>
  );
}
