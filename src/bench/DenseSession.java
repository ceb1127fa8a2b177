
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * Writes a project folder with one invented session of any number of rows, and its report. Power is
 * constant from 10 % to 40 % and then falls linearly over the charge, down to two fifths at 80 %.
 *
 * <pre>java src/bench/DenseSession.java FOLDER ROWS SECONDS CAPACITY [hand]</pre>
 *
 * <p>The capacity is in kWh. A logger at 10 Hz writes 1,008,000 rows in 100,800 s (28 h). With
 * {@code hand}, rows are as read from a display: whole percents and kilowatts, tenths of a
 * kilowatt-hour.
 */
public final class DenseSession {
  private static final double START = 0.1;
  private static final double BREAK = 0.4;
  private static final double SLOPE = 1.5;

  /** Energy from the break to 80 % at constant power would take 0.4; the fall takes longer. */
  private static final double DURATION = BREAK - START + Math.log(1 / (1 - 0.4 * SLOPE)) / SLOPE;

  private DenseSession() {}

  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    int rows = Integer.parseInt(arguments[1]);
    double seconds = Double.parseDouble(arguments[2]);
    double capacity = Double.parseDouble(arguments[3]);
    boolean hand = arguments.length > 4;
    String format = hand ? "%.0f,%.0f,%.0f,%.1f\n" : "%.3f,%.2f,%.1f,%.3f\n";
    StringBuilder text = new StringBuilder("elapsed [s],soc [%],power [kW],energy added [kWh]\n");
    double peak = DURATION * capacity * 3600 / seconds;
    for (int row = 0; row < rows; row++) {
      double second = seconds * row / (rows - 1);
      double soc = soc(peak / capacity * second / 3600);
      double power = peak * (1 - SLOPE * Math.max(0, soc - BREAK));
      text.append(
          String.format(
              Locale.ROOT, format, second, 100 * soc, power, capacity * (soc - START)));
    }
    write(folder, "sessions/dense/readings.csv", text.toString());
    write(
        folder,
        "sessions/dense/conditions.csv",
        String.format(Locale.ROOT, CONDITIONS, capacity, hand ? "film" : "log"));
    write(folder, "reports/dense.md", REPORT);
  }

  /** Returns the charge after a time, in units of the time that the peak takes for the capacity. */
  private static double soc(double time) {
    double after = time - (BREAK - START);
    return after <= 0 ? START + time : BREAK + (1 - Math.exp(-SLOPE * after)) / SLOPE;
  }

  private static void write(Path folder, String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }

  private static final String CONDITIONS =
      """
      item,value,unit,how known
      date,2026-04-18,,measured
      vehicle,Northmoor Finch,,measured
      place,Quarry Lane,,measured
      odometer,6120,km,displayed
      station rated power,200,kW,displayed
      ambient temperature,13,Cel,displayed
      battery temperature at start,27,Cel,displayed
      preconditioned,yes,,displayed
      battery usable energy,%.0f,kWh,from the maker
      read from,%s,,measured
      """;

  private static final String REPORT =
      """
      ---
      title: One session of many rows
      published: 2026-04-24
      session: dense
      ---
      All of it is invented.
      """;
}
