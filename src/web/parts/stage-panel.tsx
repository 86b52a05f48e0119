import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Call } from '../../call/call.js';
import { stageKnown } from '../../call/stage-known.js';
import { percent } from '../../call/why-lines.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { Reading } from './reading.js';

/** What is known of one stage, below the path. */
export function StagePanel({ call, id }: { readonly call: Call; readonly id: string }) {
  const { desk, store } = useFace();
  const [files, setFiles] = useState<readonly string[]>([]);
  const known = stageKnown(call, id);
  if (!known) return null;
  const { stage, works, defects, causes, answers } = known;
  const isEmpty = [works, defects, causes, answers].every((list) => list.length === 0);
  return (
    <section class="stage-panel" aria-labelledby="stage-heading">
      <h3 id="stage-heading">
        {stage.title}: {say(`page.state-${stage.state}`)}
      </h3>
      <p>{say('page.stage-share', { share: percent(stage.probability) })}</p>
      {isEmpty && <p>{say('page.stage-nothing')}</p>}
      <List title={say('page.stage-works')}>
        {works.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </List>
      <List title={say('page.stage-defects')}>
        {defects.map(({ finding, grade, says, lines }) => (
          <li key={finding}>
            {say('cli.defect', { grade: say(`cli.defect.${grade}`), says })}
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </li>
        ))}
      </List>
      <List title={say('page.stage-causes')}>
        {causes.map(({ title, probability, file }) => (
          <li key={title}>
            {say('page.stage-cause', { title, share: percent(probability) })}{' '}
            {file !== undefined && (
              <button type="button" onClick={() => setFiles([file])}>
                {say('page.reading')}
                <span class="heard">{say('page.of', { title })}</span>
              </button>
            )}
          </li>
        ))}
      </List>
      <List title={say('page.stage-answers')}>
        {answers.map(({ id: question, title, answer }) => (
          <li key={question}>
            {say('cli.change.one', { title, answer })}{' '}
            {call.state.closed === undefined && (
              <button type="button" onClick={() => desk.turnTo({ kind: 'change', question })}>
                {say('page.change')}
                <span class="heard">{say('page.of', { title })}</span>
              </button>
            )}
          </li>
        ))}
      </List>
      {files.length > 0 && <Reading files={files} turnTo={setFiles} />}
      <button type="button" onClick={() => store.set({ stage: undefined })}>
        {say('page.stage-close')}
      </button>
    </section>
  );
}

function List({
  title,
  children,
}: {
  readonly title: string;
  readonly children: readonly ComponentChildren[];
}) {
  if (children.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul>{children}</ul>
    </>
  );
}
