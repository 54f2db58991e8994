import fc from 'fast-check';

/*
 * Generated tests try the same examples in every run, so that a change is judged by what it changes. Other
 * examples: HEMFOLD_SEED=7 npm test, or npm run fuzz.
 */
fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(process.env.HEMFOLD_SEED ?? 20261125) });
