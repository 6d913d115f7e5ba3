import { ALUMINIUM, STAINLESS, STEEL, type WorkingWindow, windowRows } from './window-row.js';

/** Windows of axial spray. */
export const SPRAY_WINDOWS: readonly WorkingWindow[] = [
  ...windowRows(
    {
      mode: 'spray',
      materials: STEEL,
      co2Percent: [0, 15],
      source: "a manufacturer's data sheet, Table 6-2",
      certainty: 'F',
    },
    [
      [0.76, 0.8, 150, 265, 24, 28],
      [0.89, 0.9, 175, 290, 24, 28],
      [1.14, 1.2, 200, 315, 24, 30],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: STEEL,
      co2Percent: [5, 15],
      source: 'a reference note on transfer modes, 90Ar/10CO2',
      certainty: 'F2',
    },
    [
      [1.32, 1.4, 300, 380, 28, 31],
      [1.59, 1.6, 350, 450, 29, 32],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: STEEL,
      co2Percent: [0, 15],
      source: 'between and beside the rows of Table 6-2, by the line of Table 1-2',
      certainty: 'X',
    },
    [
      [0.6, 0.6, 130, 200, 23, 27],
      [1.0, 1.0, 190, 300, 24, 29],
      [1.4, 1.4, 250, 360, 25, 30],
      [1.6, 1.6, 275, 425, 25, 32],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: STEEL,
      co2Percent: [15, 25],
      source:
        'current: 20 % above Table 1-2 up to Methong et al., STWJ 23(1) (2018) 87–94, 330–350 A; voltage: common practice, no source',
      certainty: 'X',
    },
    [
      [0.6, 0.8, 150, 270, 24, 29],
      [0.9, 0.9, 195, 300, 24, 30],
      [1.0, 1.0, 225, 330, 25, 31],
      [1.2, 1.2, 255, 370, 25, 32],
      [1.4, 1.6, 300, 460, 26, 34],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: STAINLESS,
      co2Percent: [0, 5],
      source: 'Modern Welding (2020), Fig. 8-17, in Ar + 1–5 % O2',
      certainty: 'F',
    },
    [
      [0.76, 0.8, 160, 210, 24, 28],
      [0.89, 0.9, 180, 255, 24, 29],
      [1.14, 1.2, 200, 300, 24, 30],
      [1.59, 1.6, 215, 325, 24, 32],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: STAINLESS,
      co2Percent: [0, 5],
      source: 'between and beside the rows of Fig. 8-17, by the line of Table 1-2',
      certainty: 'X',
    },
    [
      [0.6, 0.6, 125, 190, 23, 27],
      [1.0, 1.0, 190, 280, 24, 30],
      [1.4, 1.6, 250, 380, 24, 32],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: ALUMINIUM,
      co2Percent: [0, 0],
      source: 'Modern Welding (2020), Fig. 8-18',
      certainty: 'F',
    },
    [
      [0.76, 0.8, 100, 150, 19, 22],
      [1.19, 1.2, 130, 200, 22, 28],
      [1.59, 1.6, 160, 300, 24, 30],
    ],
  ),
  ...windowRows(
    {
      mode: 'spray',
      materials: ALUMINIUM,
      co2Percent: [0, 0],
      source: 'between the rows of Fig. 8-18',
      certainty: 'X',
    },
    [
      [0.9, 0.9, 108, 165, 20, 24],
      [1.0, 1.0, 115, 175, 20.5, 25.5],
    ],
  ),
];
