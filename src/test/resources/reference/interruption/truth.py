"""An invented charge with an interruption: what its displays show, and what is true of it.

Power over charge is a closed form, 0.6 kWh make a per cent, and nothing flows from 484 s to 731 s. The charge
is stepped forward by 0.05 s. The display of the charge rounds to the nearest per cent.
"""
import math

STOP, RESUME, END, RAMP, STEP, PER_CENT = 484, 731, 1900, 20, 0.05, 0.6
TIMES = [0, 30, 60, 110, 160, 220, 290, 360, 430, 475, 500, 560, 650, 722, 740, 770, 820, 900, 1000, 1080,
         1160, 1250, 1340, 1440, 1530, 1600, 1700, 1800, 1900]
NOTES = {30: "quiet fan", 500: "station showed a fault; lamp red", 740: "charging again", 1340: "cable warm"}


def power(charge):
    return 120 - 0.1 * (charge - 10) if charge < 45 else 116.5 - 1.8 * (charge - 45)


def course(interrupted):
    charge, energy, rows = 9.4, 0.0, []
    for k in range(int(END / STEP) + 1):
        t = k * STEP
        flows = not (interrupted and STOP <= t < RESUME)
        since = t - RESUME if interrupted and t >= RESUME else t
        kilowatts = power(charge) * min(1, since / RAMP) if flows else 0.0
        rows.append((t, charge, kilowatts, energy))
        energy += kilowatts * STEP / 3600
        charge += kilowatts * STEP / 3600 / PER_CENT
    return rows


def first_shown(rows, percent):
    return next((t, e) for t, q, p, e in rows if q >= percent - 0.5)


rows = course(True)
with open("readings.csv", "w") as out:
    out.write("elapsed [min:s],soc [%],power [kW],energy added [kWh],note\n")
    for k, t in enumerate(TIMES):
        _, q, p, e = rows[int(round(t / STEP))]
        counter = "%.1f" % e if k % 2 == 0 else ""
        out.write("%d:%02d,%d,%d,%s,%s\n"
                  % (t // 60, t % 60, math.floor(q + 0.5), math.floor(p + 0.5), counter, NOTES.get(t, "")))

still = RESUME - STOP
with open("expected.csv", "w") as out:
    out.write("id,value\n")
    out.write("interruption_time,%g\n" % still)
    for percent in (20, 30, 50, 60, 70, 80):
        out.write("time_to_soc_%d,%.2f\n" % (percent, first_shown(rows, percent)[0]))
    for percent in (50, 60, 70, 80):
        out.write("time_to_soc_%d_without_interruptions,%.2f\n" % (percent, first_shown(rows, percent)[0] - still))
    (t1, e1), (t2, e2) = first_shown(rows, 10), first_shown(rows, 80)
    out.write("time_soc_10_80,%.2f\n" % (t2 - t1))
    out.write("time_soc_10_80_without_interruptions,%.2f\n" % (t2 - t1 - still))
    out.write("energy_soc_10_80,%.3f\n" % (e2 - e1))
    out.write("average_power_10_80,%.3f\n" % ((e2 - e1) * 3600 / (t2 - t1)))
    out.write("average_power_10_80_without_interruptions,%.3f\n" % ((e2 - e1) * 3600 / (t2 - t1 - still)))
    out.write("energy_added,%.3f\n" % rows[-1][3])
    out.write("steepest_taper_slope,-1.8\n")
