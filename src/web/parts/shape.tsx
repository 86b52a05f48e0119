import type { StageState } from '../../diagnosis/diagnosis.js';

/** A shape for each state, told apart without colour: a disc with a tick, a diamond, a ring, a square with a cross. */
export function Shape({ state }: { readonly state: StageState }) {
  return (
    <svg class={`shape ${state}`} viewBox="0 0 24 24" aria-hidden="true" focusable="false">
      {state === 'good' && (
        <>
          <circle cx="12" cy="12" r="9" class="body" />
          <path d="M7.5 12.5l3 3 6-7" class="mark" />
        </>
      )}
      {state === 'suspect' && (
        <>
          <path d="M12 1.8L22.2 12 12 22.2 1.8 12z" class="body" />
          <path d="M9.6 9.8a2.5 2.5 0 1 1 3.4 2.3c-.7.3-1 .7-1 1.5M12 16.4v.4" class="mark" />
        </>
      )}
      {state === 'unseen' && <circle cx="12" cy="12" r="8" class="ring" />}
      {state === 'faulty' && (
        <>
          <path d="M3 3h18v18H3z" class="body" />
          <path d="M8 8l8 8M16 8l-8 8" class="mark" />
        </>
      )}
    </svg>
  );
}
