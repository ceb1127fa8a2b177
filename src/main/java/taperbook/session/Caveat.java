package taperbook.session;

import java.util.Set;

/**
 * A limitation that a reader needs to know to interpret a number correctly.
 *
 * @param kind what the caveat is about
 * @param fact the fact in this case, as one or more full sentences
 * @param meaning the consequence of the fact in every such case, as full sentences; may be empty.
 *     Caveats of several sessions with the same meaning are printed as one
 */
public record Caveat(Kind kind, String fact, String meaning) {
  /** Creates a caveat without a shared meaning. */
  public Caveat(Kind kind, String sentence) {
    this(kind, sentence, "");
  }

  /** Returns the whole caveat as text. */
  public String sentence() {
    return meaning.isEmpty() ? fact : fact + " " + meaning;
  }

  /** Headings that group a list of caveats. */
  public enum Topic {
    INTERRUPTIONS("Interruptions"),
    /** The battery's state and the starting point on its charging curve. */
    BATTERY("Battery and start"),
    STATION("Station"),
    WEATHER("Weather while charging"),
    /** How the readings were taken. */
    READINGS("Readings"),
    /** Energy, the energy counter and losses. */
    ENERGY("Energy and losses"),
    /** The drive that distances are based on. */
    DRIVE("Range test"),
    INFERENCE("Plans and models"),
    COST("Cost"),
    /** Repeated runs. */
    REPEATS("Repeats and seasons"),
    /** Figures computed in a second way. */
    CHECKS("Cross-checks"),
    REMARKS("Remarks");

    private final String title;

    Topic(String title) {
      this.title = title;
    }

    /** Returns the heading of the topic. */
    public String title() {
      return title;
    }
  }

  /** Subjects of caveats. The order of the constants is the order in a report. */
  public enum Kind {
    /** Charging was interrupted. */
    INTERRUPTION(Topic.INTERRUPTIONS, "Interruption", Input.WHOLE_SESSION),
    /** The battery's temperature at the start. */
    BATTERY_TEMPERATURE(Topic.BATTERY, "Battery temperature", Input.COURSE),
    /** Whether the battery was preconditioned. */
    PRECONDITIONING(Topic.BATTERY, "Preconditioning", Input.COURSE),
    /** State of charge at the start of the session. */
    STARTING_SOC(Topic.BATTERY, "Starting state of charge", Input.COURSE),
    /** Maximum output of the station. */
    STATION_LIMIT(Topic.STATION, "Station limit", Input.COURSE),
    /** Whether the station was shared. */
    STATION_SHARED(Topic.STATION, "Shared station", Input.COURSE),
    ODOMETER(Topic.BATTERY, "Odometer and battery age", Input.COURSE),
    AMBIENT_TEMPERATURE(Topic.WEATHER, "Ambient temperature", Input.COURSE),
    /** How the readings were taken. */
    READINGS(Topic.READINGS, "How it was read", Input.READINGS),
    /** Readings that do not fit the others, and readings that were rechecked. */
    DOUBTFUL_READING(Topic.READINGS, "Doubtful readings"),
    /** Gaps between readings. */
    GAPS(Topic.READINGS, "Gaps between readings", Input.COURSE),
    /** A reset of the energy counter, and where power and energy were measured. */
    ENERGY_COUNTER(Topic.ENERGY, "Energy counter", Input.ENERGY),
    /** Irregularities of the recording clock. */
    CLOCK(Topic.READINGS, "Clock", Input.COURSE),
    /** Channels that the session did not record. */
    CHANNELS(Topic.READINGS, "Channels recorded"),
    /** How well energy follows a straight line over state of charge. */
    ENERGY_LINE(Topic.ENERGY, "Energy over state of charge"),
    /** Losses between charging and driving, which are left out. */
    LOSSES(Topic.ENERGY, "Losses between charging and driving"),
    /** Possible error of the station's meter. */
    METER(Topic.ENERGY, "The station's meter"),
    /** What was assumed about the range test. */
    RANGE_TEST(Topic.DRIVE, "Range test", Input.RANGE_TEST),
    /** Conditions of the drive. */
    DRIVE(Topic.DRIVE, "Conditions of the drive", Input.RANGE_TEST),
    /** Values that were inferred, not observed. */
    INFERENCE(Topic.INFERENCE, "Inferences"),
    /** Limits of a plan of charging stops. */
    PLAN(Topic.INFERENCE, "Plans for the road"),
    /** Items that a cost leaves out. */
    COST(Topic.COST, "Cost"),
    /** Effects that a physical model leaves out. */
    MODEL(Topic.INFERENCE, "Standard conditions"),
    /** The number of runs and whether their conditions match. */
    REPEATS(Topic.REPEATS, "Repeats"),
    /** Limits of a ratio of cold to warm runs. */
    SEASON(Topic.REPEATS, "Season"),
    /** Cross-checks that do not agree. */
    CROSS_CHECK(Topic.CHECKS, "Cross-check"),
    /** Remarks by the tester. */
    REMARK(Topic.REMARKS, "Remark");

    private final Topic topic;
    private final String title;
    private final Set<Input> concerned;

    Kind(Topic topic, String title, Input... concerned) {
      this.topic = topic;
      this.title = title;
      this.concerned = Set.of(concerned);
    }

    /** Returns the topic under which caveats of this kind are listed. */
    public Topic topic() {
      return topic;
    }

    /** Returns the heading of the kind. */
    public String title() {
      return title;
    }

    /**
     * Returns the inputs that a caveat of this kind applies to; empty if the numbers it applies to
     * carry it themselves.
     */
    public Set<Input> concerned() {
      return concerned;
    }
  }
}
