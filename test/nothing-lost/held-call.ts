import { readFileSync, writeSync } from 'node:fs';
import { playScript, type Script } from '../../src/call/scripted-call.js';
import { createRecord } from '../../src/files/record.js';
import type { RecordWriter } from '../../src/files/record-writer.js';

/** Holds one written-down call into a record; says each event on standard output once it is on the disk. */
const [scriptPath, recordPath, id] = process.argv.slice(2);
if (scriptPath === undefined || recordPath === undefined || id === undefined)
  throw new Error('three words wanted');
const script: Script = JSON.parse(readFileSync(scriptPath, 'utf8'));
const rules = JSON.parse(readFileSync('dist/rules.json', 'utf8'));
const digest = readFileSync('dist/rules.digest', 'utf8').trim();
let writer: RecordWriter | undefined;
await playScript(rules, digest, script, id, {
  header: (header) => {
    writer = createRecord(recordPath, header);
    writeSync(1, '"opened"\n');
  },
  event: (event) => {
    writer?.append(event);
    writeSync(1, `${JSON.stringify(event)}\n`);
  },
});
writer?.close();
