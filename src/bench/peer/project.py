#!/usr/bin/python3
"""Writes the project of the benchmark: one session of 40 readings, one range test, one report.

Everything in it is invented. The readings are a closed-form curve, rounded as by a display: power rises to
150 kW within a minute, is constant to 40 %, and falls linearly over state of charge.

Usage: project.py FOLDER [ROWS]
"""
import pathlib
import sys

BATTERY_KWH = 60.0

CONDITIONS = """item,value,unit,how known
date,2026-04-18,,measured
place,an invented services station,,measured
vehicle,"Northmoor Finch, second battery revision",,measured
odometer,6120,km,displayed
station rated power,200,kW,displayed
station shared,no,,measured
ambient temperature,13,Cel,displayed
battery temperature at start,27,Cel,displayed
preconditioned,yes,,displayed
battery usable energy,60,kWh,from the maker
state of charge resolution,1,%,displayed
power resolution,1,kW,displayed
energy resolution,0.1,kWh,displayed
clock resolution,1,s,measured
read from,film,,measured
"""

DRIVE = """item,value,unit,how known
date,2026-04-17,,measured
vehicle,"Northmoor Finch, second battery revision",,measured
distance,338.6,km,displayed
distance source,odometer,,
start soc,100,%,displayed
end soc,1,%,displayed
energy used,58.3,kWh,displayed
average speed,107,km/h,measured
ambient temperature,12,Cel,displayed
route,loop,,measured
rated range,415,km,from the maker
rated range basis,the maker's combined cycle,,from the maker
"""

REPORT = """---
title: One session of forty readings
author: The bench
published: 2026-04-24
session: forty-rows
range test: forty-rows-drive
road: plug-in, per minute
---
*Everything in this report is invented.* The display went up to ${number("peak_power")};
${number("time_to_add_100_km")} bought 100 km.
"""


def power_kw(second, soc):
    if second < 60:
        return 90 + second
    return 150.0 if soc < 40 else 150 - 2.4 * (soc - 40)


def readings(rows):
    """Returns seconds, %, kW, and kWh of each reading, from the true curve in steps of one second."""
    course = [(0, 8.4, 90.0, 0.0)]
    while course[-1][1] < 84:
        second, soc, power, energy = course[-1]
        energy += power / 3600
        soc = 8.4 + energy / BATTERY_KWH * 100
        course.append((second + 1, soc, power_kw(second + 1, soc), energy))
    last = len(course) - 1
    return [course[round(i * last / (rows - 1))] for i in range(rows)]


def main(folder, rows):
    session = folder / "sessions" / "forty-rows"
    drive = folder / "sessions" / "forty-rows-drive"
    for subfolder in (session, drive, folder / "reports"):
        subfolder.mkdir(parents=True, exist_ok=True)
    lines = ["elapsed [s],soc [%],power [kW],energy added [kWh]"]
    for second, soc, power, energy in readings(rows):
        lines.append(f"{second},{round(soc)},{power:.0f},{energy:.1f}")
    (session / "readings.csv").write_text("\n".join(lines) + "\n", encoding="utf-8")
    (session / "conditions.csv").write_text(CONDITIONS, encoding="utf-8")
    (drive / "range-test.csv").write_text(DRIVE, encoding="utf-8")
    (folder / "reports" / "forty-rows.md").write_text(REPORT, encoding="utf-8")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 40)
