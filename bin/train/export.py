"""Weights for the runtime (`network.json` and `network.bin`), reference vectors for its test."""
import base64
import json

import numpy as np
import torch

from features import RATE_HZ, features, front_end
from network import LEAST_WEIGHT, MODES, POOL, block_means, multiply_adds

FORMAT = 'arc-transfer network 1'


def folded(conv, norm):
    """Kernel and bias of a convolution with its normalisation worked in, double precision."""
    scale = norm.weight.double() / (norm.running_var.double() + norm.eps).sqrt()
    kernel = conv.weight.double() * scale[:, None, None]
    return kernel, norm.bias.double() - norm.running_mean.double() * scale


@torch.no_grad()
def parts(net):
    """Layers as the runtime works them off, each with its arrays."""
    out = []
    kernel, bias = folded(net.stem, net.stem_norm)
    k, s, width = net.shape['stem']
    # The network hears a quarter of its input figures: worked into the first kernel.
    out.append(({'kind': 'full', 'kernel': k, 'stride': s, 'dilation': 1, 'inputs': kernel.shape[1],
                 'outputs': width}, [kernel / 4, bias]))
    for layer, (k, s, d, outputs) in zip(net.layers, net.shape['layers']):
        deep, deep_bias = folded(layer.deep, layer.deep_norm)
        point, bias = folded(layer.point, layer.norm)
        out.append(({'kind': 'separable', 'kernel': k, 'stride': s, 'dilation': d, 'inputs': width,
                     'outputs': outputs, 'residual': layer.keeps},
                    [deep[:, 0], deep_bias, point[:, :, 0], bias]))
        width = outputs
    out.append(({'kind': 'arc', 'inputs': width}, [net.arc.weight[0, :, 0], net.arc.bias]))
    out.append(({'kind': 'hidden', 'inputs': 4 * width, 'outputs': net.shape['hidden']},
                [net.hidden.weight, net.hidden.bias]))
    out.append(({'kind': 'out', 'inputs': net.shape['hidden'], 'outputs': len(MODES) + 2},
                [net.out.weight, net.out.bias]))
    return out


def write(net, folder, facts):
    """Writes the header and the weights: half-precision floats, little-endian, in the order of the header."""
    layers, blob = [], []
    for what, arrays in parts(net):
        layers.append(what)
        blob += [a.detach().cpu().double().numpy().astype('<f2').tobytes() for a in arrays]
    header = {'format': FORMAT, 'frontEnd': front_end(), 'modes': MODES, 'pool': POOL, 'layers': layers,
              'varianceFloor': 1e-4, 'leastWeight': LEAST_WEIGHT, 'multiplyAddsPerS': multiply_adds(net.shape), 'facts': facts}
    (folder / 'network.bin').write_bytes(b''.join(blob))
    (folder / 'network.json').write_text(json.dumps(header, indent=1) + '\n')


def many(nets, path):
    """Several networks as half-precision arrays in one file."""
    arrays = {f'{name}/{key}': value.detach().cpu().numpy().astype('float16' if value.dtype.is_floating_point else 'int64')
              for name, net in nets.items() for key, value in net.state_dict().items()}
    np.savez_compressed(path, **arrays)


@torch.no_grad()
def reference(net, folder, seconds=1.7, name='reference.json'):
    """A short drawn sound and what comes of it in double precision with the weights as written: every 37th frame of
    input figures, all rows, weights of the blocks, outputs of the stretch."""
    net = Folded(net)
    length = int(seconds * RATE_HZ)
    rng = np.random.default_rng(7)
    t = np.arange(length) / RATE_HZ
    # Bursts a hundred times a second on hiss, then hiss alone.
    bursts = np.exp(-((t * 100) % 1) * 12) * rng.normal(size=length) * (t < 1.1)
    y = 0.2 * bursts + 0.01 * rng.normal(size=length)
    y = np.round(np.clip(y, -1, 1) * 32767).astype('<i2')
    x = features(torch.from_numpy(y.astype(np.float64) / 32768)[None])
    h = net.rows(x)
    logits = net.arc(h)[:, 0]
    blocks = net_blocks(h)
    weights = block_means(torch.sigmoid(logits)) + LEAST_WEIGHT
    out = net.stretch(blocks, weights)
    some = list(range(0, x.shape[-1], 37))
    (folder / name).write_text(json.dumps({
        'samples': base64.b64encode(y.tobytes()).decode(), 'frames': x.shape[-1], 'someFrames': some,
        'figures': np.round(x[0][:, some].T.numpy(), 6).tolist(),
        'arcLogits': np.round(logits[0].numpy(), 6).tolist(),
        'weights': np.round(weights[0].numpy(), 6).tolist(),
        'outputs': np.round(out[0].numpy(), 6).tolist(),
    }) + '\n')


def net_blocks(h):
    count = h.shape[-1]
    cuts = [h[..., i:i + POOL] for i in range(0, count, POOL)]
    return torch.stack([torch.stack([c.mean(-1), (c * c).mean(-1), c.amax(-1)]) for c in cuts], -1)


class Folded(torch.nn.Module):
    """The network as the runtime has it: normalisation worked in, weights rounded to half precision."""

    def __init__(self, net):
        super().__init__()
        self.width = net.width
        self.made = []
        for what, arrays in parts(net):
            self.made.append((what, [a.detach().cpu().double().half().double() for a in arrays]))

    def rows(self, x):
        for what, a in self.made:
            if what['kind'] == 'full':
                x = torch.relu(torch.nn.functional.conv1d(x, a[0], a[1], what['stride'], what['kernel'] // 2))
            elif what['kind'] == 'separable':
                pad = what['dilation'] * (what['kernel'] // 2)
                y = torch.relu(torch.nn.functional.conv1d(x, a[0][:, None], a[1], what['stride'], pad,
                                                          what['dilation'], groups=what['inputs']))
                y = torch.nn.functional.conv1d(y, a[2][:, :, None], a[3])
                x = torch.relu(x + y if what['residual'] else y)
        return x

    def arc(self, h):
        w, b = next(a for what, a in self.made if what['kind'] == 'arc')
        return torch.nn.functional.conv1d(h, w[None, :, None], b)

    def stretch(self, blocks, weights):
        w = weights / weights.sum(-1, keepdim=True).clamp_min(1e-6)
        mean, square, top = (blocks * w[None, :, None]).sum(-1)
        between = (blocks[0] ** 2 * w[:, None]).sum(-1) - mean ** 2
        inside = square - mean ** 2
        s = torch.cat([mean, (inside.clamp_min(0) + 1e-4).sqrt(), top, (between.clamp_min(0) + 1e-4).sqrt()], 1)
        hidden, out = (next(a for what, a in self.made if what['kind'] == k) for k in ('hidden', 'out'))
        return torch.relu(s @ hidden[0].T + hidden[1]) @ out[0].T + out[1]
