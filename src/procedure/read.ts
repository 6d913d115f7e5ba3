import { ArcError, didYouMean } from '../core/index.js';
import {
  CURRENT,
  HEAT_INPUT,
  MEASURED_VOLTAGE,
  PLATE_THICKNESS,
  parseExpectedMode,
  parseGas,
  parsePolarity,
  parsePosition,
  parseQuantity,
  parseSourceKind,
  parseWireMaterial,
  type QuantityRule,
  STICK_OUT,
  TRAVEL_SPEED,
  WIRE_DIAMETER,
  WIRE_FEED,
} from '../setup/index.js';
import { named, readLimit } from './read-limit.js';
import { type ProcedureDocument, procedureSchema } from './schema.js';
import type { Limit, Procedure } from './types.js';

/** Taken where the document does not say; our own choice, no source. */
const KEEP_SHARE = 0.9;
const LONGEST_DEPARTURE_S = 0.5;

/**
 * Reads a procedure document: the parsed JSON, of whatever kind it is.
 *
 * @throws ArcError `bad-procedure` for a document of another form, and what the set-up refuses (`bad-unit`,
 * `missing-unit`, `impossible-value`, `bad-choice`, …); each names the field, its value and what was expected
 */
export function readProcedure(parsed: unknown): Procedure {
  const checked = procedureSchema.safeParse(parsed);
  if (!checked.success) throw wrongForm(parsed, checked.error.issues[0]);
  const given = checked.data;
  const words = <T>(
    field: string,
    text: string | undefined,
    parse: (raw: string) => T,
  ): T | null => (text === undefined ? null : named(field, () => parse(text)));
  const limit = (field: keyof ProcedureDocument, rule: QuantityRule): Limit | null =>
    given[field] === undefined ? null : readLimit(field, given[field] as object, rule);
  const volts = limit('volts', MEASURED_VOLTAGE);
  const heat = limit('heatInput', HEAT_INPUT);
  const modes = list(given.mode).map((one) => named('mode', () => parseExpectedMode(one)));
  const procedure: Procedure = {
    name: given.name,
    revision: given.revision ?? null,
    note: given.note ?? null,
    modes: [...new Set(modes)],
    keepShare: given.keep?.share === undefined ? KEEP_SHARE : percent(given.keep.share),
    longestDepartureS:
      words('keep.longestDeparture', given.keep?.longestDeparture, seconds) ?? LONGEST_DEPARTURE_S,
    wireDiameterMm: words('wire.diameter', given.wire?.diameter, (one) =>
      parseQuantity(one, WIRE_DIAMETER),
    ),
    wireMaterial: words('wire.material', given.wire?.material, parseWireMaterial),
    gas: words('gas', given.gas, parseGas),
    gasText: given.gas ?? null,
    polarity: words('polarity', given.polarity, parsePolarity),
    source: words('source', given.source, parseSourceKind),
    positions: list(given.position ?? []).map((one) => named('position', () => parsePosition(one))),
    positionText: given.position === undefined ? null : list(given.position).join(', '),
    joint: given.joint ?? null,
    pass: given.pass ?? null,
    plateMm: limit('plate', PLATE_THICKNESS),
    volts: volts && { ...volts, at: given.volts!.at },
    amperes: limit('amperes', CURRENT),
    wireFeedMPerMin: limit('wireFeed', WIRE_FEED),
    travelSpeedMmPerMin: limit('travelSpeed', TRAVEL_SPEED),
    stickOutMm: limit('stickOut', STICK_OUT),
    heatInputKjPerMm: heat && {
      ...heat,
      efficiency: ['en', 'iso'].includes(given.heatInput!.countedBy),
    },
  };
  checkSource(procedure);
  return procedure;
}

const list = (one: string | string[]): string[] => (typeof one === 'string' ? [one] : one);
const percent = (text: string): number => {
  const value = Number(text.replace('%', '').replace(',', '.')) / 100;
  if (value <= 1) return value;
  throw bad(`keep.share is "${text}".`, 'per cent from 0 % to 100 %');
};

function seconds(text: string): number {
  const match = /^\s*(\d+(?:[.,]\d+)?)\s*(ms|s|min)\s*$/u.exec(text);
  const factor = { ms: 1e-3, s: 1, min: 60 }[match?.[2] ?? ''];
  if (!match || factor === undefined) throw bad(`The time is "${text}".`, 'a time such as "0.5 s"');
  return Number(match[1]!.replace(',', '.')) * factor;
}

function checkSource({ source, modes }: Procedure): void {
  if (source !== 'steady' || !modes.includes('pulsed-spray')) return;
  throw bad(
    'mode allows pulsed spray, and source says steady.',
    'a pulsed source for pulsed spray',
  );
}

type Issue = Extract<
  ReturnType<typeof procedureSchema.safeParse>,
  { success: false }
>['error']['issues'][number];

function wrongForm(parsed: unknown, issue: Issue | undefined): ArcError {
  if (typeof parsed !== 'object' || parsed === null || Array.isArray(parsed))
    return bad('It does not hold one JSON object.', 'an object with "format", "name" and "mode"');
  const path = issue?.path.map(String).join('.') ?? '';
  const value = valueAt(parsed, issue?.path ?? []);
  const stated = value === undefined ? 'missing' : JSON.stringify(value).slice(0, 120);
  if (issue?.code === 'unrecognized_keys') {
    const known = Object.keys(procedureSchema.shape);
    const key = issue.keys[0] ?? '';
    const hint = path === '' ? didYouMean(key, known) : '';
    const inside = path === '' ? 'The procedure' : path;
    return bad(`${inside} has no field "${key}".${hint}`, `only ${known.join(', ')}`);
  }
  return bad(`${path || 'The document'} is ${stated}.`, expectedOf(path, issue));
}

/** What a field takes, said with an example. */
function expectedOf(path: string, issue: Issue | undefined): string {
  const limits: Record<string, string> = {
    plate: limitOf('3 mm', '10 mm'),
    volts: `${limitOf('26 V', '30 V', ', "at": "feeder"')}; "at" is source, feeder or arc`,
    amperes: limitOf('220 A', '280 A'),
    wireFeed: limitOf('8 m/min', '10 m/min'),
    travelSpeed: limitOf('12 in/min', '16 in/min'),
    stickOut: limitOf('12 mm', '18 mm'),
    heatInput: `${limitOf('0.8 kJ/mm', '1.4 kJ/mm', ', "countedBy": "en"')}; "countedBy" is aws, asme, en or iso`,
  };
  return limits[path.split('.')[0] ?? ''] ?? issue?.message ?? 'a document of the published schema';
}

const limitOf = (min: string, max: string, more = ''): string =>
  `{"min": "${min}", "max": "${max}"${more}}, one of the two, or {"nominal": "${min}", "tolerance": "10 %"${more}}`;

function valueAt(parsed: unknown, path: readonly PropertyKey[]): unknown {
  let value: unknown = parsed;
  for (const key of path) value = (value as Record<PropertyKey, unknown> | undefined)?.[key];
  return value;
}

function bad(what: string, expected: string): ArcError {
  return new ArcError({
    code: 'bad-procedure',
    what,
    expected,
    todo: 'arc-transfer help procedure shows a whole document; arc-transfer schema procedure prints its schema.',
  });
}
