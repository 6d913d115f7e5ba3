import type { Mode } from '../../../core/index.js';
import { ANY_GAS, ANY_WIRE, type EventWindow, STEEL, type WindowScope } from './window-row.js';

const ANY_METAL = ['carbon-steel', 'stainless-steel', 'aluminium'] as const;

const wide = (mode: Mode): Omit<WindowScope, 'source' | 'certainty'> => ({
  mode,
  materials: ANY_METAL,
  diameterMm: ANY_WIRE,
  co2Percent: ANY_GAS,
});

/** Every window of drops, shorts and pulses. */
export const EVENT_WINDOWS: readonly EventWindow[] = [
  {
    ...wide('short-circuit'),
    shortRateHz: [20, 230],
    source:
      'MIG Welding Handbook ch. 1 p. 4 (20–200/s); Welding: Principles and Practices ch. 21 (over 200/s); an auto-body lesson (90–230/s)',
    certainty: 'F',
  },
  {
    ...wide('short-circuit'),
    shortS: [0.001, 0.01],
    source:
      'about 1 ms measured (R. D. Smith, 2011/2017); 2–6 ms usual and up to 10 ms from memory of the AWS Welding Handbook, vol. 2, and Norrish',
    certainty: 'M',
  },
  {
    ...wide('globular'),
    dropRatio: [1, 3],
    source: 'above the wire diameter: MIG Welding Handbook ch. 1 p. 6; up to 3: a reference note',
    certainty: 'F2',
  },
  {
    ...wide('globular'),
    materials: STEEL,
    diameterMm: [1.2, 1.6],
    co2Percent: [0, 15],
    dropRateHz: [1, 60],
    source:
      'from memory of Lesnewich 1958, Rhee & Kannatey-Asibu 1992, Kim & Eagar 1993: up to a few tens a second',
    certainty: 'M',
  },
  {
    ...wide('globular'),
    co2Percent: [0, 25],
    shortRateHz: [0, 20],
    source:
      '"occasional short circuiting", MIG Welding Handbook ch. 1 p. 6; the figure is common practice, no source',
    certainty: 'CP',
  },
  {
    ...wide('globular'),
    materials: STEEL,
    co2Percent: [30, 100],
    shortRateHz: [5, 60],
    shortIntervalCv: [0.5, 3],
    source: 'common practice, no source',
    certainty: 'CP',
  },
  {
    ...wide('spray'),
    shortRateHz: [0, 3],
    source: '"short circuits do not occur", API RP 577; the few of 3 a second are own choice',
    certainty: 'F2',
  },
  {
    ...wide('spray'),
    diameterMm: [0.85, 1.7],
    dropRatio: [0.4, 1],
    source: 'below the wire diameter: a welding glossary, API RP 577; lower end own choice',
    certainty: 'F',
  },
  {
    ...wide('spray'),
    materials: STEEL,
    diameterMm: [0.5, 0.85],
    co2Percent: [0, 30],
    dropRatio: [1, 1.5],
    source:
      'Soderstrom & Mendez, Welding J. May 2008, 124-s: never below the wire diameter under 0.035 in; upper end own choice',
    certainty: 'F',
  },
  {
    ...wide('spray'),
    materials: ['carbon-steel', 'stainless-steel'],
    diameterMm: [1.14, 1.2],
    form: 'projected',
    dropRateHz: [100, 300],
    dropRatio: [0.8, 1],
    source:
      'from memory of Lancaster and Rhee 1992 (100–300/s); 100/s with drops of about the wire diameter: Komen, Shigeta, Tanaka, J. Flow Control Meas. Vis. 6 (2018) 66',
    certainty: 'M',
  },
  {
    ...wide('spray'),
    materials: ['carbon-steel', 'stainless-steel'],
    diameterMm: [1.14, 1.2],
    form: 'streaming',
    dropRateHz: [500, 1200],
    source: 'from memory of Lancaster and Rhee 1992: above 500 to 1000/s',
    certainty: 'M',
  },
  {
    ...wide('pulsed-spray'),
    pulseRateHz: [30, 400],
    source: 'API RP 577 §4.4.5',
    certainty: 'F2',
  },
  {
    ...wide('pulsed-spray'),
    dropsPerPulse: [0.9, 1.2],
    source:
      'one drop a pulse is what pulsing is set for (reviews of pulsed transfer); the leeway is own choice',
    certainty: 'F2',
  },
];
