import { describe, expect, it } from 'vitest';
import { readCsv } from './read-log.js';

/*
 * Expected values: the numbers written in each text (plain reading). Each case would reject a reader
 * that knows one dialect only, or that takes a decimal comma for a delimiter.
 */

/** Three rows at 10 kHz: 0, 0.1, 0.2 ms; 20.5, 21.25, 19 V; 150, 151.5, 149 A. */
const VOLTS = [20.5, 21.25, 19];
const AMPS = [150, 151.5, 149];
const utf16 = (text: string, big = false): Uint8Array => {
  const out = new Uint8Array(2 + 2 * text.length);
  const view = new DataView(out.buffer);
  view.setUint16(0, 0xfeff, !big);
  for (let i = 0; i < text.length; i++) view.setUint16(2 + 2 * i, text.charCodeAt(i), !big);
  return out;
};

const BOTH: [string, string | Uint8Array][] = [
  ['plain comma', 'time,voltage,current\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n'],
  ['no line end at the end', 'time,voltage,current\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149'],
  ['CRLF', 'time,voltage,current\r\n0,20.5,150\r\n0.0001,21.25,151.5\r\n0.0002,19,149\r\n'],
  ['lone CR', 'time,voltage,current\r0,20.5,150\r0.0001,21.25,151.5\r0.0002,19,149\r'],
  [
    'semicolon, decimal comma, German',
    'Zeit [s];Spannung [V];Strom [A]\n0;20,5;150\n0,0001;21,25;151,5\n0,0002;19;149\n',
  ],
  ['semicolon, decimal point', 't;U;I\n0;20.5;150\n0.0001;21.25;151.5\n0.0002;19;149\n'],
  ['tab', 'time\tvoltage\tcurrent\n0\t20.5\t150\n0.0001\t21.25\t151.5\n0.0002\t19\t149\n'],
  [
    'tab, decimal comma, French',
    'Temps (s)\tTension (V)\tCourant (A)\n0\t20,5\t150\n0,0001\t21,25\t151,5\n0,0002\t19\t149\n',
  ],
  [
    'spaces, aligned',
    'time     voltage current\n  0       20.5    150\n  0.0001  21.25   151.5\n  0.0002  19      149\n',
  ],
  [
    'comma and blank',
    'time, voltage, current\n0, 20.5, 150\n0.0001, 21.25, 151.5\n0.0002, 19, 149\n',
  ],
  ['pipe', 'time|voltage|current\n0|20.5|150\n0.0001|21.25|151.5\n0.0002|19|149\n'],
  [
    'all quoted',
    '"time","voltage","current"\n"0","20.5","150"\n"0.0001","21.25","151.5"\n"0.0002","19","149"\n',
  ],
  [
    'all quoted, decimal comma between commas',
    '"Zeit","U","I"\n"0","20,5","150"\n"0,0001","21,25","151,5"\n"0,0002","19","149"\n',
  ],
  [
    'quoted text before the values',
    'state,t,U,I\n"a, b",0,20.5,150\n"c d",0.0001,21.25,151.5\n"",0.0002,19,149\n',
  ],
  [
    'byte-order mark',
    '\ufefftime,voltage,current\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n',
  ],
  [
    'UTF-16 little endian',
    utf16('Zeit;Spannung;Strom\r\n0;20,5;150\r\n0,0001;21,25;151,5\r\n0,0002;19;149\r\n'),
  ],
  [
    'UTF-16 big endian',
    utf16('time\tU\tI\n0\t20.5\t150\n0.0001\t21.25\t151.5\n0.0002\t19\t149\n', true),
  ],
  [
    'UTF-16 without a mark',
    utf16('time,U,I\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n').slice(2),
  ],
  ['units row', 'time,voltage,current\n(ms),(V),(A)\n0,20.5,150\n0.1,21.25,151.5\n0.2,19,149\n'],
  [
    'oscilloscope: axis names, units by word',
    'x-axis,1,2\nsecond,Volt,Ampere\n0,20.5,150\n1e-4,21.25,151.5\n2E-04,19,149\n',
  ],
  [
    'mV, kA, µs',
    'time [µs],voltage [mV],current [kA]\n0,20500,.150\n100,21250,.1515\n200,19000,.149\n',
  ],
  ['underscored units', 't_ms,U_V,I_A\n0,20.5,150\n0.1,21.25,151.5\n0.2,19,149\n'],
  ['slashed units', 't / ms;U / V;I / A\n0;20,5;150\n0,1;21,25;151,5\n0,2;19;149\n'],
  [
    'comment header',
    '# logger 7\n# time voltage current\n0 20.5 150\n0.0001 21.25 151.5\n0.0002 19 149\n',
  ],
  [
    'comments between rows',
    'time,voltage,current\n0,20.5,150\n# weld starts\n0.0001,21.25,151.5\n\n0.0002,19,149\n',
  ],
  [
    'repeated header',
    'time,voltage,current\n0,20.5,150\n0.0001,21.25,151.5\ntime,voltage,current\n0.0002,19,149\n',
  ],
  [
    'preamble',
    `Model,X7\nSerial,1234\nDate,2026-01-02\nPoints,3\n${'Remark,none\n'.repeat(120)}time,voltage,current\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n`,
  ],
  [
    'other columns',
    'nr;state;I [A];feed [m/min];U [V];t [s]\n1;OK;150;6;20,5;0\n2;OK;151,5;6;21,25;0,0001\n3;OK;149;6;19;0,0002\n',
  ],
  [
    'set voltage beside the measured one',
    'time,set voltage (V),arc voltage (V),mean voltage (V),weld current (A)\n0,24,20.5,23,150\n0.0001,24,21.25,23,151.5\n0.0002,24,19,23,149\n',
  ],
  [
    'trailing delimiter',
    'time;voltage;current;\n0;20.5;150;\n0.0001;21.25;151.5;\n0.0002;19;149;\n',
  ],
  ['no header', '0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n'],
  [
    'scientific notation',
    'time,voltage,current\n0.0e0,2.05e+01,1.5E2\n1e-4,2.125e1,1.515e2\n2.0e-4,1.9D1,1.49e+002\n',
  ],
  ['clock', 'time;U;I\n12:00:00.0000;20.5;150\n12:00:00.0001;21.25;151.5\n12:00:00.0002;19;149\n'],
  [
    'date and clock',
    'time,U,I\n2026-01-02T23:59:59.9999Z,20.5,150\n2026-01-03T00:00:00.0000Z,21.25,151.5\n2026-01-03T00:00:00.0001Z,19,149\n',
  ],
  [
    'clock past midnight, day first',
    'Uhrzeit;U;I\n31.12.2025 23:59:59,9999;20,5;150\n01.01.2026 00:00:00,0000;21,25;151,5\n01.01.2026 00:00:00,0001;19;149\n',
  ],
  [
    'seconds since 1970',
    'timestamp,U,I\n1700000000.0000,20.5,150\n1700000000.0001,21.25,151.5\n1700000000.0002,19,149\n',
  ],
  [
    'microseconds since 1970',
    'timestamp,U,I\n1700000000000000,20.5,150\n1700000000000100,21.25,151.5\n1700000000000200,19,149\n',
  ],
  ['Spanish', 'Tiempo;Tensión (V);Corriente (A)\n0;20,5;150\n0,0001;21,25;151,5\n0,0002;19;149\n'],
  ['Italian', 'Tempo [ms];Tensione [V];Corrente [A]\n0;20,5;150\n0,1;21,25;151,5\n0,2;19;149\n'],
  ['Chinese', '时间(ms),电压(V),电流(A)\n0,20.5,150\n0.1,21.25,151.5\n0.2,19,149\n'],
  ['Japanese', '時間[ms],電圧[V],電流[A]\n0,20.5,150\n0.1,21.25,151.5\n0.2,19,149\n'],
  ['Russian', 'Время;Напряжение, В;Ток, А\n0;20,5;150\n0,0001;21,25;151,5\n0,0002;19;149\n'],
  ['Polish', 'Czas;Napięcie;Prąd\n0;20,5;150\n0,0001;21,25;151,5\n0,0002;19;149\n'],
  ['Turkish', 'Zaman;Gerilim;Akım\n0;20,5;150\n0,0001;21,25;151,5\n0,0002;19;149\n'],
  [
    'Latin-1 bytes',
    Uint8Array.from(
      'Zeit [\u00b5s];Spannung [V];Stromst\u00e4rke [A]\n0;20,5;150\n100;21,25;151,5\n200;19;149\n',
      (c) => c.charCodeAt(0),
    ),
  ],
  [
    'camel case',
    'timeStamp,arcVoltage,weldCurrent\n0,20.5,150\n0.0001,21.25,151.5\n0.0002,19,149\n',
  ],
];

describe('text dialects', () => {
  it.each(BOTH)('%s', async (_, text) => {
    const { recording, channels } = await readCsv(text);
    expect(recording.sampleRateHz).toBeCloseTo(10_000, 3);
    expect(recording.channels.map(({ unit }) => unit)).toEqual(['V', 'A']);
    // Scaling by 0.001 or 1000 rounds once: hence not exactly equal.
    channels[0]?.forEach((value, i) => {
      expect(value).toBeCloseTo(VOLTS[i] as number, 10);
    });
    channels[1]?.forEach((value, i) => {
      expect(value).toBeCloseTo(AMPS[i] as number, 10);
    });
    expect(channels.map((samples) => samples.length)).toEqual([3, 3]);
  });

  it('reads thousands separators in both styles and says so', async () => {
    const english = await readCsv('time;U [mV]\n0;20,500.5\n0.0001;1,021,250\n0.0002;19,000\n');
    expect(english.channels[0]).toEqual([20.5005, 1021.25, 19]);
    const german = await readCsv(
      'time;U [mV];I\n0;20.500,5;1,5\n0,0001;21.250;1,5\n0,0002;19.000;1,25\n',
    );
    expect(german.channels[0]).toEqual([20.5005, 21.25, 19]);
    expect(german.codes).toContain('thousands-separators');
  });

  it('reads a column alone with a stated rate, and with the rate of the file', async () => {
    const stated = await readCsv('voltage\n20.5\n21.25\n19\n', { sampleRateHz: 8000 });
    expect(stated.recording.sampleRateHz).toBe(8000);
    expect(stated.channels).toEqual([VOLTS]);
    const own = await readCsv(
      'Sample rate [kHz];20\nSpannung;Strom\n20,5;150\n21,25;151,5\n19;149\n',
    );
    expect(own.recording.sampleRateHz).toBe(20_000);
    expect(own.note('rate-from-file')).toContain('Sample rate');
    const interval = await readCsv('XINCR,4.0E-5\nCH1 [V]\n20.5\n21.25\n19\n');
    expect(interval.recording.sampleRateHz).toBeCloseTo(25_000, 6);
  });

  it('reads a current alone', async () => {
    const { recording, channels } = await readCsv(
      'time,current\n0,150\n0.0001,151.5\n0.0002,149\n',
    );
    expect(recording.channels).toEqual([{ name: 'current', quantity: 'current', unit: 'A' }]);
    expect(channels).toEqual([AMPS]);
  });
});
