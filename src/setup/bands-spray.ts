import { type BandRow, bandRows, type Scope } from './bands.js';

const NOTE = 'a reference note on transfer modes';

const SPRAY: Scope = {
  mode: 'spray',
  material: 'carbon-steel',
  gas: 'argon-rich',
  co2: [0, 15],
  source: "a manufacturer's data sheet, Table 6-2",
  certainty: 'F',
  whole: true,
};

/** Axial spray windows. */
export const SPRAY_BANDS: readonly BandRow[] = [
  ...bandRows(SPRAY, [
    [
      [0.76, 0.76],
      [150, 265],
      [24, 28],
    ],
    [
      [0.89, 0.89],
      [175, 290],
      [24, 28],
    ],
    [
      [1.14, 1.14],
      [200, 315],
      [24, 30],
    ],
  ]),
  ...bandRows({ ...SPRAY, gas: '90Ar/10CO2', co2: [5, 15], source: NOTE, certainty: 'F2' }, [
    [
      [0.89, 0.89],
      [190, 250],
      [24, 28],
      [380, 500],
    ],
    [
      [1.14, 1.14],
      [250, 320],
      [26, 29],
      [350, 450],
    ],
    [
      [1.32, 1.32],
      [300, 380],
      [28, 31],
      [300, 400],
    ],
    [
      [1.59, 1.59],
      [350, 450],
      [29, 32],
      [250, 350],
    ],
  ]),
  ...bandRows(
    {
      ...SPRAY,
      gas: 'Ar with little CO2 and O2',
      source: "a gas supplier's welder's handbook, p. 7, chart as read here",
    },
    [[[1.0, 1.0], [230, 400], [26, 40], null, 'above 230 A and 26 V; the upper ends are open']],
  ),
  ...bandRows(
    {
      ...SPRAY,
      material: 'stainless-steel',
      gas: 'Ar+1–5O2',
      co2: [0, 3],
      source: 'Modern Welding (2020), Fig. 8-17',
    },
    [
      [
        [0.76, 0.76],
        [160, 210],
        [24, 28],
      ],
      [
        [0.89, 0.89],
        [180, 255],
        [24, 29],
      ],
      [
        [1.14, 1.14],
        [200, 300],
        [24, 30],
      ],
      [
        [1.59, 1.59],
        [215, 325],
        [24, 32],
      ],
    ],
  ),
  ...bandRows(
    {
      ...SPRAY,
      material: 'aluminium',
      gas: 'argon',
      co2: [0, 0],
      source: 'Modern Welding (2020), Fig. 8-18',
    },
    [
      [
        [0.76, 0.76],
        [100, 150],
        [19, 22],
      ],
      [
        [1.19, 1.19],
        [130, 200],
        [22, 28],
      ],
      [
        [1.59, 1.59],
        [160, 300],
        [24, 30],
      ],
    ],
  ),
];
