package taperbook.session;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import taperbook.i18n.Message;
import taperbook.i18n.Texts;

/**
 * A limitation that a reader needs to know to interpret a number correctly.
 *
 * @param kind what the caveat is about
 * @param fact the fact in this case, as one or more full sentences
 * @param meaning the consequence of the fact in every such case, as full sentences; may be empty.
 *     Caveats of several sessions with the same meaning are printed as one
 */
public record Caveat(Kind kind, Message fact, Optional<Message> meaning) {
  /** Creates a caveat without a shared meaning. */
  public Caveat(Kind kind, Message sentence) {
    this(kind, sentence, Optional.empty());
  }

  /** A caveat with a meaning that caveats of other sessions may share. */
  public Caveat(Kind kind, Message fact, Message meaning) {
    this(kind, fact, Optional.of(meaning));
  }

  /** Returns the caveat with a name before its fact, as one of several sessions or drives. */
  public Caveat about(String name) {
    return new Caveat(kind, Message.of("metric.common.about", name, fact), meaning);
  }

  /** Returns the messages that the caveat consists of. */
  public List<Message> messages() {
    return Stream.concat(Stream.of(fact), meaning.stream()).toList();
  }

  /** Returns the whole caveat as text. */
  public String sentence() {
    return fact.text() + meaning.map(m -> " " + m.text()).orElse("");
  }

  /** Headings that group a list of caveats. */
  public enum Topic {
    INTERRUPTIONS,
    /** The battery's state and the starting point on its charging curve. */
    BATTERY,
    STATION,
    WEATHER,
    /** How the readings were taken. */
    READINGS,
    /** Energy, the energy counter and losses. */
    ENERGY,
    /** The drive that distances are based on. */
    DRIVE,
    INFERENCE,
    COST,
    /** Repeated runs. */
    REPEATS,
    /** Figures computed in a second way. */
    CHECKS,
    REMARKS;

    Topic() {}

    /** Returns the heading of the topic. */
    public String title() {
      return Texts.ofConstant("topic", this, "title");
    }
  }

  /** Subjects of caveats. The order of the constants is the order in a report. */
  public enum Kind {
    /** Charging was interrupted. */
    INTERRUPTION(Topic.INTERRUPTIONS, Input.WHOLE_SESSION),
    /** The battery's temperature at the start. */
    BATTERY_TEMPERATURE(Topic.BATTERY, Input.COURSE),
    /** Whether the battery was preconditioned. */
    PRECONDITIONING(Topic.BATTERY, Input.COURSE),
    /** State of charge at the start of the session. */
    STARTING_SOC(Topic.BATTERY, Input.COURSE),
    /** Maximum output of the station. */
    STATION_LIMIT(Topic.STATION, Input.COURSE),
    /** Whether the station was shared. */
    STATION_SHARED(Topic.STATION, Input.COURSE),
    ODOMETER(Topic.BATTERY, Input.COURSE),
    AMBIENT_TEMPERATURE(Topic.WEATHER, Input.COURSE),
    /** How the readings were taken. */
    READINGS(Topic.READINGS, Input.READINGS),
    /** Readings that do not fit the others, and readings that were rechecked. */
    DOUBTFUL_READING(Topic.READINGS),
    /** Gaps between readings. */
    GAPS(Topic.READINGS, Input.COURSE),
    /** A reset of the energy counter, and where power and energy were measured. */
    ENERGY_COUNTER(Topic.ENERGY, Input.ENERGY),
    /** Irregularities of the recording clock. */
    CLOCK(Topic.READINGS, Input.COURSE),
    /** Channels that the session did not record. */
    CHANNELS(Topic.READINGS),
    /** How well energy follows a straight line over state of charge. */
    ENERGY_LINE(Topic.ENERGY),
    /** Losses between charging and driving, which are left out. */
    LOSSES(Topic.ENERGY),
    /** Possible error of the station's meter. */
    METER(Topic.ENERGY),
    /** What was assumed about the range test. */
    RANGE_TEST(Topic.DRIVE, Input.RANGE_TEST),
    /** Conditions of the drive. */
    DRIVE(Topic.DRIVE, Input.RANGE_TEST),
    /** Values that were inferred, not observed. */
    INFERENCE(Topic.INFERENCE),
    /** Limits of a plan of charging stops. */
    PLAN(Topic.INFERENCE),
    /** Items that a cost leaves out. */
    COST(Topic.COST),
    /** Effects that a physical model leaves out. */
    MODEL(Topic.INFERENCE),
    /** The number of runs and whether their conditions match. */
    REPEATS(Topic.REPEATS),
    /** Limits of a ratio of cold to warm runs. */
    SEASON(Topic.REPEATS),
    /** Cross-checks that do not agree. */
    CROSS_CHECK(Topic.CHECKS),
    /** Remarks by the tester. */
    REMARK(Topic.REMARKS);

    private final Topic topic;
    private final Set<Input> concerned;

    Kind(Topic topic, Input... concerned) {
      this.topic = topic;
      this.concerned = Set.of(concerned);
    }

    /** Returns the topic under which caveats of this kind are listed. */
    public Topic topic() {
      return topic;
    }

    /** Returns the heading of the kind. */
    public String title() {
      return Texts.ofConstant("caveat", this, "title");
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
