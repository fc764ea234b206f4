import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { draft } from '../../src/pipeline.ts';
import { workroom } from '../../src/workroom/workroom.ts';

const CAPELET = readFileSync(new URL('../../templates/capelet.yaml', import.meta.url), 'utf8');

it('edging goes along the hem of a cape on both sides of her, and is bought for it', () => {
  const text = `${CAPELET.replace('name: capelet-net,   cloth: net,   hem: raw', 'name: capelet-net, cloth: net, hem: raw, edging: lace')}
edging: {name: lace, depth: 3, repeat: 5}
`;
  const { gown } = draft({ name: 'gown.yaml', text });
  const { edging, order } = workroom(gown!, []).facts;
  const hem = gown!.report.capes![0]!.hem;
  expect(edging!.hems.map(({ layer, length }) => [layer, length])).toEqual([
    ['capelet-net', expect.closeTo(2 * hem, 3)],
  ]);
  const cape = order.find(({ id }) => id === 'beside:capelet')!;
  expect(cape.work).toMatchObject({
    hems: [{ layer: 'capelet-net', edging: 'lace' }, { edging: undefined }],
  });
  // As much as both hems are long, and one motif more.
  expect(edging!.need).toBeCloseTo(2 * hem, 3);
  expect(edging!.buy).toBeCloseTo(2 * hem + 50, 3);
});
