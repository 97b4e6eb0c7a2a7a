#!/usr/bin/env bash
# Made the clips beside it, by programs that have nothing to do with this one (ffmpeg 5.1, exiftool 12.57). They are kept, so that no test needs either.
set -euo pipefail
cd "$(dirname "$0")"
picture=(-f lavfi -i testsrc=size=96x64:rate=25:duration=1.2)
sound=(-f lavfi -i sine=frequency=440:duration=1.2)
tags=(-metadata title=PLANTED-title -metadata comment=PLANTED-comment -metadata artist=PLANTED-artist -metadata location=+38.6918-009.2020/ -metadata creation_time=2025-03-08T10:11:12Z
  -metadata:s:v handler_name=PLANTED-handler -metadata:s:a title=PLANTED-track)
words=$(mktemp --suffix .srt)
printf '1\n00:00:00,000 --> 00:00:01,000\nPLANTED-words-in-a-track\n' > "$words"
run() { ffmpeg -v error -y -threads 1 "$@"; }
run "${picture[@]}" "${sound[@]}" -i "$words" -map 0 -map 1 -map 2 -c:v libx264 -bf 2 -g 12 -pix_fmt yuv420p -c:a aac -b:a 32k -c:s mov_text "${tags[@]}" -timecode 10:11:12:00 planted.mp4
exiftool -q -overwrite_original -api QuickTimeUTC=1 -Rotation=90 -Keys:Make=PLANTED-make -Keys:Model=PLANTED-model -Keys:GPSCoordinates='38.6918, -9.2020, 12' -XMP-dc:Creator=PLANTED-xmp -ItemList:Artist=PLANTED-item planted.mp4
run "${picture[@]}" "${sound[@]}" -i "$words" -map 0 -map 1 -map 2 -c:v libvpx -b:v 60k -c:a libvorbis -c:s webvtt "${tags[@]}" planted.webm
run "${picture[@]}" "${sound[@]}" -c:v libvpx-vp9 -b:v 40k -c:a libopus -b:a 24k later.webm
run "${picture[@]}" "${sound[@]}" -c:v libx264 -pix_fmt yuv420p -c:a libmp3lame -movflags +faststart front.mp4
run "${picture[@]}" -c:v libx265 -x265-params log-level=none hevc.mp4
run "${sound[@]}" -c:a aac sound.mp4
rm "$words"
