import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { failedResult } from '../../../../src/analysis/result/index.js';
import {
  compareSection,
  FIGURES,
  figureFile,
  indexEntry,
  indexPage,
  runPage,
} from '../../../../src/apps/report/index.js';
import { ENGLISH } from '../../../../src/apps/view/index.js';
import { madeRun, madeSound } from '../../../support/report-run.js';
import { sampleResult } from '../../../support/sample-result.js';
import { judge } from '../../setup/check/situation.js';
import { SITUATIONS } from '../../setup/check/situations.js';

const SCRIPT = 'document.title = "ran";';
const HOSTILE = `"><script>alert(1)</script><img src=x onerror=alert(1)>' \u202egnp.js`;

const bare = (changes = {}) => ({
  result: sampleResult(changes),
  evidence: null,
  placement: null,
  modelCard: {},
});

describe('runPage', () => {
  const run = madeRun();
  const page = runPage(run, SCRIPT);

  it('says the verdict first, then the strip, the reasons, the trust, the time, the shape and how it was made', () => {
    const order = [
      '<h1 id="verdict-words">Short-circuit, very likely (94&nbsp;%)</h1>',
      'class="strip"',
      'What the trace shows',
      'How far to trust it',
      'When did it happen?',
      'What does this arc look like?',
      'Why this answer?',
      'How was it made?',
    ].map((words) => page.indexOf(words));
    expect(order.every((at) => at > 0)).toBe(true);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it('lets in its own style and script by hash, and nothing of a network', () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)![1]!;
    const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
    const style = /<style>([\s\S]*?)<\/style>/.exec(page)![1]!;
    expect(policy).toContain(`script-src ${hash(SCRIPT)};`);
    expect(policy).toContain(`style-src ${hash(style)};`);
    expect(policy).toMatch(/^default-src 'none';/);
    expect(policy).not.toContain('unsafe');
    expect(page).not.toMatch(/(?:src|href)="https?:/);
    // The policy would block them; without them the page is whole.
    expect(page).not.toMatch(/<[^>]+ style="/);
    expect(page).not.toMatch(/<[^>]+ on[a-z]+="/);
  });

  it('cannot be made to carry foreign markup by names, notes, reasons or the model card', () => {
    const hostile = madeRun({ source: { ...run.result.source, path: HOSTILE } });
    hostile.result.source.notes = [{ code: 'x', message: HOSTILE }];
    hostile.result.reasons[0]!.text = HOSTILE;
    hostile.result.quality = [{ code: 'x', share: 0.1, message: HOSTILE }];
    hostile.modelCard = { [HOSTILE]: HOSTILE };
    const text = runPage(hostile, SCRIPT, HOSTILE);
    expect(text).not.toContain('<script>alert');
    expect(text).not.toContain('<img src=x');
    expect(text).not.toContain('\u202e');
    expect(text.match(/<script/g)).toHaveLength(2);
    expect(text).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
  });

  // Rejects a page that sets the cautions of the result beside those of the advice: six lines that nobody reads.
  it('shows three cautions at most, those made for the advice', () => {
    const situation = SITUATIONS.find(({ first }) => first === 'hot-dip')!;
    const text = runPage(madeRun({ crossCheck: judge(situation) }), SCRIPT);
    const box = /<div class="cautions"[\s\S]*?<\/div>/.exec(text)![0];
    const lines = [...box.matchAll(/<li>/g)].length;
    expect(lines).toBeGreaterThan(0);
    expect(lines).toBeLessThanOrEqual(3);
  });

  it('leaves out what the recording does not show', () => {
    const sound = runPage(madeSound(), SCRIPT);
    expect(sound).not.toContain('How long the voltage stood where');
    expect(sound).not.toContain('typical short circuit');
    expect(sound).toContain('Rhythm of the sound');
    expect(sound).toContain('id="sound"');
    expect(page).not.toContain('id="sound"');
    expect(page).not.toContain('Where does this run sit?');
  });

  it('says unsure, no arc and failed plainly, with no verdict beside', () => {
    const none = { mode: null, confidence: null, reasons: [] };
    const unsure = runPage(bare({ status: 'unsure', ...none }), SCRIPT);
    expect(unsure).toContain('Unsure: no mode is named');
    expect(unsure).toContain('Leaning: short-circuit 94 %');
    const silent = { arcStretches: [], segments: [], probabilities: null, shareOfArcTime: null };
    const noArc = runPage(bare({ status: 'no-arc', ...none, ...silent, cautions: [] }), SCRIPT);
    expect(noArc).toContain('No arc in this recording');
    expect(noArc).not.toContain('Short-circuit transfer');
    const error = { code: 'x', message: 'It broke <b>.', expected: 'a file', todo: 'Look.' };
    const failed = runPage(
      { ...bare(), result: { ...bare().result, status: 'failed', error } },
      SCRIPT,
    );
    expect(failed).toContain('This input could not be judged');
    expect(failed).toContain('It broke &lt;b&gt;.');
  });

  it('stays under 3 MB', () => {
    expect(page.length).toBeLessThan(3e6);
  });
});

describe('FIGURES', () => {
  it('draws each picture that a trace with current shows, whole and with words for screen readers', () => {
    const run = madeRun();
    const drawn = FIGURES.filter((one) => one.draw(run, 'x', ENGLISH)).map((one) => one.name);
    expect(drawn).toEqual([
      'time',
      'reasons',
      'levels',
      'plane',
      'short-voltage',
      'short-current',
      'rhythm',
      'intervals',
    ]);
    for (const name of drawn) {
      const svg = figureFile(FIGURES.find((one) => one.name === name)!.draw(run, 'x', ENGLISH)!);
      expect(svg).toMatch(/^<\?xml[^>]+>\n<svg /);
      expect(svg).toMatch(/<title id="x-t">[^<]+<\/title><desc id="x-d">[^<]+<\/desc>/);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('indexPage', () => {
  it('lists every run with its answer and links to its page', () => {
    const failed = failedResult({
      path: HOSTILE,
      sha256: null,
      host: 'node',
      settings: { fingerprint: '', values: {} },
      error: new Error('x'),
    });
    const entries = [
      indexEntry(madeRun(), 'runs/01-a.html'),
      indexEntry(
        { result: failed, evidence: null, placement: null, modelCard: {} },
        'runs/02-b.html',
      ),
    ];
    const text = indexPage(entries);
    expect(text).toContain('1 with a mode, 0 unsure, 0 without an arc, 1 failed');
    expect(text).toContain('<a href="runs/01-a.html">invented.wav</a>');
    expect(text).not.toContain('<script');
    expect(text).toContain("script-src 'none'");
  });

  it('sets two runs side by side on equal axes', () => {
    const high = madeRun();
    const low = madeRun();
    // One run of half the voltage: both must be drawn against the higher one's axis.
    for (const trace of [low.evidence!.traces[0]!]) {
      trace.max = trace.max.map((one) => one / 2);
      trace.min = trace.min.map((one) => one / 2);
    }
    const text = compareSection(high, low);
    const ticks = (id: string) => {
      const svg = new RegExp(`<svg[^>]+aria-labelledby="${id}-t[\\s\\S]*?</svg>`).exec(text)![0];
      return [...svg.matchAll(/class="tick" text-anchor="end">([^<]+)</g)].map((one) => one[1]);
    };
    expect(ticks('time-0')).toContain('20');
    expect(ticks('time-1')).toEqual(ticks('time-0'));
  });
});
