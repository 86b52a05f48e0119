import { useEffect, useState } from 'preact/hooks';
import { say } from '../../messages/say.js';
import { useFace } from '../face.js';

const MINUTE = 60_000;

/** How long this call is open, in minutes. Seconds would only draw the eye. */
export function Timer({ opened }: { readonly opened: string }) {
  const { device } = useFace();
  const [now, setNow] = useState(device.now());
  useEffect(() => {
    const ticking = setInterval(() => setNow(device.now()), MINUTE / 6);
    return () => clearInterval(ticking);
  }, [device]);
  const minutes = Math.max(0, Math.floor((Date.parse(now) - Date.parse(opened)) / MINUTE));
  const time = timeWords(minutes);
  return (
    <p class="timer">
      <span class="heard">{say('page.time', { time })}</span>
      <span aria-hidden="true">{time}</span>
    </p>
  );
}

function timeWords(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  if (hours === 0) return say('page.time-short', { minutes });
  return hours < 24
    ? say('page.time-hours', { hours, minutes: minutes % 60 })
    : say('page.time-days', { days: Math.floor(hours / 24) });
}
