#!/bin/sh
# Makes the pictures of README and gallery from the demo's reports. Needs poppler-utils, imagemagick.
set -e
cd "$(dirname "$0")/../.."
docs=src/docs
mkdir -p "$docs/gallery"
small() { # picture, name
  convert "$1" -resize 720x -background "${3:-white}" -flatten -strip -colors 96 "$docs/gallery/$2.png"
}
for chart in power-over-soc power-over-time distance-over-time compare-over-soc \
  difference-over-soc   plug-in-table road-per-minute trip-timeline; do
  small "reports/finch-first-look/figures/$chart.png" "$chart"
done
small reports/finch-first-look/share/square.png power-over-soc-square
small reports/library/figures/library-curves.png library-curves
small reports/veldt-long-plateau/film/power-over-soc-dark.png film-dark
small reports/veldt-long-plateau/film/power-over-soc-clear.png film-clear '#56616b'
pdftoppm -r 110 -f 1 -l 1 -png -singlefile reports/finch-first-look/report.pdf target/first-page
convert target/first-page.png -resize 900x -bordercolor '#d9dcd8' -border 1 -strip -colors 64 "$docs/first-page.png"
