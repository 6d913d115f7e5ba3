import type { Result } from '../analysis/result/index.js';
import type { Mode } from '../core/index.js';
import { type LimitedQuantity, type Made, message, said } from '../messages/index.js';
import { contradictions, type Limit, type Procedure, within } from '../procedure/index.js';
import type { Setup, VoltsAt } from '../setup/index.js';
import { amperesOf, travelOf, voltsOf } from './power.js';
import type { LimitRow, WeldRecord } from './schema.js';

type Found = Partial<Omit<LimitRow, 'limit' | 'allowed' | 'why' | 'whyMessage'>> & {
  why?: Made | null;
};

function row(limit: LimitRow['limit'], allowed: LimitRow['allowed'], found: Found): LimitRow {
  const { why = null, ...rest } = found;
  return {
    limit,
    outcome: 'cannot-judge',
    allowed,
    figure: null,
    unit: null,
    spread: null,
    basis: null,
    place: null,
    ...rest,
    why: why?.text ?? null,
    whyMessage: why && said(why),
  };
}

/** Everything that the procedure limits, held against the run, in the order of a procedure. */
export function limitRows(
  procedure: Procedure,
  result: Result,
  setup: Setup,
  time: WeldRecord['mode'],
  power: WeldRecord['power'],
): LimitRow[] {
  return [
    ...modeRows(procedure, result, time),
    ...voltRows(procedure, result, setup),
    ...ampereRows(procedure, result, setup),
    ...statedRow('wireFeed', procedure.wireFeedMPerMin, setup.wireFeedMPerMin, 'm/min'),
    ...statedRow('travelSpeed', procedure.travelSpeedMmPerMin, travelOf(result, setup), 'mm/min'),
    ...statedRow('stickOut', procedure.stickOutMm, setup.stickOutMm, 'mm'),
    ...heatRows(procedure, power),
    ...fixedRows(procedure, result, setup),
  ];
}

function modeRows(
  { keepShare, longestDepartureS }: Procedure,
  { status }: Result,
  time: WeldRecord['mode'],
): LimitRow[] {
  const least = { min: keepShare, max: null };
  const most = { min: null, max: longestDepartureS };
  if (status !== 'ok' || time.wantedShare === null) {
    const why = message(status === 'unsure' ? 'record-mode-not-named' : 'record-no-weld');
    return [row('modeShare', least, { why }), row('longestDeparture', most, { why })];
  }
  const { wantedShare, longestDeparture } = time;
  const unclearShare = time.unclearShare ?? 0;
  const figure = { figure: wantedShare, unit: '1', basis: 'measured' as const };
  const open = wantedShare < keepShare && wantedShare + unclearShare >= keepShare;
  const share = open
    ? row('modeShare', least, {
        ...figure,
        why: message('record-share-open', { wantedShare, unclearShare }),
      })
    : row('modeShare', least, {
        ...figure,
        outcome: wantedShare >= keepShare ? 'inside' : 'outside',
      });
  return [share, departureRow(most, longestDeparture)];
}

function departureRow(
  most: { min: null; max: number },
  longest: { mode: Mode; startS: number; endS: number } | null,
): LimitRow {
  const lengthS = longest ? longest.endS - longest.startS : 0;
  return row('longestDeparture', most, {
    outcome: lengthS <= most.max ? 'inside' : 'outside',
    figure: lengthS,
    unit: 's',
    basis: 'measured',
    why:
      longest &&
      message('record-departure', { mode: longest.mode, startS: longest.startS, lengthS }),
  });
}

const ORDER: readonly VoltsAt[] = ['source', 'feeder', 'arc'];

function voltRows({ volts: limit }: Procedure, result: Result, setup: Setup): LimitRow[] {
  if (!limit) return [];
  const allowed = { min: limit.min, max: limit.max };
  const reading = voltsOf(result, setup);
  if (!reading) return [row('volts', allowed, { why: lacks('volts', result) })];
  const { value, basis, place } = reading;
  const { voltageP05V: low, voltageP95V: high } = result.features;
  const spread =
    basis === 'measured' && typeof low === 'number' && typeof high === 'number'
      ? { min: low, max: high }
      : null;
  const figure = { figure: value, unit: 'V', spread, basis, place };
  if (place === null)
    return [
      row('volts', allowed, {
        ...figure,
        why: message('record-place-not-stated', { at: limit.at }),
      }),
    ];
  const step = ORDER.indexOf(place) - ORDER.indexOf(limit.at);
  if (step === 0) return [row('volts', allowed, { ...figure, outcome: judged(value, limit) })];
  // Volts fall from source to feeder to arc, so that a figure of one place bounds that of another.
  const beyond =
    step < 0 ? limit.min !== null && value < limit.min : limit.max !== null && value > limit.max;
  return [
    row('volts', allowed, {
      ...figure,
      outcome: beyond ? 'outside' : 'cannot-judge',
      why: message('record-other-place', { place, at: limit.at }),
    }),
  ];
}

function ampereRows({ amperes: limit }: Procedure, result: Result, setup: Setup): LimitRow[] {
  if (!limit) return [];
  const reading = amperesOf(result, setup);
  if (!reading) return [row('amperes', limit, { why: lacks('amperes', result) })];
  const { value, basis } = reading;
  const sd = result.features.currentSdA;
  const spread =
    basis === 'measured' && typeof sd === 'number' ? { min: value - sd, max: value + sd } : null;
  return [
    row('amperes', limit, {
      outcome: judged(value, limit),
      figure: value,
      unit: 'A',
      spread,
      basis,
    }),
  ];
}

function heatRows({ heatInputKjPerMm: limit }: Procedure, power: WeldRecord['power']): LimitRow[] {
  if (!limit) return [];
  const { efficiency, min, max } = limit;
  const value = efficiency ? power.heatInputKjPerMm : power.arcEnergyKjPerMm;
  const lacksPower = power.meanPowerW === null && power.byMeansW === null;
  const why = message(lacksPower ? 'record-needs-power' : 'record-needs-travel');
  if (value === null) return [row('heatInput', { min, max }, { why })];
  return [
    row(
      'heatInput',
      { min, max },
      {
        outcome: judged(value, limit),
        figure: value,
        unit: 'kJ/mm',
        basis: power.meanPowerW === null ? 'read' : 'measured',
        why: power.meanPowerW === null ? message('record-by-means') : null,
      },
    ),
  ];
}

/** What a recording cannot show and a person states. */
function statedRow(
  name: LimitedQuantity & LimitRow['limit'],
  limit: Limit | null,
  value: number | null,
  unit: string,
): LimitRow[] {
  if (!limit) return [];
  if (value === null)
    return [row(name, limit, { why: message('record-not-stated', { what: name }) })];
  return [
    row(name, limit, { outcome: judged(value, limit), figure: value, unit, basis: 'stated' }),
  ];
}

/** What the procedure fixes by a word; the programme of the source is seen, everything else is stated. */
function fixedRows(procedure: Procedure, result: Result, setup: Setup): LimitRow[] {
  const otherwise = new Map(contradictions(procedure, setup).map((one) => [one.what, one]));
  const { plateMm, gas, wireDiameterMm: wire } = procedure;
  const all = [
    ['wire', wire === null ? null : { min: wire, max: wire }, setup.wireDiameterMm],
    ['material', procedure.wireMaterial, setup.wireMaterial],
    ['gas', gas?.text ?? null, setup.gas?.text ?? null],
    ['polarity', procedure.polarity, setup.polarity],
    ['position', procedure.positionText, setup.position],
    ['plate', plateMm, setup.plateMm],
  ] as const;
  const rows = all.flatMap(([what, allowed, stated]): LimitRow[] => {
    if (allowed === null) return [];
    if (stated === null)
      return [row(what, allowed, { why: message('record-not-stated', { what }) })];
    const other = otherwise.get(what);
    const outcome = other ? 'outside' : 'inside';
    const unit = typeof stated === 'number' ? 'mm' : null;
    return [row(what, allowed, { outcome, figure: stated, unit, basis: 'stated' })];
  });
  return procedure.source === null ? rows : [...rows, programmeRow(procedure.source, result)];
}

function programmeRow(allowed: 'steady' | 'pulsed', { sourceProgramme: seen }: Result): LimitRow {
  if (seen === 'unknown')
    return row('source', allowed, { why: message('record-programme-not-seen') });
  if (seen === 'controlled-dip') {
    const why = message('record-programme-neither');
    return row('source', allowed, { figure: seen, basis: 'measured', why });
  }
  const outcome = seen === allowed ? 'inside' : 'outside';
  return row('source', allowed, { outcome, figure: seen, basis: 'measured' });
}

const judged = (value: number, limit: Limit): 'inside' | 'outside' =>
  within(value, limit) ? 'inside' : 'outside';

function lacks(quantity: 'volts' | 'amperes', { source }: Result): Made {
  return source.kind === 'sound'
    ? message('record-sound-shows-no', { quantity })
    : message('record-trace-lacks', { quantity });
}
