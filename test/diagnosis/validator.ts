import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import schema from '../../src/diagnosis/diagnosis.schema.json' with { type: 'json' };

/** Holds what `--json` prints against the published schema, strictly. */
export const diagnosisFits: ValidateFunction = new Ajv2020({ strict: true, allErrors: true }).compile(schema);

/** Everything that does not fit, as `pointer message`. */
export function misfits(json: unknown): readonly string[] {
  // What is printed is what is read: undefined fields and NaN do not survive.
  diagnosisFits(JSON.parse(JSON.stringify(json)));
  return (diagnosisFits.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}
