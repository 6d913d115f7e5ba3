import type { MessageCode } from '../../../src/messages/index.js';
import type { Examples } from './examples.js';

const M20 = { symbol: 'M20', composition: { ar: 90, he: 0, co2: 10, o2: 0, h2: 0, n2: 0 } };
const M21 = { symbol: 'M21', composition: { ar: 75, he: 0, co2: 25, o2: 0, h2: 0, n2: 0 } };

/** What is to be expected of a set-up, what to change and how to look: texts written by hand, with numbers that show the rounding. */
export const COACHED = {
  'most-likely': [
    [
      {
        outcome: 'spray',
        inTen: 3,
        alike: 'spray-with-shorts',
        next: { outcome: 'spray-with-shorts', atV: 24.5, side: 'below' },
        dialV: null,
      },
      'Either spray or spray with shorts, one as likely as the other (3 in 10 each): spray with shorts below 24.5 V at the feeder, spray above it.',
    ],
    [{ outcome: 'spray', inTen: 8, next: null, dialV: null }, 'Most likely spray (8 in 10).'],
    [
      {
        outcome: 'spray',
        inTen: 8,
        next: { outcome: 'spray-with-shorts', atV: 25.04, side: 'below' },
        dialV: null,
      },
      'Most likely spray (8 in 10); spray with shorts below 25.0 V at the feeder.',
    ],
    [
      {
        outcome: 'spray',
        inTen: 8,
        next: { outcome: 'spray-with-shorts', atV: 25, side: 'below' },
        dialV: 28,
      },
      'Most likely spray (8 in 10); spray with shorts if more than 3 V between dial and feeder are lost.',
    ],
    [
      {
        outcome: 'dip',
        inTen: 6,
        next: { outcome: 'globular', atV: 21.5, side: 'above' },
        dialV: 24,
      },
      'Most likely short-circuit (6 in 10); globular if less than 2.5 V between dial and feeder are lost.',
    ],
    [
      {
        outcome: 'stubbing',
        inTen: 9,
        next: { outcome: 'dip', atV: 16, side: 'above' },
        dialV: 15,
      },
      'Most likely stubbing (9 in 10); short-circuit above 16.0 V at the feeder.',
    ],
  ],
  'outcome-chance': [
    [
      {
        outcome: 'spray',
        chance: 'permitted',
        inTen: 3,
        flipsAtV: 24.5,
        likeliest: false,
        alike: true,
      },
      'Spray: as likely as the other (3 in 10).',
    ],
    [
      { outcome: 'dip', chance: 'permitted', inTen: 6, flipsAtV: 21.5, likeliest: true },
      'Short-circuit: expected (6 in 10), as far as 21.5 V.',
    ],
    [
      { outcome: 'burn-back', chance: 'unlikely', inTen: 1, flipsAtV: 38, likeliest: false },
      'Burn-back: unlikely (1 in 10); the likeliest from 38.0 V.',
    ],
    [
      { outcome: 'spray', chance: 'not-possible', inTen: 0, flipsAtV: null, likeliest: false },
      'Spray: not possible.',
    ],
  ],
  'expected-losses': [
    [
      { lossV: { min: 1, max: 3.46 }, between: 'dial-and-feeder' },
      'Between dial and feeder 1–3.5 V are to be expected at this current.',
    ],
  ],
  'move-volts': [
    [
      {
        wanted: 'spray',
        trouble: 'too-cold',
        byV: { min: 2, max: 4.5 },
        targetV: { min: 26, max: 28.5 },
      },
      'Too cold for spray: 2 to 4.5 V up at this feed (26–28.5 V at the feeder).',
    ],
    [
      {
        wanted: 'short-circuit',
        trouble: 'too-hot',
        byV: { min: -5.04, max: -2 },
        targetV: { min: 17, max: 20 },
      },
      'Too hot for short-circuit: 2 to 5 V down at this feed (17–20 V at the feeder).',
    ],
    [
      {
        wanted: 'spray',
        trouble: 'too-cold',
        byV: { min: -0.5, max: 2 },
        targetV: { min: 26, max: 28.5 },
      },
      'Too cold for spray: up to 2 V up at this feed (26–28.5 V at the feeder).',
    ],
    [
      {
        wanted: 'spray',
        trouble: 'too-hot',
        byV: { min: -2, max: -2 },
        targetV: { min: 28, max: 28 },
      },
      'Too hot for spray: 2 V down at this feed (28 V at the feeder).',
    ],
  ],
  'move-feed': [
    [
      {
        up: false,
        feedMPerMin: { min: 7.04, max: 8 },
        currentA: { min: 205.2, max: 228 },
        instead: true,
      },
      'Or the feed down to 7–8 m/min (205–228 A) at these volts.',
    ],
    [
      { up: true, feedMPerMin: null, currentA: { min: 240, max: 260 }, instead: false },
      'The feed up to 240–260 A at these volts.',
    ],
  ],
  'move-both': [
    [
      {
        up: true,
        feedMPerMin: { min: 9, max: 9 },
        currentA: { min: 250, max: 270 },
        targetV: { min: 26, max: 28 },
      },
      'The feed up to 9 m/min (250–270 A), with 26–28 V at the feeder: neither alone does it.',
    ],
  ],
  'settings-suit': [
    [
      { wanted: 'spray', inTen: 9, targetV: { min: 26, max: 30 } },
      'The settings suit spray (9 in 10); at this current it lies at 26–30 V at the feeder.',
    ],
  ],
  'look-before-moving': [
    [
      { wanted: 'spray' },
      'The settings suit spray, and something else was seen: find the cause before you move anything.',
    ],
  ],
  'measure-first': [
    [
      { wanted: 'spray', targetV: { min: 26, max: 30 } },
      'Measure the volts at the feeder while welding first: spray lies at 26–30 V there.',
    ],
  ],
  'gas-carries-spray': [[{ gas: M20 }, 'The gas carries spray: Ar + 10 % CO2.']],
  'gas-never-carries': [
    [
      { wanted: 'spray', gas: M21, nearestGas: 'Ar + 15 % CO2' },
      'No setting gives spray in Ar + 25 % CO2. The nearest that does: Ar + 15 % CO2. In this gas short-circuit and globular can be had.',
    ],
    [
      { wanted: 'spray', gas: M21, nearestGas: null },
      'No setting gives spray in Ar + 25 % CO2. In this gas short-circuit and globular can be had.',
    ],
  ],
  'gas-without-source': [
    [
      { wanted: 'spray', gas: M21, nearestGas: 'Ar + 8 % CO2' },
      'No source read here gives spray in Ar + 25 % CO2: it is not to be expected. The nearest that is known to: Ar + 8 % CO2.',
    ],
    [
      { wanted: 'spray', gas: M21, nearestGas: null },
      'No source read here gives spray in Ar + 25 % CO2: it is not to be expected.',
    ],
  ],
  'wire-without-rows': [
    [
      { wanted: 'spray', sizesMm: { min: 0.9, max: 1.6 } },
      'For spray with this wire no current is held; rows are held for 0.9–1.6 mm.',
    ],
  ],
  'source-cannot-pulse': [
    [
      {},
      'A steady source gives no pulsed spray; spray above the transition current is the nearest.',
    ],
  ],
  'polarity-first': [
    [{}, 'Everything held here is for electrode positive: see to the polarity before any setting.'],
  ],
  'pulse-by-programme': [
    [
      {},
      'Pulsed spray is a matter of the source’s programme for this wire and gas, not of a place in volts and feed.',
    ],
  ],
  'no-settings-held': [
    [
      { wanted: 'globular' },
      'No volts and feed are held here that give globular with this wire and gas.',
    ],
  ],
  'mixture-decides': [
    [
      { wanted: 'spray', symbol: 'M21' },
      'M21 names many mixtures, and whether spray can be had hangs on which: state the one on the label of the cylinder.',
    ],
  ],
  'set-like-this': [
    [
      { feedMPerMin: 9.04, currentA: 259.6, feederV: { min: 26, max: 28 }, inTen: 9 },
      '9 m/min, about 260 A, 26–28 V at the feeder (9 in 10).',
    ],
    [
      { feedMPerMin: null, currentA: 150, feederV: { min: 17, max: 19.5 }, inTen: 7 },
      'about 150 A, 17–19.5 V at the feeder (7 in 10).',
    ],
  ],
  'keep-stick-out': [[{ stickOutMm: { min: 15, max: 20 } }, 'Stick-out 15–20 mm.']],
  'windows-published': [
    [{ published: true }, 'The currents lie within published windows of this wire and gas.'],
    [
      { published: false },
      'No published window is held for just this wire and gas: the currents are worked out.',
    ],
  ],
  'heat-input-lacks': [
    [
      { volts: true, amps: true },
      'Travel speed is stated; for the heat input volts and amperes are missing.',
    ],
    [
      { volts: false, amps: true },
      'Travel speed is stated; for the heat input amperes are missing.',
    ],
  ],
  'plate-changes-nothing': [
    [
      {},
      'Plate thickness is stated; it changes nothing here, since it counts for short-circuit on thick plate alone.',
    ],
  ],
  'map-only-wire': [
    [
      {},
      'Of this wire a few published rows are held, and no recording of it is judged; for metal-cored wire they part by 5 V.',
    ],
  ],
  'state-wire-and-gas': [
    [{}, 'State wire diameter and gas: without them no settings can be named.'],
  ],
  'inside-procedure': [[{}, 'Only as far as your qualified procedure allows it.']],
  'gas-word-read-as': [
    [
      { stated: 'mixed gas', gas: M21 },
      '"mixed gas" was read as Ar + 25 % CO2, the usual meaning; read the label of the cylinder.',
    ],
  ],
  'measured-above-dial': [
    [
      { setV: 24, measuredV: 26.04 },
      '26.0 V were measured and 24 V are set: no loss raises a voltage.',
    ],
  ],
  'even-dip-like-pulses': [
    [
      {},
      'Volts and amperes are those of short-circuit: a source that controls each short beats as evenly as pulses do.',
    ],
  ],
  'cold-spray': [
    [
      { shorts: true },
      'A little too cold for spray: the drops touch the pool before they leave the wire.',
    ],
    [{ shorts: false }, 'Too cold for spray: the current would do, the voltage does not.'],
  ],
  'hot-dip': [[{}, 'Too hot for short-circuit at this feed: the wire no longer reaches the pool.']],
  'wrong-wire': [
    [
      { thicker: true },
      'The feed draws more current than the stated wire would, as a thicker one does.',
    ],
    [
      { thicker: false },
      'The feed draws less current than the stated wire would, as a thinner one does.',
    ],
  ],
  'voltage-lacking': [
    [{ lackingV: 3.25 }, 'The voltage is 3.3 V below the load line at this current.'],
  ],
  'spray-and-shorts': [
    [{ sprayShare: 0.804, shortShare: 0.066 }, '80 % of the time is spray, 7 % short circuits.'],
  ],
  'other-wire-draws': [[{ diameterMm: 1.6 }, '1.6 mm wire would draw that current at this feed.']],
  'check-volts-for-feed': [
    [
      { voltsGiven: true },
      'Time the wire feed over a measured length, and hold it and the measured voltage against the qualified procedure.',
    ],
    [
      { voltsGiven: false },
      'Read the voltage at the feeder while welding (fixed meters or insulated leads, a competent person, no cover opened) and time the wire feed; hold both against the qualified procedure.',
    ],
  ],
  'check-spool': [
    [
      {},
      'With the power off, measure the wire itself with calipers and read the label of the spool.',
    ],
  ],
  'check-leads': [
    [
      {},
      'Have the volts at the source and at the feeder read while welding (fixed meters or insulated leads, a competent person, no cover opened). With the power off, look at the ground clamp, lead connections, gun cable and contact tip.',
    ],
  ],
  'check-source-terminals': [
    [
      {},
      'Have the volts at the source’s output read while welding (fixed meters or insulated leads, a competent person, no cover opened), and see that it runs constant voltage, with all mains phases present.',
    ],
  ],
  'check-feed': [
    [
      {},
      'Inch wire for ten seconds with the gun clear of work and people (the trigger puts voltage on the wire), measure or weigh it, and compare with the stated feed; look at drive rolls, liner, contact tip and spool brake.',
    ],
  ],
  'check-feeder-voltage': [
    [
      {},
      'Read the voltage at the feeder while welding (fixed meters or insulated leads, a competent person, no cover opened), and state it together with the place where it was read.',
    ],
  ],
  'caution-procedure-first': [
    [{}, 'Follow the qualified welding procedure: no setting outside its limits.'],
  ],
  'caution-measuring': [
    [{}, 'Wear protection, ventilate; mind rays, shock and noise. Local codes first.'],
  ],
} satisfies Partial<Examples> & Partial<Record<MessageCode, unknown>>;
