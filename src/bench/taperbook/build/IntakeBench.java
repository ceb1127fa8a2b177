package taperbook.build;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import taperbook.cli.ProgressListener;
import taperbook.plan.LibraryPlan;

/**
 * Measures the time for parsing, validating, and measuring all sessions of a folder for its
 * library, without charts and output.
 *
 * <pre>
 * javac -d /tmp/bench -cp target/taperbook.jar src/bench/taperbook/build/IntakeBench.java
 * java -cp /tmp/bench:target/taperbook.jar taperbook.build.IntakeBench FOLDER [PASSES]
 * </pre>
 */
public final class IntakeBench {
  private static final double NANOS_PER_SECOND = 1e9;

  private IntakeBench() {}

  public static void main(String[] arguments) {
    int passes = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 1;
    for (int i = 0; i < passes; i++) {
      pass(Path.of(arguments[0]));
    }
    // Not after each pass: the JVM would return the heap and allocate it again during the next
    // pass.
    System.gc();
    long used = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    System.out.printf(Locale.ROOT, "%d MB stay in use%n", used >> 20);
  }

  private static void pass(Path folder) {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    CommandContext commandContext = CommandContext.in(folder, Map.of());
    LibraryPlan plan =
        (LibraryPlan) commandContext.project().plan("library").value().orElseThrow();
    LibraryBuild build =
        new LibraryBuild(
            plan,
            commandContext.project().article("library").value().orElseThrow(),
            commandContext);
    long wall = System.nanoTime();
    long cpu = system.getProcessCpuTime();
    int rows = build.intake(false, ProgressListener.NONE).result().rows().size();
    wall = System.nanoTime() - wall;
    cpu = system.getProcessCpuTime() - cpu;
    System.out.printf(
        Locale.ROOT,
        "%d sessions: %.2f s wall, %.2f s processor%n",
        rows,
        wall / NANOS_PER_SECOND,
        cpu / NANOS_PER_SECOND);
  }
}
