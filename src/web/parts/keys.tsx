import { useLayoutEffect, useRef } from 'preact/hooks';
import { COMMAND_KEYS, type CommandId } from '../../call/commands.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';

/** Commands of the terminal that a page cannot do. */
const NOT_HERE: ReadonlySet<string> = new Set<CommandId>(['here']);

/** Every key and what it does. `?` opens and closes the list. */
export function Keys() {
  const { store } = useFace();
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => heading.current?.focus(), []);
  const commands = Object.entries(COMMAND_KEYS) as [CommandId, string][];
  const rows: readonly (readonly [string, string])[] = [
    [say('page.digits'), say('page.key-digits')],
    [say('page.enter'), say('page.key-enter')],
    [say('page.arrows'), say('page.key-arrows')],
    ['Esc', say('page.key-escape')],
    ...commands
      .filter(([id]) => !NOT_HERE.has(id))
      .map(([id, key]) => [key, say(`cli.command.${id}`)] as const),
    ['m', say('page.key-copy')],
    ['g', say('page.key-hand')],
    ['?', say('page.key-keys')],
  ];
  return (
    <section class="part keys" aria-labelledby="keys-heading">
      <h2 id="keys-heading" ref={heading} tabIndex={-1}>
        {say('page.keys')}
      </h2>
      <dl>
        {rows.map(([key, does]) => (
          <div key={key}>
            <dt>
              <kbd class="key">{key}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p class="small">{say('page.keys-letters')}</p>
      <div class="row">
        <button type="button" data-leave onClick={() => store.set({ keys: false })}>
          {say('page.keys-close')}
        </button>
      </div>
    </section>
  );
}
