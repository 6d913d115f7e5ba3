"""Sounds of arcs rendered anew for every crop: when things happen comes from a drawn arc (or from a point process), how
each of them sounds is drawn at random here. No two crops share a sound, so that what is learnt is the pattern in time.

Kinds of events are those of `events.npy`: contact (0), re-ignition (1), free drop (2), pulse (3). Everything that is
not their order in time comes from one distribution for all modes. All ranges are own choice, kept wide.
"""
import math

import torch

import chain
from features import HOP, RATE_HZ, energies

KINDS = 4
CONTACT, REIGNITION, DROP, PULSE = range(KINDS)
MOST_EVENTS = 4096
# Energies are held to so many medians, as in src/lab/simulate/sound/audibility.
MOST_MEDIANS = 10.0
REACH = 20


def trains(times, kinds, amplitudes, count, lag=None):
    """Impulses [B, KINDS, count] at `times` (s, from the first sample); `kinds` -1 for none."""
    rows = times.shape[0]
    out = torch.zeros(rows, KINDS * count, device=times.device)
    k = kinds.clamp_min(0)
    at = times * RATE_HZ
    if lag is not None:
        at = at + torch.gather(lag, 1, k) * RATE_HZ
    low = at.floor()
    part = at - low
    for place, share in ((low, 1 - part), (low + 1, part)):
        inside = (kinds >= 0) & (place >= 0) & (place < count)
        out.scatter_add_(1, k * count + place.clamp(0, count - 1).long(), amplitudes * share * inside)
    return out.reshape(rows, KINDS, count)


def convolved(x, kernel):
    """Both [..., n], the kernel shorter than SIZE - n."""
    spectrum = torch.fft.rfft(x, chain.SIZE) * torch.fft.rfft(kernel, chain.SIZE)
    return torch.fft.irfft(spectrum, chain.SIZE)[..., :x.shape[-1]]


def ringing(draw, rows, device, seconds=0.06):
    """Waveforms of single events [B, rows, T]: some ringing, some noise, some click; energy 1."""
    t = torch.arange(int(seconds * RATE_HZ), device=device) / RATE_HZ
    parts = 4
    hz = draw.log_uniform(120, 7600, rows, parts, 1)
    decay = draw.log_uniform(0.0002, 0.015, rows, parts, 1)
    gain = torch.exp(draw.normal(rows, parts, 1)) * draw.chance(0.7, rows, parts, 1) * (decay ** -0.5)
    ring = (gain * torch.sin(2 * math.pi * (hz * t + draw.uniform(0, 1, rows, parts, 1))) * torch.exp(-t / decay)).sum(2)
    noise = draw.normal(rows, len(t)) * torch.exp(-t / draw.log_uniform(0.0002, 0.008, rows, 1))
    click = torch.zeros_like(ring)
    click[..., 0] = 1
    click[..., 1] = -draw.uniform(0, 1, rows)
    wave = 0
    for one, share in ((ring, 0.7), (noise, 0.6), (click, 0.4)):
        one = one / one.square().sum(-1, keepdim=True).sqrt().clamp_min(1e-6)
        wave = wave + one * draw.log_uniform(0.2, 1, rows, 1) * draw.chance(share, rows, 1)
    wave = wave + click * 0.05
    rise = draw.log_uniform(0.00005, 0.004, rows, 1) * draw.chance(0.5, rows, 1)
    wave = wave * (1 - torch.exp(-t / rise.clamp_min(1e-5)))
    return wave / wave.square().sum(-1, keepdim=True).sqrt().clamp_min(1e-9)


def swell(draw, rows, device, longest, seconds=0.09):
    """Envelopes [B, rows, T] that rise and die, largest value 1."""
    t = torch.arange(int(seconds * RATE_HZ), device=device) / RATE_HZ
    rise = draw.log_uniform(0.0001, 0.003, rows, 1)
    fall = draw.log_uniform(0.0006, longest, rows, 1)
    shape = (1 - torch.exp(-t / rise)) * torch.exp(-t / fall)
    return shape / shape.amax(-1, keepdim=True)


def noise_of(draw, count, device):
    """Noise of a random colour, rms 1."""
    y = torch.fft.irfft(chain.coloured(draw, device), chain.SIZE)[:, :count]
    return y / y.square().mean(-1, keepdim=True).sqrt().clamp_min(1e-9)


def slow(draw, count, device):
    """A slow random swing [B, count], deviation 1, of 1 to 60 Hz."""
    spectrum = torch.fft.rfft(draw.normal(count))
    hz = torch.linspace(0, RATE_HZ / 2, count // 2 + 1, device=device)
    y = torch.fft.irfft(spectrum / (1 + (hz / draw.log_uniform(1, 60)) ** 2), count)
    return (y - y.mean(-1, keepdim=True)) / y.std(-1, keepdim=True).clamp_min(1e-6)


def render(times, kinds, strengths, active, draw):
    """Dry sound [B, n], rms 1 where `active`, and the distance at which an ideal listener tells the drops, the
    electrical events and the pulses from everything else [B, 3]."""
    device = times.device
    rows, n = active.shape
    present = kinds >= 0
    onehot = torch.nn.functional.one_hot(kinds.clamp_min(0), KINDS).float() * present[..., None]
    number = onehot.sum(1)
    usual = (onehot * strengths.clamp_min(1e-4)[..., None]).sum(1) / number.clamp_min(1)
    relative = strengths.clamp_min(1e-4) / torch.gather(usual, 1, kinds.clamp_min(0)).clamp_min(1e-6)
    power, spread = draw.uniform(0, 1.5, KINDS), draw.uniform(0.02, 0.9, KINDS)
    heard = torch.where(draw.chance(0.6, KINDS) > 0, torch.ones(rows, KINDS, device=device), draw.uniform(0.3, 1, KINDS))

    def by_kind(values):
        return torch.gather(values, 1, kinds.clamp_min(0))

    size = relative.clamp(0.02, 50) ** by_kind(power) * torch.exp(by_kind(spread) * torch.randn_like(times))
    size = size * (torch.rand_like(times) < by_kind(heard)) * present
    sign = torch.where((draw.chance(0.3) > 0) & (torch.rand_like(times) < 0.5), -1.0, 1.0)
    lag = draw.log_uniform(0.0001, 0.005, KINDS) * draw.chance(0.7, KINDS)
    hits = trains(times, kinds, size * sign, n, lag)
    marks = trains(times, kinds, size, n, lag)
    plain = trains(times.clamp_min(0), kinds, present.float(), n)

    # Pulses end as they begin, the other way round.
    gap = RATE_HZ * (active.sum(-1) / RATE_HZ / number[:, PULSE].clamp_min(1)).clamp(0.002, 0.04)
    width = (draw.uniform(0.12, 0.6)[:, 0] * gap).long().clamp(8, n - 1)
    at = torch.arange(n, device=device)[None]
    back = (at - width[:, None])
    ends = torch.where(back >= 0, torch.gather(hits[:, PULSE], 1, back.clamp_min(0)), torch.zeros(1, device=device))
    hits[:, PULSE] = hits[:, PULSE] + draw.uniform(-1, 1) * draw.chance(0.7) * ends

    waves = convolved(hits, ringing(draw, KINDS, device))
    puffs = torch.sqrt(convolved(marks.square(), swell(draw, KINDS, device, 0.01, 0.06).square()).clamp_min(0))
    puffs = puffs * torch.stack([noise_of(draw, n, device) for _ in range(KINDS)], 1)
    mix = draw.uniform(0, 1, KINDS, 1) * draw.chance(0.7, KINDS, 1)

    def of_energy_one(x):
        energy = x.square().sum(-1, keepdim=True) / marks.square().sum(-1, keepdim=True).clamp_min(1e-6)
        return x / energy.sqrt().clamp_min(1e-6)

    own = (1 - mix).sqrt() * of_energy_one(waves) + mix.sqrt() * of_energy_one(puffs)
    # Energy of an event over that of 5 ms of hiss, dB.
    low = torch.tensor([-25.0, -8.0, -18.0, -10.0], device=device)
    high = torch.tensor([18.0, 28.0, 22.0, 25.0], device=device)
    over = low + (high - low) * draw.uniform(0, 1, KINDS) + 25 * draw.chance(0.07)
    silent = draw.chance(0.12, KINDS) * torch.tensor([2.0, 0.3, 1.5, 0.3], device=device).clamp_max(8)
    over = torch.where(torch.rand(rows, KINDS, device=device) < silent.clamp_max(1), torch.full_like(over, -60.0), over)
    own = own * (10 ** (over / 10) * 0.005 * RATE_HZ).sqrt()[..., None]

    # Hiss: shaken slowly, stopped by contacts, swollen by what crosses.
    shorted = (plain[:, CONTACT] - plain[:, REIGNITION]).cumsum(-1).clamp(0, 1)
    depth = draw.uniform(0, 4) * draw.chance(0.8)
    rises = convolved(marks, swell(draw, KINDS, device, 0.03)).clamp(-4, 4)
    push = draw.normal(KINDS, 1) * 0.8 * draw.chance(0.6, KINDS, 1)
    box = torch.nn.functional.pad(plain[:, PULSE].cumsum(-1), (1, 0))
    last = (at - width[:, None]).clamp_min(0)
    high_now = (box[:, 1:] - torch.gather(box, 1, last)).clamp(0, 1)
    swing = slow(draw, n, device) * draw.uniform(0, 0.8) * draw.chance(0.7)
    level = swing - depth * shorted + (push * rises).sum(1) + draw.uniform(-0.5, 2.5) * draw.chance(0.8) * high_now
    hiss = noise_of(draw, n, device) * torch.exp(level.clamp(-6, 4))
    hiss = hiss * active
    # Energies of events are stated over a hiss of rms 1, so that its shaking must not change its level.
    hiss = hiss / chain.deviation(hiss, active)
    # Crackle that nothing in the arc explains.
    rate = draw.log_uniform(0.2, 60) * draw.chance(0.6)
    crackle = (torch.rand(rows, n, device=device) < rate / RATE_HZ).float() * torch.exp(0.9 * torch.randn(rows, n, device=device))
    crackle = convolved(crackle, ringing(draw, 1, device)[:, 0]) * (10 ** (draw.uniform(-15, 18) / 10) * 0.005 * RATE_HZ).sqrt()
    rest = hiss + crackle * active
    own = own * active[:, None]
    total = rest + own.sum(1)
    distances = []
    for kind in (DROP, REIGNITION, PULSE):
        others = total - own[:, kind]
        distances.append(stand_out(own[:, kind], others, plain[:, kind], active, lag[:, kind]))
    return total / chain.deviation(total, active), torch.stack(distances, 1)


def frames_of(x, count):
    """Sums over the frames of the features."""
    middle = 32
    padded = torch.nn.functional.pad(x[:, middle - 8:], (0, HOP))
    return padded[:, :count * HOP].reshape(x.shape[0], count, HOP).sum(-1)


def stand_out(own, others, marks, active, lag):
    """The measure of src/lab/simulate/sound/audibility, for bands and frames of the features: how far the events stand
    out of everything else, in standard deviations."""
    e, o = energies(own)[:, 1:-1], energies(others)[:, 1:-1]
    # Five listening bands of three.
    e, o = (v[:, :15].reshape(v.shape[0], -1, 3, v.shape[-1]).sum(2) for v in (e, o))
    count = e.shape[-1]
    on = (frames_of(active, count) > 0.5 * HOP).float()
    events = frames_of(marks, count)
    shift = (lag * 1000).round().long()[:, None]
    at = torch.arange(count, device=own.device)[None] - shift
    events = torch.where(at >= 0, torch.gather(events, 1, at.clamp(0, count - 1)), torch.zeros(1, device=own.device))
    masked = torch.where(on[:, None] > 0, o, torch.full_like(o, float('nan')))
    median = masked.nanmedian(-1, keepdim=True)[0].nan_to_num(1.0).clamp_min(1e-12)
    rest = (o / median).clamp_max(MOST_MEDIANS)
    signal = ((o + e) / median).clamp_max(MOST_MEDIANS) - rest
    weight = on[:, None] / on.sum(-1)[:, None, None].clamp_min(1)
    mean = (rest * weight).sum(-1, keepdim=True)
    variance = ((rest - mean).square() * weight).sum(-1).clamp_min(1e-4)
    number = events.sum(-1).clamp_min(1e-6)
    gap = on.sum(-1) / number
    reach = (gap / 2).clamp(1, REACH)
    lags = torch.arange(-REACH, REACH + 1, device=own.device)
    allowed = (lags.abs()[None] <= reach[:, None]).float()[:, None]
    order = (events.cumsum(-1) % 2 < 1).float()
    profiles = [profile(signal, events * half, lags) for half in (order, 1 - order)]

    def contrast(m):
        centre = (m * allowed).sum(-1, keepdim=True) / allowed.sum(-1, keepdim=True)
        return (m - centre) * allowed / variance[..., None]

    one, two = contrast(profiles[0]), contrast(profiles[1])
    added = 0.5 * ((one * profiles[1]).sum((1, 2)) + (two * profiles[0]).sum((1, 2)))
    both = 0.5 * (one + two)
    size = 8192
    spectrum = torch.fft.rfft(rest - mean, size) * torch.fft.rfft(shifted(both, size), size).conj()
    y = torch.fft.irfft(spectrum.sum(1), size)[:, :count]
    own_noise = (1e-4 * both.square()).sum((1, 2))
    inside = on / on.sum(-1, keepdim=True).clamp_min(1)
    centre = (y * inside).sum(-1, keepdim=True)
    deviation = ((y - centre).square() * inside).sum(-1).maximum(own_noise).clamp_min(1e-12).sqrt()
    distance = added.clamp_min(0) * number.sqrt() / deviation
    return torch.where(number >= 2, distance, torch.zeros_like(distance))


def profile(signal, events, lags):
    """Mean of the energy [B, bands, lags] around the events."""
    size = 8192
    spectrum = torch.fft.rfft(signal, size) * torch.fft.rfft(events, size).conj()[:, None]
    around = torch.fft.irfft(spectrum, size)[..., lags % size]
    return around / events.sum(-1).clamp_min(1e-6)[:, None, None]


def shifted(weights, size):
    """Weights by lag [B, bands, lags] as a filter whose lag 0 lies at 0."""
    out = torch.zeros(*weights.shape[:-1], size, device=weights.device)
    out[..., :REACH + 1] = weights[..., REACH:]
    out[..., size - REACH:] = weights[..., :REACH]
    return out


def point_arcs(count, n, draw, device):
    """Arcs that are nothing but rates: event times by renewal processes, in the windows that are published or usual
    (short circuits 20 to 200 a second, free globular drops 1 to 40, spray 100 to 900, pulses 30 to 350; common practice
    and the sources of the tables of windows in src/lab/simulate/physics). Returns times, kinds, strengths, mode."""
    seconds = n / RATE_HZ
    mode = torch.randint(4, (count,), device=device)
    most = 2048
    steps = torch.arange(most, device=device)[None]

    def renewal(rate, irregular):
        """Times of events [B, most] of a rate [B, 1] that wanders, gaps of gamma's shape."""
        shape = (1 / irregular ** 2).expand(count, most)
        gaps = torch.distributions.Gamma(shape, shape).sample() / rate
        wander = torch.exp(draw.uniform(0, 0.25) * torch.sin(
            2 * math.pi * (draw.uniform(0.1, 3) * gaps.cumsum(-1) + draw.uniform(0, 1))))
        times = (gaps * wander).cumsum(-1)
        return times - gaps[:, :1] * draw.uniform(0, 1)

    is_dip, is_globular, is_spray, is_pulse = ((mode == k)[:, None].float() for k in range(4))
    rate = (is_dip * draw.log_uniform(18, 210) + is_globular * draw.log_uniform(1.5, 40)
            + is_spray * draw.log_uniform(100, 900) + is_pulse * draw.log_uniform(30, 350))
    irregular = (is_dip * draw.log_uniform(0.06, 0.8) + is_globular * draw.log_uniform(0.15, 1.0)
                 + is_spray * draw.log_uniform(0.08, 1.0) + is_pulse * draw.log_uniform(0.001, 0.012))
    times = renewal(rate, irregular)
    gap = 1 / rate
    jitter = torch.rand(count, most, device=device)
    # Contact some milliseconds before re-ignition; a globular drop sometimes touches.
    held = (draw.log_uniform(0.0008, 0.008) * torch.exp(0.3 * torch.randn(count, most, device=device)))
    held = torch.minimum(held, 0.7 * gap)
    touches = is_globular * (jitter < draw.uniform(0, 0.5) * draw.chance(0.7))
    short = (is_dip + touches) > 0
    inside = times < seconds
    none = torch.full((count, most), -1, device=device)
    first = torch.where(short & inside, torch.zeros_like(none) + CONTACT, none)
    second = torch.where(short, torch.zeros_like(none) + REIGNITION,
                         torch.where((is_pulse > 0).expand_as(short), torch.zeros_like(none) + PULSE, torch.zeros_like(none) + DROP))
    second = torch.where(inside, second, none)
    # Drops that leave with a pulse, one each as a rule.
    third_at = times + gap * draw.uniform(0.1, 0.7) + gap * 0.08 * torch.randn(count, most, device=device)
    third = torch.where((is_pulse > 0) & inside & (jitter < draw.uniform(0.7, 1)), torch.zeros_like(none) + DROP, none)
    # Free flight now and then touches, dip now and then lets a drop fly.
    rare = renewal(draw.log_uniform(0.05, 1.5), torch.ones(count, 1, device=device))[:, :64]
    rare_kind = torch.where((is_globular > 0).expand_as(rare) | (rare > seconds), none[:, :64], torch.zeros_like(none[:, :64]) + REIGNITION)
    rare_kind = torch.where((is_dip > 0).expand_as(rare) & (rare_kind >= 0), torch.zeros_like(rare_kind) + DROP, rare_kind)
    all_times = torch.cat([times - held, times, third_at, rare], 1)
    all_kinds = torch.cat([first, second, third, rare_kind], 1)
    strengths = torch.exp(0.4 * torch.randn_like(all_times))
    return all_times, all_kinds, strengths, mode
