import {
  ALUMINIUM,
  ANY_GAS,
  ANY_WIRE,
  STAINLESS,
  STEEL,
  type WorkingWindow,
  windowRows,
} from './window-row.js';

/** Windows of dip transfer. */
export const DIP_WINDOWS: readonly WorkingWindow[] = [
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: STEEL,
      co2Percent: [15, 100],
      source: "a manufacturer's data sheet, Table 6-1",
      certainty: 'F',
    },
    [
      [0.76, 0.8, 70, 130, 15, 21],
      [0.89, 0.9, 80, 190, 16, 22],
      [1.14, 1.2, 100, 225, 17, 22],
    ],
  ),
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: STEEL,
      co2Percent: ANY_GAS,
      source: 'Welding: Principles and Practices, ch. 21',
      certainty: 'F',
    },
    [[0.76, 1.2, 50, 225, 12, 22]],
  ),
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: STEEL,
      co2Percent: ANY_GAS,
      source: 'a reference note on transfer modes',
      certainty: 'F2',
    },
    [[...ANY_WIRE, 40, 200, 14, 22]],
  ),
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: STAINLESS,
      co2Percent: [0, 5],
      source: 'Modern Welding (2020), Fig. 8-16, in 90He/7.5Ar/2.5CO2',
      certainty: 'F',
    },
    [
      [0.8, 0.8, 50, 145, 17, 22],
      [0.9, 0.9, 65, 175, 17, 22],
      [1.2, 1.2, 100, 210, 17, 22],
    ],
  ),
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: STAINLESS,
      co2Percent: [0, 5],
      source: 'argon mixes some 2 V below the helium mix of Fig. 8-16: common practice, no source',
      certainty: 'CP',
    },
    [
      [0.6, 0.8, 45, 140, 14, 20],
      [0.9, 1.0, 65, 175, 15, 20],
      [1.2, 1.6, 90, 210, 15, 20],
    ],
  ),
  ...windowRows(
    {
      mode: 'short-circuit',
      materials: ALUMINIUM,
      co2Percent: [0, 0],
      source: 'common practice, no source',
      certainty: 'CP',
    },
    [[...ANY_WIRE, 40, 140, 12, 20]],
  ),
];
