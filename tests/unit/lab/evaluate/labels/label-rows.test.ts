import { describe, expect, it } from 'vitest';
import {
  labelOfSpans,
  majority,
  parseLabel,
  readLabelRows,
  truthRuns,
} from '../../../../../src/lab/evaluate/labels/index.js';
import { codeOf } from '../../../../support/code-of.js';

/** A table from lines of text, cells between commas. */
function table(...lines: string[]) {
  const [heading, ...rest] = lines.map((line) => line.split(','));
  const named = rest.map((cells, i) => ({ line: i + 2, cells }));
  return readLabelRows({ name: 'truth.csv', heading: heading!, lines: named });
}

describe('parseLabel', () => {
  it('reads the ways in which people write a label', () => {
    expect(parseLabel(' Short circuit ', '')).toBe('short-circuit');
    expect(parseLabel('PULSED_SPRAY', '')).toBe('pulsed-spray');
    expect(parseLabel('no-arc', '')).toBe('no-arc');
    expect(parseLabel('', '')).toBeNull();
  });

  it('gives two modes one spelling, whatever the order and the mark', () => {
    expect(parseLabel('spray+globular', '')).toBe('globular/spray');
    expect(parseLabel('globular / spray', '')).toBe('globular/spray');
    expect(parseLabel('spray/spray', '')).toBe('spray');
  });

  it('refuses what it does not know, with the place and a guess', () => {
    expect(() => parseLabel('globullar', 'truth.csv, line 3')).toThrow(
      /truth\.csv, line 3.*Did you mean "globular"/,
    );
    expect(codeOf(() => parseLabel('spray/no-arc', ''))).toBe('unknown-label');
    expect(codeOf(() => parseLabel('globular/spray/short-circuit', ''))).toBe('unknown-label');
  });
});

describe('readLabelRows', () => {
  it('reads whole runs and parts, with rate, person and group', () => {
    const { rows } = table(
      'file,mode,start_s,end_s,event_rate_hz,labeller,group',
      'a.wav,spray,,,120,Ann,monday',
      'a.wav,globular,2,4.5,,Ben,',
    );
    expect(rows).toEqual([
      {
        line: 2,
        file: 'a.wav',
        label: 'spray',
        span: null,
        eventRateHz: 120,
        labeller: 'Ann',
        group: 'monday',
      },
      {
        line: 3,
        file: 'a.wav',
        label: 'globular',
        span: { startS: 2, endS: 4.5 },
        eventRateHz: null,
        labeller: 'Ben',
        group: '',
      },
    ]);
  });

  it('moves times of a video by the moment at which it starts', () => {
    // The video starts 1.5 s into the recording: its 2 s is the recording's 3.5 s.
    const { rows } = table('file,mode,start_s,end_s,offset_s', 'a.wav,spray,2,3,1.5');
    expect(rows[0]!.span).toEqual({ startS: 3.5, endS: 4.5 });
  });

  it('leaves the times of a list of clips, which are the recording’s', () => {
    const { rows } = table('clip,file,start_s,end_s,label,offset_s', 'c.wav,a.wav,2,3,spray,1.5');
    expect(rows[0]!.span).toEqual({ startS: 2, endS: 3 });
  });

  it('counts rows that nobody judged, and names columns that say nothing', () => {
    const read = table('file,label,goup', 'a.wav,,x', 'b.wav,spray,y');
    expect([read.rows.length, read.empty, read.unused]).toEqual([1, 1, ['goup']]);
  });

  it.each([
    ['no file column', ['name,mode', 'a,spray']],
    ['no label column', ['file,mod', 'a,spray']],
    ['two label columns', ['file,mode,label', 'a,spray,spray']],
    ['a row without a file', ['file,mode', ',spray']],
    ['half a part', ['file,mode,start_s,end_s', 'a,spray,1,']],
    ['a part that ends before it starts', ['file,mode,start_s,end_s', 'a,spray,3,2']],
    ['a part before the recording', ['file,mode,start_s,end_s,offset_s', 'a,spray,1,2,-5']],
    ['a word for a number', ['file,mode,event_rate_hz', 'a,spray,many']],
    ['a rate of nothing', ['file,mode,event_rate_hz', 'a,spray,0']],
  ])('refuses %s', (_, lines) => {
    expect(codeOf(() => table(...lines))).toBe('bad-label-table');
  });
});

describe('truthRuns', () => {
  const runs = (...lines: string[]) =>
    truthRuns(table('file,mode,start_s,end_s,labeller,group', ...lines).rows);

  it('gathers each file once, people apart, parts in order of time', () => {
    const [first, second] = runs(
      'a,spray,5,6,Ann,x',
      'b,spray,,,,',
      'a,globular,1,5,Ann,',
      'a,spray,,,Ben,',
    );
    expect(first!.group).toBe('x');
    expect(first!.labellings.map((one) => [one.labeller, one.whole, one.spans.length])).toEqual([
      ['Ann', null, 2],
      ['Ben', 'spray', 0],
    ]);
    expect(first!.labellings[0]!.spans[0]!.label).toBe('globular');
    expect(second!.file).toBe('b');
  });

  it.each([
    ['one person twice on a run', ['a,spray,,,Ann,', 'a,globular,,,Ann,']],
    ['overlapping parts', ['a,spray,1,3,,', 'a,globular,2,4,,']],
    ['a file in two groups', ['a,spray,,,Ann,x', 'a,spray,,,Ben,y']],
  ])('refuses %s', (_, lines) => {
    expect(codeOf(() => runs(...lines))).toBe('contradicting-labels');
  });
});

describe('one label from several', () => {
  const part = (seconds: number, label: string) => ({ startS: 0, endS: seconds, label });

  it('takes the mode that holds the share of the arc time, no-arc left out', () => {
    // 8 of 10 s of arc is 80 %; with 5 s of no-arc it would be 53 %.
    const spans = [part(8, 'spray'), part(2, 'globular'), part(5, 'no-arc')];
    expect(labelOfSpans(spans, 0.75)).toBe('spray');
    expect(labelOfSpans([part(6, 'spray'), part(4, 'globular')], 0.75)).toBe('mixed');
    expect(labelOfSpans([part(6, 'spray'), part(4, 'ambiguous')], 0.75)).toBe('ambiguous');
    expect(labelOfSpans([part(3, 'no-arc')], 0.75)).toBe('no-arc');
  });

  it('takes what most people said, and nothing where they are even', () => {
    expect(majority(['spray', 'globular', 'spray'])).toBe('spray');
    expect(majority(['spray', 'globular'])).toBe('ambiguous');
  });
});
