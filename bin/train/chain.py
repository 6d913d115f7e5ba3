"""From a dry sound to what a recorder stores, drawn anew for every crop, all crops of a batch at once.

Everything is drawn here, also the responses of rooms and microphones; none is measured. Ranges are own choice unless
a line says other. The order is that of a real recording: room, other sounds, microphone, gain control, clipping,
suppression, band and coding, level and rounding.
"""
import math

import torch
import torch.nn.functional as F

from features import RATE_HZ

SIZE = 65536
ROOM = 16384
GRID = 256
LOW_HZ, HIGH_HZ = 30.0, 8000.0

# Chance of each step; presets for scoring change some of them.
PLAN = {
    'fills': 0.5, 'cut': 0.3, 'switched': 0.2, 'room': 0.85, 'wet_db': (-24.0, 6.0), 'rt60': (0.12, 2.5),
    'other_behind': 0.6, 'snr_db': (-3.0, 40.0), 'harsh_mic': 0.75, 'short_response': 0.5, 'hum': 0.15, 'gain': 0.45,
    'clip': 0.45, 'clip_at': (0.2, 4.0), 'hard': 0.65, 'suppress': 0.12, 'band': 0.2, 'coded': 0.25, 'speed': 0.08,
    # Shares of the arcs: nothing but rates (render.point_arcs), and drawn arcs whose sound is rendered anew. None by
    # default: see README.md for what they gave.
    'points': 0.0, 'rendered': 0.0,
}
# Where figures are made, sounds are those of the data set.
AS_DRAWN = {'points': 0.0, 'rendered': 0.0}
PRESETS = {
    'train': {},
    'quiet': {'fills': 0.2, 'cut': 0.0, 'switched': 0.0, 'wet_db': (-24.0, -8.0), 'rt60': (0.2, 0.8),
              'other_behind': 0.1, 'snr_db': (25.0, 50.0), 'harsh_mic': 0.0, 'short_response': 0.2, 'hum': 0.0,
              'gain': 0.0, 'clip': 0.0, 'suppress': 0.0, 'band': 0.0, 'coded': 0.0, 'speed': 0.0},
    'shop': {'fills': 0.2, 'cut': 0.0, 'switched': 0.0, 'other_behind': 1.0, 'snr_db': (0.0, 20.0), 'harsh_mic': 0.5,
             'gain': 0.1, 'clip': 0.0, 'suppress': 0.0, 'band': 0.0, 'coded': 0.0, 'speed': 0.0},
    'phone': {'snr_db': (5.0, 35.0), 'gain': 1.0, 'clip': 0.6, 'clip_at': (0.5, 3.0), 'suppress': 0.3, 'band': 0.0,
              'coded': 0.5, 'speed': 0.0},
    'call': {'snr_db': (5.0, 35.0), 'gain': 1.0, 'clip': 0.3, 'suppress': 0.7, 'band': 1.0, 'coded': 0.7,
             'speed': 0.0},
    'clipped': {'snr_db': (5.0, 35.0), 'gain': 1.0, 'clip': 1.0, 'clip_at': (0.5, 3.0), 'hard': 1.0, 'suppress': 0.0,
                'band': 0.0, 'coded': 0.0, 'speed': 0.0},
    'filled': {'fills': 1.0, 'cut': 0.0, 'switched': 0.0, 'snr_db': (15.0, 45.0), 'gain': 0.2, 'clip': 0.1,
               'suppress': 0.0, 'band': 0.0, 'coded': 0.1, 'speed': 0.0},
    'switched': {'fills': 0.0, 'cut': 1.0, 'switched': 1.0, 'snr_db': (10.0, 40.0), 'gain': 0.2, 'clip': 0.1,
                 'suppress': 0.0, 'band': 0.0, 'coded': 0.1, 'speed': 0.0},
}


class Draw:
    """Random numbers of one batch."""

    def __init__(self, count, device):
        self.count = count
        self.device = device

    def uniform(self, low, high, *shape):
        return torch.rand(self.count, *(shape or (1,)), device=self.device) * (high - low) + low

    def log_uniform(self, low, high, *shape):
        return torch.exp(self.uniform(math.log(low), math.log(high), *shape))

    def chance(self, share, *shape):
        return (torch.rand(self.count, *(shape or (1,)), device=self.device) < share).float()

    def normal(self, *shape):
        return torch.randn(self.count, *(shape or (1,)), device=self.device)

    def rows(self, share):
        return torch.nonzero(torch.rand(self.count, device=self.device) < share)[:, 0]


def grid_hz(device):
    return torch.exp(torch.linspace(math.log(LOW_HZ), math.log(HIGH_HZ), GRID, device=device))


_index = {}


def on_bins(curve, size=SIZE):
    """A curve over the coarse logarithmic grid [B, GRID], read at the bins of a transform of that size."""
    key = (size, str(curve.device))
    if key not in _index:
        hz = torch.linspace(0, RATE_HZ / 2, size // 2 + 1, device=curve.device).clamp_min(LOW_HZ)
        at = torch.log(hz / LOW_HZ) / math.log(HIGH_HZ / LOW_HZ) * (GRID - 1)
        low = at.floor().clamp(0, GRID - 2).long()
        _index[key] = (low, (at - low).clamp(0, 1))
    low, part = _index[key]
    return curve[:, low] * (1 - part) + curve[:, low + 1] * part


def peaks_db(draw, count, share, spread_db, device):
    """Sum of random bumps over the grid, dB."""
    at = torch.linspace(0, 1, GRID, device=device)
    centre = draw.uniform(0.25, 1.0, count, 1)
    width = draw.log_uniform(0.01, 0.12, count, 1)
    gain = (draw.normal(count, 1) * spread_db).clamp(-2.5 * spread_db, 2.5 * spread_db) * draw.chance(share, count, 1)
    return (gain * torch.exp(-0.5 * ((at - centre) / width) ** 2)).sum(1)


def microphone(draw, plan, device):
    """Response of a microphone and its surroundings at the bins of SIZE, complex."""
    hz = grid_hz(device)
    harsh = draw.chance(plan['harsh_mic'])
    db = draw.normal() * (0.5 + 2.0 * harsh) * torch.log2(hz / 1000)
    low = draw.log_uniform(20, 80) * (1 - harsh) + draw.log_uniform(30, 400) * harsh
    order = 1 + draw.chance(0.5)
    db = db - 10 * torch.log10(1 + (low / hz) ** (2 * order))
    cut = draw.log_uniform(2500, 9000)
    steep = draw.uniform(1, 8)
    db = db - harsh * draw.chance(0.4) * 10 * torch.log10(1 + (hz / cut) ** (2 * steep)).clamp_max(7)
    db = db + peaks_db(draw, 4, 0.6, 1.0, device) + harsh * peaks_db(draw, 5, 0.6, 5.0, device)
    response = torch.complex(10 ** (on_bins(db) / 20), torch.zeros((), device=device))
    # Reflections within the device: a short, fast dying response after the direct sound.
    t = torch.arange(1024, device=device) / RATE_HZ
    tail = draw.normal(1024) * torch.exp(-t / draw.log_uniform(0.0003, 0.006))
    tail = tail / tail.square().sum(-1, keepdim=True).sqrt()
    tail = tail * 10 ** (draw.uniform(-20, 0) / 20) * draw.chance(plan['short_response'])
    tail[:, 0] += 1
    return response * torch.fft.rfft(tail, SIZE)


def room(draw, plan, device):
    """Response of a room: the direct sound, some reflections, a noise tail whose treble dies faster."""
    t = torch.arange(ROOM, device=device) / RATE_HZ
    rt60 = draw.log_uniform(*plan['rt60'])
    damping = draw.uniform(0, 1)
    noise = torch.fft.rfft(draw.normal(ROOM))
    hz = torch.linspace(0, RATE_HZ / 2, ROOM // 2 + 1, device=device)
    dull = 1 / (1 + (hz / (6000 - 4000 * damping)) ** 2)
    soft = torch.fft.irfft(noise * dull, ROOM)
    bright = torch.fft.irfft(noise * (1 - dull), ROOM)
    tail = soft * torch.exp(-6.91 * t / rt60) + bright * torch.exp(-6.91 * (1 + 3 * damping) * t / rt60)
    tail = tail * (t > draw.uniform(0.004, 0.02)).float()
    early = draw.log_uniform(0.0008, 0.04, 10) * RATE_HZ
    strength = draw.uniform(-1, 1, 10) * torch.exp(-early / (0.03 * RATE_HZ)) * draw.chance(0.5, 10) * 6
    tail = tail.scatter_add(1, early.long().clamp(1, ROOM - 1), strength)
    wet = 10 ** (draw.uniform(*plan['wet_db']) / 20) * draw.chance(plan['room'])
    tail = tail / tail.square().sum(-1, keepdim=True).clamp_min(1e-9).sqrt() * wet
    tail[:, 0] += 1
    return torch.fft.rfft(tail, SIZE)


def coloured(draw, device):
    """Spectrum of steady noise of a random colour."""
    hz = grid_hz(device)
    db = (draw.normal() * 3.0 - 3.0) * torch.log2(hz / 1000) + peaks_db(draw, 4, 0.4, 6.0, device)
    shape = 10 ** (on_bins(db) / 20)
    return torch.complex(torch.randn_like(shape), torch.randn_like(shape)) * shape


def heard_power(spectrum, samples):
    """Mean square between 1 and 7.5 kHz, of a signal that lies in `samples` of the SIZE samples."""
    low, high = SIZE * 1000 // RATE_HZ, SIZE * 7500 // RATE_HZ
    part = spectrum[:, low:high]
    return (part.real.square() + part.imag.square()).sum(-1, keepdim=True) * 2 / SIZE / samples


def gain_control(y, draw, count):
    """Peak follower (release by a running maximum, attack by a one-pole filter: the decoupled form of Giannoulis,
    Massberg, Reiss, J. Audio Eng. Soc. 60 (2012) 399), a thousand values a second."""
    n = y.shape[-1]
    peak = y.abs()[:, :n // 16 * 16].reshape(count, -1, 16).amax(-1)
    steps = peak.shape[-1]
    t = torch.arange(steps, device=y.device)
    fall = 0.001 / draw.log_uniform(0.003, 1.0)
    level = torch.log(peak + 1e-5) + fall * t
    level = torch.exp(torch.cummax(level, -1)[0] - fall * t)
    keep = torch.exp(-0.001 / draw.log_uniform(0.0005, 0.25))
    size = 1 << (2 * steps - 1).bit_length()
    kernel = (1 - keep) * keep ** t
    level = torch.fft.irfft(torch.fft.rfft(level, size) * torch.fft.rfft(kernel, size), size)[:, :steps]
    level = level.clamp_min(1e-5)
    most = 10 ** (draw.uniform(6, 40) / 20)
    usual = level.mean(-1, keepdim=True)
    gain = torch.minimum((usual / level) ** draw.uniform(0.5, 1.0), most)
    gain = F.interpolate(gain[:, None], size=n, mode='linear', align_corners=False)[:, 0]
    return y * gain


def suppressed(y, draw, size):
    """Spectral subtraction with a floor that falls at once and creeps up, as calls do it."""
    window = torch.hann_window(size, device=y.device)
    spectrum = torch.stft(y, size, size // 2, window=window, return_complex=True)
    power = spectrum.real.square() + spectrum.imag.square() + 1e-12
    smooth = F.avg_pool1d(F.pad(power, (2, 0), mode='replicate'), 3, 1)
    t = torch.arange(power.shape[-1], device=y.device) * (size / 2 / RATE_HZ)
    rise = t / draw.log_uniform(0.3, 10.0, 1, 1)
    floor = torch.exp(rise - torch.cummax(rise - torch.log(smooth), -1)[0])
    least = 10 ** (-draw.uniform(4, 24, 1, 1) / 20)
    gain = torch.maximum(1 - draw.uniform(0.6, 2.0, 1, 1) * (2 * floor / power).sqrt(), least)
    gain = F.avg_pool1d(F.pad(gain, (1, 0), mode='replicate'), 2, 1)
    return torch.istft(spectrum * gain, size, size // 2, window=window, length=y.shape[-1])


def third_octaves(bins, device):
    edges = [1]
    while edges[-1] < bins:
        edges.append(min(bins, max(edges[-1] + 4, round(edges[-1] * 2 ** (1 / 3)))))
    which = torch.zeros(bins, len(edges) - 1, device=device)
    for k in range(len(edges) - 1):
        which[edges[k]:edges[k + 1], k] = 1
    return which


def coded(y, draw, size):
    """A perceptual transform coder: bands rounded to steps under their own level, weak bands dropped."""
    window = torch.hann_window(size, device=y.device)
    spectrum = torch.stft(y, size, size // 2, window=window, return_complex=True)
    bins = spectrum.shape[1]
    which = third_octaves(bins, y.device)
    power = spectrum.real.square() + spectrum.imag.square()
    level = (torch.einsum('bft,fk->bkt', power, which) / which.sum(0)[:, None]).sqrt()
    hz = (torch.arange(bins, device=y.device)[:, None] * which).sum(0) / which.sum(0) * (RATE_HZ / size)
    strength = draw.uniform(0, 1, 1, 1)
    under = 24 - 18 * strength - draw.uniform(0, 4, 1, 1) * torch.log2(hz / 1000).clamp_min(0)[None, :, None]
    step = math.sqrt(6) * 10 ** (-under.clamp_min(2) / 20) * level
    drop = 10 ** (-(draw.uniform(70, 100, 1, 1) - 40 * strength) / 20)
    keep = (level >= level.amax(1, keepdim=True) * drop).float()
    keep = keep * (hz[None, :, None] < 9000 - 4500 * strength * draw.uniform(0, 1, 1, 1)).float()
    grain = torch.einsum('bkt,fk->bft', step, which).clamp_min(1e-9)
    alive = torch.einsum('bkt,fk->bft', keep, which)
    out = torch.complex(torch.round(spectrum.real / grain) * grain * alive,
                        torch.round(spectrum.imag / grain) * grain * alive)
    return torch.istft(out, size, size // 2, window=window, length=y.shape[-1])


def banded(y, draw):
    """A narrow band, half of the time that of a call (nothing above 3.4 to 4 kHz)."""
    n = y.shape[-1]
    hz = torch.linspace(0, RATE_HZ / 2, n // 2 + 1, device=y.device)
    call = draw.chance(0.5)
    high = call * draw.uniform(3300, 3950) + (1 - call) * draw.uniform(4000, 7500)
    low = draw.log_uniform(30, 350)
    pass_ = torch.sigmoid((high - hz) / 40) * torch.sigmoid((hz - low) / (0.1 * low))
    return torch.fft.irfft(torch.fft.rfft(y) * pass_, n)


def some(y, share, change, draw):
    """Applies a change to a random share of the rows."""
    rows = draw.rows(share)
    if len(rows):
        y[rows] = change(y[rows], Draw(len(rows), y.device))
    return y


def pick(sizes):
    return sizes[int(torch.randint(len(sizes), (1,)))]


def record(dry, active, behind, scene, plan):
    """Dry sounds [B, N], where they are on [B, N] (0 or 1), other sounds behind them and another scene for what lies
    outside a cut, both [B, N] of rms 1 or 0. Returns what is stored, full scale 1, where the sound is left on, and
    how far the noise lies under the sound (power ratio of noise to sound, [B])."""
    count, n = dry.shape
    device = dry.device
    draw = Draw(count, device)
    clean = torch.fft.rfft(dry, SIZE) * room(draw, plan, device)
    noise = coloured(draw, device)
    noise = noise / heard_power(noise, SIZE).clamp_min(1e-12).sqrt()
    has = draw.chance(plan['other_behind'])
    other = torch.fft.rfft(behind, SIZE)
    other_power = heard_power(other, n)
    other = other / other_power.clamp_min(1e-4).sqrt()
    share = draw.log_uniform(0.03, 3) * has * (other_power > 0).float()
    noise = (noise + share * other) / (1 + share ** 2).sqrt()
    on = active.sum(-1, keepdim=True)
    power = heard_power(clean, on.clamp_min(RATE_HZ // 10))
    ratio = 10 ** (-draw.uniform(*plan['snr_db']) / 10)
    # Where nothing is on, noise alone is recorded.
    level = torch.where(power > 1e-8, (power * ratio).sqrt(), torch.ones_like(power))
    y = torch.fft.irfft((clean + level * noise) * microphone(draw, plan, device), SIZE)[:, :n]
    y = hummed(y, draw, plan)
    y, active = switched(y, active, scene, draw, plan)
    sure = active * (active.sum(-1, keepdim=True) > 1600) + (active.sum(-1, keepdim=True) <= 1600)
    y = y / deviation(y, sure)
    y = some(y, plan['gain'], lambda part, d: gain_control(part, d, len(part)), draw)
    y = clipped(y / deviation(y, sure), draw, plan)
    y = some(y, plan['suppress'], lambda part, d: suppressed(part, d, pick([256, 512, 1024])), draw)
    early = draw.chance(0.5)
    rms = y.square().mean(-1, keepdim=True).sqrt().clamp_min(1e-6)
    y = y / rms * 10 ** (draw.uniform(-50, -6) / 20)
    y = torch.where(early > 0, rounded(y), y)
    y = some(y, plan['band'], banded, draw)
    y = some(y, plan['coded'], lambda part, d: coded(part, d, pick([512, 1024, 2048])), draw)
    y = torch.where(early > 0, y.clamp(-1, 1), rounded(y))
    return y, active, ratio[:, 0]


def deviation(y, where):
    return ((y.square() * where).sum(-1, keepdim=True) / where.sum(-1, keepdim=True).clamp_min(1)).sqrt().clamp_min(1e-6)


def rounded(y):
    return torch.round(y.clamp(-1, 1) * 32767) / 32768


def hummed(y, draw, plan):
    t = torch.arange(y.shape[-1], device=y.device) / RATE_HZ
    mains = 50 + 10 * draw.chance(0.5)
    strength = 10 ** (draw.uniform(-45, -5) / 20) * draw.chance(plan['hum']) * y.square().mean(-1, keepdim=True).sqrt()
    for k in (1, 2, 3, 5):
        y = y + strength / k * torch.sin(2 * math.pi * mains * k * t + draw.uniform(0, 6.28))
    return y


def switched(y, active, scene, draw, plan):
    """Cuts everything outside a random stretch away, hard, and puts silence or another scene there."""
    n = y.shape[-1]
    at = torch.arange(n, device=y.device)
    first = draw.uniform(-0.3, 0.4) * n
    last = draw.uniform(0.6, 1.3) * n
    inside = ((at >= first) & (at < last)).float()
    does = draw.chance(plan['switched'])
    inside = inside * does + (1 - does)
    rms = y.square().mean(-1, keepdim=True).sqrt()
    outside = scene * rms * 10 ** (draw.uniform(-40, 0) / 20) * draw.chance(0.6)
    return y * inside + outside * (1 - inside), active * inside


def clipped(y, draw, plan):
    does = draw.chance(plan['clip'])
    at = draw.log_uniform(*plan['clip_at'])
    hard = draw.chance(plan['hard'])
    pushed = y + at * draw.uniform(-0.3, 0.3) * draw.chance(0.2)
    cut = hard * torch.maximum(torch.minimum(pushed, at), -at) + (1 - hard) * at * torch.tanh(pushed / at)
    return does * cut + (1 - does) * y
