#!/usr/bin/env bash
# Starts the app image in target/image as a user would: version, check, template, and the window for a moment on a screen of its own;
# with its archive of classes, without it, and with one that does not fit its place.
# Says what failed and ends with 1; nothing may take longer than its bound.
set -u
cd "$(dirname "$0")/../.."
program=$PWD/target/image/portwright/bin/portwright
work=$(mktemp -d)
failed=0
screen=""
cleanup() {
  [ -n "$screen" ] && kill "$screen" 2>/dev/null
  rm -rf "$work"
}
trap cleanup EXIT
say() { echo "image: $1"; }
fail() { say "FAILED: $1"; failed=1; }

[ -x "$program" ] || { fail "there is no $program"; exit 1; }
timeout 60 "$program" --version > "$work/version" 2>&1 || fail "--version ended with $?"
head -1 "$work/version" | grep -qE '^Portwright [0-9]+\.[0-9]+\.[0-9]+' || fail "--version does not begin with the program and its version"
timeout 60 "$program" check templates/octagon-17.json > "$work/check" 2>&1
status=$?
[ "$status" -le 1 ] && [ -s "$work/check" ] || fail "check ended with $status"
timeout 120 "$program" sheet templates/octagon-17.json -o "$work/template.pdf" --part floor --face hot > "$work/sheet" 2>&1 || fail "sheet ended with $?: $(head -3 "$work/sheet")"
head -c 5 "$work/template.pdf" 2>/dev/null | grep -q '%PDF-' || fail "sheet wrote no PDF"

# The archive of classes is used where it was written, and nothing is said where there is none or it does not fit.
same() { # place, what it is called, least number of classes out of the archive
  JAVA_TOOL_OPTIONS="" timeout 60 "$1/bin/portwright" check templates/octagon-17.json > "$work/again" 2> "$work/noise" < /dev/null
  grep -v '^Picked up JAVA_TOOL_OPTIONS' "$work/noise" | grep -q . && fail "$2: the check says $(head -2 "$work/noise")"
  cmp -s "$work/check" "$work/again" || fail "$2: the check differs"
  JAVA_TOOL_OPTIONS="-Xlog:class+load:file=$work/loaded" timeout 60 "$1/bin/portwright" check templates/octagon-17.json > /dev/null 2>&1
  [ "$(grep -c 'shared objects file (top)' "$work/loaded")" -ge "$3" ] || fail "$2: the archive of classes is not used"
  grep -q 'source: shared objects file$' "$work/loaded" || fail "$2: the runtime's own archive is not used"
}
if [ "$(uname)" = Linux ]; then
  image=target/image/portwright
  same "$PWD/$image" "with its archive" 300
  cp -a "$image" "$work/moved"
  same "$work/moved" "moved" 0
  touch "$work/moved/lib/app/portwright.jar"
  same "$work/moved" "with another jar" 0
  sh "$work/moved/lib/app/archive.sh" || fail "the archive cannot be written after moving"
  same "$work/moved" "moved and written anew" 300
  # Changed bytes, as a worn disk leaves them, in the archive's head, middle and end.
  archive=$work/moved/lib/app/portwright.jsa
  cp "$archive" "$work/whole.jsa"
  long=$(stat -c %s "$archive")
  for at in 200 $((long / 2)) $((long - 5000)); do
    cp "$work/whole.jsa" "$archive"
    head -c 64 /dev/zero | tr '\0' '\377' | dd of="$archive" bs=1 seek="$at" conv=notrunc 2>/dev/null
    same "$work/moved" "with an archive changed at byte $at" 0
  done
  rm "$work/moved/lib/app/portwright.jsa"
  same "$work/moved" "without an archive" 0
fi

# Every library that travels along is listed with its licence and brings a text of it.
app=target/image/portwright/lib/app
for jar in "$app"/lib/*.jar; do
  name=$(basename "$jar" .jar)
  library=${name%-linux}
  library=${library%-*}
  grep -qE "(^|[ ,])$library([ ,])" "$app/licences/libraries.csv" || fail "$name is not in libraries.csv"
  case "$library" in javafx-*) library=javafx ;; esac
  ls "$app/licences" | grep -q "^$library-" || fail "$name brings no licence text"
done

# The jar brings its own licence and those of what it stands on.
for entry in META-INF/LICENSE META-INF/licences/libraries.csv META-INF/licences/jts-core-LICENSE.txt; do
  unzip -Z1 "$app/portwright.jar" | grep -qx "$entry" || fail "the jar has no $entry"
done

# The package says whose it is and where it stands in the menu, and brings the command onto the path.
for deb in target/image/*.deb; do
  [ -e "$deb" ] || continue
  mkdir -p "$work/deb"
  dpkg-deb -R "$deb" "$work/deb"
  grep -qi '^Maintainer: .*unknown' "$work/deb/DEBIAN/control" && fail "the package's maintainer is unknown"
  grep -q '^Section: science' "$work/deb/DEBIAN/control" || fail "the package has no section"
  grep -q '/usr/bin/portwright' "$work/deb/DEBIAN/postinst" || fail "the package makes no command"
  grep -q 'lib/app/archive.sh' "$work/deb/DEBIAN/postinst" || fail "the package's installation writes no archive of classes"
  [ -e "$work/deb/opt/portwright/lib/app/archive.sh" ] && [ ! -e "$work/deb/opt/portwright/lib/app/portwright.jsa" ] ||
    fail "the package wants archive.sh, and no archive written elsewhere"
  grep -q '^Categories=Science' "$work/deb"/opt/portwright/lib/*.desktop || fail "the entry of the menu has no category"
  grep -qi 'unknown' "$work/deb/opt/portwright/share/doc/copyright" && fail "the package's licence is unknown"
done

if command -v Xvfb >/dev/null; then
  mkfifo "$work/number"
  Xvfb -displayfd 3 -screen 0 1280x800x24 3> "$work/number" >/dev/null 2>&1 &
  screen=$!
  read -r -t 30 number < "$work/number" || fail "no screen"
  mkdir "$work/home"
  DISPLAY=":${number:-0}" HOME="$work/home" JAVA_TOOL_OPTIONS="-Dprism.order=sw -Dportwright.home=$work/home" "$program" app templates/octagon-17.json > "$work/window" 2>&1 &
  window=$!
  # The window marks the file that it has open: only then is it up.
  up=no
  for _ in $(seq 60); do
    if ls "$work/home/open/"* >/dev/null 2>&1; then up=yes; break; fi
    kill -0 "$window" 2>/dev/null || break
    sleep 1
  done
  sleep 1
  [ "$up" = yes ] && kill -0 "$window" 2>/dev/null || fail "the window did not come up: $(head -5 "$work/window")"
  grep -q $'\tat ' "$work/window" && fail "the window fails: $(head -5 "$work/window")"
  kill "$window" 2>/dev/null
  wait "$window" 2>/dev/null
else
  fail "no Xvfb to open the window on"
fi
[ "$failed" -eq 0 ] && say "starts, with its archive of classes and without, checks, prints and opens its window"
exit "$failed"
