import { execFile } from 'node:child_process';
import { ArcError } from '../../../core/index.js';

/** A program of the platform that lists and records microphones. */
export interface Recorder {
  program: string;
  /** Arguments that record a microphone as bare s16le samples of one channel on stdout. */
  record(name: string, rateHz: number): string[];
  /** Arguments that list what there is, and how to read the names out of the answer. */
  list: string[];
  names(answer: string): string[];
}

const QUIET = ['-hide_banner', '-nostdin', '-loglevel', 'warning'];
const OUT = (rateHz: number): string[] => [
  '-ac',
  '1',
  '-ar',
  String(rateHz),
  '-f',
  's16le',
  '-flush_packets',
  '1',
  '-',
];

const ARECORD: Recorder = {
  program: 'arecord',
  record: (name, rateHz) => [
    '-q',
    '-D',
    name,
    '-t',
    'raw',
    '-f',
    'S16_LE',
    '-c',
    '1',
    '-r',
    String(rateHz),
  ],
  list: ['-L'],
  names: (answer) => answer.split('\n').filter((line) => /^\S/.test(line) && line !== 'null'),
};

/** FFmpeg over ALSA, AVFoundation or DirectShow, by platform. */
function ffmpeg(platform: NodeJS.Platform): Recorder {
  if (platform === 'darwin') {
    return {
      program: 'ffmpeg',
      record: (name, rateHz) => [...QUIET, '-f', 'avfoundation', '-i', `:${name}`, ...OUT(rateHz)],
      list: ['-hide_banner', '-f', 'avfoundation', '-list_devices', 'true', '-i', ''],
      names: (answer) =>
        [...(answer.split(/audio devices/i)[1] ?? '').matchAll(/\] \[\d+\] (.+)/g)].map(
          (m) => m[1]!,
        ),
    };
  }
  if (platform === 'win32') {
    return {
      program: 'ffmpeg',
      record: (name, rateHz) => [...QUIET, '-f', 'dshow', '-i', `audio=${name}`, ...OUT(rateHz)],
      list: ['-hide_banner', '-list_devices', 'true', '-f', 'dshow', '-i', 'dummy'],
      names: (answer) => [...answer.matchAll(/"([^"@]+)"\s+\(audio\)/g)].map((m) => m[1]!),
    };
  }
  return {
    program: 'ffmpeg',
    record: (name, rateHz) => [...QUIET, '-f', 'alsa', '-i', name, ...OUT(rateHz)],
    list: ['-hide_banner', '-sources', 'alsa'],
    names: (answer) => [...answer.matchAll(/^\s*\*?\s*(\S+) \[/gm)].map((m) => m[1]!),
  };
}

/** Recorders of a platform, the best first. */
export function recordersFor(platform: NodeJS.Platform): Recorder[] {
  return platform === 'linux' ? [ARECORD, ffmpeg(platform)] : [ffmpeg(platform)];
}

/** The first recorder that is installed. @throws ArcError `no-recorder` */
export async function findRecorder(platform = process.platform): Promise<Recorder> {
  const recorders = recordersFor(platform);
  for (const one of recorders) if ((await run(one.program, one.list)) !== undefined) return one;
  throw new ArcError({
    code: 'no-recorder',
    what: `None of ${recorders.map((one) => one.program).join(', ')} is installed.`,
    expected: 'a recorder of the platform',
    todo:
      platform === 'linux'
        ? 'Install alsa-utils or ffmpeg, or pipe the sound in: … | arc-transfer watch -'
        : 'Install ffmpeg, or pipe the sound in: … | arc-transfer watch -',
  });
}

/** The names of the microphones. */
export async function listMicrophones(recorder?: Recorder): Promise<string[]> {
  const tool = recorder ?? (await findRecorder());
  return tool.names((await run(tool.program, tool.list)) ?? '');
}

/** What a program wrote, whatever its exit status (listing "fails" with FFmpeg); undefined if it is absent. */
function run(program: string, args: string[]): Promise<string | undefined> {
  return new Promise((resolve) => {
    execFile(program, args, { timeout: 10_000 }, (error, stdout, stderr) => {
      const absent = (error as NodeJS.ErrnoException | null)?.code === 'ENOENT';
      resolve(absent ? undefined : `${stdout}\n${stderr}`);
    });
  });
}
