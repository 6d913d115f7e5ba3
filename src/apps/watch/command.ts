import { ArcError, isArcError, MODES } from '../../core/index.js';
import { message } from '../../messages/index.js';
import { readWords } from '../terminal/flags/language-flag.js';
import { lookOf } from '../terminal/look.js';
import { stdoutIsOpen, writeOut } from '../terminal/output.js';
import { onStopSignal } from '../terminal/stop.js';
import { visible, type Words } from '../view/index.js';
import { AlarmCommand } from './alarm-command.js';
import type { Observer } from './events.js';
import type { MqttPublisher } from './mqtt/publisher.js';
import { openSource } from './open-source.js';
import { expected, readWatchOptions, type WatchOptions } from './options.js';
import { type GoodWelds, hearGoodWelds, OTHER_KIND } from './reference-welds.js';
import { sayLearned } from './reference-words.js';
import { Session } from './session.js';
import { listMicrophones } from './sources/recorders.js';
import { lineView } from './view/lines.js';
import { ndjsonView } from './view/ndjson.js';
import { screenView } from './view/screen.js';
import { openWeldFolder, type WeldFolder } from './weld-folder.js';
import { sayShort } from './words.js';

/**
 * The whole command. Exit status 1 when an alarm was raised, the source failed, or a weld could not be written.
 *
 * @throws ArcError for wrong use: before anything is listened to, but for good welds of another kind than the
 * source turns out to be.
 */
export async function watchCommand(
  given: string | undefined,
  raw: Readonly<Record<string, unknown>>,
): Promise<void> {
  const words = readWords(raw);
  if (raw['list'] === true) return list(words);
  if (given === undefined) throw noSource();
  const options = await readWatchOptions(raw);
  const source = await openSource(given, options, raw);
  if (options.expectation || options.programs.size > 0) say(words.watch.noSafety);
  const good = await learnFromGood(options, words);
  const parts = await openParts(options, words);
  const { observers, folder, mqtt } = parts;
  const session = new Session(source, options, observers, folder?.firstWeld ?? 1, good);
  mqtt?.onExpect((text) => void expectByBroker(session, options, text));
  const stop = onStopSignal();
  const abort = new AbortController();
  stop.onStop(() => abort.abort());
  process.stdout.once('close', () => abort.abort());
  try {
    await session.run(abort.signal);
  } catch (error) {
    if (!isArcError(error) || error.code === OTHER_KIND) throw error;
    say(`${source.name}: ${sayShort(error)}`);
    process.exitCode = 1;
  } finally {
    for (const one of observers) await one.close?.();
    stop.release();
    if (given === '-') process.stdin.destroy();
  }
  if (session.state.alarms > 0 || (folder?.unsaved ?? 0) > 0) process.exitCode = 1;
}

async function learnFromGood(options: WatchOptions, words: Words): Promise<GoodWelds | null> {
  const { good, expectation } = options;
  if (good.length === 0 || !expectation) return null;
  const learned = await hearGoodWelds(options, expectation.mode);
  for (const line of sayLearned(learned, words)) say(line);
  return learned;
}

interface Parts {
  observers: Observer[];
  folder: WeldFolder | undefined;
  mqtt: MqttPublisher | undefined;
}

/** Those who are told, in the order in which they are: first what must not be lost. */
async function openParts(options: WatchOptions, words: Words): Promise<Parts> {
  const { welds, onAlarm } = options;
  const folder = welds === undefined ? undefined : await openWeldFolder(welds, say);
  const mqtt =
    options.mqtt && (await (await import('./mqtt/publisher.js')).openMqtt(options.mqtt, say));
  const command = onAlarm && new AlarmCommand(onAlarm, say, options.alarmAlso);
  const records = await recordsOf(options);
  const observers = [folder, records, mqtt, command, viewOf(options, words)].filter(
    (one) => one !== undefined,
  );
  return { observers, folder, mqtt };
}

async function recordsOf({ records, stated }: WatchOptions): Promise<Observer | undefined> {
  if (!records) return undefined;
  const { watchRecords } = await import('./weld-records.js');
  return watchRecords(records, stated, say);
}

function viewOf({ json }: WatchOptions, words: Words): Observer {
  if (json) return ndjsonView(writeOut);
  const look = lookOf(process.stdout);
  return process.stdout.isTTY
    ? screenView(writeOut, look, words)
    : lineView(writeOut, look.paint, words);
}

async function expectByBroker(
  session: Session,
  options: WatchOptions,
  text: string,
): Promise<void> {
  try {
    const program = options.programs.get(text);
    await session.expect(
      program === undefined ? expected(text) : program,
      message('watch-told-by', { by: 'broker' }),
    );
  } catch (error) {
    say(`MQTT: ${sayShort(error)}`);
  }
}

async function list({ watch }: Words): Promise<void> {
  const names = await listMicrophones();
  if (names.length === 0) process.stderr.write(`${watch.noMicrophone}\n`);
  for (const name of names) await writeOut(`mic:${name}\n`);
}

function say(text: string): void {
  if (stdoutIsOpen() || !process.stderr.destroyed) process.stderr.write(`${visible(text)}\n`);
}

function noSource(): ArcError {
  return new ArcError({
    code: 'no-source',
    what: 'No source was named.',
    expected: '-, mic:<name>, tcp://host:port, serial:<device> or a file',
    todo: `arc-transfer watch --list shows the microphones. The source comes before --good. Modes are ${MODES.join(', ')}.`,
  });
}
