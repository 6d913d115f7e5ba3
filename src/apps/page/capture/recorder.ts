import type { Note } from '../../../core/index.js';
import { note } from '../../../messages/index.js';
import type { FromLive, Judged, LiveState, RawSetup, ToLive } from '../messages.js';
import { Awake } from './awake.js';
import { contextFor } from './context.js';
import { type Cue, cue, TONE_HZ } from './cues.js';
import { EndOfArc } from './end-of-arc.js';
import { type Interruption, LONGEST_S, noteOf } from './interruption.js';
import { type Microphone, openMicrophone } from './microphone.js';

/** Seconds of steady arc from which more adds little (common practice, no source). */
export const ENOUGH_S = 10;
export interface Recorded {
  result: Judged['result'];
  wav: Blob | null;
  interruption: Interruption | null;
}

export interface RecorderEvents {
  onLive(state: LiveState): void;
  onEnough(): void;
  onNotKept(reason: string): void;
  /** The recording is over, by the button or not; the verdict follows. */
  onStopping(): void;
  onVerdict(verdict: Recorded): void;
  /** After `onVerdict`; alone where there could be no verdict. */
  onDone(judged: Judged & Recorded): void;
}

export interface RecorderOptions {
  id: string;
  name: string;
  setup: RawSetup;
  sound: boolean;
  /** Seconds of listening before it is the student's turn; 0 for at once. */
  countdownS: number;
  /** Stop by itself once the arc is out. */
  stopsItself: boolean;
  /** Language of the pictures. */
  lang: string;
}

/** From the microphone to a verdict. One object a recording. */
export class Recorder {
  readonly keptOn: string[];
  /** Resolves when the recording is over and its signs have been given. */
  readonly ended: Promise<void>;
  readonly #events: RecorderEvents;
  readonly #options: RecorderOptions;
  readonly #microphone: Microphone;
  readonly #context: AudioContext;
  readonly #worker: Worker;
  readonly #awake = new Awake();
  readonly #lateNotes: Note[] = [];
  #over: () => void = () => {};
  #capture: AudioWorkletNode | undefined;
  #enough = false;
  #turn = false;
  readonly #end = new EndOfArc();
  #interruption: Interruption | null = null;
  #stopping = false;

  private constructor(
    microphone: Microphone,
    context: AudioContext,
    options: RecorderOptions,
    events: RecorderEvents,
  ) {
    this.keptOn = microphone.keptOn;
    this.ended = new Promise((resolve) => {
      this.#over = resolve;
    });
    this.#microphone = microphone;
    this.#context = context;
    this.#options = options;
    this.#events = events;
    this.#worker = new Worker('live.js', { type: 'module' });
  }

  /** Asks for the microphone, marks the start by tone and vibration, then records. @throws MicrophoneError */
  static async start(options: RecorderOptions, events: RecorderEvents): Promise<Recorder> {
    const microphone = await openMicrophone();
    const context = contextFor(microphone);
    const recorder = new Recorder(microphone, context, options, events);
    try {
      await recorder.#begin();
    } catch (error) {
      recorder.#release();
      recorder.#worker.terminate();
      throw error;
    }
    return recorder;
  }

  async #begin(): Promise<void> {
    const { stream, track, notes } = this.#microphone;
    await this.#context.resume();
    await this.#context.audioWorklet.addModule('worklet.js');
    await this.#workerReady();
    if (this.#options.countdownS === 0) {
      this.#turn = true;
      await cue(this.#context, 'start', this.#options.sound);
    }
    this.#capture = new AudioWorkletNode(this.#context, 'capture', {
      numberOfOutputs: 0,
      channelCount: 1,
      channelCountMode: 'explicit',
    });
    const { port1, port2 } = new MessageChannel();
    this.#capture.port.postMessage({ to: port1 }, [port1]);
    const { id, name, setup, lang } = this.#options;
    const rateHz = this.#context.sampleRate;
    this.#tell(
      {
        type: 'start',
        id,
        name,
        rateHz,
        setup,
        lang,
        notes: [...notes, ...this.#rateNote()],
        port: port2,
      },
      [port2],
    );
    new MediaStreamAudioSourceNode(this.#context, { mediaStream: stream }).connect(this.#capture);
    track.addEventListener('ended', () => this.#interrupt('device-gone'));
    // Some systems only silence the microphone while somebody calls.
    track.addEventListener('mute', () => this.#interrupt('call'));
    this.#context.addEventListener('statechange', () => {
      // A call takes the sound away from the page.
      if (this.#context.state !== 'running') this.#interrupt('call');
    });
    await this.#awake.start();
  }

  #workerReady(): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#worker.addEventListener('error', () => reject(new Error('the worker did not load')));
      this.#worker.addEventListener('message', ({ data }: MessageEvent<FromLive>) => {
        if (data.type === 'ready') resolve();
        else this.#take(data);
      });
    });
  }

  #take(message: Exclude<FromLive, { type: 'ready' }>): void {
    if (message.type === 'not-kept') this.#events.onNotKept(message.reason);
    if (message.type === 'live') {
      this.#events.onLive(message.state);
      this.#follow(message.state);
    }
    const interruption = this.#interruption;
    if (message.type === 'verdict')
      this.#events.onVerdict({ result: message.result, wav: message.wav, interruption });
    if (message.type !== 'done') return;
    this.#worker.terminate();
    // The analysis ended on its own: what is heard can't be judged.
    if (!this.#stopping) {
      this.#stopping = true;
      this.#release();
    }
    const { result, evidence, pictures, wav } = message;
    this.#events.onDone({ result, evidence, pictures, wav, interruption });
  }

  /** Marks the moments, and ends what is over. */
  #follow({ arc, timeS, usableS }: LiveState): void {
    if (!this.#turn && (timeS >= this.#options.countdownS || arc)) {
      this.#turn = true;
      // Whoever has struck already needs no sign.
      if (!arc) this.#mark('start', timeS);
    }
    if (!this.#enough && usableS >= ENOUGH_S) {
      this.#enough = true;
      this.#mark('enough', timeS);
      this.#events.onEnough();
    }
    if (timeS >= LONGEST_S) this.#interrupt('too-long');
    if (this.#end.isOver({ arc, timeS }) && this.#options.stopsItself) void this.stop();
  }

  /** A sign while the recording runs is part of it, and said so. */
  #mark(kind: Cue, timeS: number): void {
    void cue(this.#context, kind, this.#options.sound);
    if (this.#options.sound)
      this.#lateNotes.push(note('tone-in-recording', { toneHz: TONE_HZ, atS: timeS }));
  }

  #interrupt(kind: Interruption): void {
    if (this.#stopping) return;
    this.#interruption = kind;
    this.#lateNotes.push(noteOf(kind));
    void this.stop();
  }

  /** Ends the recording; what was recorded is judged. Safe to call twice. */
  async stop(): Promise<void> {
    if (this.#stopping) return;
    this.#stopping = true;
    this.#events.onStopping();
    // The worker waits for the samples still on their way; a stopped audio thread never answers.
    this.#capture?.port.postMessage({ end: true });
    this.#tell({ type: 'stop', notes: this.#lateNotes });
    // Marked after the last sample, so that it is not part of what is judged.
    await new Promise((resolve) => setTimeout(resolve, 80));
    if (this.#context.state === 'running') await cue(this.#context, 'stop', this.#options.sound);
    this.#release();
  }

  #release(): void {
    this.#over();
    for (const track of this.#microphone.stream.getTracks()) track.stop();
    void this.#awake.stop();
    if (this.#context.state !== 'closed') void this.#context.close();
  }

  #rateNote(): Note[] {
    const device = this.#microphone.rateHz;
    const used = this.#context.sampleRate;
    if (device === undefined || device === used) return [];
    return [note('browser-resampled', { deviceHz: device, usedHz: used })];
  }

  #tell(message: ToLive, transfer: Transferable[] = []): void {
    this.#worker.postMessage(message, transfer);
  }
}
