import type { MessageCode } from '../../../src/messages/index.js';
import type { Examples } from './examples.js';

/**
 * As in `spoken.ts`, for sentences that are rare: texts written by hand as version 1.0 put them, with numbers
 * that show the rounding.
 */
export const WRITTEN = {
  'watch-nothing-comes': [[{ quietS: 1.24 }, 'nothing has come for 1.2 s']],
  'watch-clock-anew': [[{}, 'the clock of the logger began anew']],
  'watch-samples-missing': [[{ samples: 40 }, '40 samples are missing']],
  'watch-source-ended': [[{}, 'the source ended']],
  'watch-told-by': [
    [{ by: 'stream' }, 'told by the stream'],
    [{ by: 'broker' }, 'told by the broker'],
  ],
  'watch-program': [[{ program: 'P7' }, 'program P7']],
  'watch-program-unknown': [
    [{ program: 'P7' }, 'program P7 is not among those of --programs; the expectation stays'],
  ],
  'watch-expect-unknown': [[{ stated: 'x' }, '"#expect x" names no mode; nothing changed']],
  'arc-too-short': [[{}, 'The arc is too short to be judged.']],
  'modes-mixed': [
    [
      {
        modes: [
          { mode: 'spray', shareOfTime: 0.5512 },
          { mode: 'globular', shareOfTime: 0.4488 },
        ],
      },
      'The run mixes spray (55 %) and globular (45 %).',
    ],
    [
      {
        modes: [
          { mode: 'spray', shareOfTime: 0.5 },
          { mode: 'short-circuit', shareOfTime: 0.3 },
          { mode: 'globular', shareOfTime: 0.2 },
        ],
      },
      'The run mixes spray (50 %) and short-circuit (30 %) and globular (20 %).',
    ],
  ],
  'plainly-no-arc': [
    [{ heard: 'tone' }, 'No arc: only a steady tone stands out.'],
    [{ heard: 'hum' }, 'No arc: only a hum or buzz stands out.'],
    [
      { heard: 'nothing-recorded' },
      'Nothing louder than the recorder itself was recorded: the microphone may be off, covered or far too low.',
    ],
  ],
  'usual-sign': [
    [
      {
        sign: 'crackRateHz',
        value: 30.4,
        spacing: 'uneven',
        mode: 'short-circuit',
        low: 20,
        high: 200,
        fits: true,
        others: ['spray'],
      },
      '30 sharp cracks a second, unevenly spaced: usual for short-circuit (20 to 200), not for spray',
    ],
    [
      {
        sign: 'fastSwingShare',
        value: 0.121,
        spacing: null,
        mode: 'pulsed-spray',
        low: 0.3,
        high: 0.9,
        fits: false,
        others: ['globular', 'spray'],
      },
      'loudness swings fast, 60 to 400 times a second, by 12 %: not usual for pulsed-spray (30 % to 90 %), rather for globular or spray; the whole decides',
    ],
  ],
  'one-of-modes': [
    [
      { modes: ['globular', 'spray'], probability: 0.9349, not: ['short-circuit'] },
      'Globular or spray (93 % together); not short-circuit.',
    ],
    [
      { modes: ['short-circuit', 'globular', 'pulsed-spray'], probability: 0.96, not: [] },
      'Short-circuit or globular or pulsed-spray (96 % together).',
    ],
  ],
  'drop-size-not-audible': [
    [
      { probability: 0.88 },
      'Free flight, drop size not audible: globular or spray (88 % together).',
    ],
  ],
  'would-settle': [
    [
      { tooLoud: false },
      'To settle it: hold the microphone nearer the arc, switch gain control and noise suppression off, or log the voltage.',
    ],
    [
      { tooLoud: true },
      'To settle it: turn the recording level down, switch gain control and noise suppression off, or log the voltage.',
    ],
  ],
  'run-against-moments': [
    [
      { run: 'spray', moments: 'pulsed-spray' },
      'The run as a whole looks like spray, but most moments like pulsed-spray.',
    ],
  ],
  'too-little-in-both': [[{}, 'Too little of the arc is in both recordings.']],
  'trace-unlike-model': [
    [{}, 'The trace is unlike anything the model was fitted on; no mode is named.'],
  ],
  'not-of-one-run': [
    [
      { sound: 'spray', trace: 'mixed' },
      'Sound and trace do not seem to be of one run: spray by the sound, mixed by the trace.',
    ],
  ],
  'pooling-of-other-models': [
    [{}, 'The weights of sound and trace were fitted with other models than those used here.'],
  ],
  'voltage-missing-samples': [
    [
      { samples: 12 },
      '12 samples of the voltage were not numbers and were replaced by the one before.',
    ],
  ],
  'current-missing-samples': [
    [
      { samples: 3 },
      '3 samples of the current were not numbers and were replaced by the one before.',
    ],
  ],
  'current-clipped': [[{}, 'The current rests at the end of its range: peaks are cut off.']],
  'voltage-held': [
    [{}, 'The voltage stands still for milliseconds at a time: a slow or frozen reading.'],
  ],
  'current-held': [
    [{}, 'The current stands still for milliseconds at a time: a slow or frozen reading.'],
  ],
  'damaged-packets': [
    [
      { damaged: 3, packets: 200, damagedS: 0.064 },
      '3 of 200 codec packets (0.06 s) could not be decoded and are silence.',
    ],
  ],
  truncated: [
    [
      { how: 'breaks-off', readS: 1.236, cause: 'no more bytes' },
      'The file breaks off after 1.24 s of sound (no more bytes).',
    ],
    [
      { how: 'decoded-less', declaredS: 5, readS: 4.2 },
      'The file declares 5.00 s of sound, but 4.20 s could be decoded.',
    ],
    [
      { how: 'damaged-frame', readS: 0.98 },
      'The AMR sound ends after 0.98 s in a damaged or cut frame.',
    ],
    [
      { how: 'rest-no-block', restBytes: 71 },
      'The file was cut off; its last 71 bytes are not a whole block of sound.',
    ],
    [
      { how: 'damaged-packet', readBytes: 1000, fileBytes: 8000 },
      'Only the first 13 % of the file could be read; a packet behind that is damaged.',
    ],
    [
      { how: 'holds-less', declaredS: 4.16666, heldS: 1 },
      'The file declares 4.167 s of sound but holds 1.000 s; it was cut off.',
    ],
  ],
  'encoder-delay-unknown': [
    [
      { codec: 'mp3' },
      'The MP3 file does not state its encoder delay; times may be late by up to 0.05 s.',
    ],
    [
      { codec: 'aac' },
      'The file does not state its encoder delay; times may be late by some 0.02 to 0.05 s.',
    ],
  ],
  'host-decoder': [[{ decoder: 'ffmpeg 7.1' }, 'The sound was decoded by ffmpeg 7.1.']],
  'lossy-codec': [
    [
      { codec: 'aac', frameSamples: 1024, sampleRateHz: 48000 },
      'The sound went through AAC, which leaves out or replaces by noise what the ear would miss, and often everything above some frequency. Detail in time smears within 21 ms. Confidence is lower than for a WAV.',
    ],
    [
      { codec: 'ac3', frameSamples: null, sampleRateHz: 48000 },
      'The sound went through AC3, which leaves out or replaces by noise what the ear would miss, and often everything above some frequency. Confidence is lower than for a WAV.',
    ],
  ],
  'track-assumed': [[{ tracks: 2 }, 'Of 2 sound tracks the first was taken.']],
  'sound-starts-late': [
    [
      { startS: 0.5 },
      'The sound starts 0.500 s into the file; times count from the start of the sound.',
    ],
  ],
  'wav-unpadded-chunk': [[{}, 'A chunk of odd length lacks its padding byte; read without it.']],
  'not-finite': [
    [
      { samples: 1, firstTimesS: [0.25], replacedBy: 'zero' },
      '1 sample is not a number (at 0.2500 s); replaced by 0.',
    ],
    [
      { samples: 7, firstTimesS: [0.1, 0.2], replacedBy: 'last-good' },
      '7 samples are not a number (at 0.1000 s, 0.2000 s, …); replaced by the last good value.',
    ],
  ],
  'sample-rate-stated': [
    [{ sampleRateHz: 48000 }, 'The file states a sample rate of 0; 48000 Hz is used, as stated.'],
  ],
  'file-growing': [
    [
      { openedBytes: 1000, nowBytes: 1500 },
      'The file grew from 1000 to 1500 bytes while it was read; the result covers what was there at the start.',
    ],
  ],
  'raw-stated': [
    [
      { encoding: 's16', bigEndian: true, channels: 1, sampleRateHz: 20000, skippedBytes: 44 },
      'Read as bare samples as stated: s16, high byte first, 1 channel, 20000 Hz, 44 bytes passed over.',
    ],
    [
      { encoding: 'f32', bigEndian: false, channels: 2, sampleRateHz: 20000, skippedBytes: 0 },
      'Read as bare samples as stated: f32, 2 channels, 20000 Hz.',
    ],
  ],
  'bytes-after-sound': [
    [
      { bytes: 96000 },
      '96000 bytes after the declared end of the sound were left out; if the recorder was interrupted, they may be sound.',
    ],
  ],
  'scale-stated': [
    [
      { of: 'channel', channel: 2, quantity: 'current', atFullScale: 1000 },
      'Channel 2 is read as current with 1000 A at digital full scale, as stated.',
    ],
    [
      { of: 'column', column: 'U', quantity: 'voltage', perUnit: 0.5 },
      '“U” is read with 0.5 V a unit, as stated.',
    ],
  ],
  'rate-stated': [[{ rateHz: 5000 }, 'The rate of 5000 Hz is used as stated.']],
  'time-column': [
    [
      { column: { name: 't', number: 1, unit: 'ms' }, by: 'name' },
      'Time is read from “t” [ms] (by its name).',
    ],
    [
      { column: { name: null, number: 4, unit: 's' }, by: 'unit' },
      'Time is read from column 4 [s] (by its unit).',
    ],
    [
      { column: { name: null, number: 1, unit: null }, by: 'place' },
      'The file names no columns; column 1 is taken as time by its place.',
    ],
  ],
  'other-column': [
    [
      { columns: [{ name: 'U2', number: 4, unit: 'mV' }], quantity: 'voltage' },
      '“U2” [mV] could hold voltage too and was left out; state which column to use if that is wrong.',
    ],
    [
      {
        columns: [
          { name: 'U2', number: 4, unit: null },
          { name: null, number: 5, unit: 'V' },
        ],
        quantity: 'voltage',
      },
      '“U2”, column 5 [V] could hold voltage too and were left out; state which column to use if that is wrong.',
    ],
  ],
  'time-unit-assumed': [
    [
      { column: 't', unitS: 0.001, by: 'size' },
      '“t” gives no unit; it is taken as milliseconds, from its size and steps.',
    ],
    [
      { column: 't', unitS: 1, by: 'stated-rate' },
      '“t” gives no unit; it is taken as seconds, from the stated rate.',
    ],
    [
      { column: 't', unitS: 1e-9, by: 'stated-rate' },
      '“t” gives no unit; it is taken as nanoseconds, from the stated rate.',
    ],
    [
      { column: 't', unitS: 60, by: 'stated-rate' },
      '“t” gives no unit; it is taken as units of 60 s, from the stated rate.',
    ],
  ],
  gaps: [
    [
      { gaps: 1, missingSamples: 39, longestS: 0.00975, bridgedS: 0.02 },
      'One gap in the time stamps (39 samples missing, the longest 9.750 ms): up to 20 ms bridged by straight lines, longer ones set to 0.',
    ],
    [
      { gaps: 2, missingSamples: 638, longestS: 0.14975, bridgedS: 0.02 },
      '2 gaps in the time stamps (638 samples missing, the longest 149.8 ms): up to 20 ms bridged by straight lines, longer ones set to 0.',
    ],
  ],
  'crowded-rows': [[{ rows: 1 }, '1 row with a time that was already taken left out.']],
  'rows-without-time': [[{ rows: 4 }, '4 rows without a time left out.']],
  'text-encoding': [[{ encoding: 'utf-16le' }, 'The text is read as utf-16le.']],
  'cut-off-line': [
    [{ line: 812, text: '0.2,17.' }, 'The last line (812: “0.2,17.”) breaks off; it was left out.'],
  ],
  'text-lines': [
    [
      { lines: 1, firstLine: 7, firstText: 'U;I' },
      '1 line of text between the rows left out (line 7: “U;I”).',
    ],
    [
      { lines: 2, firstLine: 7, firstText: 'U;I' },
      '2 lines of text between the rows left out (line 7: “U;I”).',
    ],
  ],
  'many-series': [
    [{ series: 300, used: 256 }, 'Of 300 series in the file only the first 256 are looked at.'],
  ],
  'current-too-low': [
    [
      { peakA: 2.00006 },
      'The current stays below 2 A, too little for this process: the volts of a shunt or Hall sensor, or kiloamperes? State a current scale (amperes per unit) if so.',
    ],
  ],
  'sound-feature': [
    [{ feature: 'lineRate' }, 'rate of the strongest beat in the loudness'],
    [{ feature: 'lineProminence' }, 'clearness of the strongest beat'],
  ],
  'band-modulation': [
    [{ lowHz: 1.5, highHz: 4 }, 'how strongly the loudness fluctuates at 1.5 to 4 Hz'],
  ],
  'band-coherence': [
    [
      { lowHz: 400, highHz: 1000 },
      'how far the lower and upper half of the band fluctuate together at 400 to 1000 Hz',
    ],
  ],
  'trace-feature': [
    [{ feature: 'lineProminence' }, 'that line over the floor around it'],
    [{ feature: 'arcSlopeOhm' }, 'slope of voltage over current in the arc phase'],
  ],
  'in-words': [[{ text: 'as it was said' }, 'as it was said']],
  authority: [
    [
      { source: 'MIG Welding Handbook, Table 1-2', certainty: 'F' },
      'MIG Welding Handbook, Table 1-2',
    ],
    [
      { source: 'a reference note on transfer modes', certainty: 'F2' },
      'a reference note on transfer modes (read in a secondary text; check the primary before relying on it)',
    ],
    [
      { source: 'industry guides', certainty: 'M' },
      'industry guides (from memory of the source named)',
    ],
    [{ source: 'shop practice', certainty: 'CP' }, 'shop practice (common practice, no source)'],
  ],
  'band-gas': [[{ gas: 'Ar with little CO2 and O2' }, 'Ar with little CO2 and O2']],
  'band-remark': [
    [
      { remark: 'above 230 A and 26 V; the upper ends are open' },
      'above 230 A and 26 V; the upper ends are open',
    ],
  ],
  'window-scope': [
    [
      { diameterMm: null, material: 'carbon-steel', materialStated: false, gas: null },
      'any wire diameter, carbon steel (taken: no material was stated), any gas',
    ],
    [
      {
        diameterMm: 1.2,
        material: 'stainless-steel',
        materialStated: true,
        gas: { symbol: 'M12', composition: { ar: 97.5, he: 0, co2: 2.5, o2: 0, h2: 0, n2: 0 } },
      },
      '1.2 mm wire, stainless steel, gas Ar + 2.5 % CO2',
    ],
  ],
  'not-analysed': [[{}, 'The recording could not be analysed.']],
  'voltage-not-low': [[{}, 'The voltage is not low for the current.']],
  'current-estimated': [[{}, 'The current is estimated from the feed, not measured.']],
  'feed-and-wire-unknown': [[{}, 'Without feed and wire the current it costs is open.']],
  'positive-stated': [[{}, 'Electrode positive is stated.']],
  'polarity-stated': [[{ polarity: 'dcen' }, 'Polarity is stated as dcen.']],
  'microphone-as-asked': [
    [
      {
        off: ['autoGainControl', 'noiseSuppression', 'echoCancellation'],
        stillOn: [],
        notTold: [],
      },
      'Raw sound was asked for; the browser reports off: gain control, noise suppression, echo cancellation.',
    ],
  ],
  'microphone-processed': [
    [
      { off: ['noiseSuppression'], stillOn: ['autoGainControl'], notTold: ['echoCancellation'] },
      'Raw sound was asked for; the browser reports off: noise suppression; STILL ON: gain control; not told: echo cancellation.',
    ],
  ],
  'browser-resampled': [
    [
      { deviceHz: 44100, usedHz: 48000 },
      'The microphone runs at 44100 Hz, but the browser hands its sound over at 48000 Hz.',
    ],
  ],
  'tone-in-recording': [
    [
      { toneHz: 880, atS: 6.25 },
      'Two tones of 880 Hz, below the band that is judged, were sounded at 6.3 s.',
    ],
  ],
  'recording-interrupted': [
    [
      { by: 'device-gone' },
      'The microphone was taken away while recording; what came before is kept and judged.',
    ],
    [
      { by: 'call' },
      'A call or a locked screen ended the recording; what came before is kept and judged.',
    ],
    [{ by: 'too-long', longestS: 600 }, 'The recording was ended after 600 s.'],
  ],
  'live-weld': [
    [
      { weld: 2, startedAt: '2026-03-01T10:00:00.000Z' },
      'Weld 2 of a live signal; times count from its first sample, heard at 2026-03-01T10:00:00.000Z.',
    ],
  ],
  'live-lost-samples': [
    [{ samples: 480 }, '480 samples were lost in the line since the weld before.'],
  ],
  'live-rows': [
    [{ rateHz: 5000, by: 'stated' }, 'Rows at 5000 Hz, as stated.'],
    [{ rateHz: 5000, by: 'times' }, 'Rows at 5000 Hz, from the times of the first rows.'],
  ],
  'no-mode-stands-out': [[{}, 'No mode stands out in this stretch.']],
  'mode-in-doubt': [
    [
      { mode: 'globular', confidence: 0.456 },
      'The mode of this stretch is in doubt: globular at 0.46.',
    ],
  ],
  'compare-mode-not-sure': [
    [
      { before: 'spray', after: 'mixed' },
      'spray before, mixed after. One of the two is not sure enough to call it a change.',
    ],
  ],
  'compare-settings-differ': [[{}, 'The two were analysed with different settings.']],
} satisfies Partial<Examples> & Partial<Record<MessageCode, unknown>>;
