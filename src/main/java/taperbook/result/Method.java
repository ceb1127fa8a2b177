package taperbook.result;

import static taperbook.result.Assumption.COUNTER_FROM_ZERO;
import static taperbook.result.Assumption.CURVE_BY_SOC;
import static taperbook.result.Assumption.DISPLAY_CALIBRATION_LEFT_OUT;
import static taperbook.result.Assumption.DISPLAY_STEP;
import static taperbook.result.Assumption.DISTANCE_AS_READ;
import static taperbook.result.Assumption.DRIVE_EFFICIENCY;
import static taperbook.result.Assumption.DRY_AIR;
import static taperbook.result.Assumption.INDEPENDENT_ROUNDING;
import static taperbook.result.Assumption.NO_LOSSES;
import static taperbook.result.Assumption.ONE_COURSE;
import static taperbook.result.Assumption.PACE_OF_A_WARM_BATTERY;
import static taperbook.result.Assumption.POWER_WALK;
import static taperbook.result.Assumption.POWER_WITHIN_READINGS;
import static taperbook.result.Assumption.PRICES_AS_STATED;
import static taperbook.result.Assumption.RATED_RANGE_HOLDS;
import static taperbook.result.Assumption.RATE_WITHIN_NEIGHBOURS;
import static taperbook.result.Assumption.READING_HABIT;
import static taperbook.result.Assumption.RUNS_ALIKE;
import static taperbook.result.Assumption.RUN_FACTOR;
import static taperbook.result.Assumption.SAME_DRIVE_AGAIN;
import static taperbook.result.Assumption.SAME_ENERGY_EACH_PERCENT;
import static taperbook.result.Assumption.SAME_STRETCH;
import static taperbook.result.Assumption.SESSIONS_INDEPENDENT;
import static taperbook.result.Assumption.SOC_SHARE_OF_RANGE;
import static taperbook.result.Assumption.STATED_ENERGY;
import static taperbook.result.Assumption.STEADY_DRIVE;
import static taperbook.result.Assumption.STRAIGHT_SEGMENTS;
import static taperbook.result.Assumption.TIME_FROM_PLUGGING_IN;
import static taperbook.result.Assumption.TRIP_AS_TESTED;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import taperbook.session.Input;

/** Computation methods of numbers, with the definitions that the methods section prints. */
public enum Method {
  /** First or last reading. */
  END_READING(
      "First and last reading",
      "The first or last reading of the channel, within half a step of its display.",
      "x[1] or x[n], give or take step / 2",
      List.of(DISPLAY_STEP)),
  /** A stated fact. */
  STATED_FACT(
      "As stated",
      "What the tester states in the conditions of the session, give or take what is written"
          + " beside it, or else half a unit of the last digit.",
      "x as stated",
      List.of()),
  /** Length of the session. */
  RECORDED_TIME(
      "Session time",
      "Time from the zero of the clock to the last row.",
      "t[n]",
      List.of(TIME_FROM_PLUGGING_IN)),
  /** Highest power read. */
  HIGHEST_READING(
      "Peak power",
      "The highest power that was read: at least so much was reached. Power between readings may have"
          + " been higher unseen.",
      "max(P[1], ..., P[n]), give or take step / 2",
      List.of(DISPLAY_STEP)),
  /** When the peak was first read. */
  FIRST_AT_PEAK(
      "Where the peak is reached",
      "The first reading at the highest power. It may have been reached at any time since the"
          + " reading before.",
      "t = t[i] or q(t[i]), with the least i that has P[i] = max(P[1], ..., P[n])",
      List.of(TIME_FROM_PLUGGING_IN, DISPLAY_STEP)),
  /** Longest continuous time near the peak. */
  HOLD(
      "How long the peak is held",
      "The longest unbroken time at which the power stays within the larger of the display's step and"
          + " 2 % of the highest reading. Of a logger's readings it is found among them, else on the"
          + " drawn courses; in a quarter of the draws its ends lie anywhere between the readings that"
          + " bound it.",
      "longest t2 - t1 with P(t) >= max(P) - max(step, 0.02 * max(P)) all the time",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK)),
  /** When a state of charge is first reached. */
  SOC_CROSSING(
      "Time to a state of charge",
      "The time from the start of the readings until the display first shows the value, on courses"
          + " that all readings allow together. How the display rounds does not matter to it.",
      "t(v) = first t with q(t) >= v, q as the display counts",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, TIME_FROM_PLUGGING_IN)),
  /** Time between two states of charge. */
  WINDOW_TIME(
      "Time for a window",
      "Time from the display first showing the lower edge until it first shows the upper one; a window"
          + " that begins with the session begins at its start.",
      "t(B) - t(A)",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** A time minus interruptions. */
  INTERRUPTIONS(
      "Interruptions",
      "An interruption begins somewhere between the last row with power and the first one without, and"
          + " ends likewise; anywhere in between is taken to be as likely. A number without"
          + " interruptions is the same number with their time taken off. What the power lost by"
          + " climbing again afterwards is not taken off.",
      "t2 - t1 less, for each interruption, what of its end less its start lies between t1 and t2",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy by the car's counter. */
  ENERGY_COUNTER(
      "Energy by counter and power",
      "Energy of the course between the two times. The counter fixes it where it was read; between"
          + " its readings the power carries it.",
      "E(t2) - E(t1), E(t) = integral of P dt / 3600",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, COUNTER_FROM_ZERO)),
  /** Energy by integrating power. */
  ENERGY_INTEGRAL(
      "Energy by integration",
      "Energy of the course between the two times, by the readings of power and of the state of"
          + " charge, as no energy counter was recorded.",
      "E(t2) - E(t1), E(t) = integral of P dt / 3600",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy over time. */
  TIME_AVERAGE(
      "Average power (over time)",
      "Energy of the window divided by its time. It weighs every minute alike.",
      "3600 * (E(t(B)) - E(t(A))) / (t(B) - t(A))",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Mean over state of charge. */
  SOC_AVERAGE(
      "Average power (over state of charge)",
      "Mean of the power over the per cents of the window. It weighs every per cent alike and so"
          + " is higher than the average over time wherever the power falls: the slow per cents"
          + " take more minutes.",
      "1 / (B - A) * integral of P dq from q = A to q = B",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy per per cent. */
  ENERGY_SHARE(
      "Energy per per cent",
      "Energy added divided by the true charge gained from the first reading to the last; a hundredfold"
          + " of it is the implied energy of a full charge.",
      "e = (E(t[n]) - E(t[1])) / (q(t[n]) - q(t[1])), full = 100 * e",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Energy over state of charge as a straight line. */
  ENERGY_LINE(
      "Energy per per cent, by a curve through all readings",
      "Mean rise of the energy added over the state of charge, from the first reading to the last: the"
          + " slope of a straight line, fitted with rounding errors"
          + " in both (D. York and others, American Journal of Physics 72 (2004) 367-375), corrected"
          + " for how the energies curve, with one"
          + " reading for each displayed per cent or part of it, the middle one; a hundredfold of"
          + " it is the implied energy of a full charge, if the per cents that were not read take as"
          + " much. An energy that was interpolated is no reading. The curvature is told by"
          + " polynomials of degree k = 2 to 5, orthogonal to the line, whose greatest value is 4 %"
          + " of the whole energy over k squared before anything is read, as one standard"
          + " uncertainty: few readings leave that open, many replace it. A rounded reading has the"
          + " variance of a rectangle of one display step. Where the readings scatter about the curve"
          + " more than rounding explains, or in long runs, the standard uncertainty is widened by"
          + " the square root of chi-square over its degrees of freedom, with readings that follow"
          + " one another counted for as many as are independent (B. D. Santer and others, Journal of"
          + " Geophysical Research 105 (2000) 7337-7356), and Student's factor replaces 1.96."
          + " Residual and chi-square describe the readings as they stand and have"
          + " no interval.",
      "E = a + b * q + sum of c[k] * p[k](q), e = (E(q[n]) - E(q[1])) / (q[n] - q[1]), full = 100 * e,"
          + " half an interval of e = k * sqrt(w^2 * (u(b)^2 + u(c)^2) + e^2 * r^2)",
      List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Change of the implied full energy between sessions. */
  FULL_ENERGY_CHANGE(
      "Change of the implied full energy",
      "Implied energy of a full charge in this session over that in another session of the same"
          + " vehicle, less one, both by the curve through all readings; the relative intervals add"
          + " in quadrature (JCGM 100:2008, 5.1.6).",
      "d = 100 * (y / x - 1), U(d) = 100 * (y / x) * sqrt((U(y) / y)^2 + (U(x) / x)^2)",
      List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Slope of the full energy over the odometer. */
  FULL_ENERGY_SLOPE(
      "Slope of the implied full energy",
      "Slope of a straight line through the implied full energies of three sessions of a vehicle or more"
          + " over its odometer, weighed by their intervals, for each 10,000 km or mi. Half the interval"
          + " is that of the energies or, with Student's t, of their scatter about the line, whichever is"
          + " wider. Only where the batteries at the start, or where those are not known the airs, agree"
          + " within 5 \u00b0C.",
      "full = a + b * odometer / 10000, half an interval of b = max(1.96, t * sqrt(chi^2 / (n - 2))) *"
          + " u(b)",
      List.of(INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** A stop of a day relative to the first. */
  STOP_RATIO(
      "A later stop against the first of a day",
      "Mean power of a later stop over that of the first, both means over the states of charge that"
          + " both went through. It is less than 100 % where the car or the station gave less. A"
          + " stretch is stated where the band of the difference, which holds the whole course in 95 %"
          + " of cases, lies below zero.",
      "100 * mean of P_k(q) / mean of P_1(q), over the same q",
      List.of(DISPLAY_STEP, ONE_COURSE, SESSIONS_INDEPENDENT)),
  /** Station energy against battery energy. */
  CHARGING_LOSS(
      "Losses while charging",
      "Energy that the station delivered against energy that the car says was added, both as"
          + " differences of their counters over the time that both were read: the loss is the"
          + " first less the second, the efficiency the second over the first. What is lost went"
          + " into the cable, the cooling or heating of the battery and whatever else ran in the"
          + " car.",
      "loss = S - E, efficiency = 100 * E / S, with S = S(t2) - S(t1) and E = " + "E(t2) - E(t1)",
      List.of(COUNTER_FROM_ZERO, DISPLAY_STEP, RATE_WITHIN_NEIGHBOURS, SAME_STRETCH)),
  /** Energy delivered per per cent relative to energy charged per per cent. */
  DRIVE_SHARE(
      "Energy out of a per cent against energy into it",
      "Energy used in the range test for each per cent of charge, over the energy that each per"
          + " cent took while charging, by the line through all readings.",
      "100 * energy used / (start soc - end soc) / b, with the slope b of E = a + b * q",
      List.of(DISPLAY_STEP, INDEPENDENT_ROUNDING, SAME_ENERGY_EACH_PERCENT)),
  /** Current of a plateau. */
  CURRENT_PLATEAU(
      "Current limit of a plateau",
      "The mean of the current readings over the longest hold of the power, if the current is flat"
          + " there within its step or 1 %, and varies by less than half of what holding the power"
          + " would take as the voltage rises. The bounds hold all these readings.",
      "mean of all I[i] with t1 <= t[i] <= t2",
      List.of(DISPLAY_STEP)),
  /** Energy used over distance. */
  CONSUMPTION(
      "Consumption",
      "Energy used in the range test divided by the distance driven.",
      "c = 1000 * energy used / (distance * correction)",
      List.of(DISPLAY_STEP, DISTANCE_AS_READ)),
  /** Displayed consumption. */
  CONSUMPTION_DISPLAYED(
      "Consumption as displayed",
      "The car's own figure for the drive, since the energy used is not known.",
      "c as displayed",
      List.of(DISPLAY_STEP)),
  /** Range of a full battery, as driven. */
  DRIVEN_RANGE(
      "Driven range of a full battery",
      "Distance driven divided by the share of charge used for it: the mean of all that the display"
          + " may have shown as it did, a start at 100 % being exactly full in half of the cases.",
      "R = 100 * distance * correction / (start soc - end soc)",
      List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /** Mean over drives. */
  DRIVES_MEAN(
      "Consumption and range, mean of several drives",
      "Mean of what each drive came to, of drives of one car whose target speeds agree within 3 km/h"
          + " and whose air temperatures agree within 5 \u00b0C. Half the interval is that of the"
          + " drives' own readings or Student's t times the standard deviation between drives over"
          + " the root of their number, whichever is wider (JCGM 100:2008, 4.2 and G.3). The"
          + " correction of the odometer and how the display rounds are common to all and do not"
          + " average out. The spread between drives is their standard deviation and has no"
          + " interval.",
      "x = (x[1] + ... + x[n]) / n, s^2 = sum of (x[i] - x)^2 / (n - 1), half an interval = t * s /"
          + " sqrt(n)",
      List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /**
   * Range at speeds between those driven; the form of the road load is that of SAE J1263 and J2263,
   * from memory.
   */
  RANGE_OVER_SPEED(
      "Range over speed",
      "Consumption, and charge for each kilometre, of drives at three speeds or more as a straight line"
          + " over the square of the speed times the density of the air over that of the first"
          + " drive: rolling and auxiliary load do not depend on speed, drag grows with its square."
          + " The line is weighed by the"
          + " readings of consumption, charge and speed (D. York and others, American Journal of Physics"
          + " 72 (2004) 367-375). Half the interval is that of the readings or, with Student's t, of the"
          + " scatter about the line, whichever is wider, and the correction of the odometer in"
          + " quadrature. Nothing is stated outside the speeds that were driven.",
      "c = a + b * d / d[1] * v^2, R(v) = 100 / (a + b * v^2) with the charge for each kilometre",
      List.of(DISPLAY_STEP, SOC_SHARE_OF_RANGE, DISTANCE_AS_READ)),
  /** State of charge that a distance needs. */
  SOC_SHARE(
      "State of charge for a distance",
      "The distance as a share of the driven range of a full battery.",
      "share = 100 * D / R, or the other way round D = (v - q[1]) / 100 * R",
      List.of(SOC_SHARE_OF_RANGE, SAME_DRIVE_AGAIN)),
  /** Time until the state of charge for a distance is added. */
  TIME_TO_ADD_BY_SHARE(
      "Time to add a distance, driven basis",
      "Time from the first reading of state of charge until the true gain reaches the share of the"
          + " driven range that the distance is.",
      "t - t[1] with q(t) - q(t[1]) = 100 * D / R",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Distance gained after a time: the inverse of the time to add a distance. */
  DISTANCE_AFTER(
      "Distance after a time",
      "The true gain of charge since the first reading of state of charge, as a share of the range:"
          + " on each draw the inverse of the time to add that distance.",
      "R * (q(t[1] + T) - q(t[1])) / 100, with the driven or the rated range R",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** True state of charge after a time. */
  SOC_AFTER(
      "State of charge after a time",
      "The true state of charge so long after its first reading.",
      "q(t[1] + T), less what the display counts above the true charge",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Distance gained in a window over its time. */
  CHARGING_SPEED(
      "Speed of charging",
      "The distance that the charge gained over a window drives, over the time of the window.",
      "36 * R * (q(t(B)) - q(t(A))) / (t(B) - t(A)) in km/h, with the range R in km and t in s",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Door-to-door times. */
  DOOR_TO_DOOR(
      "Door to door",
      "Times between arriving, plugging in, first power, unplugging and leaving, as stated. First"
          + " power that is not stated is at the first row with power. Charging ends at unplugging,"
          + " or with the last row that shows power if it had stopped before or unplugging is not"
          + " stated. The overhead is the time from arriving to leaving, less that from first power"
          + " to the end of charging.",
      "left - arrived - (end of charging - first power)",
      List.of(DISPLAY_STEP)),
  /** Time until the energy for a distance is added. */
  TIME_TO_ADD_BY_ENERGY(
      "Time to add a distance, energy basis",
      "Time until the energy added reaches consumption times distance. A check on the driven basis"
          + " by another channel, without losses: a lower limit.",
      "t - t0 with E(t) - E(t0) = c * D / 1000",
      List.of(
          COUNTER_FROM_ZERO,
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SAME_DRIVE_AGAIN,
          NO_LOSSES)),
  /** Time until the share of the rated range for a distance is added. */
  TIME_TO_ADD_RATED(
      "Time to add a distance, rated basis",
      "As on the driven basis, with the range that the maker states in place of the driven one.",
      "t - t[1] with q(t) - q(t[1]) = 100 * D / R with the rated range R",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, RATED_RANGE_HOLDS)),
  /** Interpolation between two rows. */
  INTERPOLATION(
      "Reading at a state of charge",
      "Energy or power of the course at the time that the display first shows the state of charge.",
      "x(t(v))",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** A piecewise-linear fit of power over state of charge. */
  SEGMENTED_FIT(
      "Segments of the charging curve",
      "A line of straight segments, fitted to power over state of charge by least"
          + " squares, with one point for each step of the display (V. M. R. Muggeo, Statistics in"
          + " Medicine 22 (2003) 3055-3071). Between two segments either the slope changes or, at a"
          + " step, the power itself. As many of both as the stricter of two criteria supports: BIC,"
          + " or AICc where rows are few. Intervals are two standard"
          + " uncertainties to each side, and for a breakpoint never less than half a step of the"
          + " display; a breakpoint with too few readings beside it is known to the readings next"
          + " to it, and so is a step: its state of charge is the middle of the gap between them,"
          + " with the gap as bounds. A step changes the power by at least 2 % of the peak, and by more"
          + " than the segments beside it would in the gap; it may be a fall within the gap. A plateau changes"
          + " by less than 0.3 % of"
          + " the peak for each per cent, or by less than the display can tell; a steep fall"
          + " is one by at least 3 % of the peak for each per cent over at most 5 %; a warm-up climb"
          + " rises from the start of the session on.",
      "P(q) = P0 + s[1] * (q - q0) + sum of (s[k] - s[k-1]) * max(0, q - b[k]) + sum of h[k] where"
          + " q > b[k]",
      List.of(DISPLAY_STEP, STRAIGHT_SEGMENTS)),
  /** Where the power drops below a share of the peak for the last time. */
  LAST_FALL(
      "Where the power falls for good",
      "The true state of charge at the last time that the power falls below the share of the highest"
          + " reading and stays below it to the end of the readings.",
      "q(t) at the last t with P(t) = share * max(P) and less from then on",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Share of time above a power. */
  TIME_SHARE(
      "Share of the time above a power",
      "Time at which the piecewise-linear power is at or above the value, as a share of the time"
          + " over which power was read. At the least all gaps with both readings surely at or above"
          + " it; at the most all gaps with one reading that may be, and all time without readings"
          + " of power.",
      "100 * (seconds with P(t) >= v) / (t[n] - t[1])",
      List.of(TIME_FROM_PLUGGING_IN, DISPLAY_STEP, POWER_WITHIN_READINGS)),
  /** Time to charge from a state of charge until a distance is added. */
  PLUG_IN(
      "Minutes for a distance, by where one plugs in",
      "Time that the session took from one state of charge until the gain reached the share of the"
          + " driven range that the distance is; a is what the display shows where one plugs in.",
      "t(a + 100 * D / R) - t(a)",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC)),
  /** The same without the ramp at the start of the session. */
  PLUG_IN_WARM(
      "Minutes for a distance, battery warm already",
      "As above, with the climb at the start of the session taken out: below its end w the pace of"
          + " the stretch right after it is carried on downwards, a stretch as wide as the climb and"
          + " at least 5 %. An inference. The end of the climb is drawn from the interval of the fit.",
      "(w - a) * p + t(a + 100 * D / R) - t(w), p = (t(w + L) - t(w)) / L, L = max(5, w - q[1])",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC,
          PACE_OF_A_WARM_BATTERY)),
  /** Where to unplug before the next leg. */
  BEST_UNPLUG(
      "Best point to unplug before the next leg",
      "Of all stretches of the session that hold the charge for the leg, the one that took the least"
          + " time, found exactly: unplug at its upper end, and arrive at the next station at its"
          + " lower end, not below the reserve. The point is a choice made on the mean of the"
          + " courses and has no interval; its time has one. It holds where the next stop charges"
          + " on: before the last leg, just enough is faster. u is where one unplugs.",
      "least t(u) - t(u - 100 * D / R) over u",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN,
          CURVE_BY_SOC)),
  /** The fastest plan for a trip. */
  TRIP_PLAN(
      "Time for a trip",
      "The plan of least time, found exactly by dynamic programming over stations and states of"
          + " charge, or one that takes up to half a minute more with fewer stops: each stop unplugs at a whole per cent or with just enough for a later station"
          + " or the end, keeps the reserve, and stays within what the session went through. The"
          + " stops are a choice made on the mean of the courses and have no interval; the times"
          + " have the interval of this plan, held fixed while readings, range and speed are drawn."
          + " They are printed in whole minutes. The speed of a car's own display is corrected as"
          + " its distance is. Stop k"
          + " comes d[k] km after the one before and unplugs at u[k].",
      "sum over stops of overhead + t(u[k]) - t(u[k-1] - 100 * d[k] / R), plus D / speed",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          CURVE_BY_SOC,
          TRIP_AS_TESTED)),
  /** Distance added per minute. */
  ROAD_PER_MINUTE(
      "Distance for each minute",
      "The driven range of 10 % over the time that 10 % took, for the stretch that is fastest and"
          + " for all others. Where a stretch begins is a choice made on the mean of the courses"
          + " and has no interval. The distance falls to half where 10 % take twice the time of the"
          + " fastest stretch for good, told by the middle of the stretch.",
      "6 * R / (t(a + 10) - t(a)) in km/min, with R in km and t in s",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          POWER_WALK,
          READING_HABIT,
          SOC_SHARE_OF_RANGE,
          SAME_DRIVE_AGAIN)),
  /** Cost of charging. */
  COST(
      "Cost",
      "Energy times its price, time times its price, and the fee. Energy is what the station"
          + " delivered if that was recorded, else what the car counted, and then the cost is at"
          + " least so much. Over a distance it is divided by what the session added to the driven"
          + " range.",
      "price * E + price per minute * t[n] / 60 + fee; for 100 km times 100 * 100 / ((q[n] - q[1])"
          + " * R)",
      List.of(DISPLAY_STEP, COUNTER_FROM_ZERO, PRICES_AS_STATED, SOC_SHARE_OF_RANGE)),
  /** The drive in standard air. */
  STANDARD_RANGE(
      "Range under standard conditions",
      "The driven range times measured over corrected consumption (range is usable energy over"
          + " consumption, SAE J1634). The correction holds what the density of the air, the wind"
          + " and the difference in height made of the consumption, by the road load, against"
          + " standard air of 15 \u00b0C and 1013.25 hPa (ISO 2533), still, on a level road. Nothing"
          + " else is corrected: not heating or cooling, not tyres, not the battery's temperature."
          + " rho is the density of the air in kg/m3 and rho0 that of standard air, W what the wind"
          + " makes of the drag, A the drag area in m2, v the speed in m/s, n the share of energy"
          + " that reaches the wheels, m the mass in kg, g 9.80665 m/s2, h the climb in m.",
      "R * c / (c - x), x = (rho * W - rho0) * A * v^2 / 7.2 / n + m * g * h / (3600 * D) / n",
      List.of(
          DISPLAY_STEP,
          DISTANCE_AS_READ,
          SOC_SHARE_OF_RANGE,
          STEADY_DRIVE,
          DRIVE_EFFICIENCY,
          DRY_AIR)),
  /** Mean of both directions of a drive. */
  TWO_WAY_MEAN(
      "Two-way consumption",
      "Consumption of all legs called out and of all called back, and the mean of the two, so that"
          + " each direction counts alike.",
      "(c(out) + c(back)) / 2, c = 1000 * energy used / (distance * correction)",
      List.of(DISPLAY_STEP, DISTANCE_AS_READ)),
  /** Peak over average. */
  PEAK_TO_AVERAGE(
      "Peak-to-average ratio",
      "The highest power that was read divided by the average over time of the power readings.",
      "max(P) * (t[n] - t[1]) / 3600 / E",
      List.of(DISPLAY_STEP, POWER_WITHIN_READINGS)),
  /** Power over the energy of a full battery. */
  C_RATE(
      "Power over the battery's energy",
      "Peak or average power divided by the usable energy of the battery as the tester states it,"
          + " or by the implied energy of a full charge where none is stated: the C-rate, so that"
          + " batteries of different sizes can be compared. Its interval takes those of power and"
          + " energy at their worst; an energy that is stated is uncertain by its last digit, or by what the tester"
          + " writes to give or take.",
      "P / E",
      List.of(DISPLAY_STEP, STATED_ENERGY)),
  /** Time to add a distance from a given state of charge. */
  TIME_TO_ADD_FROM(
      "Time to add a distance from a state of charge on",
      "Time from first reaching a state of charge A, the same for all sessions of the report, until"
          + " the gain above it reaches the share of the range that the distance is.",
      "t(A + 100 * D / R) - t(A), with the driven or the rated range R",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT, SOC_SHARE_OF_RANGE)),
  /** Time to add an energy from a given state of charge. */
  TIME_TO_ADD_ENERGY(
      "Time to add an energy from a state of charge on",
      "Time from first reaching a state of charge A, the same for all sessions of the report, until"
          + " the energy added since reaches the value.",
      "t - t(A) with E(t) - E(t(A)) = the energy",
      List.of(DISPLAY_STEP, ONE_COURSE, POWER_WALK, READING_HABIT)),
  /** Range of state of charge that two sessions share. */
  SHARED_WINDOW(
      "States of charge that two sessions share",
      "From the higher of the two at which power and state of charge were first read together, to"
          + " the lower of the two at which they were last.",
      "from = max(q_a[1], q_b[1]), to = min(q_a[n], q_b[n])",
      List.of(DISPLAY_STEP)),
  /** Where one power curve lies above another. */
  LEAD_STRETCH(
      "Where one curve leads",
      "All states of charge over which the band of the difference in power lies on one side of zero."
          + " The band holds the whole course of the true difference in 95 % of cases: from the d-th"
          + " smallest to the d-th largest of the differences of drawn pairs of sessions, with the"
          + " greatest d that leaves 95 % of the pairs inside everywhere (J. L. Montiel Olea, M."
          + " Plagborg-M\u00f8ller, Journal of Applied Econometrics 34 (2019) 1-17). The edges say how"
          + " far the lead is beyond doubt; it may reach farther. A lead over less than 1 % is not"
          + " told.",
      "low(q) > 0 or high(q) < 0, with the band low(q) to high(q) of P_a(q) - P_b(q); P(q) = P(t) at"
          + " the first t that reaches q",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Where two power curves cross. */
  CURVE_CROSSING(
      "Where two curves cross",
      "Where the mean difference of the courses changes sign between a stretch in which"
          + " one session surely takes more power and the next in which the other does. The interval"
          + " runs from the end of the one stretch to the start of the other.",
      "q with P_a(q) = P_b(q); P(q) = P(t) at the first t that reaches q",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Mean difference of two power curves. */
  POWER_LEAD(
      "Lead in power",
      "Mean over state of charge of this session's power less the other's, both when a state of"
          + " charge is first reached. Positive where this session takes more. The interval holds 95 %"
          + " of drawn pairs of sessions, with equal shares on both sides (JCGM 101:2008, 5.3.3).",
      "1 / (B - A) * integral of (P_a(q) - P_b(q)) dq from A to B",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Difference of the same number of two sessions. */
  DIFFERENCE(
      "Difference",
      "The number of the reported session less that of the other. The interval adds the squares of"
          + " the sides that face each other (JCGM 100:2008, 5.1.2), and of what runs differ by beyond"
          + " their readings where that is known. What both numbers rest on, such as one drive, is"
          + " taken for independent, which widens it.",
      "d = a - b, -sqrt(l_a^2 + h_b^2 + s^2), +sqrt(h_a^2 + l_b^2 + s^2)",
      List.of(SESSIONS_INDEPENDENT, RUN_FACTOR)),
  /** Difference of the times for the same share of charge. */
  TIME_GAIN(
      "Time gained",
      "Time that the other session took for a stretch of state of charge less the time that this"
          + " one took: the same share of charge, which is not the same energy where the batteries"
          + " differ. Positive where this session is faster. The interval holds 95 % of drawn pairs of"
          + " sessions, with equal shares on both sides (JCGM 101:2008, 5.3.3).",
      "(t_b(B) - t_b(A)) - (t_a(B) - t_a(A)), t(q) = the first time that reaches q",
      List.of(
          DISPLAY_STEP,
          ONE_COURSE,
          SESSIONS_INDEPENDENT,
          RUN_FACTOR,
          DISPLAY_CALIBRATION_LEFT_OUT)),
  /** Mean over runs. */
  RUN_MEAN(
      "Mean of the runs",
      "Mean over the runs, with the 95 % interval for the mean of all runs of this car under these"
          + " conditions: Student's factor times the spread between the runs over the root of their"
          + " number (JCGM 100:2008, 4.2 and G.3), but no less than a step of the display.",
      "m = (x_1 + ... + x_n) / n, give or take t(n - 1) * s / root(n)",
      List.of(RUNS_ALIKE)),
  /** Standard deviation between runs. */
  RUN_SPREAD(
      "Spread between runs",
      "Sample standard deviation of the runs, errors of reading included; its interval is by the"
          + " chi-square distribution.",
      "s = root(sum of (x_i - m)^2 / (n - 1))",
      List.of(RUNS_ALIKE)),
  /** Standard deviation between runs in excess of reading uncertainty. */
  RUN_TO_RUN(
      "Spread beyond the readings",
      "What of the spread between runs the errors of reading do not explain; 0 where they explain"
          + " all of it. u is the standard uncertainty of a run by its readings.",
      "tau = root(max(0, s^2 - mean of u_i^2))",
      List.of(RUNS_ALIKE)),
  /** Prediction of one more run. */
  NEXT_RUN(
      "Next run",
      "Mean of the runs, with the interval in which one more run under these conditions would be read"
          + " in 95 % of cases.",
      "m, give or take t(n - 1) * s * root(1 + 1 / n)",
      List.of(RUNS_ALIKE)),
  /** Ratio of a cold run to a warm one. */
  SEASON_RATIO(
      "Cold over warm",
      "A number of the cold run over that of the warm one. Relative variances add (JCGM 100:2008,"
          + " 5.1.6): of the readings, and of how much runs of a session differ where that is known."
          + " A time for a distance rests on the same drives in both, whose uncertainty cancels. All"
          + " that differs between the days is in the ratio, the battery's temperature included.",
      "r = c / w, give or take 1.96 * r * root((u(c) / c)^2 + (u(w) / w)^2)",
      List.of(SESSIONS_INDEPENDENT)),
  /** Mean over pairs of cold and warm runs. */
  SEASON_MEAN(
      "Cold over warm, mean of pairs",
      "Mean of the ratios of several pairs. Half the interval is Student's factor times their"
          + " standard deviation over the root of their number, or that of the readings, whichever"
          + " is wider (JCGM 100:2008, 4.2 and G.3).",
      "m = (r_1 + ... + r_n) / n, give or take t(n - 1) * s / root(n)",
      List.of(SESSIONS_INDEPENDENT, RUNS_ALIKE));

  private static final Set<Method> WITH_ENERGY =
      EnumSet.of(
          ENERGY_COUNTER,
          ENERGY_SHARE,
          ENERGY_LINE,
          FULL_ENERGY_CHANGE,
          FULL_ENERGY_SLOPE,
          CHARGING_LOSS,
          DRIVE_SHARE,
          TIME_AVERAGE,
          SOC_AVERAGE,
          TIME_TO_ADD_BY_ENERGY,
          TIME_TO_ADD_ENERGY,
          INTERPOLATION,
          COST,
          C_RATE);

  private static final Set<Method> WITH_WHOLE_SESSION =
      EnumSet.of(
          HOLD,
          RECORDED_TIME,
          SEGMENTED_FIT,
          TIME_SHARE,
          PEAK_TO_AVERAGE,
          PLUG_IN,
          PLUG_IN_WARM,
          BEST_UNPLUG,
          TRIP_PLAN,
          ROAD_PER_MINUTE,
          INTERRUPTIONS);

  /**
   * Versions of methods whose results have changed; all others are at version 1. Add every change
   * of a computation here, so that {@code verify} can name it for a report of an earlier program
   * version.
   */
  private static final Map<Method, Integer> REVISED = Map.of();

  private final String title;
  private final String definition;
  private final String formula;
  private final List<Assumption> assumptions;

  Method(String title, String definition, String formula, List<Assumption> assumptions) {
    this.title = title;
    this.definition = definition;
    this.formula = formula;
    this.assumptions = assumptions;
  }

  /** Returns the inputs that the method needs in addition to those of the number itself. */
  Set<Input> inputs() {
    EnumSet<Input> inputs = EnumSet.noneOf(Input.class);
    if (WITH_ENERGY.contains(this)) {
      inputs.add(Input.ENERGY);
    }
    if (WITH_WHOLE_SESSION.contains(this)) {
      inputs.add(Input.WHOLE_SESSION);
    }
    return inputs;
  }

  /** Returns the id used in files, such as {@code highest_reading}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * Returns the version, from 1. Different versions may give different numbers for the same
   * readings.
   */
  public int version() {
    return REVISED.getOrDefault(this, 1);
  }

  /** Returns the method's heading. */
  public String title() {
    return title;
  }

  /** Returns the definition in full sentences. */
  public String definition() {
    return definition;
  }

  /**
   * Returns the formula in ASCII: readings x[1] to x[n], state of charge q in %, time t in s, power
   * P in kW, energy E in kWh; a name followed by a time in brackets is the value of a curve at that
   * time.
   */
  public String formula() {
    return formula;
  }

  /** Returns the assumptions of the method. */
  public List<Assumption> assumptions() {
    return assumptions;
  }
}
