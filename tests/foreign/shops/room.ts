import { addTo, isSilent, type Line } from './filters.js';
import type { Room } from './gear.js';

// Lengths of the four paths against each other, so that no two ring together; own choice.
const PATHS = [1, 1.171, 1.357, 1.533];

/**
 * The sound at the microphone: direct, three bounces off bench and hood, and a field of four paths
 * that feed
 * each other and lose their highs. Far away the direct sound falls and the field stays.
 */
export function placeInRoom(dry: Line, room: Room, distanceM: number, rateHz: number): Line {
  const wet = new Float32Array(dry.length);
  if (isSilent(dry)) return wet;
  const direct = 0.5 / distanceM;
  addTo(wet, dry, direct);
  for (const b of room.bounces) addTo(wet, dry, direct * b.gain, Math.round(b.delayS * rateHz));
  const lines = PATHS.map(
    (p) => new Float64Array(Math.max(8, Math.round(((p * room.sizeM) / 343) * rateHz * 0.8))),
  );
  const [a, b, c, d] = lines as [Float64Array, Float64Array, Float64Array, Float64Array];
  const loss = (l: Float64Array) => 10 ** ((-3 * l.length) / rateHz / room.rt60S);
  const gains = lines.map(loss);
  const [ga = 0, gb = 0, gc = 0, gd = 0] = gains;
  const keep = room.damping;
  let [ia, ib, ic, id] = [0, 0, 0, 0];
  let [la, lb, lc, ld] = [0, 0, 0, 0];
  const send = 0.5 * room.wet;
  for (let n = 0; n < dry.length; n++) {
    const x = dry[n] ?? 0;
    la += (1 - keep) * ((a[ia] ?? 0) * ga - la);
    lb += (1 - keep) * ((b[ib] ?? 0) * gb - lb);
    lc += (1 - keep) * ((c[ic] ?? 0) * gc - lc);
    ld += (1 - keep) * ((d[id] ?? 0) * gd - ld);
    // Each path gets half the sum of all less its own: nothing is lost or gained in the crossing.
    const half = 0.5 * (la + lb + lc + ld);
    a[ia] = x + half - la;
    b[ib] = x + half - lb + 1e-15;
    c[ic] = half - lc - x;
    d[id] = half - ld - x;
    if (++ia === a.length) ia = 0;
    if (++ib === b.length) ib = 0;
    if (++ic === c.length) ic = 0;
    if (++id === d.length) id = 0;
    wet[n] = (wet[n] ?? 0) + send * (la - lb + lc - ld);
  }
  return wet;
}
