"""What a trained network gets right, on sounds that it never met. Everything is also written to `outputs.npz`, one row
a recording, so that thresholds and calibration can be chosen afterwards."""
import json
import time

import numpy as np
import torch

from batch import Crops, gather, other_sounds
import chain
from features import RATE_HZ, features
from network import LEAST_WEIGHT, MODES, block_means
from sounds import LEAST_DISTANCE

CONDITIONS = ['quiet', 'filled', 'shop', 'phone', 'call', 'clipped', 'switched']
CROP_S = 3.0


@torch.no_grad()
def judge(net, x, half=False):
    """Outputs of a whole recording, the stretch weighed by the network's own belief: [B, 6] logits, share of arc."""
    with torch.autocast(x.device.type, dtype=torch.bfloat16, enabled=half):
        h = net.rows(x)
    h = h.float()
    frames = net.frames(h)
    weights = block_means(torch.sigmoid(frames)) + LEAST_WEIGHT
    return net.stretch(net.blocks(h), weights), torch.sigmoid(frames).mean(-1)


class Rows:
    """Judged recordings: what they are, and what each network says."""

    def __init__(self):
        self.facts, self.outputs = [], []

    def add(self, facts, outputs):
        self.facts += facts
        self.outputs.append(outputs.cpu().numpy())

    def all(self):
        return np.concatenate(self.outputs) if self.outputs else np.zeros((0, 1, 6), dtype=np.float32)


def softmax(x):
    e = np.exp(x - x.max(-1, keepdims=True))
    return e / e.sum(-1, keepdims=True)


def sigmoid(x):
    return 1 / (1 + np.exp(-np.clip(x, -30, 30)))


@torch.no_grad()
def everything(net, teachers, folds, sets, real, recordings, out, crops_a_condition, deadline, gone, half):
    nets = [net] + folds
    device = next(net.parameters()).device

    def of_all(x):
        outputs = [judge(n, x)[0] for n in nets]
        if teachers:
            together = [judge(t, x, half)[0] for t in teachers]
            outputs.insert(1, torch.stack(together).mean(0))
        return torch.stack(outputs, 1)

    names = ['student'] + (['teachers'] if teachers else []) + [f'fold {k}' for k in range(len(folds))]
    rows = Rows()

    def judged(x, facts):
        for name in gone:
            if name.startswith('channel:'):
                x[:, int(name[8:])] = 0
        rows.add(facts, of_all(x))

    # Arcs kept out of training, among sounds whose sources were kept out as well.
    if sets.kept.rows:
        crops = Crops(sets.kept, sets.other_kept, real['held'], device)
        for condition in CONDITIONS:
            left = crops_a_condition
            while left > 0 and time.time() < deadline - 12:
                count = min(256, left)
                batch = crops.draw(count, CROP_S, condition, arc_share=1.0)
                facts = []
                for i, row in enumerate(batch['row'].tolist()):
                    arc = sets.kept.rows[row]
                    clear = bool(arc['unambiguous']) and arc['mode'] in MODES and float(batch['arc_known'][i]) > 0
                    heard = not arc['audible_known'] or float(batch['distance'][i]) > LEAST_DISTANCE
                    facts.append({'set': 'kept arcs', 'condition': condition, 'mode': arc['mode'], 'clear': clear,
                                  'heard': bool(heard), 'elec': int(arc['elec']), 'acoustic': int(arc['acoustic']),
                                  'noise': round(float(batch['ratio'][i]), 5)})
                judged(batch['x'], facts)
                left -= count
    # Sounds without an arc: as they are, and through drawn devices and switches.
    for name, store in (('held', real['held']), ('alike', real['alike']), ('drawn', sets.other_kept)):
        for condition in ('plain', 'phone', 'switched'):
            for at in range(0, len(store.rows), 128):
                if time.time() > deadline - 8:
                    break
                some = store.rows[at:at + 128]
                pick = torch.arange(at, at + len(some), device=device)
                length = int(CROP_S * RATE_HZ)
                y = gather(store, pick, torch.zeros(len(some), device=device).long(), length, wrap=True)
                if condition != 'plain':
                    plan = {**chain.PLAN, **chain.PRESETS[condition]}
                    y = y / chain.deviation(y, torch.ones_like(y))
                    draw = chain.Draw(len(some), device)
                    scene = other_sounds(len(some), length, [store], [1.0], draw)
                    y, _, _ = chain.record(y, torch.ones_like(y), scene.roll(1, 0), scene, plan)
                facts = [{'set': f'no arc, {name}', 'condition': condition, 'mode': None, 'clear': True, 'heard': True,
                          'kind': r.get('kind'), 'name': r.get('name')} for r in some]
                judged(features(y), facts)
    for name, pack in recordings:
        # Those of nearly one length together, cut to the shortest.
        pack = sorted(pack, key=lambda one: len(one[1]))
        at = 0
        while at < len(pack) and time.time() < deadline - 4:
            length = len(pack[at][1])
            some = [one for one in pack[at:at + 48] if len(one[1]) <= 1.1 * length]
            y = torch.from_numpy(np.stack([y[:length] for _, y in some])).to(device)
            judged(features(y), [{'set': f'foreign {name}', 'condition': one.get('condition'), 'mode': one.get('mode'),
                                  'clear': True, 'heard': one.get('heard', True), 'kind': one.get('kind')}
                                 for one, _ in some])
            at += len(some)
    outputs = rows.all()
    np.savez_compressed(out / 'outputs.npz', outputs=outputs.astype(np.float16), networks=np.array(names),
                        facts=np.array(json.dumps(rows.facts)))
    text = table(rows.facts, outputs, names)
    (out / 'scores.txt').write_text(text)
    return text


def likeliest(outputs):
    return outputs[..., :4].argmax(-1)


def fold_right(facts, outputs, names, folds):
    """For each kept arc, what the network says that saw neither its family nor its sound's; NaN where there is none."""
    first = names.index('fold 0')
    count = sum(n.startswith('fold') for n in names)
    right = np.full(len(facts), np.nan)
    for i, f in enumerate(facts):
        if f['set'] != 'kept arcs' or not f['clear']:
            continue
        k = f['elec'] % count
        if f['acoustic'] % count != k:
            continue
        right[i] = likeliest(outputs[i, first + k]) == MODES.index(f['mode'])
    return right


def table(facts, outputs, names):
    lines = []

    def share(ok):
        return f'{100 * np.mean(ok):5.1f} %' if len(ok) else '    – '

    columns = [n for n in names if not n.startswith('fold')]
    lines.append('arc known, likeliest mode right; clear runs, kept-out arcs of known families and (last) of a family '
                 'neither its arc nor its sound was met')
    lines.append(f'{"condition":24}{"n":>6} ' + ''.join(f'{c:>12}' for c in columns) + f'{"audible":>10}{"unmet":>10}{"n":>6}')
    unmet = fold_right(facts, outputs, names, 4) if 'fold 0' in names else np.full(len(facts), np.nan)
    groups = [(f['set'] + ', ' + str(f['condition'])) for f in facts]
    truth = np.array([MODES.index(f['mode']) if f['mode'] in MODES else -1 for f in facts])
    clear = np.array([f['clear'] for f in facts], dtype=bool) if facts else np.zeros(0, dtype=bool)
    heard = np.array([f['heard'] for f in facts], dtype=bool) if facts else np.zeros(0, dtype=bool)
    for group in dict.fromkeys(groups):
        at = np.array([g == group for g in groups]) & (truth >= 0) & clear
        if not at.any():
            continue
        cells = ''.join(f'{share(likeliest(outputs[at, names.index(c)]) == truth[at]):>12}' for c in columns)
        known = at & np.isfinite(unmet)
        both = at & heard
        lines.append(f'{group[:24]:24}{at.sum():6} {cells}{share(likeliest(outputs[both, 0]) == truth[both]):>10}'
                     f'{share(unmet[known]):>10}{known.sum():6}')
    lines.append('')
    for of, here in (('clear kept-out arcs', names_are(facts, 'kept arcs') & clear),
                     ('foreign arcs that are audible', names_are(facts, 'foreign') & heard)):
        lines.append(f'of {of}, student, rows truth, columns likeliest')
        for m, mode in enumerate(MODES):
            said = likeliest(outputs[here & (truth == m), 0])
            lines.append(f'{mode:16}{len(said):6}' + ''.join(f'{share(said == k):>10}' for k in range(4)))
        lines.append('')
    lines += curve(facts, outputs, truth, clear, heard)
    return '\n'.join(lines) + '\n'


def names_are(facts, start):
    return np.array([f['set'].startswith(start) for f in facts], dtype=bool)


def curve(facts, outputs, truth, clear, heard):
    """Named rightly against sounds without an arc that get a mode, over the belief asked for."""
    lines = ['student: named where it believes in an arc at least so much and in a mode at least 0.6',
             f'{"belief":>8}' + ''.join(f'{n:>16}' for n in ('arcs right', 'arcs wrong', 'foreign right',
                                                             'foreign wrong', 'real held', 'real alike', 'drawn', 'foreign none'))]
    arc = sigmoid(outputs[:, 0, 4])
    p = softmax(outputs[:, 0, :4])
    names = np.array([f['set'] for f in facts])
    foreign = np.array([s.startswith('foreign') for s in names]) & (truth >= 0)
    elsewhere = np.array([s.startswith('foreign') for s in names]) & (truth < 0)
    kept = (names == 'kept arcs') & clear & (truth >= 0)
    for least in (0.1, 0.2, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99):
        named = (arc >= least) & (p.max(-1) >= 0.6)
        right = named & (p.argmax(-1) == truth)
        wrong = named & ~right
        cells = []
        for of, what in ((kept, right), (kept, wrong), (foreign, right), (foreign, wrong),
                         (names == 'no arc, held', named), (names == 'no arc, alike', named),
                         (names == 'no arc, drawn', named), (elsewhere, named)):
            cells.append(f'{100 * what[of].mean():10.1f} of {of.sum():<6}' if of.any() else f'{"–":>16}')
        lines.append(f'{least:8.2f}' + ''.join(f'{c:>16}' for c in cells))
    return lines
