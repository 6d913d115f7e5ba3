import { type BandRow, bandRows, type Scope } from './bands.js';

const steel = {
  mode: 'short-circuit',
  material: 'carbon-steel',
  certainty: 'F',
} as const;

const DATA_SHEET: Scope = {
  ...steel,
  gas: 'CO2 (mild steel) or Ar-CO2 (low alloy)',
  co2: [15, 100],
  source: "a manufacturer's data sheet, Table 6-1",
  whole: true,
};

const MAG_TABLE: Scope = {
  ...steel,
  gas: '80Ar/20CO2',
  co2: [15, 25],
  source: "a manufacturer's MAG table (a)",
  whole: false,
};

const SECOND_TABLE: Scope = {
  ...steel,
  gas: 'Ar+CO2, ratio not stated',
  co2: [5, 50],
  source: "a second manufacturer's table (b)",
  whole: false,
};

/** Short-circuit windows. */
export const DIP_BANDS: readonly BandRow[] = [
  ...bandRows(DATA_SHEET, [
    [
      [0.76, 0.76],
      [70, 130],
      [15, 21],
    ],
    [
      [0.89, 0.89],
      [80, 190],
      [16, 22],
    ],
    [
      [1.14, 1.14],
      [100, 225],
      [17, 22],
    ],
  ]),
  ...bandRows(
    {
      ...DATA_SHEET,
      gas: 'steel, general',
      co2: [0, 100],
      source: 'Welding: Principles and Practices, ch. 21',
    },
    [
      [
        [0.76, 1.14],
        [50, 225],
        [12, 22],
      ],
    ],
  ),
  ...bandRows(
    {
      ...DATA_SHEET,
      gas: 'Ar-CO2 or CO2',
      source: 'a reference note on transfer modes',
      certainty: 'F2',
    },
    [[null, [40, 200], [14, 22]]],
  ),
  ...bandRows(
    {
      ...DATA_SHEET,
      material: 'stainless-steel',
      gas: '90He/7.5Ar/2.5CO2',
      co2: [0, 5],
      source: 'Modern Welding (2020), Fig. 8-16',
    },
    [
      [
        [0.76, 0.8],
        [50, 145],
        [17, 22],
      ],
      [
        [0.89, 0.9],
        [65, 175],
        [17, 22],
      ],
      [
        [1.14, 1.2],
        [100, 210],
        [17, 22],
      ],
    ],
  ),
  ...bandRows(
    {
      ...DATA_SHEET,
      gas: 'not stated',
      co2: [0, 100],
      source: "a manufacturer's setting guide",
    },
    [
      [[0.58, 0.58], [30, 90], null],
      [[0.76, 0.76], [40, 145], null],
      [[0.89, 0.89], [50, 180], null],
      [[1.14, 1.14], [75, 250], null],
    ],
  ),
  ...bandRows(MAG_TABLE, [
    [[0.8, 0.9], [60, 70], [15, 16], null, 'butt, 1.2 mm'],
    [[0.8, 0.9], [100, 110], [16, 17], null, 'butt, 1.6 mm'],
    [[0.8, 1.2], [120, 140], [16, 17], null, 'butt, 3.2 mm'],
    [[1.0, 1.2], [150, 160], [17, 18], null, 'butt, 4.0 mm'],
    [[0.6, 0.8], [100, 110], [18, 19.5], null, 'fillet, 1.6 mm'],
    [[0.8, 1.0], [115, 125], [19.5, 20], null, 'fillet, 2.4 mm'],
    [[0.8, 1.2], [130, 140], [19.5, 21], null, 'fillet, 3.2 mm'],
  ]),
  ...bandRows(SECOND_TABLE, [
    [[0.8, 1.0], [50, 55], [13, 15], null, 'butt, 1.0 mm'],
    [[0.8, 1.0], [100, 110], [16, 17], null, 'butt, 1.6 mm'],
    [[0.9, 1.2], [110, 120], [17, 18], null, 'butt, 2.3 mm'],
    [[0.9, 1.2], [120, 140], [17, 19], null, 'butt, 3.2 mm'],
    [[0.9, 1.2], [150, 170], [18, 21], null, 'butt, 4.0 mm'],
  ]),
  ...bandRows({ ...MAG_TABLE, source: 'R. D. Smith, dip-transfer waveform analysis' }, [
    [[1.2, 1.2], [180, 180], [18.7, 18.7], null, 'measured on 5 mm plate, top of the dip range'],
  ]),
  ...bandRows(
    {
      ...DATA_SHEET,
      gas: 'pure CO2',
      co2: [100, 100],
      source: 'teaching figure',
      certainty: 'CP',
    },
    [[[1.14, 1.14], null, [18.5, 24]]],
  ),
];
