"""Trains the network that listens: from data sets of `arc-transfer simulate --data-set` and a pack of real sounds to
weights. See README.md.

    python3 train.py --data <folder> [--data <folder>] --real real.pack --out <folder> --seconds 540
"""
import argparse
import copy
import glob
import math
import time
from pathlib import Path

import numpy as np
import torch
import torch.nn.functional as F

import chain
import export
import score
from batch import Crops, stretch_weights
from features import mix_bands
from network import Separable, multiply_adds, student, teacher
from sounds import Sets, read_real, read_recordings

LENGTHS = [1.2, 2.0, 3.0, 3.0, 4.0]


def arguments():
    p = argparse.ArgumentParser()
    p.add_argument('--data', action='append', required=True, help='folder of shards; may still be growing')
    p.add_argument('--real', required=True)
    p.add_argument('--recordings', action='append', default=[], help='ready recordings to score, name=files (a pattern)')
    p.add_argument('--out', required=True)
    p.add_argument('--keep', help='file for everything needed to go on later; read when it is there')
    p.add_argument('--seconds', type=float, default=540, help='all in all, scoring and export included')
    p.add_argument('--from-share', type=float, default=0.0, help='where in the schedule this run begins …')
    p.add_argument('--to-share', type=float, default=1.0, help='… and ends')
    p.add_argument('--batch-seconds', type=float, default=768, help='sound in a step')
    p.add_argument('--teachers', type=int, default=3)
    p.add_argument('--folds', type=int, default=4, help='students that never see one family each, for honest figures')
    p.add_argument('--seed', type=int, default=1)
    p.add_argument('--wait-shards', type=int, default=8, help='shards of arcs to wait for before the first step')
    p.add_argument('--without', default='', help='for ablations, by comma: channel:<n>, gain, clip, room, suppress, coded, band, mix, real, ear')
    p.add_argument('--points', type=float, default=0.0, help='share of arcs that are nothing but rates')
    p.add_argument('--rendered', type=float, default=0.0, help='share of drawn arcs whose sound is rendered anew')
    p.add_argument('--score-crops', type=int, default=2000)
    p.add_argument('--rate', type=float, default=2e-3)
    return p.parse_args()


class Learner:
    """A network, its average over steps, its optimiser."""

    def __init__(self, net, device, half):
        self.net = net.to(device)
        self.mean = copy.deepcopy(self.net).eval()
        for p in self.mean.parameters():
            p.requires_grad_(False)
        decay = [p for p in self.net.parameters() if p.dim() > 1]
        plain = [p for p in self.net.parameters() if p.dim() <= 1]
        self.optimiser = torch.optim.AdamW([{'params': decay, 'weight_decay': 0.02},
                                            {'params': plain, 'weight_decay': 0.0}], lr=1e-3)
        self.half = half
        self.steps = 0

    def outputs(self, batch):
        with torch.autocast(self.device_type(batch), dtype=torch.bfloat16, enabled=self.half):
            h = self.net.rows(batch['x'])
        h = h.float()
        frames = self.net.frames(h)
        weights = stretch_weights(batch['burning'], frames, batch['arc'])
        return frames, self.net.stretch(self.net.blocks(h), weights), weights

    @staticmethod
    def device_type(batch):
        return batch['x'].device.type

    def step(self, loss, rate):
        for group in self.optimiser.param_groups:
            group['lr'] = rate
        self.optimiser.zero_grad(set_to_none=True)
        loss.backward()
        torch.nn.utils.clip_grad_norm_(self.net.parameters(), 2.0)
        self.optimiser.step()
        self.steps += 1
        keep = min(0.999, (1 + self.steps) / (20 + self.steps))
        with torch.no_grad():
            mean = [p for p in self.mean.state_dict().values() if p.dtype.is_floating_point]
            now = [p for p in self.net.state_dict().values() if p.dtype.is_floating_point]
            torch._foreach_mul_(mean, keep)
            torch._foreach_add_(mean, now, alpha=1 - keep)

    def state(self):
        return {'net': self.net.state_dict(), 'mean': self.mean.state_dict(),
                'optimiser': self.optimiser.state_dict(), 'steps': self.steps}

    def load(self, state):
        self.net.load_state_dict(state['net'])
        self.mean.load_state_dict(state['mean'])
        self.optimiser.load_state_dict(state['optimiser'])
        self.steps = state['steps']


def mean_of(values, weights):
    return (values * weights).sum() / weights.sum().clamp_min(1.0)


def loss_by_truth(frames, out, batch, keep=None):
    keep = torch.ones_like(batch['arc']) if keep is None else keep
    every = F.binary_cross_entropy_with_logits(frames, batch['burning'], reduction='none')
    rows = mean_of(every, batch['sure'] * keep[:, None])
    target = batch['target'] * 0.98 + 0.005
    mode = mean_of(-(target * F.log_softmax(out[:, :4], -1)).sum(-1), batch['weight'] * keep)
    arc = mean_of(F.binary_cross_entropy_with_logits(out[:, 4], batch['arc'], reduction='none'),
                  batch['arc_known'] * keep)
    asked = (batch['audible'] >= 0).float() * keep
    heard = mean_of(F.binary_cross_entropy_with_logits(out[:, 5], batch['audible'].clamp(0, 1), reduction='none'),
                    asked)
    return rows + mode + arc + 0.3 * heard


def loss_by_teachers(frames, out, taught, batch):
    """Towards what the mean of the teachers believes about the same crops."""
    frame_belief, mode_belief, arc_belief = taught
    rows = mean_of(F.binary_cross_entropy_with_logits(frames, frame_belief, reduction='none'), batch['sure'])
    mode = mean_of(-(mode_belief * F.log_softmax(out[:, :4], -1)).sum(-1),
                   (batch['arc'] > 0).float() * (batch['arc_known'] > 0).float())
    arc = mean_of(F.binary_cross_entropy_with_logits(out[:, 4], arc_belief, reduction='none'), batch['arc_known'])
    return rows + mode + arc


@torch.no_grad()
def beliefs(teachers, batch, half):
    frames, modes, arcs = 0, 0, 0
    for one in teachers:
        with torch.autocast(batch['x'].device.type, dtype=torch.bfloat16, enabled=half):
            h = one.mean.rows(batch['x'])
        h = h.float()
        f = one.mean.frames(h)
        out = one.mean.stretch(one.mean.blocks(h), batch['weights'])
        frames = frames + torch.sigmoid(f) / len(teachers)
        modes = modes + F.softmax(out[:, :4], -1) / len(teachers)
        arcs = arcs + torch.sigmoid(out[:, 4]) / len(teachers)
    return frames, modes, arcs


def fold_keeps(batch, table, fold, folds):
    """1 for crops that a fold may learn from: other families of arcs and of their sounds (a sound that was
    rendered anew belongs to none)."""
    keep = torch.ones_like(batch['arc'])
    row = batch['row']
    known = row >= 0
    elec = table['elec'][row.clamp_min(0)] % folds == fold
    acoustic = table['acoustic'][row.clamp_min(0)] % folds == fold
    keep[known & (elec | (acoustic & ~batch['rendered']))] = 0
    return keep


def without(batch, names):
    for name in names:
        if name.startswith('channel:'):
            batch['x'][:, int(name[8:])] = 0
    return batch


def main():
    args = arguments()
    began = time.time()
    device = torch.device('cuda' if torch.cuda.is_available() else 'cpu')
    half = device.type == 'cuda'
    torch.manual_seed(args.seed)
    np.random.seed(args.seed)
    if half:
        torch.backends.cuda.matmul.allow_tf32 = False
        torch.backends.cudnn.allow_tf32 = True
        torch.backends.cudnn.benchmark = True
    out = Path(args.out)
    out.mkdir(parents=True, exist_ok=True)
    log = (out / 'log.txt').open('a')

    def say(*words):
        text = ' '.join(str(w) for w in words)
        print(f'{time.time() - began:6.1f} s  {text}', flush=True)
        log.write(f'{time.time() - began:6.1f} s  {text}\n')
        log.flush()

    gone = [w for w in args.without.split(',') if w]
    ablate(gone)
    chain.PLAN.update(points=args.points, rendered=args.rendered)
    say('torch', torch.__version__, 'on', torch.cuda.get_device_name() if half else 'cpu', vars(args))
    sets = Sets(args.data, device)
    real = read_real(args.real, device)
    say('real sounds', {k: len(v.rows) for k, v in real.items()})
    while True:
        sets.refresh()
        if len([s for s in sets.done if s.name.startswith('arcs')]) >= args.wait_shards:
            break
        if time.time() - began > max(60, args.seconds / 2):
            raise SystemExit('no shards of arcs appeared')
        time.sleep(2)
    say('arcs', len(sets.arcs.rows), 'others', len(sets.others.rows), 'kept out', len(sets.kept.rows), sets.families)
    crops = Crops(sets.arcs, sets.others, None if 'real' in gone else real['train'], device)

    crops.by_ear = 'ear' not in gone
    teachers = [Learner(seeded(teacher, args.seed * 100 + k), device, half) for k in range(args.teachers)]
    pupil = Learner(seeded(student, args.seed * 100 + 50), device, False)
    folds = [Learner(seeded(student, args.seed * 100 + 60 + k), device, False) for k in range(args.folds)]
    say('multiply-adds a second', multiply_adds())
    everyone = {**{f'teacher{k}': t for k, t in enumerate(teachers)}, 'student': pupil,
                **{f'fold{k}': f for k, f in enumerate(folds)}}
    if args.keep and Path(args.keep).exists():
        kept = torch.load(args.keep, map_location=device)
        for name, one in everyone.items():
            if name in kept:
                one.load(kept[name])
        say('goes on from', args.keep)
    else:
        args.from_share = 0.0

    if half:
        say('convolution over time,', faster_way(crops, args.batch_seconds))

    # Scoring and export take their share at the end.
    reserve = min(args.seconds * 0.3, 45.0)
    until = began + args.seconds - reserve
    first = time.time()
    saved = refreshed = time.time()
    steps = 0
    sums = {}
    while time.time() < until:
        share = args.from_share + (args.to_share - args.from_share) * (time.time() - first) / (until - first)
        rate = args.rate * min(1.0, (steps + 1) / 300 + args.from_share) * 0.5 * (1 + math.cos(math.pi * share))
        seconds = LENGTHS[int(torch.randint(len(LENGTHS), (1,)))]
        with torch.no_grad():
            batch = crops.draw(max(2, int(args.batch_seconds / seconds)), seconds)
            if 'mix' not in gone:
                batch['x'] = mix_bands(batch['x'])
            without(batch, gone)
        table = sets.arcs.columns()
        for k, one in enumerate(teachers):
            frames, result, _ = one.outputs(batch)
            loss = loss_by_truth(frames, result, batch)
            one.step(loss, rate * 0.7)
            add(sums, f'teacher{k}', loss)
        frames, result, batch['weights'] = pupil.outputs(batch)
        loss = loss_by_truth(frames, result, batch)
        add(sums, 'student', loss)
        if teachers and share > 0.25:
            taught = loss_by_teachers(frames, result, beliefs(teachers, batch, half), batch)
            add(sums, 'taught', taught)
            loss = 0.3 * loss + 0.7 * taught
        pupil.step(loss, rate)
        if folds:
            # The folds take turns: each learns from every step of its turn.
            k = steps % len(folds)
            frames, result, _ = folds[k].outputs(batch)
            loss = loss_by_truth(frames, result, batch, fold_keeps(batch, table, k, len(folds)))
            folds[k].step(loss, rate)
            add(sums, 'folds', loss)
        steps += 1
        if time.time() - refreshed > 20:
            sets.refresh(most=200)
            refreshed = time.time()
        if time.time() - saved > 50 or steps in (20, 200):
            say(f'{share:.3f} of the schedule, step {steps}, arcs {len(sets.arcs.rows)},',
                {k: round(float(total / count), 4) for k, (total, count) in sums.items()})
            sums = {}
            export.write(pupil.mean, out, {'share': share, 'steps': steps})
            if args.keep:
                torch.save({name: one.state() for name, one in everyone.items()}, args.keep)
            saved = time.time()
    say('steps', steps, 'arcs', len(sets.arcs.rows), 'others', len(sets.others.rows))
    if args.keep:
        torch.save({name: one.state() for name, one in everyone.items()}, args.keep)
    facts = {'steps': steps, 'arcs': len(sets.arcs.rows), 'others': len(sets.others.rows), 'seed': args.seed,
             'realSounds': len(real['train'].rows), 'torch': torch.__version__, 'arguments': vars(args),
             'families': sets.families, 'share': args.to_share}
    export.write(pupil.mean, out, facts)
    export.reference(pupil.mean, out)
    say('weights and reference vectors written')
    export.many({f'fold{k}': f.mean for k, f in enumerate(folds)}, out / 'folds.npz')
    if teachers:
        export.many({f'teacher{k}': t.mean for k, t in enumerate(teachers)}, out / 'teachers.npz')
    recordings = []
    for name, pattern in (r.split('=', 1) for r in args.recordings):
        found = sorted(glob.glob(pattern))
        recordings.append((name, [one for path in found for one in read_recordings(path)]))
        say('recordings', name, len(recordings[-1][1]))
    text = score.everything(pupil.mean, [t.mean for t in teachers], [f.mean for f in folds], sets, real, recordings,
                            out, args.score_crops, deadline=began + args.seconds - 5, gone=gone, half=half)
    say('scored\n' + text)


def faster_way(crops, batch_seconds):
    """Measures both ways to convolve each channel over time, and the drawing of a batch; sets the faster."""
    times = {}
    with torch.no_grad():
        for k in range(3):
            begun = clock()
            batch = crops.draw(int(batch_seconds / 3), 3.0)
            times['a batch drawn'] = clock() - begun
    for way in (False, True):
        Separable.by_steps = way
        net = student().to(batch['x'].device)
        for k in range(4):
            begun = clock()
            rows = net.rows(batch['x'])
            rows.square().mean().backward()
            times['by steps' if way else 'by the library'] = clock() - begun
    Separable.by_steps = times['by steps'] < times['by the library']
    return {name: f'{1000 * seconds:.1f} ms' for name, seconds in times.items()}


def clock():
    torch.cuda.synchronize()
    return time.time()


def ablate(gone):
    for name, key in (('gain', 'gain'), ('clip', 'clip'), ('room', 'room'), ('suppress', 'suppress'),
                      ('coded', 'coded'), ('band', 'band')):
        if name in gone:
            chain.PLAN[key] = 0.0


def seeded(make, seed):
    torch.manual_seed(seed)
    return make()


def add(sums, name, loss):
    total, count = sums.get(name, (0.0, 0))
    sums[name] = (total + loss.detach(), count + 1)


if __name__ == '__main__':
    main()
