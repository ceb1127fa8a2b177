#!/bin/sh
# Writes all output of a build for the demo and the peer's project to a folder, for the comparison
# of two builds:
#
#   sh src/bench/outputs.sh BEFORE/target /tmp/before && sh src/bench/outputs.sh target /tmp/after
#   diff -r /tmp/before /tmp/after && echo identical
#
# JAVA_OPTS may add options. The folder must not exist.
set -u
target=$(cd "$1" && pwd)
here=$(cd "$(dirname "$0")/../.." && pwd)
mkdir "$2" || exit 2
out=$(cd "$2" && pwd)

# Runs a command of the program; keeps its results, messages, and exit status.
run() {
  task=$1
  shift
  java ${JAVA_OPTS:-} -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true -jar "$target/taperbook.jar" "$@" \
    >"$out/$task.out" 2>"$out/$task.err"
  echo $? >"$out/$task.status"
}

# The inputs of a project.
copy() {
  mkdir "$2" "$2/reports"
  cp -r "$1/sessions" "$2/"
  cp "$1"/reports/*.md "$2/reports/"
}

copy "$here" "$out/demo"
python3 "$here/src/bench/peer/project.py" "$out/peer" >/dev/null
cd "$out/demo" || exit 2
run report report
run report-again report
run check check
for report in reports/*.md; do
  name=$(basename "$report" .md)
  run "verify-$name" verify "reports/$name/report.pdf"
done
finch=finch-first-look
for id in peak_power peak_hold_time time_to_add_100_mi average_power_10_80 driven_range_full energy_added nonsense; do
  run "explain-$id" explain "$finch" "$id" finch-quarry-lane
done
cd "$out/peer" && run peer report
mkdir "$out/empty" && cd "$out/empty" || exit 2
run blank-session blank session a-session
run blank-range blank range-test a-drive --legs
run blank-report blank report a-report a-session a-drive
run blank-sheet blank sheet
run check-blank check
run empty-report report
for word in report check explain verify blank watch; do
  run "help-$word" help "$word"
done
run help help
for shell in bash zsh fish; do
  run "completion-$shell" completion "$shell"
done
# Lines of progress depend on the time.
sed -i '/^[^ ].*: .*, [0-9]* s$/d' "$out"/*.err
# Only these files contain the hash of the program.
find "$out" -name .made -o -name '.looks' -o -name '.rows' -o -name '.*.rows' | while read -r file; do rm -r "$file"; done
