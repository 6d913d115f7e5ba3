#!/bin/bash
# Draws and trains on a machine that holds nothing but Python with PyTorch, behind the shell that asks for it:
#   device.sh start <folder of pack.sh> <seconds> <scratch folder> [options of train.py …]
#   device.sh wait <seconds> <folder for results> <scratch folder>
# `start` begins the drawing and the training; `wait` waits until it is done, at most so long, says what the log says and
# copies what there is. ARCS, OTHERS, SOUNDS, SEED and LONGEST (seconds of arc) say what is drawn.
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)

start() {
  local package=$1 seconds=$2 scratch=$3
  shift 3
  mkdir -p "$scratch/set" "$scratch/out"
  python3 - "$package/node.xz" "$scratch/node" <<'PYTHON'
import lzma, shutil, sys
with lzma.open(sys.argv[1]) as packed, open(sys.argv[2], 'wb') as out:
    shutil.copyfileobj(packed, out)
PYTHON
  chmod +x "$scratch/node"
  cp "$package"/*.mjs "$package/sounds.pack" "$here"/*.py "$scratch/"
  local parts=$(($(nproc) > 2 ? $(nproc) - 2 : 1))
  for ((k = 0; k < parts; k++)); do
    setsid nice -n 10 "$scratch/node" "$scratch/draw-shards.mjs" "$scratch/set" "$k" "$parts" \
      "${ARCS:-60000}" "${OTHERS:-12000}" "${SOUNDS:-2}" "${SEED:-1}" "${LONGEST:-5}" \
      > "$scratch/draw-$k.log" 2>&1 < /dev/null &
    setsid nice -n 5 "$scratch/node" "$scratch/pack-recordings.mjs" "$scratch/circuit-$k.recordings" \
      $((100000 + 1000 * k)) "${FOREIGN:-12}" "${FOREIGN:-12}" > "$scratch/foreign-$k.log" 2>&1 < /dev/null &
  done
  "$scratch/node" "$scratch/unpack-sounds.mjs" "$scratch/sounds.pack"
  OMP_NUM_THREADS=2 PYTHONUNBUFFERED=1 setsid python3 "$scratch/train.py" --data "$scratch/set" \
    --real "$scratch/sounds.pack" --recordings "circuit=$scratch/circuit-*.recordings" --out "$scratch/out" \
    --seconds "$seconds" "$@" > "$scratch/train.log" 2>&1 < /dev/null &
  echo $! > "$scratch/pid"
}

wait_for() {
  local seconds=$1 out=$2 scratch=$3
  local until=$(($(date +%s) + seconds))
  while [ "$(date +%s)" -lt "$until" ] && kill -0 "$(cat "$scratch/pid")" 2> /dev/null; do sleep 1; done
  tail -n 100 "$scratch/train.log"
  # Where no shard comes, the drawing says why.
  ls -d "$scratch"/set/arcs-* > /dev/null 2>&1 || tail -n 3 "$scratch"/draw-0.log "$scratch"/foreign-0.log
  echo "shards of arcs: $(ls -d "$scratch"/set/arcs-* | grep -vc part || true)"
  mkdir -p "$out"
  cp -r "$scratch"/out/. "$out/"
}

case $1 in
  start) shift; start "$@" ;;
  wait) shift; wait_for "$@" ;;
  *) echo "device.sh start … or device.sh wait …" >&2; exit 2 ;;
esac
