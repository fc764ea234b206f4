/**
 * A pattern written straight from the closed forms of a ring's sectors, cut lines and all: the true drawing on which the
 * measuring is tried, and which is then spoiled to see that the measuring notices.
 */
export interface HandRing {
  readonly name: string;
  readonly frontEdge: string;
  readonly backEdge: string;
  readonly waist: number;
  readonly hem: number;
  readonly slant: number;
  readonly notches: readonly number[];
}

export const HAND_YAML = `
format: 1
gown: By hand
units: mm
bodice: {waist-seam: 560}
gores:
  - {name: front, top: 160, hem: 400}
  - {name: back, top: 120, hem: 300}
lengths: {measured: finished, hem-width-at: 900, at: {centre-front: 900, centre-back: 900}}
allowances: {seam: 15, waist: 12, hem: 40}
layers: [{name: shell, cloth: calico, hem: turned}]
cloths: {calico: {width: 1500}}
`;

const RINGS: readonly HandRing[] = [
  {
    name: 'front',
    frontEdge: 'centre-front',
    backEdge: 'front/back',
    waist: 160,
    hem: 400,
    slant: 900,
    notches: [300, 620],
  },
  {
    name: 'back',
    frontEdge: 'front/back',
    backEdge: 'centre-back',
    waist: 120,
    hem: 300,
    slant: 900,
    notches: [300, 620],
  },
];
const [SEAM, WAIST, HEM] = [15, 12, 40];

export function handSvg(): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="1100mm" viewBox="0 0 1000 1100">
${RINGS.map((ring, i) => group(ring, { x: 260 + i * 440, y: 60 })).join('\n')}
</svg>`;
}

function group(ring: HandRing, at: { x: number; y: number }): string {
  const flare = (ring.hem - ring.waist) / ring.slant;
  const inner = ring.waist / flare;
  const outer = inner + ring.slant;
  const place = (radius: number, angle: number) =>
    `${(at.x + radius * Math.sin(angle)).toFixed(5)} ${(at.y - inner + radius * Math.cos(angle)).toFixed(5)}`;
  const [left, right] = [-flare / 2, flare / 2];
  const beyond = (radius: number) => Math.asin(SEAM / radius);
  const top = inner - WAIST;
  const mirrored = (side: 1 | -1) =>
    Array.from({ length: 21 }, (_, k) =>
      place(outer + (HEM * k) / 20, side * (right + beyond(outer - (HEM * k) / 20))),
    );
  const bottom = outer + HEM;
  const end = right + beyond(outer - HEM);
  const cut = [
    `M ${place(top, left - beyond(top))} A ${top} ${top} 0 0 0 ${place(top, right + beyond(top))}`,
    ...mirrored(1).map((p) => `L ${p}`),
    `A ${bottom} ${bottom} 0 0 1 ${place(bottom, -end)}`,
    ...mirrored(-1)
      .reverse()
      .map((p) => `L ${p}`),
    'Z',
  ].join(' ');
  const sew = (edge: string, d: string) => `<path class="sew" data-edge="${edge}" d="${d}"/>`;
  const notch = (edge: string, side: 1 | -1, way: number, shift: number) => {
    const radius = inner + way + shift;
    const out = Math.hypot(radius, SEAM);
    const turn = side * (right + Math.atan2(SEAM, radius));
    const tip = Math.hypot(radius, SEAM - 6);
    return `M ${place(out, turn)} L ${place(tip, side * (right + Math.atan2(SEAM - 6, radius)))}`.replace(
      /^/,
      `${edge}|`,
    );
  };
  const notches = ring.notches.flatMap((way) => [
    mark(notch(ring.frontEdge, -1, way, 0)),
    mark(`${notch(ring.backEdge, 1, way, -2)} ${notch('', 1, way, 2).slice(1)}`),
  ]);
  return `<g class="piece" data-gore="${ring.name}" data-layers="shell"><path class="cut" d="${cut}"/>
${sew('waist', `M ${place(inner, left)} A ${inner} ${inner} 0 0 0 ${place(inner, right)}`)}
${sew('hem', `M ${place(outer, right)} A ${outer} ${outer} 0 0 1 ${place(outer, left)}`)}
${sew(ring.frontEdge, `M ${place(outer, left)} L ${place(inner, left)}`)}
${sew(ring.backEdge, `M ${place(inner, right)} L ${place(outer, right)}`)}
<path class="grain" d="M ${place(inner + 100, 0)} L ${place(outer - 100, 0)}"/>
${notches.join('\n')}<text x="${at.x}" y="400">${ring.name} &amp; more</text></g>`;
}

function mark(edgeAndPath: string): string {
  const [edge, d] = edgeAndPath.split('|');
  return `<path class="notch" data-edge="${edge}" d="${d}"/>`;
}

/** What a true report says of the same rings. */
export function handReport() {
  const gores = RINGS.map((ring) => ({
    name: ring.name,
    copies: 2,
    top: ring.waist,
    hem: ring.hem,
    flareDegrees: ((ring.hem - ring.waist) / ring.slant) * (180 / Math.PI),
    area: ((ring.waist + ring.hem) * ring.slant) / 2,
    edges: { waist: ring.waist, hem: ring.hem, [ring.frontEdge]: ring.slant, [ring.backEdge]: ring.slant },
  }));
  return {
    gown: 'By hand',
    gores,
    seams: [
      { name: 'front/back', lengths: [900, 900] as const, difference: 0, hemAngle: 180, waistAngle: 180 },
    ],
    waist: { sewn: 560, bodice: 560, difference: 0 },
    hem: { sewn: 1400 },
    layers: [{ name: 'shell', hem: 'turned', sewnHem: 1400 }],
    findings: [],
  };
}
