package taperbook.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** A folder of invented sessions of a few invented cars, with piecewise linear curves. */
public final class ManySessions {
  private static final List<String> CARS =
      List.of("Northmoor Finch", "Veldt Carrier", "Penhale Tern", "Harrow Plover", "Ostrava Lark");

  private final Path folder;

  ManySessions(Path folder) {
    this.folder = folder;
  }

  /** Writes the given number of sessions, a range test of each car but the last, and a library. */
  public static Workplace write(Path folder, int count) throws IOException {
    ManySessions all = new ManySessions(folder);
    for (int car = 0; car + 1 < CARS.size(); car++) {
      all.rangeTest(car);
    }
    for (int i = 0; i < count; i++) {
      all.session(i);
    }
    all.file(
        "reports/library.md",
        """
        ---
        kind: library
        title: Many visits
        published: 2026-05-10
        distances: 100 km, 150 km
        window: 30-70 %
        ---
        All of it is invented.
        """);
    return new Workplace(folder);
  }

  static String name(int number) {
    return String.format(Locale.ROOT, "visit-%04d", number);
  }

  private void session(int number) throws IOException {
    Random random = new Random(number);
    double peak = 80 + random.nextInt(150);
    double capacity = 50 + random.nextInt(50);
    int start = 5 + random.nextInt(30);
    StringBuilder rows = new StringBuilder("elapsed [s],soc [%],power [kW],energy added [kWh]\n");
    double soc = start;
    for (int second = 0; soc < 85; second += 60) {
      double power = Math.round(soc < 50 ? peak : peak * (1 - (soc - 50) / 60));
      double energy = (soc - start) / 100 * capacity;
      rows.append(
          String.format(Locale.ROOT, "%d,%.0f,%.0f,%.1f%n", second, soc, power, energy)
              .replace(System.lineSeparator(), "\n"));
      soc += power / 60 / capacity * 100;
    }
    file("sessions/" + name(number) + "/readings.csv", rows.toString());
    file(
        "sessions/" + name(number) + "/conditions.csv",
        String.join(
            "\n",
            "item,value,unit,how known",
            "date,"
                + String.format(Locale.ROOT, "2025-%02d-%02d", 1 + number % 12, 1 + number % 28)
                + ",,displayed",
            "vehicle," + CARS.get(number % CARS.size()) + ",,displayed",
            "odometer," + (1000 + 17 * number) + ",km,displayed",
            "station rated power,300,kW,displayed",
            "ambient temperature,18,Cel,displayed",
            number % 3 == 0
                ? "battery temperature at start,,,unknown"
                : "battery temperature at start," + (10 + number % 25) + ",Cel,displayed",
            "preconditioned," + (number % 2 == 0 ? "yes" : "no") + ",,displayed",
            "read from,film,,displayed",
            ""));
  }

  private void rangeTest(int car) throws IOException {
    file(
        "sessions/drive-" + car + "/range-test.csv",
        String.join(
            "\n",
            "item,value,unit,how known",
            "date,2025-01-05,,displayed",
            "vehicle," + CARS.get(car) + ",,displayed",
            "distance," + (250 + 60 * car) + ",km,displayed",
            "start soc,95,%,displayed",
            "end soc,5,%,displayed",
            "energy used,60,kWh,displayed",
            "average speed,100,km/h,displayed",
            "ambient temperature,15,Cel,displayed",
            ""));
  }

  private void file(String path, String text) throws IOException {
    int slash = path.lastIndexOf('/');
    Files.createDirectories(folder.resolve(path.substring(0, slash)));
    Files.writeString(folder.resolve(path), text);
  }
}
