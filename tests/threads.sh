#!/usr/bin/env bash
# threads.sh BUILD [GTEST-OPTION...]: the tests of the models under the thread sanitizer, from a build with the preset
# `tsan`. Called by tests/run.sh --threads. Last line: N passed, N failed, N races.
set -u
build=$1 && shift
said=$(mktemp) && trap 'rm -f "$said"' EXIT
# What Qt's library itself reads and writes is not ours to watch; how it hands over to our code tests/models/qt_order.cpp
# tells. The sanitizer needs memory where it expects it, which `setarch -R` sees to.
export TSAN_OPTIONS="ignore_noninstrumented_modules=1:second_deadlock_stack=1:history_size=4${TSAN_OPTIONS:+:$TSAN_OPTIONS}"
export QT_QPA_PLATFORM=offscreen QT_QUICK_BACKEND=software LC_ALL=C.UTF-8
setarch -R "$build/tests/models/models_test" "$@" >"$said" 2>&1
status=$?
races=$(grep -c '^WARNING: ThreadSanitizer' "$said")
passed=$(grep -cE '^\[       OK \] ' "$said")
failed=$(grep -cE '^\[  FAILED  \] .* ms\)$' "$said")
if [ "$passed" = 0 ] || { [ "$status" != 0 ] && [ "$races" = 0 ] && [ "$failed" = 0 ]; }; then
    failed=$((failed + 1)) # It did not run to its end.
fi
if [ "$races" != 0 ] || [ "$failed" != 0 ]; then
    cat "$said"
fi
echo "$passed passed, $failed failed, $races races"
[ "$failed" = 0 ] && [ "$races" = 0 ]
