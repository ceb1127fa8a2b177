#!/usr/bin/python3
"""Compares the time of one report with that of the plain script in peer/, each as a process.

Alternates the two, so that the load of the machine affects both, and prints medians of wall and processor
time (user and system, of the process and all its threads) and their ratios.

Usage: compare.py [--runs N] [--launcher target/taperbook]
Needs a built launcher (mvn package) and Debian's python3-pandas, python3-matplotlib and weasyprint.
"""
import argparse
import os
import pathlib
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
PYTHON = "/usr/bin/python3"
WIDTH, HEIGHT = 1920, 1080
CHARTS = 5


def timed(command):
    """Returns wall and processor time of a command in seconds."""
    with open(os.devnull, "w", encoding="utf-8") as nowhere:
        start = time.monotonic()
        process = subprocess.Popen(command, stdout=nowhere, stderr=nowhere)
        _, status, usage = os.wait4(process.pid, 0)
        wall = time.monotonic() - start
        process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"exit status {process.returncode}: {' '.join(command)}")
    return wall, usage.ru_utime + usage.ru_stime


def size_of_png(path):
    head = path.read_bytes()[16:24]
    return int.from_bytes(head[:4], "big"), int.from_bytes(head[4:], "big")


def check(folder, charts, pdfs):
    """Checks for the charts, as SVG and as PNG for film, and for the PDFs."""
    pngs = [p for p in folder.rglob("*.png") if size_of_png(p) == (WIDTH, HEIGHT)]
    svgs = list(folder.rglob("*.svg"))
    if len(pngs) != charts or len(svgs) != charts:
        sys.exit(f"{folder}: not {charts} charts of {WIDTH} x {HEIGHT}")
    for pdf in pdfs:
        if (folder / pdf).read_bytes()[:5] != b"%PDF-":
            sys.exit(f"{folder / pdf}: no PDF")


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--runs", type=int, default=7)
    options.add_argument("--launcher", default=str(HERE.parent.parent / "target" / "taperbook"))
    chosen = options.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        project, output = pathlib.Path(folder, "project"), pathlib.Path(folder, "peer")
        subprocess.run([PYTHON, str(HERE / "peer" / "project.py"), str(project)], check=True)
        report = project / "reports" / "forty-rows"
        ours = [chosen.launcher, "report", "--folder", str(project)]
        peer = [PYTHON, str(HERE / "peer" / "peer.py"), str(project), str(output)]
        times = {"taperbook": [], "peer": []}
        for run in range(chosen.runs + 1):
            shutil.rmtree(report, ignore_errors=True)
            shutil.rmtree(output, ignore_errors=True)
            both = {"taperbook": timed(ours), "peer": timed(peer)}
            check(report, CHARTS, ["report.pdf", "methods.pdf"])
            check(output, CHARTS, ["report.pdf"])
            if run > 0:  # The first run fills the caches of the operating system.
                for name, time_of in both.items():
                    times[name].append(time_of)
    print(f"{chosen.runs} runs each, median (least - most)")
    medians = {}
    for name, runs in times.items():
        walls, cpus = zip(*runs)
        medians[name] = statistics.median(walls), statistics.median(cpus)
        print(
            f"{name:10} wall {medians[name][0]:6.2f} s ({min(walls):.2f} - {max(walls):.2f})"
            f"   processor {medians[name][1]:6.2f} s ({min(cpus):.2f} - {max(cpus):.2f})"
        )
    wall, cpu = (medians["taperbook"][i] / medians["peer"][i] for i in (0, 1))
    print(f"ratio      wall {wall:6.2f}     processor {cpu:6.2f}")


if __name__ == "__main__":
    main()
