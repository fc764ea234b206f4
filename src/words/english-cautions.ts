import type { CautionKind } from '../making/order/step.ts';

/** Reminders that stand where the step is; each says who decides, none certifies anything. */
export const STEP_CAUTIONS: Readonly<Record<CautionKind, string>> = {
  'floor-cutting':
    'Cutting on the floor strains back and knees: kneel on a pad, change place, keep others off the cloth. Your workplace-safety body has the rules.',
  blades:
    'Rotary blades: close the guard each time it is put down. The blade’s maker and your workplace-safety body decide.',
  'needle-zip':
    'A needle that meets zip teeth or a stop can shatter: turn the wheel by hand there, wear eye protection, follow the machine’s manual.',
  'needle-bone':
    'A needle that meets a bone can shatter: feel for the bones’ ends and mark them, wear eye protection, follow the machine’s manual.',
  'many-plies':
    'Many plies: sew slowly, by the hand wheel over crossings. The machine’s maker says what it takes.',
  sequins:
    'Sequins and beads fly off the needle: take them out of every allowance, wear eye protection, press under a cloth.',
  'braid-heat': 'Nylon braid melts under a hot iron: try the heat on an end, use a press cloth.',
  weight:
    'The skirt’s weight hangs on the waist: whether the stay holds and sits well is for the fitter to say.',
  'long-hem':
    'Long hems and trains on steps: in the real shoes, with a hand to hold. Wearer and venue decide.',
  'net-flame':
    'Net burns fast. Flame resistance is for the supplier’s certificate and the venue’s fire officer; nothing here speaks for it.',
  pins: 'A pin left in a seam hurts: count them, run a magnet along every hem and allowance.',
  'tight-lacing':
    'Lacing presses on breath and organs: no tighter than she breathes, sits and eats in with ease. She decides; if in doubt, a doctor does.',
  nickel:
    'Hooks may hold nickel: ask the wearer before they are sewn on; a doctor decides what her skin bears.',
};

/** What the wearer has to know; printed on the client's pages, because she never sees the job sheet. */
export const WEARER_CAUTIONS = {
  stairs:
    'Stairs and escalators: lift the hem in front, carry or bustle the train, and keep off escalators with it down. Wear the shoes of the fittings. You and the venue decide how you go.',
  flame:
    'Flames: keep the gown, and net and sheers most of all, away from candles, heaters and stoves, and keep moving air in mind. It is not flame-resistant unless a supplier’s certificate says so; the venue’s fire officer decides.',
  weight: (weight: string): string =>
    `Weight: the skirt weighs about ${weight} before edging and petticoat, and hangs on the waist stay. Fasten the stay first. If it drags, tell the maker; if it hurts, take it off.`,
  hooks: 'Hooks and zips may hold nickel. Tell the maker if your skin reacts; a doctor decides.',
  lacing: 'Lacing: not so tight that breathing or eating is hard. If you are in doubt, a doctor decides.',
  dancing: 'Dancing: bustle the train first, all points, and check that each holds.',
  child:
    'For a child: cords and sashes can catch. EN 14682 limits them (no cords at the neck up to about seven years; 75 mm and 360 mm for older children, from memory: look in the current edition); it leaves out costumes worn on the stage, where it is advice. Your country’s product-safety regulator and the production’s risk assessment decide. A train should come off by itself when it is trodden on.',
  data: 'Your measures are kept under a code and deleted when you ask. The data-protection authority of your country says what your rights are.',
} as const;
