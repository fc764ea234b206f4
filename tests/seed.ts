import fc from 'fast-check';

/**
 * Every run of the suite tries the same random cases, so that a red run is the fault of a change and not of luck;
 * `SEED=n` tries others, and `npm run soak` many more.
 */
export const SEED = Number(process.env.SEED ?? 11);

fc.configureGlobal({ seed: SEED });
