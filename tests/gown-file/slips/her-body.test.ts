import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readSpec } from '../../../src/gown-file/read-spec.ts';
import { draft } from '../../../src/pipeline.ts';

/** One digit that slipped in a measure of her body is found at its place, before anything is cut. */

const TEXT = readFileSync(new URL('../../../templates/boned-bodice.yaml', import.meta.url), 'utf8');

/** Every length of `body`, and where it stands. */
const BODY = TEXT.slice(TEXT.indexOf('body:'), TEXT.indexOf('\nbodice:'));
const FIGURES = [...BODY.matchAll(/(girth|front|above|below|bust-points-apart): +([\d.]+)/g)].map(
  (match) => ({
    name: `${match[1]} ${match[2]}`,
    figure: match[2]!,
    at: TEXT.indexOf('body:') + match.index + match[0].length - match[2]!.length,
  }),
);

/** Slips of the finger: the point moved, a digit twice or left out, two exchanged. */
function slipsOf(figure: string): string[] {
  const value = Number(figure);
  const digits = figure.replace('.', '');
  const swapped = `${digits[1]}${digits[0]}${digits.slice(2)}`;
  const point = figure.includes('.') ? figure.length - figure.indexOf('.') - 1 : 0;
  const withPoint = (own: string): number => Number(own) / 10 ** point;
  return [
    value * 10,
    value / 10,
    withPoint(swapped),
    withPoint(digits[0]! + digits),
    withPoint(digits.slice(1)),
  ]
    .filter((slip) => slip > 0 && Math.abs(slip / value - 1) > 0.15)
    .map(String);
}

const isFound = (text: string, at: number): boolean =>
  [readSpec, draft].some((look) =>
    look({ name: 'gown.yaml', text }).diagnostics.some(({ span }) => span.start <= at && at < span.end),
  );

it('of all slips of one digit nine in ten are found where they stand, and all of them somewhere', () => {
  const tried = FIGURES.flatMap(({ name, figure, at }) =>
    slipsOf(figure).map((slip) => ({
      name: `${name} as ${slip}`,
      at,
      text: `${TEXT.slice(0, at)}${slip}${TEXT.slice(at + figure.length)}`,
    })),
  );
  expect(tried.length).toBeGreaterThan(60);
  const missed = tried.filter(({ text, at }) => !isFound(text, at));
  const silent = missed.filter(({ text }) => draft({ name: 'gown.yaml', text }).diagnostics.length === 0);
  expect(silent.map(({ name }) => name)).toEqual([]);
  expect(missed.length).toBeLessThanOrEqual(tried.length / 10);
});

describe('nothing is said of bodies that there are', () => {
  const said = (body: string): string[] =>
    readSpec({ name: 'gown.yaml', text: TEXT.replace(BODY, body) })
      .diagnostics.filter(({ code }) => code === 'unlike-her-body')
      .map(({ message }) => message);
  const body = (
    bust: number,
    under: number,
    waist: number,
    high: number,
    long: number,
    more = '',
  ): string => `body:
  girths:
    - {at: bust, above: ${(16.5 * long).toFixed(1)}, girth: ${bust}${more}}
    - {at: underbust, above: ${(8.5 * long).toFixed(1)}, girth: ${under}}
    - {at: waist, girth: ${waist}}
    - {at: high-hip, below: ${(9 * long).toFixed(1)}, girth: ${high}}
`;
  it.each([
    // EN 13402-3, women, from memory: the smallest, a middle and the largest size.
    ['a small size', body(76, 66, 60, 76, 0.95)],
    ['a middle size', body(92, 79, 76, 92, 1)],
    ['a large size', body(125, 110, 113, 124, 1.05)],
    ['a full bust on a small back', body(104, 78, 72, 92, 1, ', front: 60')],
    ['a waist above the hip', body(100, 98, 104, 100, 1)],
    ['a child without suppression', body(68, 66, 64, 69, 0.75)],
  ])('%s', (_name, own) => expect(said(own)).toEqual([]));
});
