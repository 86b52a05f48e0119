import fc from 'fast-check';

/** The same seed for everybody, so that a run can be told again; `WHYDARK_SEED=$RANDOM npm test` looks elsewhere. */
fc.configureGlobal({ seed: Number(process.env.WHYDARK_SEED ?? 20261125) });
