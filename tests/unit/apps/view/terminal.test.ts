import { describe, expect, it } from 'vitest';
import { resultSchema } from '../../../../src/analysis/result/index.js';
import { NO_PAINT, terminalText, wrap } from '../../../../src/apps/view/index.js';
import { sampleResult } from '../../../support/sample-result.js';

const look = { width: 80, paint: NO_PAINT };
const crossCheck = {
  settings: {
    answer: 'disagrees' as const,
    text: 'These settings permit spray.',
    comparedVoltage: 'set voltage',
    marginV: 3,
    marginA: null,
  },
  intended: { answer: 'agrees' as const, text: 'Short-circuit was wanted.' },
  explanations: [
    explanation(2, 'second', 'Weigh the wire.'),
    explanation(1, 'first', 'Read the voltage at the feeder.'),
  ],
};

function explanation(rank: number, id: string, check: string) {
  return { id, rank, text: `Explanation ${id}.`, evidenceFor: [], evidenceAgainst: [], check };
}

describe('the sample', () => {
  it('is a valid result', () => {
    expect(resultSchema.safeParse(sampleResult()).error).toBeUndefined();
  });
});

describe('terminalText', () => {
  it('says the verdict in the first five lines: mode, how sure, over what, how often', () => {
    const lines = terminalText(sampleResult(), look).split('\n').slice(0, 6).join('\n');
    expect(lines).toContain('SHORT-CIRCUIT TRANSFER (D)   very likely, 94 %');
    expect(lines).toContain('short-circuit 75 %, globular 25 % of 8 s of arc, from 1 s to 9 s');
    expect(lines).toContain('124 arc events a second');
  });

  it('keeps to the width, and to the order: verdict, reasons, trust, set-up, check, caution', () => {
    for (const width of [40, 80, 100]) {
      const text = terminalText(sampleResult({ crossCheck }), { ...look, width });
      const tooLong = text.split('\n').filter((line) => line.length > width);
      expect(tooLong).toEqual([]);
      const heads = text.split('\n').filter((line) => /^[A-Z]/.test(line));
      expect(heads).toEqual([
        'Fits short-circuit',
        'How far to trust it',
        'Assumed while reading',
        'Against the set-up',
        'Check next',
        'Caution',
      ]);
    }
  });

  it('puts the checks in order of rank, whatever their order in the result', () => {
    const text = terminalText(sampleResult({ crossCheck }), look);
    expect(text.indexOf('1. Read the voltage')).toBeGreaterThan(0);
    expect(text.indexOf('2. Weigh the wire')).toBeGreaterThan(text.indexOf('1. Read'));
    expect(text).toContain('Settings: ✗ DISAGREES');
  });

  it('names no mode for unsure, says what it leans to, and says so for no arc', () => {
    const unsure = terminalText(
      sampleResult({ status: 'unsure', mode: null, confidence: null, statusReason: 'Too noisy.' }),
      look,
    );
    expect(unsure).toContain('UNSURE');
    expect(unsure).toContain('Too noisy.');
    expect(unsure).toContain('Leaning: short-circuit 94 %');
    expect(unsure).not.toContain('TRANSFER');
    // Asked only where it is open whether there was an arc: nothing in the sound was taken as one.
    expect(unsure).not.toContain('--arc-prior');
    const open = sampleResult({ status: 'unsure', mode: null, confidence: null, segments: [] });
    expect(terminalText(open, look)).toContain('--arc-prior 0.95');
    const none = terminalText(
      sampleResult({
        status: 'no-arc',
        mode: null,
        confidence: null,
        arcStretches: [],
        segments: [],
      }),
      look,
    );
    expect(none).toContain('NO ARC');
    expect(none).not.toContain('TRANSFER');
  });

  it('cannot be driven by a hostile file name', () => {
    // An escape code in a name would otherwise clear the screen or forge a verdict.
    const hostile = sampleResult();
    hostile.source.path = 'a\u001b[2J\nSPRAY TRANSFER.wav';
    const text = terminalText(hostile, look);
    expect(text).not.toContain('\u001b');
    expect(text.split('\n')[0]).toContain('a\\x1b[2J\\x0aSPRAY TRANSFER.wav');
  });

  it('is calmer for one of several runs, and says everything with explain', () => {
    const brief = terminalText(sampleResult(), { ...look, brief: true, cautions: false });
    expect(brief).not.toContain('Caution');
    expect(brief).not.toContain('Channel 1 of 2');
    const full = terminalText(sampleResult(), { ...look, explain: true });
    expect(full).toContain('soundWindowS 1');
    expect(full).toContain('Model sound 1 (fedcba9876543210)');
  });
});

describe('wrap', () => {
  it('keeps a number with its unit and fills lines up to the width', () => {
    // By hand: "from 1 to 4.86 s" has 16 characters, so at 15 the number goes down with its unit.
    expect(wrap('from 1 to 4.86 s', 16)).toEqual(['from 1 to 4.86 s']);
    expect(wrap('from 1 to 4.86 s', 15)).toEqual(['from 1 to', '4.86 s']);
    expect(wrap('12 min 05 s', 7, 2, 1)).toEqual(['  12 min', '   05 s']);
    expect(wrap('', 10)).toEqual([]);
  });
});
