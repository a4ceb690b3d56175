#!/usr/bin/env bash
# Speed of whole processes: processor time (user and system, median of the rounds) and least wall time, each beside a bare hello world of the same Java.
# Call it after "mvn -q -DskipTests package": bash src/build/speed.sh [rounds]. Results go to the screen; src/docs/speed.md keeps a set of them.
# Where "mvn -q -DskipTests -Pimage package" has made target/image, the program there is measured too, without its archive of classes (in a copy) and with it.
set -eu
rounds=${1:-7}
cd "$(dirname "$0")/../.."
jar=target/portwright.jar
dir=$(mktemp -d)
trap 'rm -rf "$dir"' EXIT
export LC_ALL=C
cat > "$dir/Hello.java" <<'JAVA'
class Hello {
    public static void main(String[] a) {
        System.out.println("hello");
    }
}
JAVA
javac -d "$dir" "$dir/Hello.java"
quick=(-XX:+UseSerialGC -XX:TieredStopAtLevel=1)
java "${quick[@]}" -XX:ArchiveClassesAtExit="$dir/archive.jsa" -jar "$jar" check templates/octagon-17.json >/dev/null 2>&1 || true
names=() commands=()
row() { names+=("$1"); shift; commands+=("$*"); }
plain="java -jar $jar"
small="java ${quick[*]} -jar $jar"
archived="java ${quick[*]} -XX:SharedArchiveFile=$dir/archive.jsa -jar $jar"
row "hello world" java -cp "$dir" Hello
row "hello world, small JVM" java "${quick[*]}" -cp "$dir" Hello
row "check" "$plain" check templates/octagon-17.json
row "check, small JVM" "$small" check templates/octagon-17.json
row "check, small JVM and class archive" "$archived" check templates/octagon-17.json
row "sheet A4" "$plain" sheet templates/octagon-17.json --paper a4 -o "$dir/a4.pdf"
row "sheet A4, small JVM" "$small" sheet templates/octagon-17.json --paper a4 -o "$dir/a4.pdf"
row "sheet A4, small JVM and class archive" "$archived" sheet templates/octagon-17.json --paper a4 -o "$dir/a4.pdf"
row "sheet A3" "$plain" sheet templates/octagon-17.json --paper a3 -o "$dir/a3.pdf"
row "forecast" "$plain" forecast templates/octagon-17.json
row "forecast, small JVM and class archive" "$archived" forecast templates/octagon-17.json
image() { # words, launcher
  row "version, $1" "$2" --version
  row "check, $1" "$2" check templates/octagon-17.json
  row "forecast, $1" "$2" forecast templates/octagon-17.json
  row "sheet A4, $1" "$2" sheet templates/octagon-17.json --paper a4 -o "$dir/a4.pdf"
  row "sheet A3, $1" "$2" sheet templates/octagon-17.json --paper a3 -o "$dir/a3.pdf"
}
if [ -x target/image/portwright/bin/portwright ]; then
  cp -R target/image/portwright "$dir/image"
  rm -f "$dir/image/lib/app/portwright.jsa"
  image "image, no archive" "$dir/image/bin/portwright"
  if [ -s target/image/portwright/lib/app/portwright.jsa ]; then
    image "image, archive" target/image/portwright/bin/portwright
  else
    echo "No archive of classes in target/image: sh target/image/portwright/lib/app/archive.sh writes it." >&2
  fi
fi
TIMEFORMAT='%3U %3S %3R'
for ((r = 0; r < rounds; r++)); do
  for i in "${!names[@]}"; do
    # shellcheck disable=SC2086
    { time ${commands[$i]} >/dev/null 2>"$dir/err" || true; } 2>>"$dir/$i"
    rm -f "$dir"/*.pdf
  done
done
median() { awk '{print $1 + $2}' "$dir/$1" | sort -n | sed -n "$(((rounds + 1) / 2))p"; }
base=$(median 0)
echo "Load at the end: $(cut -d ' ' -f 1-3 /proc/loadavg 2>/dev/null || uptime)"
echo
echo "| process | processor s | to hello world | least wall s |"
echo "|---|---|---|---|"
for i in "${!names[@]}"; do
  cpu=$(median "$i")
  wall=$(awk '{print $3}' "$dir/$i" | sort -n | head -1)
  awk -v n="${names[$i]}" -v c="$cpu" -v b="$base" -v w="$wall" 'BEGIN { printf "| %s | %.2f | %.1f | %.2f |\n", n, c, c / b, w }'
done
