import { error, warning } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of the sections for money, the client, closing, fitting and printing. */

export const noCurrency = warning('no-currency', () => ({
  message: 'Prices are given, and no `currency` is.',
  why: 'Amounts are printed bare, and a client could read them in another money.',
  hint: 'Add `currency:` with its code, such as GBP, EUR or USD.',
}));

export const stagesNotWhole = error('stages-not-whole', (whole: string) => ({
  message: `The deposit and the stages make ${whole} of the price.`,
  why: 'The client would pay too much or too little.',
  hint: 'Let them add up to 100 %.',
}));

export const clientByName = warning('client-by-name', (client: string) => ({
  message: `${quoted(client)} looks like a person's name.`,
  why: "A client's measurements are personal data, and this file is kept and copied; the data-protection authority says what is allowed.",
  hint: 'Write a code, such as LAN-07, and keep the list of names elsewhere.',
}));

export const sideOfCentre = warning('side-of-centre', (station: string) => ({
  message: `A side is given for a closure at ${quoted(station)}.`,
  why: 'A centre seam has no side, so it is not used.',
  hint: 'Take `side` out.',
}));

export const bustlePointTwice = error('bustle-point-twice', () => ({
  message: 'This bustle point is at a seam and on a gore at once.',
  why: 'It can be sewn in one place only.',
  hint: 'Keep `seam`, or `gore` with `across`.',
}));

export const bustlePointNowhere = error('bustle-point-nowhere', () => ({
  message: 'This bustle point does not say where round the skirt it is.',
  why: 'Its anchor cannot be marked, nor its pick-up worked out.',
  hint: 'Give its `seam`, or `gore` and `across`, such as `{gore: back, across: 50%, anchor: …}`.',
}));

export const fittingsOutOfOrder = error('fittings-out-of-order', (date: string, before: string) => ({
  message: `The fitting of ${date} stands after that of ${before}.`,
  why: 'Each alters what the one before it left.',
  hint: 'Put the fittings in the order in which they were held.',
}));

export const fittingUpsideDown = error('fitting-upside-down', (from: string, to: string) => ({
  message: `The seam is altered from ${from} to ${to} below the waist.`,
  why: 'The stretch has no length.',
  hint: 'Let `to` lie further down than `from`.',
}));

export const bodiceFittingUpsideDown = error('bodice-fitting-upside-down', (from: string, to: string) => ({
  message: `The seam of the bodice is altered from ${from} to ${to} above the waist.`,
  why: 'The stretch has no length.',
  hint: 'Let `to` lie further up than `from`; below the waist both are negative.',
}));

export const bodiceNotDrafted = error('fitting-of-measured-bodice', () => ({
  message: 'A fitting alters the bodice, and the bodice of this spec is measured, not drafted.',
  why: 'There are no panels that it could alter: only their edge is known.',
  hint: 'Draft the bodice (`bodice.draft`); or measure its edge again and write it into `waist-seam` and `panels`.',
}));

export const bodiceOfOneLayer = error('fitting-of-one-bodice-layer', () => ({
  message: 'A fitting of one layer alters the bodice.',
  why: 'The panels of all layers of a bodice are cut alike, so that they can be sewn as one.',
  hint: 'Write the bodice under an entry of its own, without `layer`.',
}));

export const printerOffScale = error(
  'printer-off-scale',
  (way: string, measured: string, fitted: boolean) => ({
    message: fitted
      ? `The test square measures ${measured} mm ${way}, which is what "fit to page" makes of it.`
      : `The test square measures ${measured} mm ${way} in place of 100.`,
    why: fitted
      ? 'The page was scaled by the printing program, not by the printer; correcting it would hide that.'
      : 'Printers err by a percent or two; more is a scaled page or a slip of the ruler, and is not corrected.',
    hint: 'Print the first sheet again at 100 %, with no fit to page, and measure again.',
  }),
);
