"""Calibration of a trained student from `outputs.npz`: temperatures for its modes, a line for its belief in an arc.

    python3 calibrate.py outputs.npz [calibration.json]

Fitted on one half of kept-out arcs, world `circuit` and real sounds of the sources that were held out, judged on the
other half; expected calibration error in five bins of equal count, with the error that chance alone gives beside it.
"""
import json
import sys

import numpy as np

MODES = ['short-circuit', 'globular', 'spray', 'pulsed-spray']
BINS = 5


def softmax(x):
    e = np.exp(x - x.max(-1, keepdims=True))
    return e / e.sum(-1, keepdims=True)


def sigmoid(x):
    return 1 / (1 + np.exp(-np.clip(x, -30, 30)))


def fit_temperature(logits, truth):
    """The temperature of least cross-entropy, by golden section over its logarithm."""
    def loss(t):
        return -np.log(softmax(logits / np.exp(t))[np.arange(len(truth)), truth] + 1e-9).mean()
    low, high = np.log(0.2), np.log(8.0)
    ratio = (np.sqrt(5) - 1) / 2
    while high - low > 1e-3:
        a, b = high - ratio * (high - low), low + ratio * (high - low)
        low, high = (low, b) if loss(a) < loss(b) else (a, high)
    return float(np.exp((low + high) / 2))


def fit_line(logits, truth):
    """Slope and offset of least cross-entropy, by Newton's method."""
    x = np.stack([logits, np.ones_like(logits)], 1)
    w = np.array([1.0, 0.0])
    for _ in range(50):
        p = sigmoid(x @ w)
        gradient = x.T @ (p - truth) + 1e-3 * w
        hessian = (x * (p * (1 - p))[:, None]).T @ x + 1e-3 * np.eye(2)
        w = w - np.clip(np.linalg.solve(hessian, gradient), -2, 2)
    return w.tolist()


def calibration_error(confidence, right):
    order = np.argsort(confidence)
    parts = np.array_split(order, BINS)
    return sum(len(p) * abs(confidence[p].mean() - right[p].mean()) for p in parts if len(p)) / max(1, len(order))


def by_chance(confidence, rng, times=50):
    return float(np.mean([calibration_error(confidence, rng.random(len(confidence)) < confidence)
                          for _ in range(times)]))


def main():
    data = np.load(sys.argv[1])
    facts = json.loads(str(data['facts']))
    student = data['outputs'][:, 0].astype(np.float64)
    rng = np.random.default_rng(1)
    half = rng.random(len(facts)) < 0.5
    truth = np.array([MODES.index(f['mode']) if f['mode'] in MODES else -1 for f in facts])
    known = (truth >= 0) & np.array([f['clear'] for f in facts], dtype=bool)
    sets = np.array([f['set'] for f in facts])
    fits = (sets == 'kept arcs') | (sets == 'foreign circuit')
    temperature = fit_temperature(student[known & half & fits, :4], truth[known & half & fits])
    asked = (known | (truth < 0)) & (sets != 'no arc, alike')
    # Arcs and other sounds count alike, however many there are of each.
    arcs, rest = np.nonzero(asked & half & (truth >= 0))[0], np.nonzero(asked & half & (truth < 0))[0]
    some = np.concatenate([rng.choice(arcs, 4000), rng.choice(rest, 4000)]) if len(arcs) and len(rest) else arcs
    line = fit_line(student[some, 4], (truth[some] >= 0).astype(float))
    print(f'temperature of the modes {temperature:.3f}; belief in an arc: {line[0]:.3f} · output + {line[1]:.3f}')
    print(f'{"arcs of the other half":34}{"n":>7}{"right":>9}{"error":>9}{"chance":>9}')
    p = softmax(student[:, :4] / temperature)
    right = (p.argmax(-1) == truth).astype(float)
    rows = {'all': known & ~half}
    for f in facts:
        if f['mode'] in MODES:
            rows.setdefault(f'{f["set"]}, {f["condition"]}', None)
    for name in rows:
        if rows[name] is None:
            rows[name] = known & ~half & np.array([f'{f["set"]}, {f["condition"]}' == name for f in facts])
    for name, at in rows.items():
        if not at.any():
            continue
        confidence = p[at].max(-1)
        print(f'{name[:34]:34}{at.sum():7}{100 * right[at].mean():8.1f}%{calibration_error(confidence, right[at]):9.3f}'
              f'{by_chance(confidence, rng):9.3f}')
    if len(sys.argv) > 2:
        with open(sys.argv[2], 'w', encoding='utf8') as out:
            json.dump({'modeTemperature': temperature, 'arcSlope': line[0], 'arcOffset': line[1]}, out, indent=1)


if __name__ == '__main__':
    main()
