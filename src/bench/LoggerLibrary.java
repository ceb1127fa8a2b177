
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Writes a project folder with many invented logger sessions of 3,600 rows each, and either a
 * library of all of them or a report of each.
 *
 * <pre>java src/bench/LoggerLibrary.java FOLDER SESSIONS [library|reports|both]</pre>
 */
public final class LoggerLibrary {
  private static final int ROWS = 3600;
  private static final String[] CARS = {
    "Northmoor Finch", "Veldt Carrier", "Penhale Tern", "Harrow Plover", "Ostrava Lark"
  };

  private final Path folder;

  private LoggerLibrary(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws IOException {
    LoggerLibrary library = new LoggerLibrary(Path.of(arguments[0]));
    int sessions = Integer.parseInt(arguments[1]);
    String what = arguments.length > 2 ? arguments[2] : "library";
    for (int car = 0; car < CARS.length; car++) {
      library.drive(car);
    }
    IntStream.range(0, sessions).parallel().forEach(library::session);
    if (!what.equals("reports")) {
      library.write(
          "reports/library.md",
          """
          ---
          kind: library
          title: Many logged visits
          published: 2026-05-10
          distances: 100 km, 150 km
          window: 20-70 %
          ---
          All of it is invented.
          """);
    }
    for (int i = 0; i < sessions && !what.equals("library"); i++) {
      library.write(
          String.format(Locale.ROOT, "reports/about-%05d.md", i),
          String.format(
              Locale.ROOT,
              """
              ---
              title: One logged visit
              published: 2026-05-10
              session: visit-%05d
              range test: drive-%d
              distances: 100 km
              window: 20-70 %%
              ---
              All of it is invented.
              """,
              i,
              i % CARS.length));
    }
  }

  /** One session: constant power, then a linear fall over the charge. */
  private void session(int number) {
    SplittableRandom random = new SplittableRandom(number);
    double capacity = 50 + random.nextInt(50);
    double start = 5 + random.nextInt(10);
    double peak = capacity * (1.0 + 0.6 * random.nextDouble());
    StringBuilder rows = new StringBuilder(ROWS * 32);
    rows.append("elapsed [s],soc [%],power [kW],energy added [kWh],battery temperature [Cel]\n");
    double added = 0;
    for (int second = 0; second < ROWS; second++) {
      double soc = start + 100 * added / capacity;
      double power = Math.max(3, soc < 50 ? peak : peak * (1 - (soc - 50) / 55));
      double shown = power + 0.4 * (random.nextDouble() - 0.5);
      rows.append(second).append(',');
      digits(rows, Math.min(100, soc), 10).append(',');
      digits(rows, shown, 10).append(',');
      digits(rows, added, 100).append(',');
      digits(rows, 20 + 15.0 * second / ROWS, 10).append('\n');
      added += power / 3600;
    }
    String name = String.format(Locale.ROOT, "sessions/visit-%05d/", number);
    write(name + "readings.csv", rows.toString());
    write(
        name + "conditions.csv",
        String.format(
            Locale.ROOT,
            """
            item,value,unit,how known
            date,%d-%02d-%02d,,displayed
            vehicle,%s,,displayed
            place,Quarry Lane,,displayed
            odometer,%d,km,displayed
            station rated power,300,kW,displayed
            ambient temperature,%d,Cel,displayed
            battery temperature at start,20,Cel,displayed
            preconditioned,%s,,displayed
            read from,log,,displayed
            """,
            2022 + number % 4,
            1 + number % 12,
            1 + number % 28,
            CARS[number % CARS.length],
            1000 + number,
            5 + number % 25,
            number % 2 == 0 ? "yes" : "no"));
  }

  private static StringBuilder digits(StringBuilder text, double value, int parts) {
    long scaled = Math.round(value * parts);
    text.append(scaled / parts).append('.');
    if (parts == 100 && scaled % parts < 10) {
      text.append('0');
    }
    return text.append(scaled % parts);
  }

  private void drive(int car) {
    write(
        "sessions/drive-" + car + "/range-test.csv",
        String.format(
            Locale.ROOT,
            """
            item,value,unit,how known
            date,2025-01-05,,displayed
            vehicle,%s,,displayed
            distance,%d,km,displayed
            start soc,95,%%,displayed
            end soc,5,%%,displayed
            energy used,60,kWh,displayed
            average speed,100,km/h,displayed
            ambient temperature,15,Cel,displayed
            """,
            CARS[car],
            250 + 60 * car));
  }

  private void write(String path, String text) {
    try {
      Path file = folder.resolve(path);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
