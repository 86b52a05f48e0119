import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** What takes longest, longest first: begun last, one of them keeps a single core busy for minutes. */
const LONG = [
  'rules/rehearsed',
  'cases/cases',
  'web/demo-calls',
  'web/demo-calls-second-half',
  'lab/run/run',
  'intake/speed',
  'nothing-lost/kill',
  'bench/calls/run',
  'lab/faults/faults',
  'call/rehearsal/rehearsal',
  'web/axe',
];

/** The usual order, with the long files before it; a new machine remembers no durations. */
export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    const placeOf = ({ moduleId }: TestSpecification): number => {
      const at = LONG.findIndex((name) => moduleId.endsWith(`/test/${name}.test.ts`));
      return at < 0 ? LONG.length : at;
    };
    return [...usual].sort((one, other) => placeOf(one) - placeOf(other));
  }
}
