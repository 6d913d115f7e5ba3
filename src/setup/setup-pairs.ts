import { ArcError, type Note } from '../core/index.js';
import { note } from '../messages/index.js';
import { gasName } from './gas.js';
import type { Setup } from './setup.js';

/**
 * Pairs that cannot be: active gas on aluminium, contradicting voltages, a mode the stated source
 * cannot run. Returns notes for pairs that can be but deserve a word.
 */
export function checkPairs(setup: Setup): Note[] {
  checkAluminium(setup);
  checkVoltages(setup);
  checkProgramme(setup);
  return [...gasNotes(setup)];
}

function checkAluminium({ wireMaterial, gas }: Setup): void {
  if (wireMaterial !== 'aluminium' || gas === null) return;
  const { composition, co2, o2 } = gas;
  const active =
    co2.max >= 0.5 || o2.max >= 0.5 || (composition?.h2 ?? 0) > 0 || gas.symbol === 'M11';
  if (!active) return;
  throw new ArcError({
    code: 'impossible-pair',
    what: `Aluminium wire with ${gas.text} cannot be welded: the active gas oxidises the pool.`,
    expected: 'argon, helium or a mix of the two (ISO 14175 I1, I2, I3) with aluminium',
    todo: 'Check the gas; if the wire is steel, state --wire-material carbon-steel.',
  });
}

function checkVoltages(setup: Setup): void {
  const { sourceVoltsV, feederVoltsV, arcVoltsV } = setup;
  const chain: [string, number | null][] = [
    ['source', sourceVoltsV],
    ['feeder', feederVoltsV],
    ['arc', arcVoltsV],
  ];
  const known = chain.filter((entry): entry is [string, number] => entry[1] !== null);
  for (const [i, [place, volts]] of known.entries()) {
    const next = known[i + 1];
    // Half a volt lets two honest meters differ (common practice, no source).
    if (next === undefined || next[1] <= volts + 0.5) continue;
    throw new ArcError({
      code: 'contradictory-setup',
      what: `The ${next[0]} is said to stand at ${next[1]} V and the ${place} before it at ${volts} V.`,
      expected: 'a voltage that falls from the source to the feeder to the arc',
      todo: 'Were the two readings swapped, or taken at different moments?',
    });
  }
}

function checkProgramme({ expectedMode, source }: Setup): void {
  if (expectedMode !== 'pulsed-spray' || source !== 'steady') return;
  throw new ArcError({
    code: 'contradictory-setup',
    what: 'Pulsed spray is wanted, but the source is said to run steady.',
    expected: '--source pulsed with --expect pulsed-spray',
    todo: 'Did you mean --source pulsed, or --expect spray?',
  });
}

function* gasNotes({ wireMaterial, gas }: Setup): Generator<Note> {
  if (gas === null) return;
  // Above 5 %: common practice, no source.
  if (wireMaterial === 'stainless-steel' && gas.co2.min > 5) {
    yield note('unusual-pair', { pair: 'stainless-in-much-co2', gas: gasName(gas) });
  }
  if (wireMaterial === 'carbon-steel' && (gas.symbol === 'I1' || gas.symbol === 'I2')) {
    yield note('unusual-pair', { pair: 'carbon-in-inert', gas: gasName(gas) });
  }
}
