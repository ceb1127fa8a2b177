package taperbook.plan;

import java.util.Arrays;
import java.util.Optional;

/** What a report can tell of the road; each is told only if the report asks for it. */
public enum RoadTopic {
  /** Minutes for a distance from several states of charge on. */
  PLUG_IN("plug-in"),
  /** The cheapest point to unplug at before the next leg. */
  NEXT_LEG("next leg"),
  /** Distance bought for each minute, over state of charge. */
  PER_MINUTE("per minute"),
  /** Stops and time of a whole trip. */
  TRIP("trip"),
  /** What the session and the road cost. */
  COST("cost"),
  /** The driven range, corrected to standard air, still air and level road. */
  STANDARD_RANGE("standard range");

  private final String words;

  RoadTopic(String words) {
    this.words = words;
  }

  /** The topic with these words. */
  public static Optional<RoadTopic> ofWords(String words) {
    return Arrays.stream(values()).filter(t -> t.words.equals(words)).findFirst();
  }

  /** The topic as it is written in a report's front matter. */
  public String words() {
    return words;
  }
}
