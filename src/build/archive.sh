#!/bin/sh
# Writes the archive of classes portwright.jsa beside this script, in the program's folder lib/app: every start then takes less work.
# It fits the place where it was written: after moving the folder call it again. With none, or one that no longer fits, the program
# runs as well, only slower. The package's installation calls it by itself. Nothing else is written.
set -eu
app=$(cd "$(dirname "$0")" && pwd -P)
work=$(mktemp -d)
trap 'rm -rf "$work" "$app/portwright.jsa.new"' EXIT
# The launcher's own class path and options: an archive fits no others.
path=""
while IFS= read -r line; do
  case "$line" in 'app.classpath=$APPDIR/'*) path="${path:+$path:}$app/${line#*APPDIR/}" ;; esac
done < "$app/portwright.cfg"
program() {
  env -u JAVA_TOOL_OPTIONS -u _JAVA_OPTIONS -u JDK_JAVA_OPTIONS "$app/../runtime/bin/java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Duser.home="$work" "$@" >/dev/null 2>"$work/said" ||
    { cat "$work/said" >&2; return 1; }
}
program -cp "$path" portwright.Main new octagon-17 -o "$work/kiln.json"
# Sheets need what a check needs, and the writing of PDF on top.
program -XX:ArchiveClassesAtExit="$app/portwright.jsa.new" -cp "$path" portwright.Main sheet "$work/kiln.json" -o "$work/sheets.pdf"
# One cut short would stop every start: only one that serves is put in place.
program -XX:+VerifySharedSpaces -XX:SharedArchiveFile="$app/../runtime/lib/server/classes.jsa:$app/portwright.jsa.new" -cp "$path" portwright.Main --version
chmod 644 "$app/portwright.jsa.new"
mv -f "$app/portwright.jsa.new" "$app/portwright.jsa"
