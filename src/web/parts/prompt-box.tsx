import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import type { Call } from '../../call/call.js';
import type { Screen } from '../../call/screen.js';
import { upThere } from '../../call/up-there.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import type { Prompt } from '../prompt.js';
import { Choices } from './choices.js';
import { CommandBar } from './command-bar.js';
import { Field } from './field.js';
import { PasteText } from './paste-text.js';
import { Reading } from './reading.js';
import { Told } from './told.js';

/** What is asked now: cautions first, then the words, then how, why and the ways to answer. */
export function PromptBox({ prompt, level }: { readonly prompt: Prompt; readonly level: 2 | 3 }) {
  const { store } = useFace();
  const { busy, reading, mode, call } = store.get();
  const box = useRef<HTMLElement>(null);
  const { screen, key } = prompt;
  useLayoutEffect(() => focusIn(box.current), [key]);
  const Heading = `h${level}` as const;
  const isText = mode.kind === 'paste' && mode.pasting.stage === 'text';
  return (
    <section ref={box} class="prompt" data-prompt data-asked={key} aria-labelledby="prompt-heading" key={key}>
      <Heading id="prompt-heading" tabIndex={-1}>
        {screen.heading}
      </Heading>
      <Block kind="caution" label={say('page.caution')} lines={screen.cautions} />
      {call && mode.kind === 'step' && <Climb call={call} />}
      <Words screen={screen} />
      {reading.length > 0 && mode.kind === 'step' && (
        <Reading files={reading} turnTo={(files) => store.set({ reading: files })} />
      )}
      {mode.kind === 'told' ? (
        <Told />
      ) : isText ? (
        <PasteText />
      ) : screen.input.kind === 'field' ? (
        <Field
          key={key}
          prompt={prompt}
          was={screen.input.was}
          title={mode.kind === 'note' ? say('page.note') : say('page.answer')}
          busy={busy}
        />
      ) : (
        <Choices key={`${key}:${call?.state.events.length}`} input={screen.input} busy={busy} />
      )}
      {screen.why.length > 0 && <Block kind="why" label={say('page.why')} lines={screen.why} />}
      <CommandBar prompt={prompt} busy={busy} />
    </section>
  );
}

function Words({ screen }: { readonly screen: Pick<Screen, 'say' | 'sums' | 'help'> }) {
  const mode = useFace().store.get().mode;
  const sumLabel = mode.kind === 'paste' ? say('page.paste-found') : say('page.sum');
  return (
    <>
      <Block kind="say" label={say('page.say')} lines={screen.say} />
      <Block kind="sum" label={sumLabel} lines={screen.sums} />
      <Block kind="find" label={say('page.find')} lines={screen.help} />
    </>
  );
}

/** Before somebody goes up: everything that is to be done there. */
function Climb({ call }: { readonly call: Call }) {
  const there = useMemo(() => upThere(call), [call]);
  if (!there) return null;
  const { climbs, see, try: tries, bring } = there;
  const lines = [
    ...see.map((title) => say('page.up-there-see', { title })),
    ...tries.map((title) => say('page.up-there-try', { title })),
    ...(bring.length === 0 ? [] : [say('page.up-there-bring', { items: bring.join('; ') })]),
  ];
  return <Block kind="climb" label={say(climbs ? 'page.up-there' : 'page.up-there-low')} lines={lines} />;
}

interface BlockProps {
  readonly kind: string;
  readonly label: string;
  readonly lines: readonly string[];
}

function Block({ kind, label, lines }: BlockProps) {
  if (lines.length === 0) return null;
  return (
    <div class={`block ${kind}`}>
      <p class="label">{label}</p>
      <div>
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </div>
  );
}

/** Into the field, where fingers are on keys; else onto the heading, so that a reader begins there. */
function focusIn(box: HTMLElement | null): void {
  const field = box?.querySelector<HTMLInputElement>('[data-field]');
  const heading = box?.querySelector<HTMLElement>('h2, h3');
  if (field && !matchMedia('(pointer: coarse)').matches) {
    field.focus();
    field.select();
  } else heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: 'nearest' });
}
