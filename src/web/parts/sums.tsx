import { useState } from 'preact/hooks';
import type { Given, Topic, TopicInput } from '../../arithmetic/topics/topic.js';
import { pictureOf } from '../../call/pictures/picture.js';
import { allTopics, topicNamed } from '../../call/topics.js';
import { inWords, say } from '../../messages/say.js';
import { useFace } from '../face.js';
import { PictureOf } from './pictures/picture.js';

/** The sums that can be done alone, with a result that follows what is typed. */
export function Sums() {
  const { device, store } = useFace();
  const [id, setId] = useState(allTopics()[0]?.id ?? '');
  const topic = topicNamed(id);
  return (
    <div class="sums">
      <section class="part" aria-labelledby="sums-heading">
        <h2 id="sums-heading">{say('page.sums')}</h2>
        <p class="lead">{say('page.sums-say')}</p>
        <label for="topic" class="lead">
          {say('page.sum-choose')}
        </label>
        <select id="topic" value={id} onChange={({ currentTarget }) => setId(currentTarget.value)}>
          {allTopics().map((one) => (
            <option key={one.id} value={one.id}>
              {say(one.title)}
            </option>
          ))}
        </select>
        {topic && <Sum key={topic.id} topic={topic} />}
        <div class="row">
          <button type="button" onClick={() => device.print()}>
            {say('page.print')}
          </button>
          <button type="button" onClick={() => store.set({ place: 'start', notice: '' })}>
            {say('page.to-start')}
          </button>
        </div>
      </section>
    </div>
  );
}

function Sum({ topic }: { readonly topic: Topic }) {
  const [typed, setTyped] = useState<Given>({});
  const given = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ''));
  const missing = topic.inputs.find(({ id, optional }) => !optional && given[id] === undefined);
  return (
    <div class="sum">
      <form onSubmit={(event) => event.preventDefault()}>
        {topic.inputs.map((input) => (
          <Line
            key={input.id}
            input={input}
            value={typed[input.id] ?? ''}
            onType={(text) => setTyped((now) => ({ ...now, [input.id]: text }))}
          />
        ))}
      </form>
      <section class="result" aria-live="polite" aria-label={say('page.sum-result')}>
        <h3>{say('page.sum-result')}</h3>
        {missing ? (
          <p>{say('page.sum-waits', { ask: say(missing.ask) })}</p>
        ) : (
          <Result topic={topic} given={given} />
        )}
      </section>
    </div>
  );
}

interface LineProps {
  readonly input: TopicInput;
  readonly value: string;
  readonly onType: (text: string) => void;
}

function Line({ input: { id, ask, choices, optional }, value, onType }: LineProps) {
  const label = optional ? say('page.sum-optional', { ask: say(ask) }) : say(ask);
  return (
    <div class="field">
      <label for={`sum-${id}`}>{label}</label>
      {choices ? (
        <select id={`sum-${id}`} value={value} onChange={({ currentTarget }) => onType(currentTarget.value)}>
          <option value="">{say('page.sum-not-given')}</option>
          {choices.map((one) => (
            <option key={one.id} value={one.id}>
              {say(one.title)}
            </option>
          ))}
        </select>
      ) : (
        <input
          id={`sum-${id}`}
          type="text"
          autocomplete="off"
          spellcheck={false}
          placeholder=" "
          value={value}
          onInput={({ currentTarget }) => onType(currentTarget.value)}
        />
      )}
    </div>
  );
}

function Result({ topic, given }: { readonly topic: Topic; readonly given: Given }) {
  const result = topic.reckon(given);
  const askOf = (id: string | undefined): string => {
    const input = topic.inputs.find((one) => one.id === id);
    return input ? say(input.ask) : '';
  };
  if (!result.ok)
    return (
      <p class="wrong">
        {say('page.sum-wrong', { ask: askOf(result.input), problem: inWords(result.problem) })}
      </p>
    );
  const { verdict, lines, decides, data } = result.value;
  const picture = pictureOf(topic.id, given, data);
  return (
    <>
      {verdict && <p class={`judged ${verdict}`}>{say(`reckon.verdict-${verdict}`)}</p>}
      {decides !== undefined && <p>{say('page.sum-decides', { ask: askOf(decides) })}</p>}
      {picture && <PictureOf picture={picture} />}
      <h4>{say('page.sum-working')}</h4>
      {lines.map(inWords).map((line, at) => (
        <p key={`${at} ${line}`}>{line}</p>
      ))}
    </>
  );
}
