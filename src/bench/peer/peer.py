#!/usr/bin/python3
"""A plain report of one charging session, as a tester may script it: the baseline of the benchmark.

Reads the project of project.py, draws five charts with matplotlib (SVG, and PNG of 1920 x 1080), and writes
one PDF with WeasyPrint. Without uncertainty, checks, and archive format it does less than Taperbook.

Usage: peer.py PROJECT OUTPUT   (Debian: python3-pandas python3-matplotlib weasyprint)
"""
import pathlib
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np
import pandas as pd
import weasyprint

MINUTE = 60.0
DISTANCES_KM = (100, 200, 300)
START_PERCENTS = (10, 20, 30, 40)


def read(project):
    readings = pd.read_csv(project / "sessions/forty-rows/readings.csv")
    readings.columns = ["second", "soc", "power", "energy"]
    facts = pd.read_csv(project / "sessions/forty-rows-drive/range-test.csv", index_col="item")["value"]
    conditions = pd.read_csv(project / "sessions/forty-rows/conditions.csv")
    return readings, facts, conditions


def time_at(readings, soc):
    """Returns the time of a state of charge in minutes after plugging in."""
    return np.interp(soc, readings.soc, readings.second) / MINUTE


def numbers(readings, facts):
    used = float(facts["start soc"]) - float(facts["end soc"])
    km_per_percent = float(facts["distance"]) / used
    inside = readings[(readings.soc >= 10) & (readings.soc <= 80)]
    rows = [
        ("Peak power", readings.power.max(), "kW"),
        ("Time from 10 % to 80 %", time_at(readings, 80) - time_at(readings, 10), "min"),
        ("Average power from 10 % to 80 %", np.average(inside.power), "kW"),
        ("Energy added", readings.energy.iloc[-1], "kWh"),
        ("Driven range, full", 100 * km_per_percent, "km"),
        ("Consumption", float(facts["energy used"]) / float(facts["distance"]) * 1000, "Wh/km"),
    ]
    first = readings.soc.iloc[0]
    for km in DISTANCES_KM:
        end = first + km / km_per_percent
        if end <= readings.soc.iloc[-1]:
            rows.append((f"Time to add {km} km", time_at(readings, end), "min"))
    for soc in range(20, 90, 10):
        rows.append((f"Time to {soc} %", time_at(readings, soc), "min"))
    return km_per_percent, pd.DataFrame(rows, columns=["number", "value", "unit"])


def save(figure, output, name):
    figure.savefig(output / f"{name}.svg")
    figure.savefig(output / f"{name}.png")
    plt.close(figure)


def line_chart(output, name, x, y, labels, title):
    figure, axes = plt.subplots(figsize=(12.8, 7.2), dpi=150)
    axes.plot(x, y, marker="o")
    axes.set(xlabel=labels[0], ylabel=labels[1], title=title)
    axes.grid(True, alpha=0.4)
    save(figure, output, name)


def plug_in_times(readings, km_per_percent):
    last = readings.soc.iloc[-1]
    cells = []
    for start in START_PERCENTS:
        ends = [start + km / km_per_percent for km in DISTANCES_KM]
        cells.append([f"{time_at(readings, e) - time_at(readings, start):.1f}" if e <= last else "" for e in ends])
    return cells


def charts(readings, km_per_percent, output):
    minutes = readings.second / MINUTE
    km = (readings.soc - readings.soc.iloc[0]) * km_per_percent
    line_chart(output, "power-over-soc", readings.soc, readings.power, ("%", "kW"), "Power over state of charge")
    line_chart(output, "power-over-time", minutes, readings.power, ("min", "kW"), "Power over time")
    line_chart(output, "distance-over-time", minutes, km, ("min", "km"), "Distance over time")
    per_minute = np.gradient(km, minutes)
    line_chart(output, "road-per-minute", readings.soc, per_minute, ("%", "km/min"), "Distance gained in a minute")
    figure, axes = plt.subplots(figsize=(12.8, 7.2), dpi=150)
    axes.axis("off")
    axes.set_title("Minutes to add a distance, by the level at plugging in")
    axes.table(
        cellText=plug_in_times(readings, km_per_percent),
        rowLabels=[f"{p} %" for p in START_PERCENTS],
        colLabels=[f"{d} km" for d in DISTANCES_KM],
        loc="center",
    )
    save(figure, output, "plug-in-table")
    return ["power-over-soc", "power-over-time", "distance-over-time", "road-per-minute", "plug-in-table"]


def page(readings, conditions, results, names):
    table = results.to_html(index=False, float_format="%.1f")
    pictures = "".join(f'<figure><img src="{n}.svg" alt="{n}"><figcaption>{n}</figcaption></figure>' for n in names)
    return f"""<!doctype html><html lang="en"><head><meta charset="utf-8"><title>One session</title><style>
@page {{ size: A4; margin: 20mm; @bottom-right {{ content: counter(page) }} }}
body {{ font-family: sans-serif; font-size: 10pt }} img {{ width: 100% }} figure {{ margin: 0 0 1em }}
table {{ border-collapse: collapse; width: 100% }} td, th {{ border: 1px solid #999; padding: 2px 5px }}
</style></head><body><h1>One session of forty readings</h1><p>Everything in this report is invented.</p>
<h2>Numbers</h2>{table}<h2>Charts</h2>{pictures}
<h2>Conditions</h2>{conditions.to_html(index=False, na_rep="")}<h2>Readings</h2>{readings.to_html(index=False)}
</body></html>"""


def main(project, output):
    output.mkdir(parents=True, exist_ok=True)
    readings, facts, conditions = read(project)
    km_per_percent, results = numbers(readings, facts)
    names = charts(readings, km_per_percent, output)
    html = page(readings, conditions, results, names)
    (output / "report.html").write_text(html, encoding="utf-8")
    results.to_csv(output / "numbers.csv", index=False)
    weasyprint.HTML(string=html, base_url=str(output)).write_pdf(output / "report.pdf")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
