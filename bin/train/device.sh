#!/bin/bash
# Draws and trains on a machine that holds nothing but Python with PyTorch:
#   device.sh <folder of pack.sh> <seconds> <folder for results> <scratch folder> [options of train.py …]
# The first call starts the drawing, which goes on behind; later calls go on where the last one stopped, as long as the
# scratch folder is there. ARCS, OTHERS, SOUNDS, SEED and LONGEST (seconds of arc) say what is drawn.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
package=$1 seconds=$2 out=$3 scratch=$4
shift 4
begun=$(date +%s)
mkdir -p "$out" "$scratch/set"
if [ ! -x "$scratch/node" ]; then
  python3 - "$package/node.xz" "$scratch/node" <<'PYTHON'
import lzma, shutil, sys
with lzma.open(sys.argv[1]) as packed, open(sys.argv[2], 'wb') as out:
    shutil.copyfileobj(packed, out)
PYTHON
  chmod +x "$scratch/node"
  cp "$package"/*.mjs "$package/sounds.pack" "$scratch/"
  parts=$(($(nproc) > 2 ? $(nproc) - 2 : 1))
  for ((k = 0; k < parts; k++)); do
    setsid nice -n 10 "$scratch/node" "$scratch/draw-shards.mjs" "$scratch/set" "$k" "$parts" \
      "${ARCS:-60000}" "${OTHERS:-12000}" "${SOUNDS:-2}" "${SEED:-1}" "${LONGEST:-5}" \
      > "$scratch/draw-$k.log" 2>&1 < /dev/null &
    setsid nice -n 5 "$scratch/node" "$scratch/pack-recordings.mjs" "$scratch/circuit-$k.recordings" \
      $((100000 + 1000 * k)) "${FOREIGN:-12}" "${FOREIGN:-12}" > "$scratch/foreign-$k.log" 2>&1 < /dev/null &
  done
  "$scratch/node" "$scratch/unpack-sounds.mjs" "$scratch/sounds.pack"
fi
# Where no shard comes, the drawing says why.
trap 'ls -d "$scratch"/set/arcs-* > /dev/null 2>&1 || tail -n 3 "$scratch"/draw-0.log "$scratch"/foreign-0.log' EXIT
spent=$(($(date +%s) - begun))
OMP_NUM_THREADS=2 PYTHONUNBUFFERED=1 python3 "$here/train.py" --data "$scratch/set" --real "$scratch/sounds.pack" \
  --recordings "circuit=$scratch/circuit-*.recordings" --out "$out" --keep "$scratch/kept.pt" \
  --seconds $((seconds - spent)) "$@"
echo "shards of arcs: $(ls -d "$scratch"/set/arcs-* | grep -vc part || true)"
