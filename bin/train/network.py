"""The networks. `Student` ships (separable convolutions, some 6 million multiply-adds a second of sound);
`Teacher` is larger and only taught from. Both give a row of figures every 16 ms, from which any stretch is judged."""
import torch
import torch.nn as nn
import torch.nn.functional as F

from features import CHANNELS

MODES = ['short-circuit', 'globular', 'spray', 'pulsed-spray']
# Of a stretch: four modes, an arc at all, size of free drops audible.
OUTPUTS = len(MODES) + 2
FRAME_HZ = 62.5
POOL = 8
# Every block of a stretch counts a little, so that a recording in which no row sounds like an arc is judged whole.
LEAST_WEIGHT = 1e-4

# Kernel, stride, dilation, channels out.
STUDENT = {
    'stem': [5, 2, 24],
    'layers': [[5, 2, 1, 40], [9, 1, 1, 40], [9, 2, 1, 64], [9, 1, 1, 64], [9, 1, 2, 64], [9, 2, 1, 112],
               [9, 1, 1, 112], [9, 1, 2, 112], [9, 1, 4, 112]],
    'hidden': 64,
}
TEACHER = {
    'stem': [7, 2, 64],
    'layers': [[5, 1, 1, 64], [5, 2, 1, 128], [5, 1, 1, 128], [5, 2, 1, 192], [5, 1, 1, 192], [5, 1, 2, 192],
               [5, 2, 1, 256], [5, 1, 1, 256], [5, 1, 2, 256], [5, 1, 4, 256]],
    'hidden': 192,
}


class Separable(nn.Module):
    # Whether the convolution over time is done step by step of the kernel instead of by the library, which on some
    # devices is the faster way; train.py measures it.
    by_steps = False

    def __init__(self, inputs, kernel, stride, dilation, outputs):
        super().__init__()
        self.deep = nn.Conv1d(inputs, inputs, kernel, stride, dilation * (kernel // 2), dilation, groups=inputs,
                              bias=False)
        self.deep_norm = nn.BatchNorm1d(inputs)
        self.point = nn.Conv1d(inputs, outputs, 1, bias=False)
        self.norm = nn.BatchNorm1d(outputs)
        self.keeps = stride == 1 and inputs == outputs

    def forward(self, x):
        y = self.norm(self.point(F.relu(self.deep_norm(self.over_time(x)))))
        return F.relu(x + y) if self.keeps else F.relu(y)

    def over_time(self, x):
        if not Separable.by_steps:
            return self.deep(x)
        kernel, stride, dilation = self.deep.kernel_size[0], self.deep.stride[0], self.deep.dilation[0]
        padded = F.pad(x, (self.deep.padding[0],) * 2)
        count = (padded.shape[-1] - dilation * (kernel - 1) - 1) // stride + 1
        out = 0
        for k in range(kernel):
            first = k * dilation
            part = padded[..., first:first + stride * (count - 1) + 1:stride]
            out = out + part * self.deep.weight[:, :, k]
        return out


class Dense(nn.Module):
    def __init__(self, inputs, kernel, stride, dilation, outputs):
        super().__init__()
        self.conv = nn.Conv1d(inputs, outputs, kernel, stride, dilation * (kernel // 2), dilation, bias=False)
        self.norm = nn.BatchNorm1d(outputs)
        self.keeps = stride == 1 and inputs == outputs

    def forward(self, x):
        y = self.norm(self.conv(x))
        return F.relu(x + y) if self.keeps else F.relu(y)


class Ear(nn.Module):
    def __init__(self, shape, layer, dropout=0.0):
        super().__init__()
        self.shape = shape
        kernel, stride, width = shape['stem']
        self.stem = nn.Conv1d(CHANNELS, width, kernel, stride, kernel // 2, bias=False)
        self.stem_norm = nn.BatchNorm1d(width)
        layers = []
        for k, s, d, out in shape['layers']:
            layers.append(layer(width, k, s, d, out))
            width = out
        self.layers = nn.ModuleList(layers)
        self.width = width
        self.arc = nn.Conv1d(width, 1, 1)
        self.drop = nn.Dropout(dropout)
        self.hidden = nn.Linear(4 * width, shape['hidden'])
        self.out = nn.Linear(shape['hidden'], OUTPUTS)

    def rows(self, x):
        """Input figures [B, CHANNELS, T] -> rows [B, width, T/16]."""
        h = F.relu(self.stem_norm(self.stem(x / 4)))
        for layer in self.layers:
            h = layer(h)
        return h

    def frames(self, h):
        """Rows -> logit of "an arc burns" for each row [B, T/16]."""
        return self.arc(h)[:, 0].float()

    def blocks(self, h):
        """Rows -> mean, mean square and largest of each block of POOL rows; a short rest makes a block of its own."""
        h = h.float()
        count = h.shape[-1]
        whole = count // POOL * POOL
        parts = []
        if whole:
            p = h[..., :whole].reshape(*h.shape[:-1], -1, POOL)
            parts.append(torch.stack([p.mean(-1), (p * p).mean(-1), p.amax(-1)]))
        if count > whole:
            p = h[..., whole:]
            parts.append(torch.stack([p.mean(-1), (p * p).mean(-1), p.amax(-1)])[..., None])
        return torch.cat(parts, -1)

    def stretch(self, blocks, weights):
        """Blocks [3, B, width, J] and their weights [B, J] -> outputs [B, OUTPUTS]."""
        w = weights / weights.sum(-1, keepdim=True).clamp_min(1e-6)
        mean, square, top = (blocks * w[None, :, None]).sum(-1)
        between = (blocks[0] ** 2 * w[:, None]).sum(-1) - mean ** 2
        inside = square - mean ** 2
        stats = torch.cat([mean, (inside.clamp_min(0) + 1e-4).sqrt(), top, (between.clamp_min(0) + 1e-4).sqrt()], 1)
        return self.out(F.relu(self.hidden(self.drop(stats))))

    def forward(self, x, weights=None):
        h = self.rows(x)
        frames = self.frames(h)
        blocks = self.blocks(h)
        if weights is None:
            weights = block_means(torch.sigmoid(frames)) + LEAST_WEIGHT
        return frames, self.stretch(blocks, weights)


def block_means(rows):
    """Means [B, J] over the blocks of rows [B, R]."""
    count = rows.shape[-1]
    whole = count // POOL * POOL
    parts = []
    if whole:
        parts.append(rows[:, :whole].reshape(rows.shape[0], -1, POOL).mean(-1))
    if count > whole:
        parts.append(rows[:, whole:].mean(-1, keepdim=True))
    return torch.cat(parts, -1)


def rows_of(frames):
    """Rows that come of so many frames of input: each of the four halvings keeps the first of two."""
    for _ in range(4):
        frames = (frames + 1) // 2
    return frames


def student(shape=STUDENT):
    return Ear(shape, Separable, 0.1)


def teacher(shape=TEACHER):
    return Ear(shape, Dense, 0.2)


def multiply_adds(shape=STUDENT):
    """Multiply-adds for a second of sound, heads left out."""
    kernel, stride, width = shape['stem']
    rate = 1000 / stride
    total = CHANNELS * width * kernel * rate
    for k, s, _, out in shape['layers']:
        rate /= s
        total += (width * k + width * out) * rate
        width = out
    return total


if __name__ == '__main__':
    net = student()
    print('multiply-adds a second', multiply_adds(), 'weights', sum(p.numel() for p in net.parameters()))
    x = torch.randn(2, CHANNELS, 2997)
    frames, out = net(x)
    print(frames.shape, rows_of(2997), out.shape)
