import type { Note } from '../core/index.js';
import { message, note, refusal } from '../messages/index.js';
import { gasName } from './gas.js';
import type { Setup } from './setup-schema.js';

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
  throw refusal(
    'impossible-pair',
    message('aluminium-in-active-gas', { gas: gasName(gas) }),
    message('expect-inert-gas'),
    message('check-gas-or-wire'),
  );
}

function checkVoltages(setup: Setup): void {
  const { sourceVoltsV, feederVoltsV, arcVoltsV } = setup;
  type Place = 'source' | 'feeder' | 'arc';
  const chain: [Place, number | null][] = [
    ['source', sourceVoltsV],
    ['feeder', feederVoltsV],
    ['arc', arcVoltsV],
  ];
  const known = chain.filter((entry): entry is [Place, number] => entry[1] !== null);
  for (const [i, [place, volts]] of known.entries()) {
    const next = known[i + 1];
    // Half a volt lets two honest meters differ (common practice, no source).
    if (next === undefined || next[1] <= volts + 0.5) continue;
    const [after, afterV] = next;
    throw refusal(
      'contradictory-setup',
      message('voltages-rise', { before: place, beforeV: volts, after, afterV }),
      message('expect-falling-voltages'),
      message('readings-swapped'),
    );
  }
}

function checkProgramme({ expectedMode, source }: Setup): void {
  if (expectedMode !== 'pulsed-spray' || source !== 'steady') return;
  throw refusal(
    'contradictory-setup',
    message('pulses-from-steady-source'),
    message('expect-pulsed-source'),
    message('pulsed-source-or-spray'),
  );
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
