"""Crops for one step: which sounds, where they begin, what the truth of each row of the network is."""
import torch
import torch.nn.functional as F

import chain
import render
from features import RATE_HZ, features, frame_count
from network import LEAST_WEIGHT, block_means, rows_of
from sounds import LEAST_DISTANCE


def gather(store, rows, start, length, speed=None, wrap=False):
    """Samples from `start` (may be negative) of sounds; 0 outside, or round and round."""
    table = store.columns()
    n = torch.arange(length, device=store.device)
    offset, size = table['offset'][rows][:, None], table['length'][rows][:, None]
    if speed is None:
        at = start[:, None] + n
        inside = (at >= 0) & (at < size)
        at = at % size if wrap else at.clamp_min(0).minimum(size - 1)
        y = store.samples[offset + at].float()
    else:
        exact = start[:, None] + n * speed
        inside = (exact >= 0) & (exact < size - 1)
        low = exact.floor().long()
        part = exact - low
        low = low % size if wrap else low.clamp_min(0).minimum(size - 1)
        high = (low + 1) % size
        y = store.samples[offset + low].float() * (1 - part) + store.samples[offset + high].float() * part
    return y if wrap else y * inside


def other_sounds(count, length, stores, shares, draw):
    """Crops [count, length] of sounds without an arc, rms 1, from stores that hold any, in the given shares."""
    device = draw.device
    stores = [(s, p) for s, p in zip(stores, shares) if s is not None and s.rows]
    y = torch.zeros(count, length, device=device)
    if not stores:
        return y
    shares = torch.tensor([p for _, p in stores], device=device)
    which = torch.multinomial(shares, count, replacement=True)
    for k, (store, _) in enumerate(stores):
        rows = torch.nonzero(which == k)[:, 0]
        if not len(rows):
            continue
        pick = torch.randint(len(store.rows), (len(rows),), device=device)
        size = store.columns()['length'][pick]
        start = (torch.rand(len(rows), device=device) * size).long()
        speed = torch.exp(torch.randn(len(rows), 1, device=device) * 0.2)
        y[rows] = gather(store, pick, start, length, speed, wrap=True)
    return y / chain.deviation(y, torch.ones_like(y))


def spans_mask(spans, start, length, speed, device):
    at = (start[:, None] + torch.arange(length, device=device) * speed) / RATE_HZ
    mask = torch.zeros(at.shape, dtype=torch.bool, device=device)
    for k in range(spans.shape[1]):
        mask |= (at >= spans[:, k, :1]) & (at < spans[:, k, 1:])
    return mask.float()


def arc_crops(store, count, length, plan, draw):
    """Dry arcs, where they burn, which rows of the table they are, and how far an ideal listener tells the events of
    those that were rendered anew (-1 for the others) [B, 3]."""
    device = store.device
    table = store.columns()
    spans = table['spans']
    first = spans[:, :, 0].masked_fill(spans[:, :, 0] < 0, 1e9).amin(1)
    last = spans[:, :, 1].amax(1)
    fills = torch.rand(count, device=device) < plan['fills']
    # All modes alike, whatever the data set holds more of; runs of mixed or doubtful mode as often as they come.
    mode = torch.where(table['weight'] > 0.9, table['target'].argmax(1), 4)
    share = 1 / torch.bincount(mode, minlength=5).clamp_min(1).float()
    share[4] = 0.2 / len(mode)
    share = share[mode]
    pick = torch.multinomial(share, count, replacement=True)
    seconds = length / RATE_HZ
    long = (last - first > seconds * 1.1 + 0.05).float()
    if float(long.sum()) > 0:
        pick = torch.where(fills, torch.multinomial(share * long + 1e-12, count, replacement=True), pick)
    speed = torch.exp(torch.randn(count, 1, device=device) * plan['speed']).clamp(0.85, 1.15)
    u = torch.rand(count, device=device)
    f, e = first[pick], last[pick]
    real = seconds * speed[:, 0]
    inside = f + 0.02 + u * (e - f - real - 0.04).clamp_min(0)
    over = f - 0.7 * real + u * ((e - 0.3 * real) - (f - 0.7 * real)).clamp_min(0)
    start = torch.where(fills, inside, over) * RATE_HZ
    dry = gather(store, pick, start, length, speed)
    active = spans_mask(spans[pick], start, length, speed, device)
    distances = torch.full((count, 3), -1.0, device=device)
    anew = torch.nonzero((torch.rand(count, device=device) < plan['rendered']) & (active.sum(-1) > 1600))[:, 0]
    if len(anew):
        since = start[anew] / RATE_HZ
        times, kinds, strengths = store.events_from(table['arc'][pick[anew]], since - 0.1, render.MOST_EVENTS)
        times = (times - since[:, None]) / speed[anew]
        kinds = torch.where(times < seconds, kinds, torch.full_like(kinds, -1))
        dry[anew], distances[anew] = render.render(times, kinds, strengths, active[anew], chain.Draw(len(anew), device))
    return dry, active, pick, distances


def gate_like(count, length, plan, draw):
    """A beginning, an end or both within the crop, or neither [B, length]."""
    at = torch.arange(length, device=draw.device) / length
    fills = draw.chance(plan['fills'])
    lead = draw.uniform(-0.5, 0.6)
    tail = lead + draw.uniform(0.3, 1.5)
    ramp = draw.log_uniform(0.0005, 0.05) / (length / RATE_HZ)
    gate = ((at - lead) / ramp).clamp(0, 1) * ((tail - at) / ramp).clamp(0, 1)
    return fills + (1 - fills) * gate


def point_crops(count, length, plan, device):
    """Arcs that are nothing but rates: sound, where they burn, mode, distances, whether they touch."""
    draw = chain.Draw(count, device)
    times, kinds, strengths, mode = render.point_arcs(count, length, draw, device)
    active = (gate_like(count, length, plan, draw) > 0.5).float()
    empty = active.sum(-1) < 4800
    active[empty] = 1.0
    # Events happen only while the arc burns.
    burns = torch.gather(active, 1, (times * RATE_HZ).long().clamp(0, length - 1)) > 0
    kinds = torch.where(burns, kinds, torch.full_like(kinds, -1))
    dry, distances = render.render(times, kinds, strengths, active, draw)
    shorts = (kinds == render.CONTACT).sum(-1) / (active.sum(-1) / RATE_HZ).clamp_min(0.1)
    return dry, active, mode, distances, shorts


def other_crops(count, length, stores, shares, plan, draw):
    """Sounds without an arc that come and go as arcs do."""
    device = draw.device
    y = other_sounds(count, length, stores, shares, draw)
    both = torch.rand(count, 1, device=device) < 0.25
    second = other_sounds(count, length, stores, shares, draw)
    y = torch.where(both, y + second * draw.log_uniform(0.2, 2), y)
    # Like arcs: a beginning, an end or both within the crop.
    gate = gate_like(count, length, plan, draw)
    # Some are nothing but noise, hum or a room.
    nothing = draw.chance(0.12)
    return y * gate * (1 - nothing), (gate > 0.5).float() * (1 - nothing)


def truth_rows(active, rows):
    """Whether an arc burns at each row [B, rows], and 0 where a row lies too near an edge to be asked."""
    centre = torch.arange(rows, device=active.device) * 256 + 32
    burning = active[:, centre.clamp_max(active.shape[1] - 1)]
    near = F.avg_pool1d(F.pad(burning[:, None], (3, 3), mode='replicate'), 7, 1)[:, 0]
    return burning, ((near < 1e-3) | (near > 1 - 1e-3)).float()


class Crops:
    """Draws batches. `arcs` and `others` are stores; `real` a store of real sounds."""

    # Globular and spray count as one where the drops are not audible.
    by_ear = True

    def __init__(self, arcs, others, real, device):
        self.arcs, self.others, self.real, self.device = arcs, others, real, device

    def draw(self, count, seconds, preset='train', arc_share=0.62):
        """A batch: x (features), burning and sure (rows), target, weight, audible (−1 where not asked), row of table."""
        plan = {**chain.PLAN, **({} if preset == 'train' else chain.AS_DRAWN), **chain.PRESETS[preset]}
        length = int(seconds * RATE_HZ)
        arcs = round(count * arc_share)
        points = round(arcs * plan['points'])
        drawn = arcs - points
        draw = chain.Draw(count, self.device)
        stores, shares = [self.real, self.others], [0.55, 0.45]
        parts, actives, pick = [], [], None
        if drawn:
            dry, active, pick, distances = arc_crops(self.arcs, drawn, length, plan, chain.Draw(drawn, self.device))
            parts.append(dry)
            actives.append(active)
        if points:
            dry, active, point_mode, point_distances, point_shorts = point_crops(points, length, plan, self.device)
            parts.append(dry)
            actives.append(active)
        if count > arcs:
            dry, active = other_crops(count - arcs, length, stores, shares, plan, chain.Draw(count - arcs, self.device))
            parts.append(dry)
            actives.append(active)
        behind = other_sounds(count, length, stores, shares, draw)
        scene = other_sounds(count, length, stores, shares, draw)
        y, active, ratio = chain.record(torch.cat(parts), torch.cat(actives), behind, scene, plan)
        dead = draw.chance(0.004)
        y = y * (1 - dead)
        is_arc = (torch.arange(count, device=self.device) < arcs).float() * (1 - dead[:, 0])
        active = active * is_arc[:, None]
        rows = rows_of(frame_count(length))
        burning, sure = truth_rows(active, rows)
        out = {'x': features(y), 'burning': burning, 'sure': sure, 'arc': is_arc, 'ratio': ratio}
        enough = (burning.sum(1) * 256 / RATE_HZ >= 0.25).float() * is_arc
        target = torch.zeros(count, 4, device=self.device)
        weight = torch.zeros(count, device=self.device)
        audible = torch.full((count,), -1.0, device=self.device)
        distance = torch.zeros(count, device=self.device)
        table_row = torch.full((count,), -1, dtype=torch.int64, device=self.device)
        rendered = torch.zeros(count, dtype=torch.bool, device=self.device)
        # Noise brings the events down in medians of everything else.
        quiet = 1 / (1 + ratio)
        if drawn:
            table = self.arcs.columns()
            target[:drawn] = table['target'][pick]
            weight[:drawn] = table['weight'][pick]
            # Fewer events are fewer chances.
            spans = table['spans'][pick]
            burnt = (spans[:, :, 1] - spans[:, :, 0]).sum(1).clamp_min(0.3)
            part = (burning[:drawn].sum(1) * 256 / RATE_HZ / burnt).clamp(0.01, 1)
            anew = distances[:, 0] >= 0
            told = told_by(distances, table['shorts'][pick], target[:drawn].argmax(1))
            distance[:drawn] = torch.where(anew, told, table['audible'][pick] * part.sqrt()) * quiet[:drawn]
            asked = (table['audible_known'][pick] > 0)
            audible[:drawn] = torch.where(asked, (distance[:drawn] > LEAST_DISTANCE).float(), -1.0)
            # Where nothing at all can be told, little is to be learnt of the mode.
            deaf = anew & (distances.amax(1) * quiet[:drawn] < LEAST_DISTANCE)
            weight[:drawn] = weight[:drawn] * torch.where(deaf & ~asked, 0.2, 1.0)
            table_row[:drawn] = pick
            rendered[:drawn] = anew
        if points:
            target[drawn:arcs] = F.one_hot(point_mode, 4).float()
            told = told_by(point_distances, point_shorts, point_mode)
            distance[drawn:arcs] = told * quiet[drawn:arcs]
            asked = (point_mode == 1) | (point_mode == 2)
            audible[drawn:arcs] = torch.where(asked, (distance[drawn:arcs] > LEAST_DISTANCE).float(), -1.0)
            deaf = point_distances.amax(1) * quiet[drawn:arcs] < LEAST_DISTANCE
            weight[drawn:arcs] = torch.where(deaf & ~asked, 0.2, 1.0)
        if arcs:
            if self.by_ear:
                # Where nobody could tell the size of the drops, neither of the two is the truth.
                either = (audible[:arcs] == 0).float()[:, None]
                both = target[:arcs, 1:3].mean(1, keepdim=True).expand(-1, 2)
                target[:arcs, 1:3] = either * both + (1 - either) * target[:arcs, 1:3]
        out.update(target=target, weight=weight * enough, arc_known=torch.where(is_arc > 0, enough, 1 - is_arc),
                   audible=torch.where(enough > 0, audible, -1.0), row=table_row, distance=distance, rendered=rendered)
        return out


def told_by(distances, shorts, mode):
    """How far the ideal listener tells the drops; a globular arc that touches is told by its touches as well."""
    drops, touches = distances[:, 0], distances[:, 1]
    return torch.where((mode == 1) & (shorts >= 1), torch.maximum(drops, touches), drops)


def stretch_weights(burning, frames, is_arc):
    """Weights of the blocks of a stretch: where the arc is, by truth or by the network's own belief; sometimes only a
    part of it."""
    believed = torch.sigmoid(frames.detach())
    truth = torch.where(is_arc[:, None] > 0, burning, torch.ones_like(burning))
    count, rows = burning.shape
    device = burning.device
    own = torch.rand(count, 1, device=device) < 0.5
    w = torch.where(own, believed, truth) + LEAST_WEIGHT
    part = torch.rand(count, 1, device=device) < 0.35
    centre = torch.multinomial(truth + 1e-6, 1).float()
    half = 31.25 * (0.4 + 2.0 * torch.rand(count, 1, device=device))
    at = torch.arange(rows, device=device)
    window = ((at - centre).abs() <= half).float()
    w = torch.where(part, w * window + 1e-6, w)
    return block_means(w)
