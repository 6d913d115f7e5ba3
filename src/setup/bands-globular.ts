import { type BandRow, bandRows, type Scope } from './bands.js';

const NOTE = 'a reference note on transfer modes';

const GLOBULAR: Scope = {
  mode: 'globular',
  material: 'carbon-steel',
  gas: 'pure CO2',
  co2: [100, 100],
  source: 'teaching figure',
  certainty: 'CP',
  whole: true,
};

/** Globular windows; no two sources agree. */
export const GLOBULAR_BANDS: readonly BandRow[] = [
  ...bandRows(
    {
      ...GLOBULAR,
      gas: 'Ar with little CO2 and O2',
      co2: [0, 15],
      source: "a gas supplier's welder's handbook, p. 7, chart as read here",
      certainty: 'F',
    },
    [
      [
        [1.0, 1.0],
        [180, 230],
        [22, 26],
      ],
    ],
  ),
  ...bandRows(
    {
      ...GLOBULAR,
      gas: 'pure CO2 or mix',
      co2: [15, 100],
      source: "a second manufacturer's table (b), whose header may mean cored wire",
      certainty: 'F',
    },
    [[[1.2, 1.2], [250, 320], [27, 32], null, 'fillet']],
  ),
  ...bandRows({ ...GLOBULAR, source: 'API RP 577 §4.4.3', certainty: 'F2' }, [
    [null, [0, 250], null],
  ]),
  ...bandRows({ ...GLOBULAR, source: 'industry guides', certainty: 'M' }, [
    [
      [1.2, 1.2],
      [200, 300],
      [26, 32],
    ],
  ]),
  ...bandRows({ ...GLOBULAR, gas: 'M21', co2: [15, 25], source: 'shop practice' }, [
    [
      [1.2, 1.2],
      [180, 250],
      [22, 27],
    ],
  ]),
  ...bandRows({ ...GLOBULAR, gas: 'CO2-rich', co2: [25, 100], source: NOTE, certainty: 'F2' }, [
    [null, null, [20, 24]],
  ]),
  ...bandRows(
    {
      ...GLOBULAR,
      material: 'any',
      gas: 'not stated',
      co2: [0, 100],
      source: 'another reference note on transfer modes, which disagrees',
      certainty: 'F2',
    },
    [[null, null, [22, 28]]],
  ),
  ...bandRows(GLOBULAR, [[[1.14, 1.14], null, [26, 28]]]),
];

/** What is taught for "the highest mode" of 0.045 in wire in pure CO2: not spray, whatever its name. */
export const TAUGHT_HIGHEST_MODE_IN_CO2 = {
  voltageV: { min: 28, max: 30 },
  diameterMm: 1.14,
  source: 'teaching figure',
  certainty: 'CP',
} as const;
