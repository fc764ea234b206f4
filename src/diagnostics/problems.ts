/** The inventory of what can be wrong with a spec, one small factory each. */
export * from './based-on-problems.ts';
export * from './gore-problems.ts';
export * from './material-problems.ts';
export * from './shaping-problems.ts';
export * from './station-problems.ts';
export * from './text-problems.ts';
export * from './value-problems.ts';
export * from './workroom-section-problems.ts';
