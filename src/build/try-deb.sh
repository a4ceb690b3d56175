#!/usr/bin/env bash
# Installs the .deb in target/image on this machine, checks a kiln with it from another folder, and takes it off again. Wants root, dpkg and what
# the package depends on, and changes the machine meanwhile: refuses where a portwright is installed. Says what failed and ends with 1.
set -u
cd "$(dirname "$0")/../.."
deb=$(ls "$PWD"/target/image/portwright_*.deb 2>/dev/null | head -1)
work=$(mktemp -d)
failed=0
trap 'rm -rf "$work"' EXIT
say() { echo "deb: $1"; }
fail() { say "FAILED: $1"; failed=1; }
[ -n "$deb" ] || { fail "there is no .deb in target/image"; exit 1; }
[ "$(id -u)" = 0 ] || { fail "it takes root to install"; exit 1; }
[ ! -e /opt/portwright ] && [ ! -e /usr/bin/portwright ] || { fail "a portwright is installed here; take it off first"; exit 1; }

cp templates/octagon-17.json "$work/kiln.json"
dpkg -i "$deb" > "$work/installed" 2>&1 || fail "dpkg -i ended with $?: $(tail -3 "$work/installed")"
[ -s /opt/portwright/lib/app/portwright.jsa ] || fail "the installation wrote no archive of classes"
(cd "$work" && timeout 60 portwright check kiln.json > check 2> noise < /dev/null) || fail "check ended with $?"
grep -q '^Drilling: ' "$work/check" || fail "check says nothing of drilling"
grep -v '^Picked up JAVA_TOOL_OPTIONS' "$work/noise" | grep -q . && fail "check says $(head -2 "$work/noise")"
# An installed launcher knows other places than one that lies in a folder.
(cd "$work" && JAVA_TOOL_OPTIONS="-Xlog:class+load:file=$work/loaded" timeout 60 portwright check kiln.json > /dev/null 2>&1)
[ "$(grep -c 'shared objects file (top)' "$work/loaded")" -ge 300 ] || fail "the archive of classes is not used"
dpkg -i "$deb" > "$work/again" 2>&1 || fail "dpkg -i over itself ended with $?: $(tail -3 "$work/again")"
[ -x /usr/bin/portwright ] || fail "the command is gone after installing over itself"
dpkg -r portwright > "$work/removed" 2>&1 || fail "dpkg -r ended with $?: $(tail -3 "$work/removed")"
dpkg --purge portwright > /dev/null 2>&1
for left in /opt/portwright /usr/bin/portwright /usr/share/applications/portwright-portwright.desktop; do
  [ ! -e "$left" ] && [ ! -L "$left" ] || fail "$left is left"
done
[ "$failed" -eq 0 ] && say "installs, checks a kiln with its archive of classes, installs over itself and leaves nothing"
exit "$failed"
