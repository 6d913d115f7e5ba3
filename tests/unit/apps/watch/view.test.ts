import { describe, expect, it } from 'vitest';
import { ENGLISH, GERMAN, NO_PAINT } from '../../../../src/apps/view/index.js';
import type { WatchEvent, WatchState } from '../../../../src/apps/watch/events.js';
import { noLosses } from '../../../../src/apps/watch/sources/types.js';
import { Strip } from '../../../../src/apps/watch/strip.js';
import { sayEvent } from '../../../../src/apps/watch/view/lines.js';
import { picture } from '../../../../src/apps/watch/view/screen.js';

const LOOK = { width: 80, paint: NO_PAINT };

function state(changes: Partial<WatchState>): WatchState {
  return {
    name: 'mic:desk',
    timeS: 75,
    arcOn: false,
    signal: 'ok',
    weld: 3,
    modes: null,
    eventRateHz: null,
    expected: 'spray',
    alarm: false,
    alarms: 0,
    losses: noLosses(),
    strip: ['off', 'spray', 'globular', 'unnamed', 'lost'],
    ...changes,
  };
}

describe('the live screen', () => {
  // Rejects a picture whose alarm or loss is told by colour alone: there is no colour here.
  it('tells alarm and loss by words and shape', () => {
    expect(picture(state({ alarm: true }), [], LOOK, ENGLISH).join('\n')).toContain(
      '!!! ALARM !!!',
    );
    expect(picture(state({ signal: 'lost' }), [], LOOK, ENGLISH).join('\n')).toContain(
      'SIGNAL LOST',
    );
    expect(picture(state({}), [], LOOK, ENGLISH).join('\n')).not.toContain('ALARM !');
  });

  it('shows the last minute as letters', () => {
    expect(picture(state({}), [], LOOK, ENGLISH).join('\n')).toContain('60 s   ·SG?~');
  });

  it('stays as high as it is, whatever happens', () => {
    const heights = [[], ['one'], ['one', 'two', 'three', 'four']].map(
      (recent) => picture(state({}), recent, LOOK, ENGLISH).length,
    );
    expect(new Set(heights).size).toBe(1);
  });
});

describe('the strip', () => {
  it('holds one cell a second and 60 of them, repeating where nothing was said', () => {
    const strip = new Strip();
    strip.set(0.2, 'off');
    strip.set(0.9, 'spray');
    strip.set(3.1, 'globular');
    expect(strip.cells).toEqual(['spray', 'spray', 'spray', 'globular']);
    strip.set(500, 'off');
    expect(strip.cells).toHaveLength(60);
    expect(strip.cells.at(-1)).toBe('off');
  });
});

describe('lines', () => {
  const alarm: WatchEvent = {
    event: 'alarm',
    timeS: 62,
    sinceS: 61,
    expected: 'spray',
    mode: 'globular',
    waitedS: 1,
    neededS: 1,
    why: 'mode',
    weld: 2,
  };

  it('say what is there instead of what', () => {
    expect(sayEvent(alarm, NO_PAINT, ENGLISH)).toBe(
      '! ALARM: globular instead of spray for 1.0 s, since 1:01',
    );
  });

  it('say the same in German', () => {
    expect(sayEvent(alarm, NO_PAINT, GERMAN)).toBe(
      '! ALARM: Übergangslichtbogen statt Sprühlichtbogen seit 1,0 s, ab 1:01',
    );
    expect(picture(state({ signal: 'lost' }), [], LOOK, GERMAN).join('\n')).toContain('SIGNAL WEG');
  });

  it('never call a lost signal a wrong mode', () => {
    const lost = sayEvent(
      { event: 'signal-lost', timeS: 5, why: 'nothing has come for 1.2 s' },
      NO_PAINT,
      ENGLISH,
    );
    expect(lost).toContain('unknown, not wrong');
  });

  it('count every loss at the end', () => {
    const end: WatchEvent = {
      event: 'end',
      timeS: 60,
      welds: 2,
      alarms: 1,
      cpuShare: 0.01,
      ...noLosses(),
      lostSamples: 7,
      bridgedSamples: 5,
      gaps: 1,
      reconnects: 2,
      badRows: 3,
    };
    expect(sayEvent(end, NO_PAINT, ENGLISH)).toBe(
      'end: 2 weld(s), 1 alarm(s), 7 samples lost (5 bridged), 1 gap(s), 2 reconnect(s), 3 unreadable row(s)',
    );
  });
});
