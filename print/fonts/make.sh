#!/bin/sh
# Makes the bundled fonts from Debian's fonts-noto-core (SIL OFL 1.1, see OFL.txt).
#
# Hinting is for screens of few dots and is never used on paper: without it the files halve. Every glyph and
# every layout feature stays, so that shaping equals the originals'. Dates are taken from the source file, so
# the same input makes the same bytes.
#
# Needs: apt-get update && apt-get install -y --no-install-recommends fonts-noto-core fonttools
set -eu
here=$(dirname "$0")
from=${1:-/usr/share/fonts/truetype/noto}
for face in NotoSans-Regular NotoSans-Bold NotoSansArabic-Regular NotoSansArabic-Bold; do
    pyftsubset "$from/$face.ttf" --output-file="$here/$face.ttf" \
        --glyphs='*' --unicodes='*' --layout-features='*' --layout-scripts='*' \
        --no-hinting --notdef-outline --name-IDs='0,1,2,3,4,5,6,13,14' --name-languages='0x409' \
        --no-recalc-timestamp
done
