#!/usr/bin/env bash
# Pictures of paper for README and guide: first sheet, one tile and the card of a starter kiln, into src/docs/pictures.
# Needs the packaged program and pdftoppm.
set -eu
cd "$(dirname "$0")/../.."
out=src/docs/pictures
tmp=$(mktemp -d)
trap 'rm -rf "$tmp"' EXIT
java -jar target/portwright.jar sheet templates/octagon-17.json -o "$tmp/s.pdf" --part floor --face hot >/dev/null
java -jar target/portwright.jar card templates/octagon-17.json -o "$tmp/c.pdf" >/dev/null
pdftoppm -r 72 -png -gray -singlefile -f 1 -l 1 "$tmp/s.pdf" "$out/first-sheet"
pdftoppm -r 72 -png -gray -singlefile -f 8 -l 8 "$tmp/s.pdf" "$out/tile"
pdftoppm -r 72 -png -gray -singlefile "$tmp/c.pdf" "$out/card"
ls -1 "$out"
