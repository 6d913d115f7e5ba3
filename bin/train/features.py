"""What the network hears: energies of sixteen bands and one figure of sharpness, a thousand times a second.

Each is divided by its own mean over the blocks around it (1.5 s back, 0.5 s ahead), so that level, distance and the
colour of a microphone fall out. The runtime (src/model/network) computes the same from the constants that
`front_end()` writes into the header of the weights.
"""
import math

import torch
import torch.nn.functional as F

RATE_HZ = 16000
WINDOW = 64
HOP = 16
# First and last bin (250 Hz each) of every band; the two highest bins are left out (filters of converters end there).
BANDS = [(1, 1), (2, 2), (3, 3), (4, 4), (5, 5), (6, 6), (7, 7), (8, 9), (10, 11), (12, 13), (14, 15),
         (16, 18), (19, 21), (22, 24), (25, 27), (28, 30)]
CHANNELS = len(BANDS) + 1
BLOCK = 50
BLOCKS_BACK = 30
BLOCKS_AHEAD = 10
# Nothing counts that is 40 dB under the mean of its band; nothing at all below the rounding noise of 16 bits.
RELATIVE_FLOOR = 1e-4
ABSOLUTE_FLOOR = 1e-11


def front_end():
    return {
        'rateHz': RATE_HZ, 'window': WINDOW, 'hop': HOP, 'bands': [list(b) for b in BANDS],
        'sharpness': True, 'blockFrames': BLOCK, 'blocksBack': BLOCKS_BACK, 'blocksAhead': BLOCKS_AHEAD,
        'relativeFloor': RELATIVE_FLOOR, 'absoluteFloor': ABSOLUTE_FLOOR,
    }


def frame_count(samples):
    return max(0, (samples - WINDOW) // HOP + 1)


def energies(x):
    """Sound [B, N] at 16 kHz, full scale 1 -> [B, CHANNELS, T], mean squares by band and largest squared step."""
    window = torch.hann_window(WINDOW, periodic=True, dtype=x.dtype, device=x.device)
    frames = x.unfold(-1, WINDOW, HOP)
    spectrum = torch.fft.rfft(frames * window)
    power = (spectrum.real ** 2 + spectrum.imag ** 2) * (2 / (WINDOW * float((window ** 2).sum())))
    bands = [power[..., lo:hi + 1].sum(-1) for lo, hi in BANDS]
    middle = (WINDOW - HOP) // 2
    steps = frames[..., middle:middle + HOP] - frames[..., middle - 1:middle + HOP - 1]
    bands.append((steps ** 2).amax(-1))
    return torch.stack(bands, 1)


def levelled(energy):
    """Logarithm of each energy over its mean around it."""
    count = energy.shape[-1]
    short = -count % BLOCK
    padded = F.pad(energy, (0, short))
    sums = padded.unflatten(-1, (-1, BLOCK)).sum(-1) if hasattr(padded, 'unflatten') else \
        padded.reshape(*padded.shape[:-1], -1, BLOCK).sum(-1)
    counts = torch.full_like(sums[:1, :1], float(BLOCK))
    counts[..., -1] = BLOCK - short
    kernel = torch.ones(1, 1, BLOCKS_BACK + 1 + BLOCKS_AHEAD, dtype=energy.dtype, device=energy.device)

    def around(values):
        flat = values.reshape(-1, 1, values.shape[-1])
        out = F.conv1d(F.pad(flat, (BLOCKS_BACK, BLOCKS_AHEAD)), kernel)
        return out.reshape(values.shape)

    mean = around(sums) / around(counts)
    mean = mean.repeat_interleave(BLOCK, -1)[..., :count]
    return torch.log((energy + RELATIVE_FLOOR * mean + ABSOLUTE_FLOOR) / (mean + ABSOLUTE_FLOOR))


def features(x):
    return levelled(energies(x))


def mix_bands(x, share=0.3, generator=None):
    """Exchanges, between recordings, how lively each band is against the others (after Freq-MixStyle: Morocutti,
    Schmid, Koutini, Widmer, EUSIPCO 2023). The liveliness of the whole is kept, since it tells modes apart."""
    count = x.shape[0]
    spread = x.std(-1, keepdim=True) + 1e-3
    relative = spread / spread.mean(1, keepdim=True)
    mean = x.mean(-1, keepdim=True)
    other = torch.randperm(count, device=x.device)
    part = torch.rand(count, 1, 1, device=x.device) * 0.6
    part = part * (torch.rand(count, 1, 1, device=x.device) < share)
    wanted = relative * (1 - part) + relative[other] * part
    return (x - mean) * (wanted / relative) + mean * (1 - part) + mean[other] * part


def seconds_of_frames(frames):
    return math.ceil(frames) * HOP / RATE_HZ
