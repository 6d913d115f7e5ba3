import { parseSetup } from '../../../setup/index.js';
import type { RawSetup } from '../messages.js';
import { stated } from './runs.js';

/** A set-up as far as it can be used, and what is wrong with the rest. */
export interface UsableSetup {
  /** With units, as it will be compared. */
  setup: RawSetup;
  /** What each field is refused for, by its key; those fields are left out. */
  wrong: Readonly<Record<string, unknown>>;
}

/** Units that a number without one may have been meant in. Thousandths of an inch are said without the point. */
const BARE: Readonly<Record<string, readonly ((number: string) => string)[]>> = {
  wireDiameter: [
    (number) => `${number} mm`,
    (number) => `${number} in`,
    (number) => (/^0?\d\d$/.test(number) ? `0.0${number.slice(-2)} in` : number),
  ],
  wireFeed: [(number) => `${number} m/min`, (number) => `${number} in/min`],
  stickOut: [(number) => `${number} mm`, (number) => `${number} in`],
};
const NUMBER = /^\d*[.,]?\d+$/;

/**
 * What can be used of a set-up as typed. A number without its unit is understood where only one unit makes sense of
 * it: `.035` as wire is 0.035 in. Where two fields do not go together, both are left out, but for the wanted mode,
 * which is a wish and stays.
 */
export function usableSetup(typed: RawSetup): UsableSetup {
  const setup: Record<string, string> = {};
  const wrong: Record<string, unknown> = {};
  for (const [key, text] of Object.entries(stated(typed))) {
    const meant = understood(key, text);
    const error = refusal({ [key]: meant });
    if (error === null) setup[key] = meant;
    else wrong[key] = error;
  }
  for (let error = refusal(setup); error !== null; error = refusal(setup)) {
    const clashing = Object.keys(setup).filter((key) => !same(refusal(without(setup, key)), error));
    const facts = clashing.filter((key) => key !== 'expect');
    const out = facts.length > 0 ? facts : Object.keys(setup);
    for (const key of out) {
      wrong[key] = error;
      delete setup[key];
    }
  }
  return { setup, wrong };
}

/** The same with the unit that can only have been meant. */
export function understood(key: string, text: string): string {
  const number = text.trim();
  if (!NUMBER.test(number) || refusal({ [key]: text }) === null) return text;
  const readings = (BARE[key] ?? []).map((read) => read(number.replace(',', '.')));
  const fitting = readings.filter((one) => refusal({ [key]: one }) === null);
  return fitting.length === 1 ? (fitting[0] ?? text) : text;
}

function refusal(setup: RawSetup): unknown {
  try {
    parseSetup(setup);
    return null;
  } catch (error) {
    return error;
  }
}

function without(setup: RawSetup, key: string): RawSetup {
  return Object.fromEntries(Object.entries(setup).filter(([other]) => other !== key));
}

/** Whether two refusals are about the same. */
function same(one: unknown, other: unknown): boolean {
  return one instanceof Error && other instanceof Error && one.message === other.message;
}
