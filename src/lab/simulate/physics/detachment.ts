import type { Random } from '../../../core/index.js';
import type { Release } from '../run.js';
import type { DetachmentSpec } from '../scenario.js';
import type { MetalProperties } from './materials.js';

/** What the hanging drop feels at one moment. */
export interface DropView {
  /** Radius of the hanging metal and of the wire, mm. */
  radiusMm: number;
  wireRadiusMm: number;
  currentA: number;
}

/** The neck between wire and drop, from whole (0) to parted (1). */
export interface Neck {
  /** Advances by `dt`; true when the drop lets go. */
  step(view: DropView, dt: number): boolean;
  /** A new drop begins. */
  reset(): void;
  readonly progress: number;
  /** How a drop that lets go now would do so. */
  release(): Release;
}

/** Share of the way from globular to spray at this current: 0 far below the transition, 1 far above. */
export function sprayShare(spec: DetachmentSpec, currentA: number): number {
  if (!Number.isFinite(spec.transitionA)) return 0;
  return 1 / (1 + Math.exp((1 - currentA / spec.transitionA) / (0.5 * spec.transitionWidth)));
}

/** Capillary time `sqrt(rho·r³/gamma)` in s, of a drop of radius `radiusMm`. */
export function capillaryTimeS(metal: MetalProperties, radiusMm: number): number {
  const r = radiusMm * 1e-3;
  return r * Math.sqrt((metal.liquidDensity * r) / metal.surfaceTension);
}

/**
 * Magnetic force on a drop in units of mu0·I²/4π for conduction half-angle `theta`
 * (Amson 1965, from memory); negative for a narrow arc root.
 */
export function magneticFactor(ratioToNeck: number, theta: number): number {
  const c = Math.cos(theta);
  const u = 1 - c;
  return (
    Math.log(ratioToNeck * Math.sin(theta)) - 0.25 - 1 / u + (2 / (u * u)) * Math.log(2 / (1 + c))
  );
}

/** Builds the neck for one of the detachment laws. */
export function createNeck(spec: DetachmentSpec, metal: MetalProperties, random: Random): Neck {
  const excess = excessLaw(spec, metal);
  const scaled: DropView = { radiusMm: 0, wireRadiusMm: 0, currentA: 0 };
  let progress = 0;
  let scatter = 1;
  let limit = spec.maxRatio;
  let taperA = 0;
  let restS = 0;
  const draw = (): void => {
    progress = 0;
    scatter = Math.exp(spec.scatter * random.normal());
    limit = spec.maxRatio * Math.exp(0.12 * random.normal());
    if (random.next() < spec.leapShare) limit *= random.uniform(0.6, 0.85);
  };
  draw();
  return {
    get progress() {
      return progress;
    },
    reset: draw,
    release() {
      if (!Number.isFinite(spec.transitionA)) return 'repelled';
      return sprayShare(spec, taperA) >= 0.5 ? 'column' : 'hanging';
    },
    step(view, dt) {
      const ratio = view.radiusMm / view.wireRadiusMm;
      taperA += ((view.currentA - taperA) * dt) / spec.taperS;
      restS -= dt;
      if (restS > 0 || ratio < leastRatio(spec, taperA, scatter)) {
        progress = 0;
        return false;
      }
      scaled.radiusMm = view.radiusMm / scatter;
      scaled.wireRadiusMm = view.wireRadiusMm;
      scaled.currentA = view.currentA;
      const over = ratio > limit ? 1 : excess(scaled, dt);
      const time = spec.neckFactor * capillaryTimeS(metal, Math.max(view.radiusMm, 0.15));
      progress += ((over > 0 ? 1 + Math.min(over, 4) : -0.6) * dt) / time;
      if (progress < 0) progress = 0;
      if (progress < 1) return false;
      restS = spec.restFactor * capillaryTimeS(metal, view.wireRadiusMm);
      return true;
    },
  };
}

/**
 * A column cannot break into drops thinner than it: the limit falls as the wire end draws to a point.
 * Without a transition (CO2-rich) the arc never wets the neck, so nothing below the wire's size parts.
 */
function leastRatio(spec: DetachmentSpec, taperA: number, scatter: number): number {
  if (!Number.isFinite(spec.transitionA)) {
    return (1.05 * Math.max(1, scatter)) / Math.cbrt(1 - spec.leave);
  }
  const x = spec.transitionA / Math.max(taperA, 10);
  return spec.leastRatio * Math.min(1.3, x ** spec.thinning) * scatter;
}

type Excess = (view: DropView, dt: number) => number;

function excessLaw(spec: DetachmentSpec, metal: MetalProperties): Excess {
  if (spec.law === 'force-balance') return (view) => forceExcess(spec, metal, view);
  if (spec.law === 'spring-mass') return springMass(spec, metal);
  if (spec.law === 'pinch-switch') {
    const sharp = { ...spec, transitionWidth: 0.01 };
    return (view) => pinchExcess(spec, sharp, metal, view);
  }
  return (view) => view.radiusMm / view.wireRadiusMm / sizeMap(spec, view.currentA) - 1;
}

/** Detaching force and retaining force, N. The taper of the neck carries the transition. */
function forces(spec: DetachmentSpec, metal: MetalProperties, view: DropView): [number, number] {
  const share = sprayShare(spec, view.currentA);
  const taper = 1 - 0.6 * share;
  const r = view.radiusMm * 1e-3;
  const neck = view.wireRadiusMm * 1e-3 * taper;
  const theta = spec.rootAngle + (2.5 - spec.rootAngle) * share;
  const field = 1e-7 * view.currentA ** 2;
  const magnetic = field * (magneticFactor(Math.max(r / neck, 0.5), theta) - spec.repulsion);
  const gravity = (4 / 3) * Math.PI * r ** 3 * metal.liquidDensity * 9.81;
  // 0.44: drag of a sphere (from memory of textbooks); plasma of 0.06 kg/m³ at 100 m/s: own choice.
  const drag = 0.5 * 0.44 * 0.06 * 1e4 * Math.PI * Math.max(0, r * r - neck * neck);
  const hold = spec.retain * 2 * Math.PI * neck * metal.surfaceTension;
  return [gravity + drag + magnetic, hold];
}

function forceExcess(spec: DetachmentSpec, metal: MetalProperties, view: DropView): number {
  const [pull, hold] = forces(spec, metal, view);
  return pull / hold - 1;
}

/** Static balance below the transition, pinch instability of a molten column above it. */
function pinchExcess(
  spec: DetachmentSpec,
  sharp: DetachmentSpec,
  metal: MetalProperties,
  view: DropView,
): number {
  const share = sprayShare(spec, view.currentA);
  if (share < 0.5) {
    const [pull, hold] = forces(sharp, metal, view);
    return pull / hold - 1;
  }
  const column = view.wireRadiusMm * 1e-3 * (1.05 - 0.55 * share);
  const squeeze =
    (4e-7 * Math.PI * view.currentA ** 2) / (2 * Math.PI ** 2 * metal.surfaceTension * column);
  const wave = (2 * Math.PI * column) / Math.sqrt(1 + squeeze);
  return view.radiusMm / (1e3 * Math.cbrt(0.75 * wave * column * column)) - 1;
}

/** Drop radius over wire radius by current, without any mechanism: own choice, shaped from memory of size curves. */
function sizeMap(spec: DetachmentSpec, currentA: number): number {
  if (!Number.isFinite(spec.transitionA)) {
    return Math.max(1.3, spec.maxRatio * (100 / Math.max(currentA, 60)) ** 0.35);
  }
  const x = Math.max(0.2, currentA / spec.transitionA);
  const globular = Math.min(spec.maxRatio, 1.45 * x ** -1.1);
  const spray = 0.8 * x ** -0.9;
  const share = sprayShare(spec, currentA);
  return globular + (spray - globular) * share;
}

/** Drop on a spring of surface tension; parts when stretched past a share of its radius. */
function springMass(spec: DetachmentSpec, metal: MetalProperties): Excess {
  let z = 0;
  let v = 0;
  return (view, dt) => {
    const [pull, hold] = forces(spec, metal, view);
    const r = view.radiusMm * 1e-3;
    const mass = (4 / 3) * Math.PI * r ** 3 * metal.liquidDensity + 1e-7;
    const reach = 0.5 * Math.max(r, 2e-4);
    const stiffness = hold / reach;
    const damping = 0.25 * Math.sqrt(stiffness * mass);
    // The spring is stiff for small drops: implicit in velocity keeps it stable at any step.
    v =
      (v + ((pull - stiffness * z) * dt) / mass) /
      (1 + (damping * dt + stiffness * dt * dt) / mass);
    z += v * dt;
    if (z > 3 * reach) z = 3 * reach;
    if (z < -reach) z = -reach;
    return z / reach - 1;
  };
}
