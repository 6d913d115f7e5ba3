"""Packs real sounds without an arc into one small file: 16 kHz mono, Ogg Vorbis, with kind, source and licence.

    python3 pack_real_sounds.py <folder> <file> [--seconds 4] [--each 4]

<folder> holds `other-sounds/CREDITS.csv` (file, kind, source_group, licence) and `not-an-arc/<kind>/<fold>-*.ogg`.
Half of the source groups (one fold in three of `not-an-arc`, the one numbered 3) never trains: `held` is true.
Share-alike licences are marked and never train either. Needs ffmpeg.
"""
import argparse
import concurrent.futures
import csv
import hashlib
import json
import struct
import subprocess
from pathlib import Path

MAGIC = b'SOUNDS01'


def held_by_hash(group):
    return int(hashlib.sha256(group.encode()).hexdigest(), 16) % 2 == 0


def clips(folder, each):
    seen = {}
    table = folder / 'other-sounds' / 'CREDITS.csv'
    for row in csv.DictReader(table.open(encoding='utf8')):
        group = row['source_group']
        seen[group] = seen.get(group, 0) + 1
        if seen[group] > each:
            continue
        alike = 'BY-SA' in row['licence'].upper().replace('_', '-') and 'or set licence' not in row['licence']
        yield {'path': folder / 'other-sounds' / row['file'], 'name': row['file'], 'kind': row['kind'],
               'group': group, 'licence': row['licence'], 'shareAlike': alike, 'held': held_by_hash(group)}
    for path in sorted((folder / 'not-an-arc').glob('*/*.ogg')):
        yield {'path': path, 'name': f'{path.parent.name}/{path.name}', 'kind': path.parent.name.lower(),
               'group': path.name.rsplit('-', 1)[0], 'licence': 'CC BY 3.0', 'shareAlike': False,
               'held': path.name[0] == '3'}
    room = folder / 'not-an-arc' / 'room-noise-10s.wav'
    if room.exists():
        yield {'path': room, 'name': room.name, 'kind': 'room', 'group': 'laboratory', 'licence': 'BSD-3-Clause',
               'shareAlike': False, 'held': True}


def loudest_start(path, seconds):
    """Where the loudest stretch of that length begins, so that silence is not what is kept."""
    import numpy as np
    raw = subprocess.run(['ffmpeg', '-v', 'error', '-i', str(path), '-ac', '1', '-ar', '4000', '-f', 's16le', '-'],
                         check=True, capture_output=True).stdout
    x = np.frombuffer(raw, '<i2').astype(float) ** 2
    span = int(seconds * 4000)
    if len(x) <= span:
        return 0.0
    sums = np.convolve(x, np.ones(span), 'valid')
    return float(sums.argmax()) / 4000


def encode(clip, seconds):
    start = loudest_start(clip['path'], seconds)
    out = subprocess.run(['ffmpeg', '-v', 'error', '-ss', f'{start:.3f}', '-t', str(seconds), '-i', str(clip['path']),
                          '-ac', '1', '-ar', '16000', '-c:a', 'libvorbis', '-q:a', '6', '-map_metadata', '-1',
                          '-f', 'ogg', '-'], check=True, capture_output=True).stdout
    return {key: value for key, value in clip.items() if key != 'path'} | {'startS': start}, out


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument('folder', type=Path)
    parser.add_argument('file', type=Path)
    parser.add_argument('--seconds', type=float, default=4)
    parser.add_argument('--each', type=int, default=4)
    args = parser.parse_args()
    todo = list(clips(args.folder, args.each))
    with concurrent.futures.ThreadPoolExecutor(2) as pool:
        done = list(pool.map(lambda clip: encode(clip, args.seconds), todo))
    header = []
    at = 0
    for facts, data in done:
        header.append(facts | {'at': at, 'bytes': len(data)})
        at += len(data)
    text = json.dumps(header).encode()
    with args.file.open('wb') as out:
        out.write(MAGIC + struct.pack('<I', len(text)) + text)
        for _, data in done:
            out.write(data)
    trains = [c for c in header if not c['held'] and not c['shareAlike']]
    print(f'{len(header)} clips, {at / 2**20:.1f} MiB; {len(trains)} of {len({c["group"] for c in trains})} sources '
          f'may train, {sum(c["held"] for c in header)} held out, {sum(c["shareAlike"] for c in header)} share-alike')


if __name__ == '__main__':
    main()
