import { parseSetup } from '../../src/setup/index.js';
import {
  type Advice,
  advise,
  fedWire,
  judgePoint,
  mapPoint,
  OUTCOME_OF_MODE,
  type Outcome,
  type PointJudgement,
  processMap,
} from '../../src/setup/process-map/index.js';
import type { ExpectedMove, SeenInSituation, Situation } from './situation.js';

/** What the map says of a situation; null where volts, amperes or wire are not known. */
export interface MapAnswer {
  judgement: PointJudgement | null;
  advice: Advice | null;
}

/** Puts a situation to the map alone, without any explanation. */
export function askMap({ setup, material, seen }: Situation): MapAnswer {
  const stated = parseSetup(setup);
  const wire = fedWire(stated, material ?? null);
  if (wire.diameterMm === null) return { judgement: null, advice: null };
  const map = processMap({
    material: wire.material,
    diameterMm: wire.diameterMm,
    gas: stated.gas,
  });
  const measured = { meanVoltageV: null, meanCurrentA: seen?.figures?.['meanCurrentA'] ?? null };
  const point = mapPoint(stated, measured, material ?? null);
  if (point === null) return { judgement: null, advice: null };
  const { expectedMode: wanted, source, polarity } = stated;
  const advice =
    wanted === null
      ? null
      : advise(map, {
          wanted,
          point,
          wire: { ...wire, diameterMm: wire.diameterMm },
          source,
          polarity,
          seen: outcomeSeen(seen),
        });
  return { judgement: judgePoint(map, point), advice };
}

function outcomeSeen(seen: SeenInSituation | undefined): Outcome | null {
  if (seen === undefined || seen.mode === 'pulsed-spray') return null;
  if (seen.mode !== 'mixed') return OUTCOME_OF_MODE[seen.mode];
  const { spray, 'short-circuit': short } = seen.shares ?? {};
  return spray !== undefined && short !== undefined ? 'spray-with-shorts' : null;
}

/** Does the likeliest outcome, or each of a border, come out as written? */
export function outcomeHolds(situation: Situation, judgement: PointJudgement | null): boolean {
  const { outcome, atLeast, never } = situation;
  if (outcome.length === 0 && never === undefined) return true;
  if (judgement === null) return false;
  const likelihood = (one: Outcome): number => judgement.likelihoods[one];
  if ((never ?? []).some((one) => likelihood(one) >= 0.05)) return false;
  if (outcome.length > 1) return outcome.every((one) => likelihood(one) >= 0.25);
  const [only] = outcome;
  if (only === undefined) return true;
  return judgement.likeliest.outcome === only && likelihood(only) >= (atLeast ?? 0.5);
}

/** Does the advice point where it was written to point? */
export function moveHolds(move: ExpectedMove | undefined, advice: Advice | null): boolean {
  if (move === undefined) return true;
  if (advice === null) return false;
  if (advice.kind === 'refused') {
    const { because } = advice.refusal;
    return move === (because === 'gas-no-source' ? 'refused-gas-no-source' : `refused-${because}`);
  }
  if (advice.kind !== 'move') return move === advice.kind;
  if (advice.volts === null) return false;
  return move === (advice.volts.byV.min > 0 ? 'volts-up' : 'volts-down');
}
