import type { MqttClient } from 'mqtt';
import { ArcError } from '../../../core/index.js';
import type { Observer, WatchEvent, WatchState } from '../events.js';
import { sayShort } from '../words.js';
import type { MqttOptions } from './options.js';
import { Outbox } from './outbox.js';

/** How long the end waits for results that are still to be acknowledged, ms. */
const LAST_WAIT_MS = 3000;

/**
 * Publishes under a prefix: `online` (retained, with a last will), `state` (retained), `change` (one message
 * a change), `weld` (each result, kept on the disk until acknowledged). `expect` is listened to.
 */
export class MqttPublisher implements Observer {
  readonly #client: MqttClient;
  readonly #prefix: string;
  readonly #outbox: Outbox;
  readonly #say: (text: string) => void;
  #state = '';
  #missed = 0;

  constructor(client: MqttClient, prefix: string, outbox: Outbox, say: (text: string) => void) {
    this.#client = client;
    this.#prefix = prefix;
    this.#outbox = outbox;
    this.#say = say;
    client.on('connect', () => this.#connected());
    client.on('error', (error) => say(`MQTT: ${error.message}`));
    client.on('offline', () => say('MQTT: the broker is away; results wait in the outbox'));
  }

  /** Calls `told` with what is published to `<prefix>/expect`. */
  onExpect(told: (text: string) => void): void {
    this.#client.on('message', (topic, payload) => {
      if (topic === `${this.#prefix}/expect`) told(payload.toString('utf8').trim());
    });
  }

  async tell(event: WatchEvent, state: WatchState): Promise<void> {
    if (event.event === 'weld') {
      await this.#put(event.weld, JSON.stringify({ weld: event.weld, result: event.result }));
      this.#drain();
    }
    const { result: _, ...change } = event as WatchEvent & { result?: unknown };
    if (this.#client.connected) this.#send('change', JSON.stringify(change), false);
    else this.#missed++;
    this.#state = JSON.stringify(published(state));
    if (this.#client.connected) this.#send('state', this.#state, true);
  }

  async close(): Promise<void> {
    if (this.#client.connected) {
      const last = this.#outbox.drain((text) => this.#publish('weld', text, false));
      await Promise.race([last.catch(() => {}), timeout(LAST_WAIT_MS)]);
      await Promise.race([this.#publish('online', 'false', true).catch(() => {}), timeout(500)]);
    }
    const waiting = await this.#outbox.waiting();
    if (waiting.length > 0)
      this.#say(`MQTT: ${waiting.length} result(s) wait in the outbox for the next run`);
    await this.#client.endAsync(true);
  }

  async #put(weld: number, text: string): Promise<void> {
    await this.#outbox.put(weld, text).catch((error: unknown) => {
      this.#say(`MQTT: weld ${weld} cannot be kept for the broker (${sayShort(error)})`);
    });
  }

  #connected(): void {
    this.#client.subscribe(`${this.#prefix}/expect`, { qos: 1 });
    this.#send('online', 'true', true);
    if (this.#state !== '') this.#send('state', this.#state, true);
    if (this.#missed > 0)
      this.#say(`MQTT: ${this.#missed} change(s) fell into the time without a broker`);
    this.#missed = 0;
    this.#drain();
  }

  #drain(): void {
    if (!this.#client.connected) return;
    this.#outbox
      .drain((text) => this.#publish('weld', text, false))
      .catch((error: unknown) => this.#say(`MQTT: ${sayShort(error)}`));
  }

  #send(topic: string, text: string, retain: boolean): void {
    this.#publish(topic, text, retain).catch(() => {});
  }

  async #publish(topic: string, text: string, retain: boolean): Promise<void> {
    await this.#client.publishAsync(`${this.#prefix}/${topic}`, text, { qos: 1, retain });
  }
}

/** Connects in the background: a broker that is away at the start holds nothing up. @throws ArcError `no-mqtt` */
export async function openMqtt(
  options: MqttOptions,
  say: (text: string) => void,
): Promise<MqttPublisher> {
  const { connect } = await load();
  const outbox = new Outbox(options.outbox);
  await outbox.open();
  const { url, prefix, username, password, ca, cert, key } = options;
  const client = connect(url, {
    reconnectPeriod: 1000,
    connectTimeout: 10_000,
    will: { topic: `${prefix}/online`, payload: Buffer.from('false'), qos: 1, retain: true },
    ...(username === undefined ? {} : { username }),
    ...(password === undefined ? {} : { password }),
    ...(ca && { ca }),
    ...(cert && { cert }),
    ...(key && { key }),
  });
  return new MqttPublisher(client, prefix, outbox, say);
}

async function load(): Promise<typeof import('mqtt')> {
  try {
    return await import('mqtt');
  } catch (cause) {
    throw new ArcError({
      code: 'no-mqtt',
      what: 'The package "mqtt" is not installed.',
      expected: 'it beside arc-transfer, since it is optional',
      todo: 'Run: npm install mqtt',
      cause,
    });
  }
}

function published(state: WatchState): object {
  const { modes, strip: _, ...rest } = state;
  const now = modes && { mode: modes.provisional.mode, confidence: modes.provisional.probability };
  return { ...rest, now, confirmed: modes?.confirmed?.mode ?? null };
}

function timeout(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms).unref());
}
