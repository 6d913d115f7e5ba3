import type { Mode, Random } from '../../../core/index.js';
import type { GasSpec, Material, WireSpec } from '../scenario.js';
import { meltingCoefficients } from './materials.js';

/** Wire of the metal and size named or of random ones; the feed is set later, from the working point. */
export function drawWire(
  random: Random,
  named?: Pick<WireSpec, 'material' | 'diameterMm'>,
): WireSpec {
  const { material, diameterMm } = named ?? drawKind(random);
  const [alpha, beta] = meltingCoefficients(material, diameterMm);
  return {
    material,
    diameterMm,
    feedMPerMin: 0,
    alpha: alpha * Math.exp(0.08 * random.normal()),
    beta: beta * Math.exp(0.15 * random.normal()),
    feedJitter: random.logUniform(0.003, 0.06),
  };
}

function drawKind(random: Random): Pick<WireSpec, 'material' | 'diameterMm'> {
  const material: Material = random.pick([
    'carbon-steel',
    'carbon-steel',
    'carbon-steel',
    'stainless-steel',
    'aluminium',
  ]);
  const diameterMm =
    material === 'aluminium'
      ? random.pick([0.8, 0.9, 1.0, 1.2, 1.2, 1.6])
      : random.pick([0.6, 0.8, 0.8, 0.9, 0.9, 1.0, 1.2, 1.2, 1.2, 1.4, 1.6]);
  return { material, diameterMm };
}

const argonMixes: readonly ((random: Random) => GasSpec)[] = [
  (r) => ({ group: 'M12', co2Percent: r.uniform(0.6, 5), o2Percent: 0 }),
  (r) => ({ group: 'M13', co2Percent: 0, o2Percent: r.uniform(0.6, 3) }),
  (r) => ({ group: 'M20', co2Percent: r.uniform(5.1, 15), o2Percent: 0 }),
  (r) => ({ group: 'M22', co2Percent: 0, o2Percent: r.uniform(3.1, 10) }),
  (r) => ({ group: 'M21', co2Percent: r.uniform(15.1, 20), o2Percent: 0 }),
];

/** Gas that goes with the metal; free flight below the wire's size is only sought in argon-rich ones. */
export function drawGas(random: Random, material: Material, aim: Mode): GasSpec {
  if (material === 'aluminium') return { group: 'I1', co2Percent: 0, o2Percent: 0 };
  if (material === 'stainless-steel') return argonMixes[random.integer(0, 1)]!(random);
  const sprayAim = aim === 'spray' || aim === 'pulsed-spray';
  const chance = random.next();
  if (!sprayAim && chance < 0.35) return { group: 'C1', co2Percent: 100, o2Percent: 0 };
  if (!sprayAim && chance < 0.6) {
    return { group: 'M21', co2Percent: random.uniform(18, 25), o2Percent: 0 };
  }
  return random.pick(argonMixes)(random);
}
