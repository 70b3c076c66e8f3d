#!/usr/bin/env bash
# Draws the icons of all sizes anew from their two drawings (needs rsvg-convert, Debian package librsvg2-bin).
set -eu
cd "$(dirname "${BASH_SOURCE[0]}")/icons"
for size in 16 24 32 48 64 128 256; do
    drawing=lathhouse.svg
    [ "$size" -gt 24 ] || drawing=lathhouse-small.svg
    rsvg-convert --width "$size" --height "$size" "$drawing" --output "lathhouse-$size.png"
done
