#!/usr/bin/env bash
# Builds an app image of this operating system with its own runtime (target/image/portwright) and, on Debian-like systems, a .deb in target/image.
# Called by the Maven profile "image" after packaging. Needs the JDK's jpackage, and on Linux dpkg-deb and fakeroot for the .deb.
set -eu
version=$1
cd "$(dirname "$0")/../.."
rm -rf target/image target/image-input
mkdir -p target/image-input
cp target/portwright.jar target/image-input/
cp -r target/lib target/image-input/lib
# Licence texts of everything that travels along, as the libraries' own jars carry them.
mkdir -p target/image-input/licences
cp LICENSE target/image-input/licences/portwright.txt
cp target/classes/portwright/libraries.csv target/image-input/licences/
# For those that carry none: our own LICENSE is the Apache text, the others lie in src/build/licences.
cp LICENSE target/image-input/licences/picocli-LICENSE.txt
cp src/build/licences/* target/image-input/licences/
for jar in target/lib/*.jar; do
  name=$(basename "$jar" .jar)
  for entry in $(unzip -Z1 "$jar" 2>/dev/null | grep -iE '(^|/)(licen[cs]e|notice)[^/]*$' | grep -viE '\.class$' || true); do
    unzip -p "$jar" "$entry" > "target/image-input/licences/$name-$(basename "$entry")"
  done
done
options="-XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto"
if [ "$(uname)" = Linux ]; then
  # The runtime's own archive of classes, and on top the program's, which archive.sh writes where the program lies. One that is missing or does
  # not fit is passed over; without -Xlog the latter would be told on the output. Verified, one with changed bytes is passed over too.
  # An installed launcher leaves $ROOTDIR empty: both are named from the folder of the program.
  cp src/build/archive.sh target/image-input/
  # shellcheck disable=SC2016
  options="$options -XX:+VerifySharedSpaces -Xlog:cds*=off "'-XX:SharedArchiveFile=$APPDIR/../runtime/lib/server/classes.jsa:$APPDIR/portwright.jsa'
fi
modules=java.base,java.desktop,java.logging,java.xml,java.naming,jdk.unsupported,jdk.jfr
common=(--name portwright --app-version "$version" --vendor Portwright
        --description "Plans the conversion of an electric kiln for gas reduction"
        --copyright "The authors of Portwright; licence Apache-2.0")
jpackage --type app-image "${common[@]}" --input target/image-input --main-jar portwright.jar --main-class portwright.Main \
         --add-modules "$modules" --jlink-options "--strip-debug --no-header-files --no-man-pages --compress=2" \
         --java-options "$options" --dest target/image
# The image's runtime has no class archive until one is written.
if [ -x target/image/portwright/lib/runtime/bin/java ]; then target/image/portwright/lib/runtime/bin/java -Xshare:dump >/dev/null; fi
if command -v dpkg-deb >/dev/null && command -v fakeroot >/dev/null; then
  # The licence by its name and where its text lies on a Debian system: the whole text would fill the package's copyright page.
  printf 'Apache-2.0\n On Debian systems the text is in /usr/share/common-licenses/Apache-2.0;\n those of the libraries are in /opt/portwright/lib/app/licences.\n' > target/image-input/deb-licence
  # No address of a person: who builds it answers for it.
  jpackage --type deb "${common[@]}" --app-image target/image/portwright --linux-package-deps libgtk-3-0 --linux-shortcut --dest target/image \
           --linux-deb-maintainer portwright@localhost --linux-app-category science --linux-menu-group "Science;Engineering;" \
           --license-file target/image-input/deb-licence --resource-dir src/build/deb
fi
# After the .deb, whose installation writes its own: an archive fits one place only.
if [ -e target/image/portwright/lib/app/archive.sh ]; then sh target/image/portwright/lib/app/archive.sh; fi
ls -1 target/image
