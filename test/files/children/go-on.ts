import { resumeRecord } from '../../../src/files/record.js';

/** Opens the record, then adds notes as fast as it can, and says each number only once the note is kept. */
const [path = '', whydark = ''] = process.argv.slice(2);
const { writer, events } = resumeRecord(path, whydark);
for (let number = events.length; number < 100_000; number += 1) {
  writer.append({
    at: '2026-11-25T08:31:00Z',
    type: 'noted',
    text: `note ${number} ${'x'.repeat(number % 300)}`,
  });
  process.stdout.write(`${number}\n`);
}
