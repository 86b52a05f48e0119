import { InputFault, MachineFault } from '../../../src/files/faults.js';
import { resumeRecord } from '../../../src/files/record.js';

/** Waits for a line, tries to open the record, says `held` or the fault, and holds it until its input ends. */
const [path = '', whydark = ''] = process.argv.slice(2);
process.stdin.once('data', () => {
  try {
    resumeRecord(path, whydark);
    process.stdout.write('held\n');
  } catch (error) {
    if (!(error instanceof InputFault || error instanceof MachineFault)) throw error;
    process.stdout.write(`${error.sentence.id} ${error.exit}\n`);
  }
});
process.stdout.write('ready\n');
