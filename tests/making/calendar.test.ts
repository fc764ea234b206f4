import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calendar, clashesIn } from '../../src/dates/calendar.ts';
import { dateText, dayNumber, daysBefore, weekday } from '../../src/dates/civil-date.ts';
import { made, skirt } from './made.ts';

describe('days, against the platform’s own calendar in UTC', () => {
  it('count alike both ways', () => {
    fc.assert(
      fc.property(fc.integer({ min: -140000, max: 140000 }), (days) => {
        const platform = new Date(days * 86_400_000);
        const text = platform.toISOString().slice(0, 10);
        expect(dateText(days)).toBe(text);
        expect(dayNumber(text)).toBe(days);
        expect(weekday(text)).toBe((platform.getUTCDay() + 6) % 7);
      }),
    );
  });

  it('go back over leap days and years', () => {
    expect(daysBefore('2028-03-01', 1)).toBe('2028-02-29');
    expect(daysBefore('2027-01-01', 1)).toBe('2026-12-31');
  });

  it('that do not exist are refused', () => {
    for (const text of ['2027-02-29', '2027-13-01', '2027-00-10', '2027-1-1', '20270101', 'tomorrow']) {
      expect(() => dayNumber(text), text).toThrow(RangeError);
    }
  });
});

describe('the calendar', () => {
  it('runs back from the event in the order of the work', () => {
    const entries = calendar('2027-06-19', { deliver: 2 });
    expect(entries.at(-1)).toMatchObject({ milestone: 'event', date: '2027-06-19', weekday: 5 });
    expect(entries.at(-2)).toMatchObject({ milestone: 'deliver', date: '2027-06-17', moved: true });
    expect(entries.map((entry) => entry.daysBefore)).toEqual(
      [...entries.map((e) => e.daysBefore)].sort((a, b) => b - a),
    );
    expect(clashesIn(entries)).toEqual([]);
  });

  it('sees a toile after the cutting and a hem levelled before the cloth has hung a day (textbook: 24 h)', () => {
    expect(clashesIn(calendar('2027-06-19', { cut: 60 }))).toEqual([
      { earlier: 'toile-fitting', later: 'cut' },
    ]);
    expect(clashesIn(calendar('2027-06-19', { hang: 21 }))).toEqual([
      { earlier: 'hang', later: 'level-hem' },
    ]);
  });

  it('asks for each by its usual day, weeks before where nothing hurries (common practice)', () => {
    const weeks = {
      'order-cloth': 12,
      'test-scraps': 10,
      toile: 9,
      'toile-fitting': 8,
      cut: 7,
      'first-fitting': 5,
    };
    const days = { hang: 24, 'level-hem': 21, 'last-fitting': 10, deliver: 4, event: 0 };
    const usual = [
      ...Object.entries(weeks).map(([name, count]) => [name, 7 * count]),
      ...Object.entries(days),
    ];
    const entries = calendar('2027-06-19');
    expect(entries.map(({ milestone, daysBefore }) => [milestone, daysBefore])).toEqual(usual);
    expect(entries.some(({ moved }) => moved)).toBe(false);
  });

  it('lets two stand on one day, but hanging takes a day', () => {
    expect(clashesIn(calendar('2027-06-19', { cut: 56 }))).toEqual([]);
    expect(clashesIn(calendar('2027-06-19', { hang: 22 }))).toEqual([]);
    expect(clashesIn(calendar('2027-06-19', { deliver: 11, 'test-scraps': 85 }))).toEqual([
      { earlier: 'order-cloth', later: 'test-scraps' },
      { earlier: 'last-fitting', later: 'deliver' },
    ]);
  });

  it('what clashes and what is unknown is told by its name', () => {
    const text = skirt({ more: 'dates: {event: 2027-06-12, before: {cut: 60, stitching: 3}}' });
    const found = made(text).findings.filter(({ code }) => /clash|milestone/.test(code));
    expect(found.map(({ code, message, span }) => [code, message, text.slice(span.start, span.end)])).toEqual(
      [
        ['unknown-milestone', expect.stringMatching(/no milestone .?stitching/), '3'],
        [
          'calendar-clash',
          expect.stringMatching(/The milestone .?cut.? falls before .?toile-fitting/),
          'before',
        ],
      ],
    );
    expect(found[0]!.hint).toContain('order-cloth, test-scraps, toile,');
    const without = made(skirt({ more: 'dates: {before: {stitching: 3}}' }));
    expect(without.findings.map(({ code }) => code)).toContain('unknown-milestone');
    expect(without.facts.calendar).toBeUndefined();
  });
});
