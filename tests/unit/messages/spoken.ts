import type { MessageCode } from '../../../src/messages/index.js';
import type { Examples } from './examples.js';

/**
 * Params with the English text that must come of them. The texts stood in documents of version 1.0 (of the
 * shipped and of drawn recordings, with several set-ups stated); none was written by a catalogue.
 */
export const SPOKEN = {
  'time-column': [
    [
      { column: { name: 't', number: 1, unit: null }, by: 'name' },
      'Time is read from “t” (by its name).',
    ],
    [
      { column: { name: 'time', number: 1, unit: 's' }, by: 'name' },
      'Time is read from “time” [s] (by its name).',
    ],
    [
      { column: { name: null, number: 1, unit: null }, by: 'place' },
      'The file names no columns; column 1 is taken as time by its place.',
    ],
  ],
  'voltage-column': [
    [
      { column: { name: 'U', number: 2, unit: null }, by: 'name' },
      'Voltage is read from “U” (by its name).',
    ],
    [
      { column: { name: 'U1', number: 2, unit: 'mV' }, by: 'unit' },
      'Voltage is read from “U1” [mV] (by its unit).',
    ],
    [
      { column: { name: 'voltage', number: 2, unit: 'v' }, by: 'name' },
      'Voltage is read from “voltage” [v] (by its name).',
    ],
  ],
  'current-column': [
    [
      { column: { name: 'I', number: 3, unit: null }, by: 'name' },
      'Current is read from “I” (by its name).',
    ],
    [
      { column: { name: 'I', number: 3, unit: 'kA' }, by: 'name' },
      'Current is read from “I” [kA] (by its name).',
    ],
    [
      { column: { name: null, number: 3, unit: null }, by: 'place' },
      'The file names no columns; column 3 is taken as current by its place.',
    ],
  ],
  'rate-from-time': [[{ rateHz: 200 }, 'The rate of 200 Hz comes from the time stamps.']],
  aliasing: [
    [
      { rateHz: 200 },
      'Ripple of an inverter source (some 15 to 100 kHz) folds into a trace sampled at 200 Hz unless it was filtered before sampling, and can look like slow lines.',
    ],
  ],
  'mode-held': [[{ mode: 'spray', shareOfTime: 1 }, 'spray over 100 % of the judged arc time.']],
  sign: [
    [
      {
        feature: { code: 'trace-feature', params: { feature: 'shortShare' } },
        value: 0,
        unit: '1',
      },
      'share of the time spent in short circuit: 0',
    ],
    [
      {
        feature: { code: 'band-coherence', params: { lowHz: 4, highHz: 10 } },
        value: 0.9182,
        unit: '1',
      },
      'how far the lower and upper half of the band fluctuate together at 4 to 10 Hz: 0.918',
    ],
  ],
  'setup-leaves-open': [
    [
      {
        place: { feederV: null, currentA: { min: 184, max: 191.6 }, gas: null, source: null },
        modes: ['pulsed-spray'],
        others: ['short-circuit', 'globular', 'spray'],
      },
      '184–192 A may give pulsed-spray, but also short-circuit or globular or spray.',
    ],
    [
      {
        place: {
          feederV: null,
          currentA: null,
          gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
          source: 'pulsed',
        },
        modes: ['globular'],
        others: ['short-circuit'],
      },
      'pure CO2, a source said to run pulsed may give globular, but also short-circuit.',
    ],
    [
      {
        place: {
          feederV: { min: 12.5, max: 21 },
          currentA: null,
          gas: { symbol: 'M21', composition: { ar: 75, he: 0, co2: 25, o2: 0, h2: 0, n2: 0 } },
          source: null,
        },
        modes: ['globular'],
        others: ['short-circuit'],
      },
      '12.5–21 V at the feeder, Ar + 25 % CO2 may give globular, but also short-circuit.',
    ],
  ],
  'voltage-measured': [
    [{ volts: 19, place: 'arc', by: 'meter' }, '19.0 V measured at the arc'],
    [{ volts: 24, place: 'feeder', by: 'meter' }, '24.0 V measured at the feeder'],
    [{ volts: 22, place: 'source', by: 'meter' }, '22.0 V measured at the source'],
    [{ volts: 28, place: 'feeder', by: 'trace' }, '28.0 V mean of the trace at the feeder'],
    [
      { volts: 19.5, place: 'trace', by: 'trace' },
      '19.5 V mean of the trace at a place not stated',
    ],
  ],
  'current-measured': [[{ currentA: 150 }, '150 A measured']],
  'caution-no-inspection': [
    [{}, 'This tool is not an inspection and does not qualify or reject a weld.'],
  ],
  'step-read': [[{ quantities: ['sound'], sampleRateHz: 8000 }, 'sound at 8000 Hz']],
  'step-features': [
    [{ featureSet: 'current', version: 2, of: 'trace' }, 'current version 2, the trace as sampled'],
    [
      { featureSet: 'sound', version: 3, of: 'sound' },
      'sound version 3, 1.5 kHz to 12 kHz or 0.45 of the rate, envelope at 4,000 a second',
    ],
  ],
  'step-arc': [[{ arcIntervals: 1 }, '1 stretch(es) taken as an arc']],
  'step-classify': [
    [
      { windows: 0, model: 'arc-transfer sound', version: '1' },
      '0 steady windows by arc-transfer sound 1',
    ],
  ],
  'caution-arc-welding': [
    [
      {},
      'Arc welding injures eyes and skin (arc rays, burns) and harms by fume, electric shock and noise: wear the protection, ventilate, and change nothing on a live machine that you are not qualified to change.',
    ],
  ],
  'caution-rules-first': [
    [
      {},
      'Local codes, the qualified welding procedure and the people responsible for it come first; this answer changes none of them.',
    ],
  ],
  'caution-estimate': [
    [
      {},
      'This is an estimate from a recording. It is not an inspection and says nothing about the soundness of the weld.',
    ],
  ],
  'no-setting-stated': [[{}, 'No setting was stated to compare with.']],
  clipping: [
    [
      { shareOfSamples: 0.00269 },
      '0.3 % of the samples stand at the rails: move the microphone away or lower the gain.',
    ],
  ],
  'setup-forbids': [
    [
      {
        place: {
          feederV: { min: 11, max: 19.5 },
          currentA: null,
          gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
          source: null,
        },
        modes: ['spray'],
        outside: [{ mode: 'spray', where: { code: 'not-in-this-gas', params: {} } }],
      },
      '11–19.5 V at the feeder, pure CO2 does not permit spray: spray lies not in this gas.',
    ],
    [
      {
        place: {
          feederV: { min: 11, max: 19.5 },
          currentA: null,
          gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
          source: null,
        },
        modes: ['globular'],
        outside: [
          {
            mode: 'globular',
            where: { code: 'lies-above', params: { bottomV: { min: 22, max: 26 }, belowA: null } },
          },
        ],
      },
      '11–19.5 V at the feeder, pure CO2 does not permit globular: globular lies above 22–26 V.',
    ],
    [
      {
        place: {
          feederV: { min: 14.12, max: 19.5 },
          currentA: { min: 186.3, max: 193.9 },
          gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
          source: null,
        },
        modes: ['globular'],
        outside: [
          {
            mode: 'globular',
            where: { code: 'lies-above', params: { bottomV: { min: 22, max: 26 }, belowA: null } },
          },
        ],
      },
      '14.1–19.5 V at the feeder, 186–194 A, pure CO2 does not permit globular: globular lies above 22–26 V.',
    ],
  ],
  'wrong-setting': [
    [
      { how: 'suits-another', seen: 'globular', wanted: 'spray' },
      'The settings suit globular, not spray.',
    ],
    [{ how: 'not-as-stated' }, 'The machine may not have run at the settings stated.'],
  ],
  'measured-fits-set': [[{}, 'The measured voltage fits the set one.']],
  'check-settings-again': [
    [{}, 'Read the dial, the voltage at the feeder and the wire feed again, at the machine.'],
  ],
  'input-failed': [
    [
      {
        errorCode: 'no-time',
        text: 'fixtures/logs/half.npy has no time column and states no sample rate. Expected a column of time, or the rate in hertz. Pass --sample-rate, or state the time column with --map time=….',
      },
      'fixtures/logs/half.npy has no time column and states no sample rate. Expected a column of time, or the rate in hertz. Pass --sample-rate, or state the time column with --map time=….',
    ],
  ],
  'unit-assumed': [
    [
      { column: 'U', statedUnit: null, quantity: 'voltage' },
      '“U” gives no unit; its values are taken as volts.',
    ],
  ],
  'rate-from-file': [
    [
      { rateHz: 10000, line: 'fs = 10000' },
      'There is no time column; the rate of 10000 Hz comes from “fs = 10000” in the file.',
    ],
  ],
  'no-arc-shown': [[{}, 'Nothing in the recording shows a burning arc.']],
  'nothing-found': [[{}, 'No arc was found in the recording.']],
  'recording-cannot-support': [
    [{}, 'The recording cannot carry the claim; look at the recording before the machine.'],
  ],
  'result-is': [[{ status: 'no-arc' }, 'The result is "no-arc".']],
  'check-recording': [
    [
      { kind: 'electrical' },
      'Record the voltage again, 10 000 samples a second or more, at the feeder, some ten seconds of steady welding.',
    ],
    [
      { kind: 'sound' },
      'Record again from about half a metre with the phone’s voice processing off, without clipping, some ten seconds of steady welding; or take a voltage trace.',
    ],
  ],
  'time-unit-assumed': [
    [
      { column: 't', unitS: 1, by: 'size' },
      '“t” gives no unit; it is taken as seconds, from its size and steps.',
    ],
  ],
  'voltage-too-high': [
    [
      { peakV: 399, looksLike: 'no-welding-source' },
      'The voltage reaches 399 V, more than a welding source gives: a wrong scale, or a column that holds something else?',
    ],
    [
      { peakV: 23250, looksLike: 'millivolts' },
      'The voltage reaches 23250 V: it looks like millivolts taken for volts. It was read as it is; state a voltage scale of 0.001 if so.',
    ],
  ],
  'wanted-not-seen': [
    [
      { wanted: 'spray', seen: ['globular'], shareOfTime: 0 },
      'spray was wanted; globular was seen.',
    ],
  ],
  'wrong-gas-for-mode': [
    [{ wanted: 'spray', carries: 'not' }, 'spray is wanted in a gas that does not carry it.'],
  ],
  'spray-in-gas': [
    [
      {
        answer: 'yes',
        gas: { symbol: 'M20', composition: { ar: 92, he: 0, co2: 8, o2: 0, h2: 0, n2: 0 } },
      },
      'Ar + 8 % CO2 carries axial spray above the transition current.',
    ],
    [
      {
        answer: 'no',
        gas: { symbol: 'M21', composition: { ar: 75, he: 0, co2: 25, o2: 0, h2: 0, n2: 0 } },
        limits: [
          { saying: 'globular-stays-above-15', source: 'MIG Welding Handbook, ch. 1 p. 7' },
          { saying: 'spray-needs-80-argon', source: 'a welding glossary and a teaching page' },
          { saying: 'no-spray-above-20-to-25', source: 'a reference note on transfer modes' },
        ],
      },
      'Published knowledge gives no axial spray in Ar + 25 % CO2: above about 15 % CO2 globular does not turn into spray (MIG Welding Handbook, ch. 1 p. 7); spray needs at least 80 % argon (a welding glossary and a teaching page); no spray above 20–25 % CO2; 75/25 cannot (a reference note on transfer modes).',
    ],
    [
      {
        answer: 'disputed',
        gas: { symbol: 'M21', composition: { ar: 82, he: 0, co2: 18, o2: 0, h2: 0, n2: 0 } },
        limits: [
          { saying: 'globular-stays-above-15', source: 'MIG Welding Handbook, ch. 1 p. 7' },
          { saying: 'spray-needs-80-argon', source: 'a welding glossary and a teaching page' },
          { saying: 'no-spray-above-20-to-25', source: 'a reference note on transfer modes' },
          { saying: 'measured-at-20', source: 'Methong et al., STWJ 23(1) (2018) 87–94' },
          { saying: '82-18-sold-for-spray', source: 'European practice' },
        ],
      },
      'The sources disagree about axial spray in Ar + 18 % CO2: above about 15 % CO2 globular does not turn into spray (MIG Welding Handbook, ch. 1 p. 7); spray needs at least 80 % argon (a welding glossary and a teaching page); no spray above 20–25 % CO2; 75/25 cannot (a reference note on transfer modes); spray was measured at 20 % CO2, but only at 330–350 A with 1.2 mm wire (Methong et al., STWJ 23(1) (2018) 87–94); 82/18 is routinely sold as able to spray (European practice).',
    ],
  ],
  'check-gas': [
    [
      { compareWithProcedure: false },
      'Read the cylinder label or the mixer setting, and measure the flow at the nozzle.',
    ],
    [
      { compareWithProcedure: true },
      'Read the cylinder label or the mixer setting, and measure the flow at the nozzle. Compare with the gas of the qualified procedure.',
    ],
  ],
  'measured-above-set': [[{}, 'The measured voltage stands above the set one.']],
  'voltage-set': [
    [{ setV: 27, feederV: { min: 26, max: 28 } }, '27 V set, taken as 26–28 V at the feeder'],
  ],
  'no-measured-confirming': [[{}, 'No measured voltage confirms the set one.']],
  'long-stick-out': [
    [{ shown: 'not' }, 'A long stick-out would lower current and arc voltage.'],
    [{ shown: 'by-current' }, 'The current is low for the feed, as with a long stick-out.'],
    [{ shown: 'as-stated' }, 'The stick-out is long, which lowers the current the feed draws.'],
  ],
  'no-measured-current': [[{}, 'No measured current shows it.']],
  'check-stick-out': [
    [
      {},
      'Measure the wire between contact tip and work with the power off, and time the wire feed over a measured length.',
    ],
  ],
  'pulsed-programme-running': [
    [{}, 'A pulsed programme seems to run where constant voltage was meant.'],
  ],
  'programme-shown': [
    [{ programme: 'steady' }, 'The recording shows a steady source.'],
    [{ programme: 'pulsed' }, 'The recording shows a pulsed programme.'],
    [{ programme: 'controlled-dip' }, 'The recording shows a controlled-dip programme.'],
  ],
  'pulses-a-second': [[{ rateHz: 113.6 }, 'Pulses at 113.6 a second.']],
  'check-programme': [
    [{}, 'Read the process and programme shown on the source’s panel or in the robot job.'],
  ],
  'gas-mode-conflict': [
    [
      {
        seen: ['spray'],
        gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
      },
      'spray was seen, and pure CO2 is stated. Both cannot be: either the gas is not as stated, or the recording was read wrongly (small drops off the axis sound alike).',
    ],
  ],
  'named-with-confidence': [[{ confidence: 0.94 }, 'The mode was named with 94 % confidence.']],
  'setup-permits': [
    [
      {
        place: { feederV: { min: 14.91, max: 19.76 }, currentA: null, gas: null, source: null },
        modes: ['short-circuit'],
      },
      '14.9–19.8 V at the feeder permits short-circuit.',
    ],
    [
      {
        place: {
          feederV: { min: 11, max: 19.5 },
          currentA: null,
          gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } },
          source: null,
        },
        modes: ['short-circuit'],
      },
      '11–19.5 V at the feeder, pure CO2 permits short-circuit.',
    ],
    [
      {
        place: {
          feederV: { min: 15, max: 19.08 },
          currentA: { min: 189.8, max: 197.5 },
          gas: null,
          source: null,
        },
        modes: ['short-circuit'],
      },
      '15–19.1 V at the feeder, 190–198 A permits short-circuit.',
    ],
  ],
  'essential-variable': [
    [
      { seen: 'short-circuit', wanted: 'spray' },
      "short-circuit instead of spray may be a change of an essential variable. Check your code's current edition.",
    ],
  ],
  'code-rule-from': [
    [
      { rule: 'asme-ix', source: 'API RP 577 §11.3' },
      "ASME IX QW-409.2 counts a change from globular, spray or pulsed to short-circuit, or the reverse, among the essential variables. (API RP 577 §11.3, second hand.) Check your code's current edition.",
    ],
    [
      { rule: 'iso-15614', source: 'secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3' },
      "ISO 15614-1: short-circuit qualifies only short-circuit; spray, pulse or globular qualifies spray, pulse and globular. (secondary copy of ISO 15614-1:2017+A1:2019 §8.5.2.3, second hand.) Check your code's current edition.",
    ],
    [
      { rule: 'aws-d1', source: 'Practical Welding Today, question and answer (2014)' },
      "AWS D1.1 does not prequalify short-circuit transfer: a procedure with it needs its own qualification test. AWS D1.3 (sheet) allows it prequalified. (Practical Welding Today, question and answer (2014), second hand.) Check your code's current edition.",
    ],
  ],
  'wanted-and-seen': [[{ wanted: 'spray' }, 'spray was wanted and seen.']],
  'volts-above-limit': [
    [{ volts: 27, aboveV: 5, limitV: 22 }, '27.0 V is 5.0 V above 22 V, where the mode ends.'],
  ],
  'feed-trouble': [[{}, 'The wire may not arrive evenly, or slower than stated.']],
  'current-for-feed': [
    [
      { measuredA: 110, expectedA: { min: 300, max: 366.7 } },
      '110 A measured, 300–367 A expected for the feed',
    ],
  ],
  'nothing-wanders': [[{}, 'Nothing wanders: the feed at least is even.']],
  'stick-out-too-long': [
    [{ stickOutMm: 153 }, 'It would take 153 mm, longer than anyone welds with.'],
  ],
  'current-from-feed': [
    [{ currentA: { min: 146, max: 208.9 } }, '146–209 A estimated from the wire feed'],
  ],
  'no-measured-backing': [[{}, 'No measured voltage backs this.']],
  'set-voltage-uncertain': [
    [
      { open: ['globular', 'spray'] },
      'Only the set voltage is known. What it leaves at the feeder spans globular and spray: get the measured voltage first.',
    ],
  ],
  'slope-not-known': [[{}, 'The slope of the source is not known.']],
  'cable-length-not-known': [[{}, 'The length of the leads is not known.']],
  'voltage-span': [[{ feederV: { min: 26, max: 28 } }, 'The span is 26–28 V.']],
  'stick-out-stated': [
    [{ stickOutMm: 25, usualMm: { min: 10, max: 20 } }, '25 mm is stated; 10–20 mm is usual.'],
  ],
  'wrong-polarity': [
    [
      {},
      'The current is what electrode negative would draw; solid wire is run on electrode positive.',
    ],
  ],
  'no-stick-out-explains': [[{}, 'No usual stick-out explains so low a current.']],
  'check-polarity': [
    [{}, 'With the power off, see which terminal the gun lead and the work lead are on.'],
  ],
  'short-rate-steady': [[{ cv: 0 }, 'The rate of shorts is steady from second to second (0.00).']],
  'stick-out-would-explain': [
    [{ stickOutMm: 34.28 }, 'A stick-out of about 34 mm would explain it.'],
  ],
  'polarity-not-held': [
    [{}, 'The bands held here are for electrode positive; they say nothing about this polarity.'],
  ],
  'lead-loss': [
    [{}, 'More voltage is lost between source and arc than leads and joints should take.'],
  ],
  'voltage-loss': [
    [
      { from: 'feeder', to: 'arc', fromV: 27, toV: 21, lostV: 6, usualV: { min: 0, max: 2 } },
      '27.0 V at the feeder, 21.0 V at the arc: 6.0 V lost, 0.0–2.0 V are usual',
    ],
  ],
  'cable-length-taken': [[{ lengthM: 12.5 }, 'The cable length is not stated; 12.5 m was taken.']],
  'pulsed-programme-missing': [
    [{}, 'A pulsed programme was meant, and the source seems to run without it.'],
  ],
  'mode-was-seen': [[{ mode: 'spray' }, 'spray was seen.']],
  'polarity-stated': [[{ polarity: 'dcen' }, 'Polarity is stated as dcen.']],
  'stick-out-explains-too': [[{}, 'A longer stick-out explains the current as well.']],
  'normal-drop': [
    [
      { wanted: 'spray' },
      'The set voltage would suit spray, but after the usual losses the arc gets less.',
    ],
  ],
  'check-measured-not-dial': [
    [
      {},
      'Take the voltage measured at the feeder, not the dial, as the one to hold against the qualified procedure.',
    ],
  ],
  'programme-not-told': [
    [{ whose: 'source' }, 'The source’s programme itself could not be told.'],
    [{ whose: 'recording' }, 'The source’s programme could not be told from this recording.'],
  ],
  'unusual-pair': [
    [
      {
        pair: 'carbon-in-inert',
        gas: { symbol: 'I1', composition: { ar: 100, he: 0, co2: 0, o2: 0, h2: 0, n2: 0 } },
      },
      'Carbon-steel wire in pure Ar: the arc usually wanders without some CO2 or oxygen.',
    ],
    [
      {
        pair: 'stainless-in-much-co2',
        gas: { symbol: 'M20', composition: { ar: 92, he: 0, co2: 8, o2: 0, h2: 0, n2: 0 } },
      },
      'Stainless wire in Ar + 8 % CO2: much CO2 carries carbon into the weld; usual gases hold a few per cent. Follow the qualified procedure.',
    ],
    [
      { pair: 'stainless-in-much-co2', gas: { symbol: 'M21', composition: null } },
      'Stainless wire in any gas of ISO 14175 group M21: much CO2 carries carbon into the weld; usual gases hold a few per cent. Follow the qualified procedure.',
    ],
  ],
  'drooping-supply': [
    [{}, 'The source droops: its terminals stand well below the set voltage under load.'],
  ],
  'slope-stated': [
    [
      { slopeVPer100A: 6, usualVPer100A: 3 },
      'A slope of 6 V per 100 A is stated; up to 3 is common practice for this process.',
    ],
  ],
  'terminal-volts-not-measured': [[{}, 'The volts at the source’s terminals were not measured.']],
  'transition-zone': [
    [
      { open: ['globular', 'spray'] },
      'The working point lies where globular and spray meet and the sources disagree; either may come without any change of settings.',
    ],
  ],
  'point-voltage': [[{ feederV: { min: 18.9, max: 21.3 } }, '18.9–21.3 V at the feeder']],
  'point-current': [[{ currentA: { min: 53.04, max: 55.2 } }, '53–55 A']],
  'mode-lies': [
    [
      {
        mode: 'globular',
        where: { code: 'lies-above', params: { bottomV: { min: 20, max: 22 }, belowA: null } },
      },
      'globular: above 20–22 V',
    ],
    [
      {
        mode: 'short-circuit',
        where: { code: 'lies-up-to', params: { topV: { min: 20, max: 22 } } },
      },
      'short-circuit: up to 20–22 V',
    ],
    [
      {
        mode: 'spray',
        where: {
          code: 'lies-in-spray',
          params: {
            bottomV: { min: 24, max: 26 },
            aboveA: { min: 220.1, max: 269 },
            disputed: false,
          },
        },
      },
      'spray: above 24–26 V and 220–269 A',
    ],
  ],
  'run-keeps-mode': [[{}, 'The run stays in one mode.']],
  'check-zone': [
    [
      {},
      'Note volts at the feeder and amperes while welding, and see how close the qualified procedure lets you come to this zone.',
    ],
  ],
  'gas-read-as': [
    [
      {
        stated: '75/25',
        gas: { symbol: 'M21', composition: { ar: 75, he: 0, co2: 25, o2: 0, h2: 0, n2: 0 } },
      },
      '"75/25" names no second gas; read as Ar + 25 % CO2, the common meaning.',
    ],
  ],
  'gas-not-as-stated': [
    [{ gasStated: false }, 'The gas is not stated; too much CO2 would keep the arc globular.'],
    [
      { gasStated: true },
      'Volts and amperes permit spray, and the transfer is globular: the gas may hold more CO2 than stated, or not reach the arc.',
    ],
  ],
  'measured-in-spray': [[{}, 'Measured volts and amperes both lie in the spray region.']],
  'point-estimated': [[{}, 'Volts or amperes are estimated, not measured.']],
  'volts-below-limit': [
    [{ volts: 18, belowV: 6, limitV: 24 }, '18.0 V is 6.0 V below 24 V, where the mode begins.'],
  ],
  'short-recording': [
    [{ durationS: 1 }, '1.00 s is little to judge by; record 5 s of steady arc or more.'],
  ],
  silent: [
    [
      {},
      'The recording is silent from end to end: the microphone was off, blocked or not allowed.',
    ],
  ],
  'doubt-about-recording': [
    [
      {
        doubt: { code: 'in-words', params: { text: 'The sound is clipped.' } },
        shareOfRecording: 0.9,
      },
      'The sound is clipped. (90 % of the recording)',
    ],
    [
      { doubt: { code: 'voltage-clipped', params: {} }, shareOfRecording: 1.222 },
      'The voltage rests at the end of its range: peaks are cut off. (122 % of the recording)',
    ],
    [
      { doubt: { code: 'short-recording', params: { durationS: 1 } }, shareOfRecording: 1 },
      '1.00 s is little to judge by; record 5 s of steady arc or more. (100 % of the recording)',
    ],
  ],
  'rate-low': [
    [
      { rateHz: 4000, samplesPerMs: 4, neededSamples: 5, shortestMs: 1.25 },
      'At 4000 Hz a short circuit of 1 ms is shown by 4 samples (5 are needed): shorts under 1.25 ms are measured badly or missed, and drop steps and current rise cannot be measured.',
    ],
  ],
  'sample-rate-low': [
    [
      { of: 'sound', sampleRateHz: 8000 },
      'At 8000 samples a second the band above 4000 Hz is missing; 44,100 or 48,000 hears the whole arc.',
    ],
    [
      { of: 'trace', sampleRateHz: 200, enoughHz: 5000 },
      'At 200 Hz a short circuit of 1 ms has fewer than five samples; short and drop figures are rough below 5000 Hz.',
    ],
  ],
  'mode-named-all-the-same': [[{}, 'The mode was named with fair confidence all the same.']],
  'mode-not-sure': [
    [
      { mode: 'pulsed-spray', probability: 0.5898 },
      'The likeliest mode, pulsed-spray, reaches only 59 %.',
    ],
  ],
  'no-mode-named': [[{}, 'The recording names no mode.']],
  'arc-unlike-model': [
    [{}, 'The arc is unlike anything the model was fitted on; no mode is named.'],
  ],
  'voltage-clipped': [[{}, 'The voltage rests at the end of its range: peaks are cut off.']],
  'uneven-time': [
    [
      { shortStepS: 0.00011, longStepS: 0.000389, rateHz: 4000 },
      'The rows are unevenly spaced (0.110 ms to 0.389 ms); they were resampled on straight lines to 4000 Hz, the median step. Detail shorter than the longest steps is lost.',
    ],
  ],
  midnight: [[{}, 'The clock passes midnight; the time was counted on.']],
  'coarse-time': [
    [
      { rateHz: 4000 },
      'The time stamps are rounded to more than a sampling step; 4000 Hz is the mean rate, and the rows are taken as evenly spaced.',
    ],
  ],
  truncated: [
    [
      { how: 'holds-less', declaredS: 4.167, heldS: 1 },
      'The file declares 4.167 s of sound but holds 1.000 s; it was cut off.',
    ],
  ],
  'decimal-comma': [[{}, 'Numbers are read with a decimal comma.']],
  'voltage-too-low': [
    [
      { peakV: 2.325, looksLike: 'divider-missing' },
      'The voltage stays below 2.325 V, where no arc burns: a divider or probe factor (often 10) seems to be missing. State a voltage scale if so.',
    ],
    [
      { peakV: 0.02325, looksLike: 'kilovolts' },
      'The voltage stays below 0.02325 V: kilovolts taken for volts, or a probe factor that is missing? State a voltage scale (1000 for kilovolts) if so.',
    ],
  ],
  'wav-frame-size': [
    [
      { blockBytes: 3, channels: 1, bits: 16, usedBytes: 2 },
      'The file states 3 bytes a frame, which does not fit 1 × 16 bits; 2 were used.',
    ],
  ],
  gaps: [
    [
      { gaps: 2, missingSamples: 638, longestS: 0.1497, bridgedS: 0.02 },
      '2 gaps in the time stamps (638 samples missing, the longest 149.7 ms): up to 20 ms bridged by straight lines, longer ones set to 0.',
    ],
  ],
  filled: [
    [
      { bridged: 0, zeroed: 399, values: 24000 },
      '399 values (1.7 %) were missing or not finite: 0 bridged by straight lines, 399 set to 0 because nothing is known there.',
    ],
  ],
  'may-be-an-arc': [
    [
      { probability: 0.5936 },
      'It may be an arc (59 %), but rain, fire, engines or tools can sound like this; no mode is named.',
    ],
  ],
  'current-too-high': [
    [
      { peakA: 320000 },
      'The current reaches 320000 A: it looks like milliamperes taken for amperes. It was read as it is; state a current scale of 0.001 if so.',
    ],
  ],
  'not-finite': [
    [
      { samples: 10, firstTimesS: [0, 0.1042, 0.2083, 0.3125, 0.4167], replacedBy: 'zero' },
      '10 samples are not a number (at 0.0000 s, 0.1042 s, 0.2083 s, 0.3125 s, 0.4167 s, …); replaced by 0.',
    ],
  ],
  'negative-voltage': [
    [
      { meanVoltageV: -17.46 },
      'The voltage averages -17.46 V: swapped polarity of the probe, or electrode negative. It was read as it is; state a negative voltage scale to turn it over.',
    ],
  ],
  'negative-current': [
    [
      { meanCurrentA: -187.8 },
      'The current averages -187.8 A: the clamp faces the other way, or the electrode is negative. It was read as it is; state a negative current scale to turn it over.',
    ],
  ],
  'voltage-negative': [
    [
      {},
      'The voltage is below −9 V for much of the time: an arc with the leads swapped looks so. State a negative scale if that is the case.',
    ],
  ],
  'wav-size-missing': [
    [
      {},
      'The file does not state how long its sound is (interrupted, or written to a pipe); read to its end.',
    ],
  ],
  'partial-frame': [
    [{ restBytes: 1 }, 'The last 1 bytes are not a whole frame and were left out.'],
  ],
  'rows-reordered': [
    [
      { rows: 1, largestStepBackS: 0.00475 },
      '1 row stood out of order (up to 4.75 ms back); they were put in order of time.',
    ],
  ],
  'above-full-scale': [
    [
      { peakOverFullScale: 14.38 },
      'Samples reach 14.38 times digital full scale; they are kept as they are.',
    ],
  ],
  'long-arc': [
    [{}, 'The arc is long: there is more voltage than the current at this feed asks for.'],
  ],
  'voltage-surplus': [
    [{ surplusV: 4.1 }, 'The voltage is 4.1 V above what is usual at this current.'],
  ],
  'check-long-arc': [
    [
      {},
      'Time the wire feed over a measured length and read the voltage at the feeder; watch through the shield whether the arc is long.',
    ],
  ],
  'channel-assumed': [
    [
      { channels: 2 },
      'Of 2 channels the first was taken as sound and the others were left out; state a channel to use another, or which ones hold voltage and current.',
    ],
  ],
  'chosen-channel-silent': [
    [
      {},
      'The first channel is silent from end to end, but another channel is not; state which channel to use.',
    ],
  ],
  'rate-too-low': [
    [
      { rateHz: 200 },
      'At 200 Hz the trace is sampled too slowly for the mode: single short circuits, drops and pulses cannot be followed (short circuits come up to some 200 a second). Means, arc times and the comparison with the set-up hold; power from means may be up to 30 % off on sources that shape their waveform (Sperko 2010).',
    ],
  ],
  'swapped-channels': [
    [
      { meanVoltageV: 187.8, meanCurrentA: 17.46 },
      'The voltage averages 187.8 V and the current 17.46 A: it looks as if the two columns were swapped. They were read as they are; state the columns to change that.',
    ],
  ],
  'thousands-separators': [
    [{ values: 12000 }, '12000 values were read with thousands separators.'],
  ],
  'other-column': [
    [
      { columns: [{ name: 'U2', number: 4, unit: 'mV' }], quantity: 'voltage' },
      '“U2” [mV] could hold voltage too and was left out; state which column to use if that is wrong.',
    ],
  ],
  'unit-scaled': [
    [{ column: 'I', unit: 'kA', quantity: 'current' }, '“I” is in kA and was turned into A.'],
  ],
  'wav-wide-samples': [[{}, '24-bit samples stand in 4 bytes each; read as left-justified.']],
  'shorts-uneven': [[{ cv: 0.866 }, 'The shorts come unevenly (coefficient of variation 0.87).']],
  'terminal-volts-unknown': [
    [{}, 'The volts at the source’s terminals are not known: it may droop.'],
  ],
  'shorts-missing': [[{}, 'Short circuits were wanted and are missing.']],
  'taught-highest-mode': [
    [
      {},
      'Teaching puts "the highest mode" of 0.045 in wire in CO2 at 28–30 V (common practice, no source); published work does not call it axial spray.',
    ],
  ],
  'lies-up-to': [[{ topV: { min: 20, max: 22 } }, 'up to 20–22 V']],
  'band-row': [
    [
      {
        voltageV: null,
        currentA: { min: 30, max: 90 },
        feedMPerMin: null,
        diameterMm: { min: 0.58, max: 0.58 },
        gas: 'not stated',
        source: "a manufacturer's setting guide",
        certainty: 'F',
      },
      "30–90 A (0.58 mm, not stated): a manufacturer's setting guide",
    ],
    [
      {
        voltageV: { min: 26, max: 28 },
        currentA: null,
        feedMPerMin: null,
        diameterMm: { min: 1.14, max: 1.14 },
        gas: 'pure CO2',
        source: 'teaching figure',
        certainty: 'CP',
      },
      '26–28 V (1.14 mm, pure CO2): teaching figure (common practice, no source)',
    ],
    [
      {
        voltageV: { min: 22, max: 27 },
        currentA: { min: 180, max: 250 },
        feedMPerMin: null,
        diameterMm: { min: 1.2, max: 1.2 },
        gas: 'M21',
        source: 'shop practice',
        certainty: 'CP',
      },
      '22–27 V, 180–250 A (1.2 mm, M21): shop practice (common practice, no source)',
    ],
  ],
  'lies-above': [
    [{ bottomV: { min: 22, max: 26 }, belowA: null }, 'above 22–26 V'],
    [
      { bottomV: { min: 20, max: 22 }, belowA: { min: 220.1, max: 269 } },
      'above 20–22 V, below 220–269 A',
    ],
  ],
  'lies-in-spray': [
    [
      { bottomV: { min: 24, max: 26 }, aboveA: { min: 220.1, max: 269 }, disputed: false },
      'above 24–26 V and 220–269 A',
    ],
    [
      { bottomV: { min: 24, max: 26 }, aboveA: { min: 234.3, max: 350.9 }, disputed: true },
      'above 24–26 V and 234–351 A (disputed in this gas)',
    ],
    [
      { bottomV: { min: 24, max: 26 }, aboveA: null, disputed: false },
      'above 24–26 V and the transition current (not known)',
    ],
  ],
  'transition-row': [
    [
      {
        fromA: { min: 135, max: 135 },
        diameterMm: 1.168,
        gas: 'Ar',
        source: 'MIG Welding Handbook, Table 1-2',
        certainty: 'F',
      },
      'from 135 A (1.17 mm, Ar): MIG Welding Handbook, Table 1-2',
    ],
  ],
  'co2-row': [
    [
      { saying: '82-18-sold-for-spray', source: 'European practice', certainty: 'CP' },
      '82/18 is routinely sold as able to spray: European practice (common practice, no source)',
    ],
  ],
  'lies-under-pulses': [
    [{ disputed: false }, 'at any mean current, with a pulsed programme'],
    [{ disputed: true }, 'at any mean current, with a pulsed programme (disputed in this gas)'],
  ],
  'spray-begins': [[{ currentA: { min: 220.1, max: 269 } }, 'spray begins between 220 and 269 A']],
  'spray-disputed-below': [
    [
      { gas: { symbol: 'M21', composition: null } },
      'The sources disagree about axial spray in any gas of ISO 14175 group M21; each is listed under spray.',
    ],
  ],
  'material-taken': [[{}, 'No wire material was stated: carbon steel was taken.']],
  'only-set-voltage': [
    [
      { feederV: { min: 11.5, max: 20 } },
      'Only the set voltage is known: losses and the spread between tables leave 11.5–20 V. Measure at the feeder while welding to narrow this.',
    ],
  ],
  'heat-input-method': [
    [
      {},
      'For waveform-controlled sources the product of mean volts and mean amperes may be off by up to 30 % either way (Sperko 2010); use the instantaneous power, sampled some 10 000 times a second (Melfi, Welding J. 2010). In axial spray the difference is small.',
    ],
  ],
  'not-in-this-gas': [[{}, 'not in this gas']],
  'thin-wire-drops': [
    [
      {},
      'For wires below 0.9 mm with less than 30 % CO2 drops were measured never to fall below the wire diameter (Soderstrom & Mendez 2008): "spray" means less for them.',
    ],
  ],
  'plate-thick-for-short-circuit': [
    [
      {},
      'Above about 6.4 mm (1/4 in) plate short-circuit transfer is taught to risk lack of fusion (common practice, no source; a guide, not a limit).',
    ],
  ],
  'step-align': [
    [
      { delayS: null, peakOverRms: 2.417, nextBest: 0.9607 },
      'not found; peak 2.4 times the rms of all lags, next best 96 % of it',
    ],
    [
      { delayS: 0.003738, peakOverRms: 20.54, nextBest: 0.2464 },
      'sound 0.0037 s after the trace; peak 20.5 times the rms of all lags, next best 25 % of it',
    ],
  ],
  'step-pool': [
    [
      { soundWeight: 0.25, traceWeight: 0.9, featureSet: 'voltage-current' },
      'weights: sound 0.25, trace (voltage-current) 0.9',
    ],
  ],
  'alignment-not-shown': [
    [
      {},
      'No common events stand out; that both are of one run and of one clock was taken from what was stated.',
    ],
  ],
  'sound-against-trace': [
    [
      { sound: 'globular', trace: 'spray' },
      'Sound and trace contradict each other: globular by the sound, spray by the trace.',
    ],
  ],
  'not-fused': [
    [
      {},
      'Sound and trace do not seem to be of one run, or share too few clear events to show it; they were not judged together. The answer rests on the sound; what the trace alone says stands beside it.',
    ],
  ],
  'compare-mode-changed': [
    [{ before: 'short-circuit', after: 'spray' }, 'short-circuit before, spray after.'],
  ],
  'compared-figure': [[{ figure: 'powerW' }, 'mean power']],
  'spread-by': [
    [{ how: 'poisson-counts' }, 'counts taken as Poisson'],
    [{ how: 'block-bootstrap' }, 'block bootstrap of the rate by second'],
    [{ how: 'tenth-of-a-second' }, 'one independent value a tenth of a second'],
    [{ how: 'independent-intervals' }, 'each interval taken as independent of the others'],
    [
      { how: 'newcombe' },
      'Newcombe’s interval, a look at the mode each second or each half of a piece',
    ],
  ],
  'compared-share': [[{ mode: 'spray' }, 'share of the time in spray']],
  'compare-within-runs': [
    [
      {},
      '"More than chance" speaks of these two recordings. How much one weld differs from the next at the same settings they cannot show: record several of each.',
    ],
  ],
  'compare-mode-same': [[{ mode: 'short-circuit' }, 'short-circuit in both.']],
  'compare-same-file': [[{}, 'Both are the same file.']],
  'compare-kinds-differ': [
    [{}, 'One is a sound recording and the other a trace: their figures are not compared.'],
  ],
  'compare-models-differ': [[{}, 'The two were judged by different models.']],
  'compare-rates-differ': [
    [
      { beforeHz: 44100, afterHz: 5000 },
      'Sample rates differ (44100 and 5000 Hz): short events may be seen in one and missed in the other.',
    ],
  ],
  'compare-mode-unknown': [
    [{ before: 'no-arc', after: 'ok' }, 'no-arc before, ok after: the mode cannot be compared.'],
  ],
  'compare-not-ok': [
    [
      { run: 'before', status: 'no-arc', reason: { code: 'no-arc-shown', params: {} } },
      'before: no-arc. Nothing in the recording shows a burning arc.',
    ],
  ],
  'compare-doubts': [
    [
      { run: 'before', doubts: [{ code: 'short-recording', params: { durationS: 0.7 } }] },
      'before: 0.70 s is little to judge by; record 5 s of steady arc or more.',
    ],
  ],
  'current-below-transition': [
    [{ currentA: 195.7, missingA: 4.787 }, '196 A is at least 5 A below the transition current.'],
  ],
  'feed-draws': [
    [
      { nowA: 195.7, usualA: 247.2, usualMm: 15, sprayA: 244.5 },
      'The feed draws about 196 A so, and 247 A at 15 mm; spray begins near 245 A.',
    ],
  ],
  'short-rate-wanders': [
    [
      { cv: 0.5 },
      'The rate of shorts wanders from second to second (coefficient of variation 0.50).',
    ],
  ],
  'mode-changes': [[{ changes: 4 }, 'The mode changed 4 times.']],
  'shielding-lost': [
    [
      { from: 'spray', to: 'globular', atS: 6 },
      'The mode changed for good from spray to globular at 6.0 s with the settings untouched, as when shielding gas is lost.',
    ],
  ],
  'lasting-change': [[{ atS: 6 }, 'One lasting change at 6.0 s.']],
  'setup-forbids-mode': [[{ mode: 'globular' }, 'The settings do not permit globular.']],
  'torch-or-feed-alike': [
    [{}, 'A change of torch distance or of feed at that moment would look alike.'],
  ],
  'check-shielding': [
    [
      {},
      'Look at the cylinder gauge and flow meter, the hose, the nozzle (spatter) and draughts; look at the bead from that place on for pores.',
    ],
  ],
  'possible-with-good-gas': [
    [{ mode: 'globular' }, 'The settings lie where globular is possible with good gas as well.'],
  ],
  'run-changes-modes': [[{}, 'The run itself changes between modes.']],
  'some-report-spray': [[{}, 'Some sources do report spray in such a gas.']],
  'controlled-dip-running': [
    [
      {},
      'The source runs a programme that controls each short circuit, where another mode was meant.',
    ],
  ],
  stubbing: [[{}, 'The wire stubs: it dives into the pool and each short lasts too long.']],
  'shorts-last': [
    [{ meanS: 0.014 }, 'Shorts last 14.0 ms on average; a few milliseconds are usual.'],
  ],
  'shorts-a-second': [[{ rateHz: 18 }, '18 shorts a second.']],
  'check-stubbing': [
    [
      {},
      'Hold the voltage at the feeder and the timed wire feed against the qualified procedure; look at the inductance setting, which slows every short when it is high.',
    ],
  ],
  'confidence-only': [[{ confidence: 0.45 }, 'The mode is named with a confidence of only 45 %.']],
  'confidence-is': [[{ confidence: 0.45 }, 'Confidence is 45 %.']],
  'quantity-without-unit': [
    [{ quantity: 'wire feed', stated: '0' }, 'The wire feed "0" has no unit.'],
  ],
  'expected-quantity': [
    [
      { quantity: 'set voltage', min: 10, max: 50, unit: 'V', example: '24' },
      'a set voltage from 10 to 50 V, such as 24, or unknown',
    ],
  ],
  'did-you-mean': [
    [{ meanings: ['1m'], hint: null }, 'Did you mean 1m?'],
    [{ meanings: [], hint: null }, 'Check the value.'],
    [
      { meanings: [], hint: 'measure-while-welding' },
      'Check the value. Measure while welding, between wire and work, in volts.',
    ],
  ],
  refusal: [
    [
      {
        what: { code: 'quantity-without-unit', params: { quantity: 'stick-out', stated: '15' } },
        expected: {
          code: 'expected-quantity',
          params: { quantity: 'stick-out', min: 3, max: 60, unit: 'mm', example: '15mm or 5/8in' },
        },
        todo: { code: 'did-you-mean', params: { meanings: ['15mm'], hint: null } },
      },
      'The stick-out "15" has no unit. Expected a stick-out from 3 to 60 mm, such as 15mm or 5/8in, or unknown. Did you mean 15mm?',
    ],
    [
      {
        what: {
          code: 'quantity-wrong-unit',
          params: { quantity: 'stick-out', stated: '60V', unit: 'v' },
        },
        expected: {
          code: 'expected-quantity',
          params: { quantity: 'stick-out', min: 3, max: 60, unit: 'mm', example: '15mm or 5/8in' },
        },
        todo: { code: 'did-you-mean', params: { meanings: ['60mm'], hint: null } },
      },
      'The stick-out "60V" has the unit "v". Expected a stick-out from 3 to 60 mm, such as 15mm or 5/8in, or unknown. Did you mean 60mm?',
    ],
    [
      {
        what: {
          code: 'quantity-impossible',
          params: { quantity: 'wire diameter', stated: '12 mm', inBase: null },
        },
        expected: {
          code: 'expected-quantity',
          params: {
            quantity: 'wire diameter',
            min: 0.5,
            max: 2.5,
            unit: 'mm',
            example: '1.2mm or 0.045in',
          },
        },
        todo: { code: 'did-you-mean', params: { meanings: ['1.2mm'], hint: null } },
      },
      'The wire diameter "12 mm" is not possible here. Expected a wire diameter from 0.5 to 2.5 mm, such as 1.2mm or 0.045in, or unknown. Did you mean 1.2mm?',
    ],
  ],
  'quantity-impossible': [
    [
      { quantity: 'set voltage', stated: '0', inBase: null },
      'The set voltage "0" is not possible here.',
    ],
    [
      { quantity: 'travel speed', stated: '900 m/min', inBase: { value: 900000, unit: 'mm/min' } },
      'The travel speed "900 m/min", which is 900000 mm/min, is not possible here.',
    ],
  ],
  'quantity-wrong-unit': [
    [{ quantity: 'wire feed', stated: '60V', unit: 'v' }, 'The wire feed "60V" has the unit "v".'],
  ],
  'quantity-no-number': [
    [
      { quantity: 'wire feed', stated: 'fast' },
      'The wire feed "fast" is not a number with a unit.',
    ],
  ],
  'expected-like': [[{ example: '24' }, 'something like 24, or unknown']],
  'give-number-and-unit': [[{}, 'Give one number and its unit.']],
  'gas-not-understood': [[{ stated: 'M' }, 'The gas "M" is not understood.']],
  'expected-gas': [
    [{}, 'a mix such as Ar+18CO2, 75/25, C25 or 98/2 O2, an ISO 14175 symbol, or unknown'],
  ],
  'name-each-gas': [[{}, 'Name each gas of the mix with its per cent.']],
  'name-whole-symbol': [[{}, 'Name the whole symbol, such as M21.']],
  'gas-contradicts-itself': [
    [
      {
        stated: 'M21-ArC-2',
        says: 'M21',
        gas: { symbol: 'M12', composition: { ar: 98, he: 0, co2: 2, o2: 0, h2: 0, n2: 0 } },
      },
      'The gas "M21-ArC-2" says M21, but Ar + 2 % CO2 is M12.',
    ],
  ],
  'expected-symbol-and-mix': [[{}, 'a symbol and a composition that agree']],
  'mix-or-symbol': [[{ symbol: 'M12' }, 'Give the composition alone, or the symbol M12.']],
  'gas-leaves-open': [[{ stated: 'Ar+CO2' }, 'The gas "Ar+CO2" leaves more than one share open.']],
  'expected-shares-but-one': [[{}, 'a per cent for every gas but one']],
  'write-like-mix': [[{}, 'Write it like Ar+18CO2.']],
  'gas-parts-sum': [
    [{ stated: '50Ar/30CO2', sumPercent: 80 }, 'The parts of the gas "50Ar/30CO2" add up to 80 %.'],
  ],
  'expected-hundred': [[{}, 'parts that add up to 100 %']],
  'check-numbers': [[{}, 'Check the numbers.']],
  'gas-ambiguous': [
    [
      {
        stated: '98/2',
        meanings: [
          { write: 'Ar+2CO2', means: 'argon with CO2' },
          { write: 'Ar+2O2', means: 'argon with oxygen' },
        ],
      },
      'The gas "98/2" has more than one meaning: Ar+2CO2 (argon with CO2); Ar+2O2 (argon with oxygen).',
    ],
  ],
  'expected-clear-gas': [[{}, 'a gas named without doubt']],
  'write-one-of': [[{ writings: ['Ar+2CO2', 'Ar+2O2'] }, 'Write one of them: Ar+2CO2, Ar+2O2.']],
  'aluminium-in-active-gas': [
    [
      { gas: { symbol: 'C1', composition: { ar: 0, he: 0, co2: 100, o2: 0, h2: 0, n2: 0 } } },
      'Aluminium wire with pure CO2 cannot be welded: the active gas oxidises the pool.',
    ],
    [
      { gas: { symbol: 'M21', composition: null } },
      'Aluminium wire with any gas of ISO 14175 group M21 cannot be welded: the active gas oxidises the pool.',
    ],
  ],
  'expected-inert-gas': [
    [{}, 'argon, helium or a mix of the two (ISO 14175 I1, I2, I3) with aluminium'],
  ],
  'check-gas-or-wire': [
    [{}, 'Check the gas; if the wire is steel, state --wire-material carbon-steel.'],
  ],
  'pulses-of-steady-source': [
    [{}, 'Pulsed spray is wanted, but the source is said to run steady.'],
  ],
  'expected-pulsed-source': [[{}, '--source pulsed with --expect pulsed-spray']],
  'pulsed-source-or-spray': [[{}, 'Did you mean --source pulsed, or --expect spray?']],
  'mode-not-given': [
    [{ stated: 'stream' }, 'The wanted mode "stream" is not one this tool names.'],
  ],
  'expected-choice': [[{ choices: ['dcep', 'dcen', 'ac'] }, 'dcep, dcen, ac, or unknown']],
  'unsure-never-label': [
    [{}, 'Rotating spray and a buried arc are answered with "unsure", never with a label.'],
  ],
  'choice-not-known': [[{ choice: 'source', stated: '?x' }, 'The source "?x" is not known.']],
  'choose-one': [[{}, 'Choose one of these.']],
  'wire-cored': [[{ stated: 'flux cored' }, '"flux cored" is a flux-cored or metal-cored wire.']],
  'expected-solid-wire': [[{}, 'a solid wire of carbon steel, stainless steel or aluminium']],
  'solid-wire-only': [
    [
      {},
      'This tool was made for solid wire only; no verdict on a cored wire would be worth anything.',
    ],
  ],
  'wire-not-known': [
    [{ stated: 'bronze' }, 'The wire material "bronze" is not one this tool knows.'],
  ],
  'expected-wire': [
    [
      { materials: ['carbon-steel', 'stainless-steel', 'aluminium'] },
      'carbon-steel, stainless-steel, aluminium, a solid-wire classification such as ER70S-6, or unknown',
    ],
  ],
  'other-wire-unknown': [
    [{}, 'For copper or bronze and other wires no bands are held here: say unknown.'],
  ],
  'volts-rise': [
    [
      { place: 'feeder', placeV: 20, next: 'arc', nextV: 21 },
      'The arc is said to stand at 21 V and the feeder before it at 20 V.',
    ],
  ],
  'expected-falling-volts': [[{}, 'a voltage that falls from the source to the feeder to the arc']],
  'readings-swapped': [[{}, 'Were the two readings swapped, or taken at different moments?']],
} satisfies Partial<Examples> & Partial<Record<MessageCode, unknown>>;
