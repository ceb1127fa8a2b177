package taperbook.model;

import java.util.Set;

/**
 * Something a reader must know to use a number rightly.
 *
 * @param kind what it is about
 * @param sentence the caveat in words, a full sentence
 */
public record Caveat(Kind kind, String sentence) {
  /** What caveats are about. Each kind has its place in the list of a report. */
  public enum Kind {
    /** That charging stood still in between. */
    INTERRUPTION("Interruption", Input.WHOLE_SESSION),
    /** The battery's temperature at the start. */
    BATTERY_TEMPERATURE("Battery temperature", Input.COURSE),
    /** Whether the battery was made ready. */
    PRECONDITIONING("Preconditioning", Input.COURSE),
    /** The state of charge that the session began at. */
    STARTING_SOC("Starting state of charge", Input.COURSE),
    /** What the station could give. */
    STATION_LIMIT("Station limit", Input.COURSE),
    /** Whether the station was shared. */
    STATION_SHARED("Shared station", Input.COURSE),
    /** The battery's age. */
    ODOMETER("Odometer and battery age", Input.COURSE),
    /** The weather. */
    AMBIENT_TEMPERATURE("Ambient temperature", Input.COURSE),
    /** How the readings were taken. */
    READINGS("How it was read", Input.READINGS),
    /** Readings that do not fit the others, and those that were looked at again. */
    DOUBTFUL_READING("Doubtful readings"),
    /** Gaps between readings. */
    GAPS("Gaps between readings", Input.COURSE),
    /** An energy counter that began anew, and where power and energy were measured. */
    ENERGY_COUNTER("Energy counter", Input.ENERGY),
    /** What the clock of the recording did. */
    CLOCK("Clock", Input.COURSE),
    /** What the session did not record. */
    CHANNELS("Channels recorded"),
    /** How well the energy lies on a line over the state of charge. */
    ENERGY_LINE("Energy over state of charge"),
    /** What is lost between charging and driving, and left out. */
    LOSSES("Losses between charging and driving"),
    /** What a station's meter may be off by. */
    METER("The station's meter"),
    /** What was assumed about the range test. */
    RANGE_TEST("Range test", Input.RANGE_TEST),
    /** How the drive was driven. */
    DRIVE("Conditions of the drive", Input.RANGE_TEST),
    /** What was inferred and not seen. */
    INFERENCE("Inferences"),
    /** What a plan of stops rests on. */
    PLAN("Plans for the road"),
    /** What a cost leaves out. */
    COST("Cost"),
    /** What a physical model leaves out. */
    MODEL("Standard conditions"),
    /** How many runs there are, and whether they are alike. */
    REPEATS("Repeats"),
    /** What a ratio of cold to warm runs rests on. */
    SEASON("Season"),
    /** Cross-checks that do not agree. */
    CROSS_CHECK("Cross-check"),
    /** Remarks of the tester's. */
    REMARK("Remark");

    private final String title;
    private final Set<Input> concerned;

    Kind(String title, Input... concerned) {
      this.title = title;
      this.concerned = Set.of(concerned);
    }

    /** The kind in words, as a heading. */
    public String title() {
      return title;
    }

    /**
     * Returns the inputs that a caveat of this kind concerns; empty if each number that it concerns
     * carries it on its own.
     */
    public Set<Input> concerned() {
      return concerned;
    }
  }
}
