package taperbook.output.data;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import taperbook.quantity.Estimate;
import taperbook.result.StopTimes;

/**
 * Charging times by starting charge and distance, as JSON. {@code numbers.json} and the page
 * contain the same text, so that they cannot differ. For each charge from {@code first_soc} one
 * line, with for each multiple of {@code distance_step} the value and the ends of its interval in
 * whole seconds; the ends are rounded outward.
 */
public final class StopTimesJson {
  private StopTimesJson() {}

  /** Returns an object for use as the value of a field. */
  public static String of(StopTimes times) {
    return "{\"unit\": \"s\", \"basis\": \"driven\", \"coverage\": 0.95, \"distance_unit\": \""
        + times.step().unit().symbol()
        + "\", \"distance_step\": "
        + times.step().amount()
        + ", \"first_soc\": "
        + times.firstSoc()
        + ", \"seconds\": [\n"
        + times.rows().stream().map(StopTimesJson::row).collect(Collectors.joining(",\n"))
        + "\n]}";
  }

  private static String row(List<Estimate> row) {
    return row.stream().map(StopTimesJson::time).collect(Collectors.joining(",", "[", "]"));
  }

  private static String time(Estimate time) {
    return "["
        + rounded(time.value(), RoundingMode.HALF_EVEN)
        + ","
        + rounded(time.bounds().low(), RoundingMode.FLOOR)
        + ","
        + rounded(time.bounds().high(), RoundingMode.CEILING)
        + "]";
  }

  private static String rounded(double seconds, RoundingMode rounding) {
    return new BigDecimal(seconds).setScale(0, rounding).toPlainString();
  }
}
