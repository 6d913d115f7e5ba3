import { afterEach, describe, expect, it, vi } from 'vitest';
import { AnswerSound } from '../../../../src/apps/page/capture/answer-sound.js';

afterEach(() => void vi.unstubAllGlobals());

/** Stands in for the browser's sound: notes down what would be heard, in its order. */
function listening(): number[] {
  const heard: number[] = [];
  const knob = { setValueAtTime() {}, linearRampToValueAtTime() {} };
  class Node {
    readonly gain = knob;
    connect(next: unknown): unknown {
      return next;
    }
    start(): void {}
    stop(): void {}
  }
  vi.stubGlobal('GainNode', Node);
  vi.stubGlobal(
    'OscillatorNode',
    class extends Node {
      constructor(_: unknown, { frequency }: { frequency: number }) {
        super();
        heard.push(frequency);
      }
    },
  );
  vi.stubGlobal(
    'AudioContext',
    class {
      readonly state = 'running';
      readonly currentTime = 0;
      readonly destination = {};
      async resume(): Promise<void> {}
    },
  );
  return heard;
}

describe('the tone of an answer', () => {
  it('rises for right, falls for wrong, stays level for open', async () => {
    const heard = listening();
    const sound = new AnswerSound();
    sound.open();
    for (const kind of ['right', 'wrong', 'open'] as const) await sound.play(kind);
    const [right = [], wrong = [], open = []] = [0, 2, 4].map((at) => heard.slice(at, at + 2));
    expect(heard).toHaveLength(6);
    expect(right[1]).toBeGreaterThan(right[0] ?? 0);
    expect(wrong[1]).toBeLessThan(wrong[0] ?? 0);
    expect(open[1]).toBe(open[0]);
  });

  it('is silent before a press has opened it', async () => {
    const heard = listening();
    await new AnswerSound().play('right');
    expect(heard).toEqual([]);
  });
});
