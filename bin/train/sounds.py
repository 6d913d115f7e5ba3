"""Sounds on the device: dry drawn arcs, drawn sounds without an arc, real ones, and ready recordings to score."""
import io
import json
import struct
from pathlib import Path

import numpy as np
import torch

from network import MODES

SPANS = 4
# Below this distance (standard deviations) free drops count as not heard: an ideal listener is then wrong in 1 % of
# the cases (src/lab/simulate/audibility).
LEAST_DISTANCE = 4.65
# One arc in twenty never trains: whole rounds of modes and families, which come in turn.
KEPT_OUT = 20
ROUND = 16


class Store:
    """Many sounds end to end in one half-precision array, with a table of what each is."""

    def __init__(self, device):
        self.device = device
        self.samples = torch.zeros(0, dtype=torch.float16, device=device)
        self.used = 0
        self.rows = []
        self.table = None
        # Events of all arcs, one arc after the other: key (1000 s an arc, and the time), kind, strength.
        self.keys = torch.zeros(0, dtype=torch.float64, device=device)
        self.events = torch.zeros(0, 2, device=device)
        self.waiting = []
        self.arcs = 0

    def add_events(self, events):
        """Takes the events of one arc (n x 4, see `events.npy`); returns the number of the arc."""
        arc = self.arcs
        self.arcs += 1
        order = np.argsort(events[:, 1], kind='stable')
        self.waiting.append((1000.0 * arc + events[order, 1].astype(np.float64), events[order][:, [0, 3]]))
        return arc

    def take_events(self):
        """Brings what `add_events` took to the device."""
        if not self.waiting:
            return
        keys = torch.from_numpy(np.concatenate([k for k, _ in self.waiting])).to(self.device)
        rows = torch.from_numpy(np.concatenate([e for _, e in self.waiting]).astype(np.float32)).to(self.device)
        self.keys = torch.cat([self.keys, keys])
        self.events = torch.cat([self.events, rows])
        self.waiting = []

    def events_from(self, arcs, since, most):
        """Up to `most` events of each arc that come after `since` (s) [B]: times, kinds (-1 for none), strengths."""
        self.take_events()
        first = torch.searchsorted(self.keys, 1000.0 * arcs.double() + since.double())
        at = first[:, None] + torch.arange(most, device=self.device)
        inside = at < len(self.keys)
        at = at.clamp_max(len(self.keys) - 1)
        times = self.keys[at] - 1000.0 * arcs.double()[:, None]
        inside &= times < 900
        times = torch.where(inside, times, torch.full_like(times, -1.0))
        rows = self.events[at]
        kinds = torch.where(inside, rows[..., 0].long(), torch.full_like(at, -1))
        return times.float(), kinds, rows[..., 1]

    def add(self, sound, facts):
        piece = torch.from_numpy(np.ascontiguousarray(sound, dtype=np.float16))
        self.add_all(piece, [{**facts, 'offset': 0, 'length': len(piece)}])

    def add_all(self, piece, rows):
        need = self.used + len(piece)
        if need > len(self.samples):
            grown = torch.zeros(max(need, int(1.5 * len(self.samples)), 1 << 20), dtype=torch.float16,
                                device=self.device)
            grown[:self.used] = self.samples[:self.used]
            self.samples = grown
        self.samples[self.used:need] = piece.to(self.device)
        for row in rows:
            self.rows.append({**row, 'offset': row['offset'] + self.used})
        self.used = need
        self.table = None

    def columns(self):
        """The table as tensors on the device, made again only after sounds came in."""
        if self.table is None:
            dev = self.device
            self.table = {
                'offset': torch.tensor([r['offset'] for r in self.rows], dtype=torch.int64, device=dev),
                'length': torch.tensor([r['length'] for r in self.rows], dtype=torch.int64, device=dev),
            }
            if self.rows and 'spans' in self.rows[0]:
                for name in ('spans', 'target', 'weight', 'audible', 'audible_known', 'elec', 'acoustic', 'arc', 'shorts'):
                    self.table[name] = torch.tensor(np.array([r[name] for r in self.rows]), device=dev)
        return self.table


class Sets:
    """Reads the shards of `simulate --data-set` as they appear."""

    def __init__(self, folders, device):
        self.folders = [Path(f) for f in folders]
        self.device = device
        self.done = set()
        self.arcs = Store(device)
        self.kept = Store(device)
        self.others = Store(device)
        self.other_kept = Store(device)
        self.families = {'elec': [], 'acoustic': []}

    def refresh(self, most=10 ** 9):
        """Reads shards that are new and whole; says how many."""
        read = 0
        for folder in self.folders:
            for shard in sorted(folder.glob('*-[0-9]*')):
                if shard.name.endswith('.part') or shard in self.done or read >= most:
                    continue
                (self.read_arcs if shard.name.startswith('arcs') else self.read_others)(shard)
                self.done.add(shard)
                read += 1
        return read

    def number(self, kind, name):
        names = self.families[kind]
        if name not in names:
            names.append(name)
        return names.index(name)

    def read_arcs(self, shard):
        sound = torch.from_numpy(np.load(shard / 'sound.npy'))
        events = np.load(shard / 'events.npy')
        into = {id(self.arcs): [], id(self.kept): []}
        lean = shard / 'lean.jsonl'
        for line in (lean if lean.exists() else shard / 'truth.jsonl').open():
            arc = json.loads(line)
            facts = arc_facts(arc)
            if facts is None:
                continue
            facts['elec'] = self.number('elec', arc['family'])
            store = self.kept if arc['index'] // ROUND % KEPT_OUT == 0 else self.arcs
            rows = arc['events']['rows']
            facts['arc'] = store.add_events(events[rows['offset']:rows['offset'] + rows['length']])
            facts['shorts'] = np.float32(arc['events']['shortsPerS'])
            for one in arc['sounds']:
                into[id(store)].append({**facts, **audible_facts(arc, one),
                                        'acoustic': self.number('acoustic', one['family']),
                                        'offset': one['offset'], 'length': one['length']})
        for store in (self.arcs, self.kept):
            add_compact(store, sound, into[id(store)])

    def read_others(self, shard):
        sound = torch.from_numpy(np.load(shard / 'sound.npy'))
        into = {True: [], False: []}
        for line in (shard / 'truth.jsonl').open():
            one = json.loads(line)
            if one['kind'] == 'neighbour':
                continue
            into[one['index'] % KEPT_OUT == 0].append(
                {'offset': one['offset'], 'length': one['length'], 'kind': one['kind'], 'index': one['index']})
        add_compact(self.others, sound, into[False])
        add_compact(self.other_kept, sound, into[True])


def add_compact(store, sound, rows):
    """Adds the pieces that the rows name, and only those."""
    if not rows:
        return
    pieces = []
    at = 0
    for row in rows:
        pieces.append(sound[row['offset']:row['offset'] + row['length']])
        row['offset'] = at
        at += row['length']
    store.add_all(torch.cat(pieces), rows)


def arc_facts(arc):
    """Truth of an arc for training; None where no metal crossed or nothing burnt."""
    if arc['mode'] is None or not arc['arcOn']:
        return None
    target = np.array([arc['shares'][m] for m in MODES], dtype=np.float32)
    if target.sum() <= 0:
        return None
    target /= target.sum()
    if arc['unambiguous'] and arc['mode'] in MODES:
        target = np.eye(4, dtype=np.float32)[MODES.index(arc['mode'])]
    spans = sorted((s['startS'], s['endS']) for s in arc['arcOn'])
    while len(spans) > SPANS:
        gaps = [spans[i + 1][0] - spans[i][1] for i in range(len(spans) - 1)]
        i = int(np.argmin(gaps))
        spans[i:i + 2] = [(spans[i][0], spans[i + 1][1])]
    spans += [(-1.0, -1.0)] * (SPANS - len(spans))
    weight = 1.0 if arc['unambiguous'] and arc['mode'] in MODES else 0.4 if arc['mode'] in MODES else 0.0
    return {'index': arc['index'], 'mode': arc['mode'], 'unambiguous': arc['unambiguous'],
            'spans': np.array(spans, dtype=np.float32), 'target': target, 'weight': np.float32(weight)}


def audible_facts(arc, sound):
    """Distance at which an ideal listener tells the drops from the rest, where the question is asked at all. Touches
    that give a globular arc away count as drops that are heard well."""
    drop = sound.get('audible', {}).get('drop')
    distance = drop['dPrime'] if drop and drop['dPrime'] is not None else 0.0
    heard = sound.get('heard', arc['mode'])
    if heard == arc['mode'] and distance < LEAST_DISTANCE:
        distance = 2 * LEAST_DISTANCE
    return {'audible': np.float32(distance), 'heard': heard,
            'audible_known': np.float32(arc['mode'] in ('globular', 'spray') and 'heard' in sound)}


def read_real(path, device):
    """The pack of `pack_real_sounds.py` as four stores: train, held (other sources), alike (share-alike, scores only).

    Beside `x.pack` an unpacked `x.i16` (int16, all clips end to end) is used when it is there; otherwise the
    package soundfile decodes."""
    data = Path(path).read_bytes()
    assert data[:8] == b'SOUNDS01', 'not a pack of real sounds'
    size = struct.unpack('<I', data[8:12])[0]
    header = json.loads(data[12:12 + size])
    body = data[12 + size:]
    raw = Path(path).with_suffix('.i16')
    stores = {'train': Store(device), 'held': Store(device), 'alike': Store(device)}
    plain = np.fromfile(raw, '<i2') if raw.exists() else None
    lengths = json.loads(raw.with_suffix('.lengths.json').read_text()) if plain is not None else None
    at = 0
    for k, clip in enumerate(header):
        if plain is not None:
            x = plain[at:at + lengths[k]].astype(np.float32) / 32768
            at += lengths[k]
        else:
            import soundfile
            x, rate = soundfile.read(io.BytesIO(body[clip['at']:clip['at'] + clip['bytes']]), dtype='float32')
            assert rate == 16000
        if len(x) < 4000:
            continue
        peak = float(np.abs(x).max())
        if peak < 1e-4:
            continue
        name = 'alike' if clip['shareAlike'] else 'held' if clip['held'] else 'train'
        stores[name].add(x / peak, {'kind': clip['kind'], 'name': clip['name'], 'group': clip['group']})
    return stores


def read_recordings(path):
    """Ready recordings to score: header with `length`, `truth` and what else is known; int16 behind it."""
    data = Path(path).read_bytes()
    assert data[:8] == b'RECORD01', 'not a pack of recordings'
    size = struct.unpack('<I', data[8:12])[0]
    header = json.loads(data[12:12 + size])
    samples = np.frombuffer(data[12 + size:], '<i2')
    at = 0
    out = []
    for one in header:
        out.append((one, samples[at:at + one['length']].astype(np.float32) / 32768))
        at += one['length']
    return out
