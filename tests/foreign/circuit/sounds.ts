/** Kinds of sound in which no arc burns. */
import { Biquad } from './filters.js';
import {
  band,
  beat,
  harmonics,
  mix,
  type Noise,
  pink,
  random,
  sloped,
  strikes,
  unit,
  white,
} from './noises.js';
import type { Random } from './random.js';

/** Multiplies a sound by a repeating shape: depth 0 to 1 at a rate in Hz. */
function tremble(
  x: Float32Array,
  rate: number,
  hz: number,
  depth: number,
  sharp: number,
): Float32Array {
  for (let i = 0; i < x.length; i++) {
    const u = 0.5 + 0.5 * Math.sin((2 * Math.PI * hz * i) / rate);
    x[i] = (x[i] as number) * (1 - depth + depth * u ** sharp);
  }
  return unit(x);
}

/** Slow loud and soft, as of a tool pressed and lifted, a gust or a crowd. */
function swell(r: Random, x: Float32Array, rate: number, hz: number, depth: number): Float32Array {
  const k = 1 - Math.exp((-2 * Math.PI * hz) / rate);
  let a = 0;
  for (let i = 0; i < x.length; i++) {
    a += k * (r.noise() * Math.sqrt(2 / k) - a);
    x[i] = (x[i] as number) * Math.exp(depth * Math.max(-2, Math.min(2, a)));
  }
  return unit(x);
}

const silence: Noise = (r, rate, n) => {
  const x = new Float32Array(n);
  if (r.chance(0.5)) return x;
  const g = r.logRange(1e-5, 1e-3); // converter noise only
  for (let i = 0; i < n; i++) x[i] = g * r.noise();
  void rate;
  return x;
};

const babble: Noise = (r, rate, n) => {
  const out = new Float32Array(n);
  const voices = r.int(1, 4);
  for (let v = 0; v < voices; v++) {
    const pitch = r.logRange(90, 240);
    let at = Math.round(r.next() * 0.3 * rate);
    while (at < n) {
      const len = Math.min(n - at, Math.round(r.range(0.07, 0.28) * rate));
      const hiss = r.chance(0.25);
      const f = [r.logRange(280, 800), r.logRange(900, 2300), r.logRange(2300, 3500)];
      const filters = f.map((hz) => Biquad.bandPass(hiss ? hz + 2500 : hz, rate, hiss ? 1.5 : 6));
      const p = pitch * r.range(0.85, 1.2);
      let phase = 0;
      for (let i = 0; i < len; i++) {
        phase += (p * (1 - (0.1 * i) / len)) / rate;
        const tick = phase >= 1;
        if (tick) phase -= 1;
        const src = hiss ? 0.3 * r.noise() : (tick ? 6 : 0) + 0.05 * r.noise();
        let s = 0;
        for (const q of filters) s += q.next(src);
        out[at + i] = (out[at + i] as number) + s * Math.sin((Math.PI * i) / len);
      }
      at += len + Math.round((r.chance(0.2) ? r.range(0.1, 0.6) : r.range(0, 0.05)) * rate);
    }
  }
  return unit(out);
};

const music: Noise = (r, rate, n) => {
  const out = new Float32Array(n);
  const root = r.logRange(110, 330);
  const scale = [0, 2, 4, 5, 7, 9, 11, 12];
  const tempo = r.range(2, 8);
  const attack = r.logRange(0.002, 0.05);
  for (let at = 0; at < n / rate; at += 1 / tempo) {
    const hz = root * 2 ** (r.pick(scale) / 12 + r.int(0, 2));
    const from = Math.round(at * rate);
    const len = Math.min(n - from, Math.round(r.range(0.8, 2.5) * (rate / tempo)));
    for (let k = 1; k <= 6 && k * hz < 0.45 * rate; k++) {
      const a = r.range(0.2, 1) / k;
      const keep = Math.exp((-(2 + k) * 0.8) / rate);
      const c1 = Math.cos((2 * Math.PI * k * hz) / rate);
      const s1 = Math.sin((2 * Math.PI * k * hz) / rate);
      let e = a;
      let c = 1;
      let d = 0;
      for (let i = 0; i < len; i++) {
        const rise = Math.min(1, i / (rate * attack));
        out[from + i] = (out[from + i] as number) + e * rise * d;
        e *= keep;
        const t = c * c1 - d * s1;
        d = c * s1 + d * c1;
        c = t;
      }
    }
  }
  const drum = strikes(r, rate, n, beat(r, n / rate, tempo / 2, 0), [60, 3000], [0.02, 0.08], 0.5);
  return mix([unit(out), 1], [drum, r.range(0, 0.7)]);
};

/** All kinds by name. */
export const sounds: Record<string, Noise> = {
  silence,
  hum: (r, rate, n) => {
    const h = harmonics(r, rate, n, r.pick([50, 60, 100, 120]), r.int(3, 25), r.range(0.6, 2), 0);
    return mix([h, 1], [pink(r, rate, n), r.logRange(0.01, 0.3)]);
  },
  tones: (r, rate, n) => {
    const a = harmonics(r, rate, n, r.logRange(100, 3000), r.int(1, 3), 1, 0);
    const b = harmonics(r, rate, n, r.logRange(300, 4000), 1, 1, 0);
    return mix([a, 1], [b, r.range(0, 1)]);
  },
  'white hiss': (r, rate, n) => swell(r, white(r, rate, n), rate, 1, r.range(0, 0.1)),
  'pink hiss': (r, rate, n) => swell(r, pink(r, rate, n), rate, 1, r.range(0, 0.2)),
  rain: (r, rate, n) => {
    const drops = strikes(
      r,
      rate,
      n,
      random(r, n / rate, r.logRange(30, 300)),
      [1500, 7000],
      [5e-4, 4e-3],
      0.6,
    );
    return mix(
      [band(r, rate, n, r.logRange(300, 1500), r.logRange(5000, 16000)), 1],
      [drops, r.range(0.2, 1)],
    );
  },
  speech: babble,
  grinder: (r, rate, n) => {
    const hz = r.range(120, 190); // common practice: 115 mm disc near 183 turns a second
    const h = harmonics(r, rate, n, hz, r.int(8, 25), r.range(0.2, 1), 0.04);
    const x = mix([h, r.range(0.3, 1)], [band(r, rate, n, 1500, r.logRange(6000, 16000)), 1]);
    return swell(r, tremble(x, rate, hz, r.range(0, 0.4), 1), rate, 3, r.range(0.1, 0.6));
  },
  'air tool': (r, rate, n) => {
    const hz = r.range(18, 60);
    const s = strikes(r, rate, n, beat(r, n / rate, hz, 0.03), [400, 6000], [1e-3, 8e-3], 0.4);
    return mix([s, 1], [band(r, rate, n, 800, 12000), r.range(0.3, 1)]);
  },
  engine: (r, rate, n) => {
    const hz = r.range(12, 90);
    const s = strikes(r, rate, n, beat(r, n / rate, hz, 0.02), [60, 700], [3e-3, 2e-2], 0.5);
    return mix([s, 1], [sloped(r, rate, n, 1), r.range(0.1, 0.6)]);
  },
  saw: (r, rate, n) => {
    const hz = r.logRange(250, 1800);
    const h = harmonics(r, rate, n, hz, 12, r.range(0.3, 1.2), 0.03);
    const x = mix([h, 1], [band(r, rate, n, 2000, 14000), r.range(0.3, 1.5)]);
    return swell(r, x, rate, 2, r.range(0.2, 0.8));
  },
  hammering: (r, rate, n) =>
    strikes(
      r,
      rate,
      n,
      beat(r, n / rate, r.range(1, 5), 0.15),
      [300, 6000],
      [5e-3, 0.15],
      r.range(0, 0.3),
    ),
  fire: (r, rate, n) => {
    const s = strikes(
      r,
      rate,
      n,
      random(r, n / rate, r.logRange(5, 60)),
      [1500, 9000],
      [2e-4, 3e-3],
      0.8,
    );
    return mix([s, 1], [swell(r, sloped(r, rate, n, 1), rate, 4, 0.4), r.range(0.1, 0.5)]);
  },
  applause: (r, rate, n) =>
    strikes(r, rate, n, random(r, n / rate, r.logRange(60, 500)), [700, 4000], [2e-3, 1e-2], 0.9),
  music,
  compressor: (r, rate, n) => {
    const hz = r.range(8, 30);
    const x = tremble(band(r, rate, n, 80, 2500), rate, hz, r.range(0.4, 1), r.range(1, 5));
    return mix([x, 1], [harmonics(r, rate, n, hz, 30, 0.8, 0.002), r.range(0.2, 1)]);
  },
  'gas flow': (r, rate, n) => {
    const x = band(r, rate, n, r.logRange(400, 3000), r.logRange(6000, 20000));
    return mix([x, 1], [band(r, rate, n, 2000, r.logRange(2500, 5000)), r.range(0, 0.8)]);
  },
  'needle scaler': (r, rate, n) =>
    strikes(
      r,
      rate,
      n,
      beat(r, n / rate, r.range(35, 80), 0.06),
      [900, 8000],
      [8e-4, 6e-3],
      r.range(0.2, 0.6),
    ),
  fan: (r, rate, n) => {
    const h = harmonics(r, rate, n, r.range(25, 250), 8, r.range(0.8, 2), 0.003);
    return mix([sloped(r, rate, n, 0.6), 1], [h, r.range(0.1, 1)]);
  },
  clock: (r, rate, n) =>
    mix(
      [
        strikes(
          r,
          rate,
          n,
          beat(r, n / rate, r.pick([1, 2, 4, 5]), 0.003),
          [900, 6000],
          [1e-3, 1e-2],
          0.1,
        ),
        1,
      ],
      [pink(r, rate, n), r.logRange(0.003, 0.1)],
    ),
  frying: (r, rate, n) => {
    const s = strikes(
      r,
      rate,
      n,
      random(r, n / rate, r.logRange(80, 600)),
      [2000, 9000],
      [2e-4, 2e-3],
      0.7,
    );
    return mix([s, 1], [band(r, rate, n, 1200, 12000), r.range(0.5, 1.5)]);
  },
  wind: (r, rate, n) => swell(r, sloped(r, rate, n, 1.2), rate, 0.8, 0.7),
  waves: (r, rate, n) => swell(r, band(r, rate, n, 200, 6000), rate, 0.25, 0.9),
  rotor: (r, rate, n) => {
    const x = tremble(
      band(r, rate, n, 100, 5000),
      rate,
      r.range(15, 90),
      r.range(0.6, 1),
      r.range(1, 6),
    );
    return mix([x, 1], [harmonics(r, rate, n, r.range(400, 1500), 3, 1, 0.01), r.range(0, 0.4)]);
  },
  'sewing machine': (r, rate, n) =>
    mix(
      [
        strikes(
          r,
          rate,
          n,
          beat(r, n / rate, r.range(8, 30), 0.04),
          [300, 4000],
          [2e-3, 1.5e-2],
          0.4,
        ),
        1,
      ],
      [harmonics(r, rate, n, r.range(80, 200), 10, 1, 0.02), r.range(0.1, 0.6)],
    ),
  drill: (r, rate, n) => {
    const h = harmonics(r, rate, n, r.range(60, 400), 30, r.range(0.3, 0.9), 0.03);
    return mix([h, 1], [band(r, rate, n, 1000, 10000), r.range(0.2, 1)]);
  },
  'vibrating sheet': (r, rate, n) => {
    // Noise in time with mains: as even as a pulsed arc, with no arc.
    const hz = r.pick([50, 60, 100, 120, r.range(30, 200)]);
    return tremble(band(r, rate, n, 600, 9000), rate, hz, r.range(0.5, 1), r.range(1, 8));
  },
  traffic: (r, rate, n) => swell(r, sloped(r, rate, n, 0.8), rate, 0.4, 0.5),
  'electric razor': (r, rate, n) => {
    const h = harmonics(r, rate, n, r.pick([100, 120]), 40, r.range(0.1, 0.7), 0.001);
    return mix([h, 1], [band(r, rate, n, 2000, 9000), r.range(0.1, 0.8)]);
  },
};

/** Names of all kinds, in a fixed order. */
export const soundKinds: readonly string[] = Object.keys(sounds);

/** Noises that a workshop adds behind an arc. */
export const shopKinds: readonly string[] = [
  'hum',
  'speech',
  'grinder',
  'air tool',
  'engine',
  'saw',
  'hammering',
  'music',
  'compressor',
  'gas flow',
  'needle scaler',
  'fan',
  'drill',
  'traffic',
  'wind',
  'rain',
  'pink hiss',
  'vibrating sheet',
];

/** A mix of one to three workshop noises with unit level. */
export function shopNoise(r: Random, rate: number, n: number): Float32Array {
  const parts: [Float32Array, number][] = [[sloped(r, rate, n, r.range(0, 1)), r.range(0.1, 0.6)]];
  const many = r.int(1, 3);
  for (let k = 0; k < many; k++) {
    const kind = sounds[r.pick(shopKinds)] as Noise;
    parts.push([kind(r, rate, n), r.logRange(0.15, 1)]);
  }
  return mix(...parts);
}
