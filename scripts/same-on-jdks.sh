#!/bin/sh
# Plans every example on each Java given and compares the JSON byte for byte.
# Usage: scripts/same-on-jdks.sh JAVA_HOME JAVA_HOME...      (after ./kerfwright has built)
set -u
home=$(cd "$(dirname "$0")/.." && pwd -P) || exit 2
jar="$home/app/target/kerfwright-app.jar"
if [ $# -lt 2 ] || [ ! -f "$jar" ]; then
  echo "usage: $0 JAVA_HOME JAVA_HOME...   (two or more; build with ./kerfwright first)" >&2
  exit 2
fi
out=$(mktemp -d) || exit 2
trap 'rm -rf "$out"' EXIT
different=0
count=0
for case in "$home"/examples/*.yaml; do
  grep -q "^procedure:" "$case" || continue
  count=$((count + 1))
  first=
  for java in "$@"; do
    "$java/bin/java" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "$jar" plan "$case" --json \
      >"$out/plan.json" 2>"$out/errors"
    code=$?
    if [ "$code" -gt 1 ] || [ ! -s "$out/plan.json" ]; then
      echo "$(basename "$case"): $java ended with $code" >&2
      different=1
    fi
    if [ -z "$first" ]; then
      first=$java
      mv "$out/plan.json" "$out/first.json"
    elif ! cmp -s "$out/first.json" "$out/plan.json"; then
      echo "$(basename "$case"): $java differs from $first" >&2
      different=1
    fi
  done
done
[ "$different" -eq 0 ] && echo "$count examples: the same bytes on $*"
exit "$different"
