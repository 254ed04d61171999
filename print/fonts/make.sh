#!/bin/sh
# Makes the bundled fonts from Debian's fonts-noto-core and fonts-noto-cjk (SIL OFL 1.1, see OFL.txt).
#
# Hinting is for screens of few dots and is never used on paper: without it the files halve. Of Latin, Arabic and
# Devanagari every glyph and every layout feature stays, so that shaping equals the originals'.
#
# Chinese and Korean are cut to the characters of their national standards, GB 2312 (6,763 Han characters, the
# punctuation, full-width forms and circled numbers) and KS X 1001 (2,350 syllables, compatibility letters,
# punctuation and symbols), one glyph to a character, without features: those are for vertical setting, old Hangul
# and other regions' forms. Subroutines are written out, since brotli finds what repeats better than they do. Letters
# and digits of Latin, Greek and Cyrillic come from Noto Sans. Dates are taken from the source file, so the same
# input makes the same bytes.
#
# Needs: apt-get update && apt-get install -y --no-install-recommends fonts-noto-core fonts-noto-cjk fonttools
set -eu
here=$(dirname "$0")
from=${1:-/usr/share/fonts/truetype/noto}
cjk=${2:-/usr/share/fonts/opentype/noto}
names='--name-IDs=0,1,2,3,4,5,6,13,14 --name-languages=0x409 --no-recalc-timestamp'

for script in NotoSans NotoSansArabic NotoSansDevanagari; do
    for weight in Regular Bold; do
        # shellcheck disable=SC2086 # the names are several options
        pyftsubset "$from/$script-$weight.ttf" --output-file="$here/$script-$weight.ttf" \
            --glyphs='*' --unicodes='*' --layout-features='*' --layout-scripts='*' \
            --no-hinting --notdef-outline $names
    done
done

# The characters in the given rows of a national standard of 94 rows, with what is given beside them.
characters() {
    python3 - "$@" <<'PYTHON'
import sys
encoding, rows, more = sys.argv[1], sys.argv[2], sys.argv[3]
found = set(chr(int(code, 16)) for code in more.split())
for span in rows.split():
    first, last = (int(row) for row in span.split("-"))
    for row in range(first, last + 1):
        for cell in range(1, 95):
            try:
                found.add(bytes([0xA0 + row, 0xA0 + cell]).decode(encoding))
            except UnicodeDecodeError:
                pass
print("\n".join(f"{ord(character):04X}" for character in sorted(found)))
PYTHON
}

work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
# Spaces, the middle point and the dash that the codec maps elsewhere, and the zero among Han characters.
characters gb2312 '1-3 16-87' '20 A0 B7 2014 3007' >"$work/SC"
# Spaces, and the points and brackets that stand beside syllables.
characters euc_kr '1-2 4-4 16-40' '20 A0 21 22 25 26 27 28 29 2A 2B 2C 2D 2E 2F 3A 3B 3F 7E' >"$work/KR"
for region in KR:1 SC:2; do
    letters=${region%:*}
    for weight in Regular Bold; do
        # shellcheck disable=SC2086
        pyftsubset "$cjk/NotoSansCJK-$weight.ttc" --font-number="${region#*:}" \
            --output-file="$here/NotoSans$letters-$weight.otf" --unicodes-file="$work/$letters" \
            --layout-features='' --drop-tables+=vhea,vmtx,VORG,BASE,DSIG \
            --no-hinting --desubroutinize --notdef-outline $names
    done
done
