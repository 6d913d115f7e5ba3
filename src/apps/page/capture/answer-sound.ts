/** What the answer sounds like: rising for right, falling for wrong, level for open; told apart without looking. */
const NOTES_HZ = { right: [523, 784], wrong: [330, 208], open: [440, 440] } as const;
const NOTE_S = 0.2;
const LOUDNESS = 0.4;

export type AnswerKind = keyof typeof NOTES_HZ;

/** Sounds after the recording is over. Opened by a press, since browsers let pages sound only after one. */
export class AnswerSound {
  #context: AudioContext | null = null;

  /** To be called while a press is being handled. */
  open(): void {
    this.#context ??= new AudioContext();
    void this.#context.resume();
  }

  async play(kind: AnswerKind): Promise<void> {
    const context = this.#context;
    if (context?.state !== 'running') return;
    NOTES_HZ[kind].forEach((frequency, k) => {
      const atS = context.currentTime + 0.02 + k * NOTE_S;
      const tone = new OscillatorNode(context, { frequency });
      const gain = new GainNode(context, { gain: 0 });
      gain.gain.setValueAtTime(0, atS);
      gain.gain.linearRampToValueAtTime(LOUDNESS, atS + 0.02);
      gain.gain.setValueAtTime(LOUDNESS, atS + NOTE_S - 0.05);
      gain.gain.linearRampToValueAtTime(0, atS + NOTE_S);
      tone.connect(gain).connect(context.destination);
      tone.start(atS);
      tone.stop(atS + NOTE_S);
    });
    const lengthS = NOTE_S * NOTES_HZ[kind].length;
    await new Promise((resolve) => setTimeout(resolve, 1000 * lengthS + 60));
  }
}

/** Ends what is being read out. */
export function hush(): void {
  if ('speechSynthesis' in globalThis) speechSynthesis.cancel();
}

/** Reads a text out, where the browser can; what it was saying before ends. */
export function speak(text: string, lang: string): void {
  if (!('speechSynthesis' in globalThis)) return;
  hush();
  const said = new SpeechSynthesisUtterance(text);
  said.lang = lang;
  speechSynthesis.speak(said);
}
