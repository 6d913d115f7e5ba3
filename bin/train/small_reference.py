"""Writes a small network with drawn weights and its reference vectors, for the test of the runtime:

    python3 small_reference.py <folder>
"""
import sys
from pathlib import Path

import torch

import export
from network import Ear, Separable

# Widths in whole eights run through the SIMD kernels, the others do not.
SHAPE = {'stem': [5, 2, 8], 'layers': [[5, 2, 1, 16], [9, 1, 1, 16], [9, 2, 1, 16], [9, 1, 2, 16], [9, 2, 1, 14],
                                       [9, 1, 4, 14]], 'hidden': 8}


def main():
    torch.manual_seed(3)
    net = Ear(SHAPE, Separable)
    for module in net.modules():
        if isinstance(module, torch.nn.BatchNorm1d):
            torch.nn.init.uniform_(module.weight, 0.5, 1.5)
            torch.nn.init.normal_(module.bias, 0, 0.3)
            module.running_mean.normal_(0, 0.2)
            module.running_var.uniform_(0.2, 1.0)
    # Outputs that differ from each other, as those of a trained network do.
    with torch.no_grad():
        net.arc.weight.mul_(6)
        net.out.weight.mul_(4)
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    export.write(net.eval(), folder, {'drawn': 'random weights, for tests'})
    export.reference(net, folder)


if __name__ == '__main__':
    main()
