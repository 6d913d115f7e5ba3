#!/bin/bash
# Gathers what device.sh needs into one folder (some 35 MB): pack.sh <folder with real sounds> <folder to write>.
# Needs ffmpeg, xz, strip and the packages of this repository.
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
sounds=$1 folder=$2
mkdir -p "$folder"
cp "$(command -v node)" "$folder/node"
strip "$folder/node"
xz -9e -f "$folder/node"
cd "$root"
require="import { createRequire as makeRequire } from 'node:module'; const require = makeRequire(import.meta.url);"
for name in draw-shards unpack-sounds pack-recordings; do
  npx esbuild "bin/train/$name.js" --bundle --platform=node --format=esm --minify-whitespace \
    --outfile="$folder/$name.mjs" --log-level=warning --banner:js="$require"
done
python3 bin/train/pack_real_sounds.py "$sounds" "$folder/sounds.pack"
ls -l "$folder"
