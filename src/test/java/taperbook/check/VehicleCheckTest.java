package taperbook.check;

import static org.assertj.core.api.Assertions.assertThat;
import static taperbook.check.Given.CONDITIONS;
import static taperbook.check.Given.RANGE_TEST;

import java.util.List;
import org.junit.jupiter.api.Test;
import taperbook.model.RangeTest;
import taperbook.model.Session;
import taperbook.problem.Problem;
import taperbook.problem.Severity;

final class VehicleCheckTest {
  private static final String READINGS = "elapsed [s],soc [%]\n0,10\n1,11\n";
  private final Session finch = session("Northmoor Finch");
  private final Session carrier = session("Veldt Carrier");

  @Test
  void rangeTestOfASessionsVehicleIsFine() {
    assertThat(VehicleCheck.check(List.of(carrier, finch), List.of(rangeTest("Northmoor Finch"))))
        .isEmpty();
  }

  @Test
  void rangeTestOfAnotherVehicleIsToldOfAsANotice() {
    List<Problem> problems =
        VehicleCheck.check(
            List.of(finch, carrier), List.of(rangeTest("Northmor Finch"), rangeTest("Bicycle")));
    assertThat(problems).allMatch(p -> p.severity() == Severity.NOTICE);
    assertThat(problems.stream().map(Problem::sentence))
        .containsExactly(
            "t.csv:3: found the vehicle \"Northmor Finch\"; expected the vehicle of a session in the"
                + " report: \"Northmoor Finch\", \"Veldt Carrier\". To mend: write \"Northmoor"
                + " Finch\" if they are the same. [vehicle-differs]",
            "t.csv:3: found the vehicle \"Bicycle\"; expected the vehicle of a session in the report:"
                + " \"Northmoor Finch\", \"Veldt Carrier\". To mend: name a range test of that"
                + " vehicle, or leave this one out. [vehicle-differs]");
  }

  @Test
  void secondRangeTestOfTheSameVehicleIsToldToBeUnused() {
    RangeTest test = rangeTest("Northmoor Finch");
    assertThat(
            VehicleCheck.check(List.of(finch), List.of(test, test)).stream().map(Problem::sentence))
        .containsExactly(
            "t.csv: found a second range test of \"Northmoor Finch\" in the report, which is not"
                + " used; expected one range test for each vehicle; the one in t.csv is used, as it"
                + " is named first. To mend: name the one first that is meant, and take the other"
                + " out of the front matter. [range-test-unused]");
  }

  private static Session session(String vehicle) {
    return Given.good(Given.session(READINGS, CONDITIONS.replace("Northmoor Finch", vehicle)));
  }

  private static RangeTest rangeTest(String vehicle) {
    return Given.good(Given.rangeTest(RANGE_TEST.replace("Northmoor Finch", vehicle)));
  }
}
