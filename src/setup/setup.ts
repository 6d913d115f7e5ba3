import * as z from 'zod/mini';
import { ArcError, type Note } from '../core/index.js';
import { parseExpectedMode, parsePolarity, parseSourceKind, parseVoltsAt } from './choices.js';
import { parseGas } from './gas-parse.js';
import { parsePosition } from './positions.js';
import * as rules from './quantities.js';
import { parseQuantity, type QuantityRule } from './quantity.js';
import { checkPairs } from './setup-pairs.js';
import { rawValues } from './setup-raw.js';
import { type Setup, setupSchema } from './setup-schema.js';
import { parseWireMaterial } from './wire-words.js';

/**
 * Reads what the user stated, keyed as in `SETUP_OPTIONS` (`wireDiameter`, `wire-diameter` and
 * `--wire-diameter` are the same key). Anything may be `unknown`. An empty record gives a set-up
 * with nothing known. Unknown keys, impossible values, contradictions, cored wire and impossible
 * pairs are {@link ArcError}s that guess the mistake.
 */
export function parseSetup(raw: Readonly<Record<string, string | number>>): Setup {
  const { values, unknown } = rawValues(raw);
  const words = <T>(key: string, parse: (text: string) => T): T | null => {
    const value = values.get(key);
    return value === undefined ? null : parse(String(value));
  };
  const quantity = (key: string, rule: QuantityRule): number | null => {
    const value = values.get(key);
    return value === undefined ? null : parseQuantity(value, rule);
  };
  const gas = words('gas', parseGas);
  const notes: Note[] = [];
  if (gas !== null && gas.assumption !== null) {
    const params = gas.assumptionMessage?.params;
    notes.push({ code: 'gas-read-as', message: gas.assumption, params });
  }
  const setup: Setup = {
    wireDiameterMm: quantity('wireDiameter', rules.WIRE_DIAMETER),
    wireMaterial: words('wireMaterial', parseWireMaterial),
    gas,
    setVoltageV: quantity('setVoltage', rules.SET_VOLTAGE),
    voltsAt: words('voltsAt', parseVoltsAt),
    wireFeedMPerMin: quantity('wireFeed', rules.WIRE_FEED),
    expectedMode: words('expect', parseExpectedMode),
    stickOutMm: quantity('stickOut', rules.STICK_OUT),
    polarity: words('polarity', parsePolarity),
    source: words('source', parseSourceKind),
    sourceVoltsV: quantity('sourceVolts', rules.MEASURED_VOLTAGE),
    feederVoltsV: quantity('feederVolts', rules.MEASURED_VOLTAGE),
    arcVoltsV: quantity('arcVolts', rules.MEASURED_VOLTAGE),
    measuredCurrentA: quantity('measuredCurrent', rules.CURRENT),
    traceVoltsAt: words('traceVoltsAt', parseVoltsAt),
    sourceSlopeVPer100A: quantity('sourceSlope', rules.SOURCE_SLOPE),
    cableLengthM: quantity('cableLength', rules.CABLE_LENGTH),
    travelSpeedMmPerMin: quantity('travelSpeed', rules.TRAVEL_SPEED),
    plateMm: quantity('plate', rules.PLATE_THICKNESS),
    beadLengthMm: quantity('beadLength', rules.BEAD_LENGTH),
    position: words('position', parsePosition),
    notes,
    unknown,
  };
  notes.push(...checkPairs(setup));
  return validated(setup);
}

function validated(setup: Setup): Setup {
  const checked = setupSchema.safeParse(setup);
  if (checked.success) return setup;
  throw new ArcError({
    code: 'bad-setup',
    what: `The set-up does not hold together: ${z.prettifyError(checked.error)}.`,
    expected: 'finite numbers and known words',
    todo: 'Check the values given.',
  });
}
