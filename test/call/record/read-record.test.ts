import { describe, expect, it } from 'vitest';
import { eventsInOrder, type RecordText } from '../../../src/call/record/read-record.js';
import { headerFor, said } from '../play.js';

const A = said('lights', 'on');
const B = said('lights', 'off');
const stranger = (line: number): RecordText['strangers'][number] => ({
  line,
  event: { at: A.at, type: `sang ${line}` },
});

describe('the events of a record', () => {
  it.each<[string, RecordText['events'], RecordText['strangers'], readonly string[]]>([
    ['stand as they are', [A, B], [], ['answered', 'answered']],
    ['of a newer kind stand first', [A, B], [stranger(2)], ['sang 2', 'answered', 'answered']],
    ['of a newer kind stand between', [A, B], [stranger(3)], ['answered', 'sang 3', 'answered']],
    [
      'of newer kinds stand in their places',
      [A, B],
      [stranger(2), stranger(4), stranger(6)],
      ['sang 2', 'answered', 'sang 4', 'answered', 'sang 6'],
    ],
    ['may all be of newer kinds', [], [stranger(2), stranger(3)], ['sang 2', 'sang 3']],
  ])('%s', (_, events, strangers, wanted) => {
    const text: RecordText = { header: headerFor(), events, strangers, length: 0 };
    expect(eventsInOrder(text).map(({ type }) => type)).toEqual(wanted);
  });
});
