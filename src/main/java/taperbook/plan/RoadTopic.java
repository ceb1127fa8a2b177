package taperbook.plan;

import java.util.Arrays;
import java.util.Optional;

/** Topics of road travel; each is included only if the report requests it. */
public enum RoadTopic {
  /** Minutes for a distance from several states of charge. */
  PLUG_IN("plug-in"),
  /** The best point to unplug at before the next leg. */
  NEXT_LEG("next leg"),
  /** Distance added per minute, over state of charge. */
  PER_MINUTE("per minute"),
  /** Stops and time of a whole trip. */
  TRIP("trip"),
  /** Cost of the session and of travel. */
  COST("cost"),
  /** The driven range, corrected to standard air, still air and level road. */
  STANDARD_RANGE("standard range");

  private final String words;

  RoadTopic(String words) {
    this.words = words;
  }

  /** Returns the topic with this name. */
  public static Optional<RoadTopic> ofWords(String words) {
    return Arrays.stream(values()).filter(t -> t.words.equals(words)).findFirst();
  }

  /** Returns the name used in a report's front matter. */
  public String words() {
    return words;
  }
}
