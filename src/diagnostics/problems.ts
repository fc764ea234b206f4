/** The inventory of what can be wrong with a spec, one small factory each. */
export * from './based-on-problems.ts';
export * from './gown-problems.ts';
export * from './text-problems.ts';
export * from './value-problems.ts';
