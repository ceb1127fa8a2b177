package taperbook.session;

import java.util.Set;

/**
 * Something a reader must know to use a number rightly.
 *
 * @param kind what it is about
 * @param fact what is the case here, in one or more full sentences
 * @param meaning what follows from it wherever it is the case, in full sentences; perhaps empty.
 *     Caveats of several sessions that mean the same are printed as one
 */
public record Caveat(Kind kind, String fact, String meaning) {
  /** A caveat whose meaning is its own. */
  public Caveat(Kind kind, String sentence) {
    this(kind, sentence, "");
  }

  /** Returns the whole caveat in words. */
  public String sentence() {
    return meaning.isEmpty() ? fact : fact + " " + meaning;
  }

  /** What a list of caveats puts together. */
  public enum Topic {
    /** What came in between. */
    INTERRUPTIONS("Interruptions"),
    /** The battery's state, and where on its curve it began. */
    BATTERY("Battery and start"),
    /** The station. */
    STATION("Station"),
    /** The weather while charging. */
    WEATHER("Weather while charging"),
    /** How it was read. */
    READINGS("Readings"),
    /** Energy, its counter and its losses. */
    ENERGY("Energy and losses"),
    /** The drive that distances rest on. */
    DRIVE("Range test"),
    /** What was inferred, planned or modelled. */
    INFERENCE("Plans and models"),
    /** Money. */
    COST("Cost"),
    /** Further runs. */
    REPEATS("Repeats and seasons"),
    /** Figures found a second way. */
    CHECKS("Cross-checks"),
    /** What the tester remarks. */
    REMARKS("Remarks");

    private final String title;

    Topic(String title) {
      this.title = title;
    }

    /** The topic in words, as a heading. */
    public String title() {
      return title;
    }
  }

  /** What caveats are about. Each kind has its place in the list of a report. */
  public enum Kind {
    /** That charging stood still in between. */
    INTERRUPTION(Topic.INTERRUPTIONS, "Interruption", Input.WHOLE_SESSION),
    /** The battery's temperature at the start. */
    BATTERY_TEMPERATURE(Topic.BATTERY, "Battery temperature", Input.COURSE),
    /** Whether the battery was made ready. */
    PRECONDITIONING(Topic.BATTERY, "Preconditioning", Input.COURSE),
    /** The state of charge that the session began at. */
    STARTING_SOC(Topic.BATTERY, "Starting state of charge", Input.COURSE),
    /** What the station could give. */
    STATION_LIMIT(Topic.STATION, "Station limit", Input.COURSE),
    /** Whether the station was shared. */
    STATION_SHARED(Topic.STATION, "Shared station", Input.COURSE),
    /** The battery's age. */
    ODOMETER(Topic.BATTERY, "Odometer and battery age", Input.COURSE),
    /** The weather. */
    AMBIENT_TEMPERATURE(Topic.WEATHER, "Ambient temperature", Input.COURSE),
    /** How the readings were taken. */
    READINGS(Topic.READINGS, "How it was read", Input.READINGS),
    /** Readings that do not fit the others, and those that were looked at again. */
    DOUBTFUL_READING(Topic.READINGS, "Doubtful readings"),
    /** Gaps between readings. */
    GAPS(Topic.READINGS, "Gaps between readings", Input.COURSE),
    /** An energy counter that began anew, and where power and energy were measured. */
    ENERGY_COUNTER(Topic.ENERGY, "Energy counter", Input.ENERGY),
    /** What the clock of the recording did. */
    CLOCK(Topic.READINGS, "Clock", Input.COURSE),
    /** What the session did not record. */
    CHANNELS(Topic.READINGS, "Channels recorded"),
    /** How well the energy lies on a line over the state of charge. */
    ENERGY_LINE(Topic.ENERGY, "Energy over state of charge"),
    /** What is lost between charging and driving, and left out. */
    LOSSES(Topic.ENERGY, "Losses between charging and driving"),
    /** What a station's meter may be off by. */
    METER(Topic.ENERGY, "The station's meter"),
    /** What was assumed about the range test. */
    RANGE_TEST(Topic.DRIVE, "Range test", Input.RANGE_TEST),
    /** How the drive was driven. */
    DRIVE(Topic.DRIVE, "Conditions of the drive", Input.RANGE_TEST),
    /** What was inferred and not seen. */
    INFERENCE(Topic.INFERENCE, "Inferences"),
    /** What a plan of stops rests on. */
    PLAN(Topic.INFERENCE, "Plans for the road"),
    /** What a cost leaves out. */
    COST(Topic.COST, "Cost"),
    /** What a physical model leaves out. */
    MODEL(Topic.INFERENCE, "Standard conditions"),
    /** How many runs there are, and whether they are alike. */
    REPEATS(Topic.REPEATS, "Repeats"),
    /** What a ratio of cold to warm runs rests on. */
    SEASON(Topic.REPEATS, "Season"),
    /** Cross-checks that do not agree. */
    CROSS_CHECK(Topic.CHECKS, "Cross-check"),
    /** Remarks of the tester's. */
    REMARK(Topic.REMARKS, "Remark");

    private final Topic topic;
    private final String title;
    private final Set<Input> concerned;

    Kind(Topic topic, String title, Input... concerned) {
      this.topic = topic;
      this.title = title;
      this.concerned = Set.of(concerned);
    }

    /** Returns the topic that a list of caveats puts it under. */
    public Topic topic() {
      return topic;
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
