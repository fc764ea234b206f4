import type { CautionKind } from '../making/order/caution-kind.ts';

/** Reminders in words; each says who decides, none certifies anything. `weight` where every cloth's is known. */
export type CautionText = string | ((weight: string | undefined) => string);

/** Where the work is: read by whoever cuts, sews and fits. */
export const JOB_CAUTIONS: Readonly<Partial<Record<CautionKind, CautionText>>> = {
  child:
    'For a child: cords and sashes can catch. EN 14682 says by age where a child’s clothes may have cords, and how long: look in the current edition; on stage it is advice. Your country’s product-safety regulator and the production’s risk assessment decide. A train should come off by itself when it is trodden on.',
  data: 'Her measures are personal data, on paper too: a code and no name, put away at night, destroyed when they are no longer needed. Your data-protection authority says how long they may be kept.',
  irons:
    'Irons and steam burn: stand the iron on its heel, point the steam away from hands, unplug it when you leave. Its maker’s instructions decide.',
  flame:
    'Net, flounces and sheer cloth catch fast and burn fast. Flame resistance is for the supplier’s certificate and the venue’s fire officer; nothing here speaks for it. Ask before the cloth is cut.',
  'floor-cutting':
    'Cutting on the floor strains back and knees: kneel on a pad, change place, keep others off the cloth. Your workplace-safety body has the rules.',
  blades:
    'Rotary blades: close the guard each time it is put down. The blade’s maker and your workplace-safety body decide.',
  sequins:
    'Sequins and beads fly off the needle: take them out of every allowance, wear eye protection, press under a cloth. The machine’s manual decides.',
  'needle-zip':
    'A needle that meets zip teeth or a stop can shatter: turn the wheel by hand there, wear eye protection, follow the machine’s manual.',
  'needle-bone':
    'A needle that meets a bone can shatter: feel for the bones’ ends and mark them, wear eye protection, follow the machine’s manual.',
  'many-plies':
    'Many plies: sew slowly, by the hand wheel over crossings. The machine’s maker says what it takes.',
  nickel:
    'Hooks may hold nickel: ask the wearer before they are sewn on; a doctor decides what her skin bears.',
  'braid-heat':
    'Nylon braid melts under a hot iron: try the heat on an end, use a press cloth. Its supplier says what it bears.',
  weight: (weight) =>
    weight === undefined
      ? 'What the skirt weighs is not known, as some cloth’s weight is not: weigh it when it is sewn. All of it hangs on the waist: whether the stay holds and sits well is for the fitter to say; if her back is bad, for a doctor.'
      : `The skirt weighs about ${weight} before edging and what she wears under it, and hangs on the waist: whether the stay holds and sits well is for the fitter to say; if her back is bad, for a doctor.`,
  'tight-lacing':
    'Lacing presses on breath and organs: no tighter than she breathes, sits and eats in with ease. She decides; if in doubt, a doctor does.',
  hoop: 'A hoop swings where she does not see it: into a flame behind her, in doors, and up in front as she sits. Try a door, a chair and a step at the fitting; wearer and venue decide.',
  stairs: 'Long hems on steps: in the real shoes, with a hand to hold. Wearer and venue decide.',
  'train-on-stairs':
    'Long hems and trains on steps: in the real shoes, with a hand to hold. Wearer and venue decide.',
  pins: 'A pin left in a seam hurts: count them, run a magnet along every hem and allowance. Nobody wears it before the count is right.',
};

/** What the wearer has to know; printed on the client's pages, because she never sees the job sheet. */
export const WEARER_CAUTIONS: Readonly<Partial<Record<CautionKind, CautionText>>> = {
  child: JOB_CAUTIONS.child!,
  stairs:
    'Stairs and escalators: lift the hem in front, and mind it on escalators. Wear the shoes of the fittings. You and the venue decide how you go.',
  'train-on-stairs':
    'Stairs and escalators: lift the hem in front, carry, bustle or take off the train, and keep off escalators with it down. Wear the shoes of the fittings. You and the venue decide how you go.',
  dancing:
    'Dancing: bustle the train first, all points, and check that each holds. You decide whether it is safe to dance in.',
  hoop: 'The hoop swings out of your sight: keep it from candles and heaters behind you, turn in doors, and draw it up behind before you sit, or it tips up in front. You and the venue decide; try it before the day.',
  'flame-worn':
    'Flames: keep the gown, and net, flounces and sheers most of all, away from candles, heaters and stoves, and keep moving air in mind. It is not flame-resistant unless a supplier’s certificate says so; the venue’s fire officer decides.',
  weight: (weight) =>
    weight === undefined
      ? 'Weight: what the skirt weighs is not known yet: ask the maker, who weighs it. It hangs on the waist stay: fasten the stay first. If it drags, tell the maker; if it hurts, take it off, and ask a doctor.'
      : `Weight: the skirt weighs about ${weight} before edging and what she wears under it, and hangs on the waist stay. Fasten the stay first. If it drags, tell the maker; if it hurts, take it off, and ask a doctor.`,
  nickel: 'Hooks and zips may hold nickel. Tell the maker if your skin reacts; a doctor decides.',
  'tight-lacing':
    'Lacing: not so tight that breathing or eating is hard. If you are in doubt, a doctor decides.',
  data: 'Your measures are kept under a code and deleted when you ask. The data-protection authority of your country says what your rights are.',
};
