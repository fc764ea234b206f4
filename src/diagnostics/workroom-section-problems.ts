import type { Diagnostic, Span } from './diagnostic.ts';
import { problem } from './problem.ts';
import { quoted } from './safe-text.ts';

/** Problems of the sections for money, the client, closing, fitting and printing. */

export const noCurrency = (span: Span): Diagnostic => ({
  ...problem('no-currency', span, 'warning'),
  message: 'prices are given and no `currency`',
  why: 'amounts are printed bare, and a client could read them in another money',
  hint: 'add `currency:` with its code, such as GBP, EUR or USD',
});

export const stagesNotWhole = (span: Span, whole: string): Diagnostic => ({
  ...problem('stages-not-whole', span),
  message: `the deposit and the stages make ${whole} of the price`,
  why: 'the client would pay too much or too little',
  hint: 'let them add up to 100%',
});

export const clientByName = (span: Span, client: string): Diagnostic => ({
  ...problem('client-by-name', span, 'warning'),
  message: `${quoted(client)} looks like a person's name`,
  why: "a client's measurements are personal data, and this file is kept and copied; the data-protection authority says what is allowed",
  hint: 'write a code, such as LAN-07, and keep the list of names elsewhere',
});

export const sideOfCentre = (span: Span, station: string): Diagnostic => ({
  ...problem('side-of-centre', span, 'warning'),
  message: `a side is given for a closure at ${quoted(station)}`,
  why: 'a centre seam has no side, so it is not used',
  hint: 'take `side` out',
});

export const fittingsOutOfOrder = (span: Span, date: string, before: string): Diagnostic => ({
  ...problem('fittings-out-of-order', span),
  message: `the fitting of ${date} stands after that of ${before}`,
  why: 'each alters what the one before it left',
  hint: 'put the fittings in the order in which they were held',
});

export const fittingUpsideDown = (span: Span, from: string, to: string): Diagnostic => ({
  ...problem('fitting-upside-down', span),
  message: `the seam is altered from ${from} to ${to} below the waist`,
  why: 'the stretch has no length',
  hint: 'let `to` lie further down than `from`',
});

export const printerOffScale = (span: Span, way: string, measured: string, fitted: boolean): Diagnostic => ({
  ...problem('printer-off-scale', span),
  message: fitted
    ? `the test square measures ${measured} mm ${way}, which is what "fit to page" makes of it`
    : `the test square measures ${measured} mm ${way} in place of 100`,
  why: fitted
    ? 'the page was scaled by the printing program, not by the printer; correcting it would hide that'
    : 'printers err by a percent or two; more is a scaled page or a slip of the ruler, and is not corrected',
  hint: 'print the first sheet again at 100 %, with no fit to page, and measure again',
});
