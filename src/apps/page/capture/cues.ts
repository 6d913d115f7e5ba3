/** Below the band that is judged (1.5 kHz and up), so that the tone itself changes no verdict. */
export const TONE_HZ = 620;
const TONE_S = 0.16;
const GAP_S = 0.12;

/** Number of tones and pulses for each moment: told apart without looking. */
const COUNT = { start: 1, enough: 2, stop: 3 } as const;
export type Cue = keyof typeof COUNT;

/** Sounds and vibrates; resolves when it is over. Without vibration or sound the rest still comes. */
export async function cue(context: AudioContext, kind: Cue, sound: boolean): Promise<void> {
  const count = COUNT[kind];
  const pulses = Array.from({ length: 2 * count - 1 }, (_, k) => (k % 2 === 0 ? TONE_S : GAP_S));
  navigator.vibrate?.(pulses.map((one) => 1000 * one));
  if (sound) tones(context, count);
  const lengthS = pulses.reduce((sum, one) => sum + one, 0);
  await new Promise((resolve) => setTimeout(resolve, 1000 * lengthS + 60));
}

function tones(context: AudioContext, count: number): void {
  for (let k = 0; k < count; k++) {
    const atS = context.currentTime + 0.02 + k * (TONE_S + GAP_S);
    const tone = new OscillatorNode(context, { frequency: TONE_HZ });
    // Soft edges: a click would reach into the band that is judged.
    const gain = new GainNode(context, { gain: 0 });
    gain.gain.setValueAtTime(0, atS);
    gain.gain.linearRampToValueAtTime(0.5, atS + 0.04);
    gain.gain.setValueAtTime(0.5, atS + TONE_S - 0.04);
    gain.gain.linearRampToValueAtTime(0, atS + TONE_S);
    tone.connect(gain).connect(context.destination);
    tone.start(atS);
    tone.stop(atS + TONE_S);
  }
}
