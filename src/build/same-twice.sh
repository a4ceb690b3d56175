#!/usr/bin/env bash
# Builds the program's jar a second time from the same sources and compares it with target/portwright.jar byte for byte.
set -eu
cd "$(dirname "$0")/../.."
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cp -r pom.xml LICENSE src templates "$work/"
(cd "$work" && mvn -q -B -ntp -Dmaven.test.skip=true package)
cmp target/portwright.jar "$work/target/portwright.jar" || { echo "the jar is not the same when built twice"; exit 1; }
echo "the jar is the same when built twice: $(sha256sum < target/portwright.jar | cut -c1-16)"
