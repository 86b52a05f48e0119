import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Call } from '../../call/call.js';
import { ticketOf } from '../../call/ticket-of.js';
import { htmlOf } from '../../knowledge/html.js';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';

/** The ticket as it would be written now; one key copies it. */
export function Ticket({ call }: { readonly call: Call }) {
  const { desk, device } = useFace();
  const [unmasked, setUnmasked] = useState(false);
  const text = useMemo(() => ticketOf(call, { unmasked }), [call, unmasked]);
  const paper = usePaper(text);
  return (
    <section id="part-ticket" class="part ticket" aria-labelledby="ticket-heading" tabIndex={-1}>
      <h2 id="ticket-heading">{say('page.ticket')}</h2>
      <div class="row">
        <button type="button" class="main" data-key="m" onClick={() => desk.copyTicket(unmasked)}>
          <span class="key" aria-hidden="true">
            m
          </span>
          <span>{say('page.copy')}</span>
        </button>
        <button type="button" onClick={() => desk.saveTicket(unmasked)}>
          {say('page.save-ticket')}
        </button>
        <button type="button" onClick={() => device.print()}>
          {say('page.print')}
        </button>
      </div>
      <label class="tick">
        <input
          type="checkbox"
          checked={unmasked}
          onChange={({ currentTarget }) => setUnmasked(currentTarget.checked)}
        />
        {say('page.unmasked')}
      </label>
      <div ref={paper} class="paper" />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keyboard */}
      <section class="scrolls" tabIndex={0} aria-label={say('page.ticket-text')}>
        <pre data-ticket>{text}</pre>
      </section>
    </section>
  );
}

/**
 * Where the ticket is set for paper. Written only when somebody prints, and at once: a browser does not wait for the
 * next drawing of the page.
 */
function usePaper(text: string) {
  const paper = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const printing = matchMedia('print');
    const set = (): void => {
      if (paper.current) paper.current.innerHTML = htmlOf(text, () => undefined);
    };
    const turned = (): void => {
      if (printing.matches) set();
    };
    turned();
    printing.addEventListener('change', turned);
    window.addEventListener('beforeprint', set);
    return () => {
      printing.removeEventListener('change', turned);
      window.removeEventListener('beforeprint', set);
    };
  }, [text]);
  return paper;
}
