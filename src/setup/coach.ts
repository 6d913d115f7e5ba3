import type { Mode } from '../core/index.js';
import { type Made, message } from '../messages/index.js';
import { gasName } from './gas.js';
import { type Advice, SUITS } from './process-map/advice.js';
import type { HowTo } from './process-map/how-to.js';
import type { PointJudgement } from './process-map/judgement.js';
import { lossBetween } from './process-map/loss-chain.js';
import type { KnownMapPoint } from './process-map/map-point.js';
import type { FeedMove } from './process-map/moves.js';
import type { Outcome } from './process-map/outcomes.js';
import type { Refusal } from './process-map/refusal.js';
import { usually } from './process-map/spread.js';
import type { Setup } from './setup-schema.js';
import { range } from './sourced.js';

const inTen = (share: number): number => Math.round(share * 10);

/** The likeliest outcome first, then every other that is not ruled out, with the figure where it flips. */
export function sayExpected(
  judgement: PointJudgement,
  point: KnownMapPoint,
  setup: Setup,
): { likeliest: Made; chances: Made[] } {
  const { likeliest, next, outcomes } = judgement;
  const dial = point.volts.from === 'set' ? point.volts.given : null;
  const atV = next === null ? 0 : point.voltageV.mean + next.byV;
  const alike = asLikely(judgement);
  const head = message('most-likely', {
    outcome: likeliest.outcome,
    inTen: likeliest.inTen,
    ...(alike === null ? {} : { alike }),
    next:
      next === null ? null : { outcome: next.outcome, atV, side: next.byV < 0 ? 'below' : 'above' },
    dialV: dial,
  });
  const loss =
    dial === null
      ? []
      : [
          message('expected-losses', {
            lossV: usually(lossBetween(setup, 'set', 'feeder', point.currentA.mean)),
            between: 'dial-and-feeder',
          }),
        ];
  const chances = outcomes
    .filter((one, i) => i === 0 || one.chance !== 'not-possible' || isMode(one.outcome))
    .map((one, i) =>
      message('outcome-chance', {
        outcome: one.outcome,
        chance: one.chance,
        inTen: one.inTen,
        flipsAtV: one.flipsAtV,
        likeliest: i === 0,
        ...(alike !== null && (i === 0 || one.outcome === alike) ? { alike: true } : {}),
      }),
    );
  return { likeliest: head, chances: [...loss, ...chances] };
}

/** The second outcome where it is as likely as the first, to the tenth; null where it is not. */
function asLikely({ likeliest, outcomes }: PointJudgement): Outcome | null {
  const second = outcomes[1];
  return second?.inTen === likeliest.inTen ? second.outcome : null;
}

const isMode = (outcome: string): boolean =>
  outcome === 'dip' || outcome === 'globular' || outcome === 'spray';

/** Advice in sentences; the last one ties every move to the qualified procedure. */
export function sayAdvice(advice: Advice, setup: Setup): Made[] {
  const { wanted } = advice;
  switch (advice.kind) {
    case 'refused':
      return [sayRefusal(advice.refusal, wanted, setup)];
    case 'programme':
      return [message('pulse-by-programme')];
    case 'unknown':
      return [message('no-settings-held', { wanted })];
    case 'stay': {
      const { likelihood, targetV } = advice;
      // What was wanted was seen though the map would not have it: there is nothing to change, nor to praise.
      if (likelihood < SUITS) return [];
      return [message('settings-suit', { wanted, inTen: inTen(likelihood), targetV })];
    }
    case 'look-first':
      return [message('look-before-moving', { wanted })];
    case 'measure':
      return [message('measure-first', { wanted, targetV: advice.targetV })];
    case 'move':
      return [...sayMoves(advice), ...sayGas(wanted, setup), message('inside-procedure')];
  }
}

function sayMoves({ wanted, trouble, volts, feed, both }: Advice & { kind: 'move' }): Made[] {
  const said: Made[] = [];
  if (volts !== null && trouble !== 'current') {
    said.push(message('move-volts', { wanted, trouble, ...volts }));
  }
  if (feed !== null) said.push(message('move-feed', { ...feedOf(feed), instead: volts !== null }));
  if (both !== null) {
    said.push(message('move-both', { ...feedOf(both.feed), targetV: both.targetV }));
  }
  return said;
}

const feedOf = ({ up, targetMPerMin, targetA }: FeedMove) => ({
  up,
  feedMPerMin: targetMPerMin,
  currentA: targetA,
});

function sayGas(wanted: Mode, { gas, wireMaterial }: Setup): Made[] {
  if (wanted !== 'spray' || gas === null || gas.co2.max > 15) return [];
  return wireMaterial === 'aluminium' ? [] : [message('gas-carries-spray', { gas: gasName(gas) })];
}

function sayRefusal(refusal: Refusal, wanted: Mode, { gas }: Setup): Made {
  const { because, nearestGas, sizesMm } = refusal;
  if (because === 'polarity') return message('polarity-first');
  if (because === 'source') return message('source-cannot-pulse');
  if (because === 'wire' || gas === null) {
    const [min, max] = sizesMm ?? [0.8, 1.6];
    return message('wire-without-rows', { wanted, sizesMm: range(min, max) });
  }
  const code = because === 'gas' ? 'gas-never-carries' : 'gas-without-source';
  return message(code, { wanted, gas: gasName(gas), nearestGas });
}

/** Settings for a wanted mode in sentences, low to high. */
export function sayHowTo(howTo: HowTo, setup: Setup): Made[] {
  const { wanted } = howTo;
  if (howTo.kind === 'refused') return [sayRefusal(howTo.refusal, wanted, setup)];
  if (howTo.kind === 'programme') return [message('pulse-by-programme')];
  if (howTo.kind === 'unknown') {
    const gas = setup.gas && gasName(setup.gas);
    return gas && gas.composition === null
      ? [message('mixture-decides', { wanted, symbol: gas.symbol })]
      : [message('no-settings-held', { wanted })];
  }
  return [
    ...howTo.settings.map(({ feedMPerMin, currentA, feederV, likelihood }) =>
      message('set-like-this', { feedMPerMin, currentA, feederV, inTen: inTen(likelihood) }),
    ),
    message('keep-stick-out', { stickOutMm: howTo.stickOutMm }),
    message('windows-published', { published: howTo.published }),
    message('inside-procedure'),
  ];
}
