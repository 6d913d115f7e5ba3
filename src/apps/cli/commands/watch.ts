import type { Command } from 'commander';
import { addLanguageFlag } from '../../terminal/flags/language-flag.js';
import { addReadingFlags } from '../../terminal/flags/reading-flags.js';
import { addSettingFlags, NOTHING_TOLD } from '../../terminal/flags/setting-flags.js';
import { addSetupFlags } from '../../terminal/flags/setup-flags.js';

const EXAMPLES = `Examples
  A microphone beside the booth:
    arc-transfer watch --list
    arc-transfer watch mic:default
  Any recorder that writes to a pipe:
    arecord -t raw -f S16_LE -r 48000 -c 1 | arc-transfer watch - --format s16le --sample-rate 48000
  A logger that sends rows of time,voltage,current; a result for each weld; an alarm:
    arc-transfer watch tcp://logger.example:5025 --welds welds/ --expect spray --alarm-after 1s
  The same, quiet about a cell that is misnamed: recordings of its good welds, all in the mode expected:
    arc-transfer watch tcp://logger.example:5025 --expect spray --good good1.csv good2.csv
  A recording as if it were live, four times as fast:
    arc-transfer watch weld.wav --speed 4
`;

const NOTES = `
DANGER: a welding circuit kills. Open-circuit voltage, a potential that floats, and high-frequency starts
destroy loggers and reach whoever touches them. Isolated probes rated for it, fitted by a competent
person, under the local rules; never clip a bare logger to the circuit.
This watches quality. It is no safety function and no inspection.

Exit status: 0 ended without an alarm; 1 an alarm, a failed source, or a weld that could not be written;
2 wrong use.`;

/** `arc-transfer watch`: an arc while it burns. */
export function registerWatch(program: Command): void {
  const command = program
    .command('watch')
    .description('watch an arc while it burns: mode, alarm, a result for each weld')
    .argument('[source]', '-, mic:<name>, tcp://host:port, serial:<device>, or a file')
    .addHelpText('before', EXAMPLES)
    .addHelpText('after', NOTES)
    .optionsGroup('Source:')
    .option('--list', 'the microphones by name, and no more')
    .option('--speed <factor>', 'a file is replayed so many times as fast, or "max" (default: 1)')
    .option('--follow', 'read a file as it grows instead of replaying it')
    .option('--end-after <s>', 'with --follow: end when nothing was added for so long')
    .option('--baud <n>', 'speed of a serial line (default: 115200)')
    .option('--lost-after <s>', 'silence of the line that counts as a lost signal (default: 1 s)')
    .option('--arc-missing-after <s>', 'say it when no arc was seen for so long, such as 10min')
    .optionsGroup('Alarm (with --expect <mode>, see Set-up):')
    .option('--tolerate <s>', 'departures up to this long are passed over (default: 0.5 s)')
    .option(
      '--alarm-after <s>',
      'a departure this long raises the alarm (default: 1 s, or --tolerate)',
    )
    .option(
      '--good <recordings...>',
      'welds (or folders of them) you vouch for as in the mode of --expect: while that is expected the alarm ' +
        'allows for how they are misnamed; the mode that is told stays as it is',
    )
    .option('--tack <s>', 'no alarm within so long after an arc start (default: 1 s)')
    .option('--programs <list>', 'expected mode by program told in the stream, e.g. 1=spray,2=none')
    .option(
      '--alarm-also <list>',
      'raise the alarm for these too: signal-lost, unreadable (bytes come, but no rows), no-arc',
    )
    .option('--on-alarm <program>', 'run this when an alarm begins or ends; no shell is between')
    .option(
      '--on-alarm-arg <word>',
      'an argument for it, once for each; {state} {expected} {mode} {weld} {time} are filled in',
      (word: string, before: string[] = []) => [...before, word],
    )
    .optionsGroup('Output:')
    .option('--json', 'every event as a line of JSON')
    .option('--welds <folder>', 'the result document of each weld, written whole or not at all')
    .optionsGroup('Publishing:')
    .option('--mqtt <url>', 'mqtt://host:port, or mqtts:// with TLS')
    .option('--mqtt-topic <prefix>', 'first part of all topics (default: arc-transfer)')
    .option('--mqtt-outbox <folder>', 'where results wait for the broker (default: <welds>/outbox)')
    .option(
      '--mqtt-credentials <file>',
      'name and password on two lines; or set ARC_TRANSFER_MQTT_USER and …_PASSWORD',
    )
    .option('--mqtt-ca <file>', 'certificate of the authority that signed the broker’s')
    .option('--mqtt-cert <file>', 'certificate of this client')
    .option('--mqtt-key <file>', 'its key');
  addLanguageFlag(command);
  addReadingFlags(command);
  addSetupFlags(command);
  addSettingFlags(command, NOTHING_TOLD);
  command.action(async (source: string | undefined, options: Record<string, unknown>) => {
    const { watchCommand } = await import('../../watch/command.js');
    await watchCommand(source, options);
  });
}
