import {
  ALUMINIUM,
  ANY_WIRE,
  type Range,
  STAINLESS,
  STEEL,
  type WorkingWindow,
  windowRows,
} from './window-row.js';

/** Published line through the least currents for spray (MIG Welding Handbook, Table 1-2): A and A/mm. */
const LINE = { steel: [33, 156], stainless: [24, 164] } as const;

/** 0.8 to 1.05 of that line: CO2 raises the transition by about 1 % a per cent. */
function belowTransition(line: readonly [number, number], mm: number): Range {
  const currentA = line[0] + line[1] * mm;
  return [Math.round(0.8 * currentA), Math.round(1.05 * currentA)];
}

const BELOW_TRANSITION = {
  mode: 'globular',
  source:
    'current: 0.8 to 1.05 of the line through Table 1-2 of the MIG Welding Handbook; voltage as the 1.0 mm chart',
  certainty: 'X',
} as const;

/** Windows of globular transfer; no two sources agree. */
export const GLOBULAR_WINDOWS: readonly WorkingWindow[] = [
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [0, 15],
      source: "a gas supplier's welder's handbook, p. 7, chart as read here",
      certainty: 'F',
    },
    [[1.0, 1.0, 180, 230, 22, 26]],
  ),
  ...[0.6, 0.8, 0.9, 1.2, 1.4, 1.6].flatMap((mm) => [
    ...windowRows({ ...BELOW_TRANSITION, materials: STEEL, co2Percent: [0, 15] }, [
      [mm, mm, ...belowTransition(LINE.steel, mm), 22, 26],
    ]),
    ...windowRows({ ...BELOW_TRANSITION, materials: STAINLESS, co2Percent: [0, 5] }, [
      [mm, mm, ...belowTransition(LINE.stainless, mm), 22, 26],
    ]),
  ]),
  ...windowRows({ ...BELOW_TRANSITION, materials: STAINLESS, co2Percent: [0, 5] }, [
    [1.0, 1.0, ...belowTransition(LINE.stainless, 1.0), 22, 26],
  ]),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [15, 30],
      source: 'common practice, no source',
      certainty: 'CP',
    },
    [[1.2, 1.2, 180, 250, 22, 27]],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [15, 30],
      source:
        'current: the row of 1.2 mm by the line through Table 1-2 of the MIG Welding Handbook; voltage: common practice, no source',
      certainty: 'X',
    },
    [
      [0.6, 0.6, 105, 145, 20, 25],
      [0.8, 0.8, 130, 180, 21, 26],
      [0.9, 0.9, 140, 200, 21, 26],
      [1.0, 1.0, 155, 215, 22, 26],
      [1.4, 1.6, 205, 315, 22, 28],
    ],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [15, 100],
      source: "a second manufacturer's table (b), whose header may mean cored wire",
      certainty: 'F',
    },
    [[1.2, 1.2, 250, 320, 27, 32]],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [30, 100],
      source: 'from memory of industry guides',
      certainty: 'M',
    },
    [[1.2, 1.2, 200, 300, 26, 32]],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [30, 100],
      source:
        'current: the row of 1.2 mm by the line through Table 1-2 of the MIG Welding Handbook; voltage: common practice, no source',
      certainty: 'X',
    },
    [
      [0.8, 0.8, 140, 215, 24, 29],
      [0.9, 0.9, 155, 235, 24, 30],
      [1.0, 1.0, 170, 255, 25, 30],
      [1.4, 1.6, 230, 390, 27, 34],
    ],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: STEEL,
      co2Percent: [30, 100],
      source:
        'current: below 250 A, API RP 577 §4.4.3 (lower end own choice); voltage: two reference notes that disagree',
      certainty: 'F2',
    },
    [[...ANY_WIRE, 110, 250, 20, 28]],
  ),
  ...windowRows(
    {
      mode: 'globular',
      materials: ALUMINIUM,
      co2Percent: [0, 0],
      source:
        'current: below the line through Table 1-2 of the MIG Welding Handbook; voltage: common practice, no source',
      certainty: 'X',
    },
    [
      [0.8, 1.0, 70, 120, 17, 23],
      [1.2, 1.2, 95, 145, 18, 24],
      [1.6, 1.6, 125, 190, 19, 25],
    ],
  ),
];
