/**
 * A gown with a round train as spec text, for timing: `gores` all the way round (an odd number has its front on the
 * fold), in `layers` layers that all differ in their hems, so that no two share a piece.
 */
export function benchSpec(gores: number, layers: number): string {
  const onFold = gores % 2 === 1;
  const half = Math.ceil(gores / 2);
  const top = 720 / gores;
  const names = Array.from({ length: half }, (_, i) => `g${i + 1}`);
  return [
    'format: 1',
    'gown: Bench',
    'units: mm',
    `bodice: {waist-seam: 720, panels: {${names.map((name) => `${name}: ${top}`).join(', ')}}}`,
    'gores:',
    ...names.map((name, i) => `  - {name: ${name}${onFold && i === 0 ? ', on-fold: true' : ''}}`),
    'sweep: 3600',
    'lengths: {measured: to-floor, off-floor: 20, hem-width-at: 1040, at: {centre-front: 1060, centre-back: 1100}}',
    `train: {on-floor: 500, begins: g${half >> 1}/g${(half >> 1) + 1}, shape: round}`,
    'allowances: {seam: 15, waist: 15, hem: 15}',
    'layers:',
    ...Array.from(
      { length: layers },
      (_, i) => `  - {name: l${i + 1}, cloth: c, hem: turned, shorter: ${2 * i}}`,
    ),
    'cloths:',
    '  c: {width: 1400, selvedge: 10}',
    '',
  ].join('\n');
}
