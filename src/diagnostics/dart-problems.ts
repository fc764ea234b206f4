import { error } from './finding.ts';
import { quoted } from './safe-text.ts';

/** Problems of darts at the waist. */

export const dartOnFullness = error('dart-on-fullness', (name: string, what: string) => ({
  message: `The dart ${quoted(name)} lies in ${quoted(what)}, whose top is gathered or pleated already.`,
  why: 'Where its legs lie on the sewn waist could not be told.',
  hint: 'Take out the `fullness` there, or the dart.',
}));

export const dartPastHip = error(
  'dart-past-hip',
  (name: string, length: string, hip: string, measured: boolean) => ({
    message: `The dart ${quoted(name)} is ${length} long, and ${measured ? 'her hip lies' : 'hips commonly lie'} ${hip} below the waist.`,
    why: 'Its point would stand out below where she is widest.',
    hint: 'Let it end a few centimetres above the hip; a flatter figure takes longer darts, nobody one past it.',
  }),
);

export const dartTooWide = error('dart-too-wide', (name: string, gore: string, room: string) => ({
  message: `The dart ${quoted(name)} finds no room on gore ${quoted(gore)}: beside its legs there would be ${room} of the sewn top.`,
  why: 'Its legs would run into a seam, or into another dart.',
  hint: 'Let it take in less, put it nearer to the middle of the gore, or take two.',
}));

export const dartsTooNear = error(
  'darts-too-near',
  (name: string, other: string, gore: string, room: string) => ({
    message: `The darts ${quoted(other)} and ${quoted(name)} of gore ${quoted(gore)} have ${room} of the sewn top between them.`,
    why: 'Between their legs nothing would be left to sew to the waist.',
    hint: 'Give them places of their own with `at`, or make them one dart.',
  }),
);

export const dartWithWaistFacing = error('dart-with-waist-facing', (name: string) => ({
  message: `The dart ${quoted(name)} lies in a waist that is finished with a shaped facing.`,
  why: 'The facing would be cut to the gore with its dart open, and so too long.',
  hint: 'Take `finish: band` or `finish: stay`.',
}));
