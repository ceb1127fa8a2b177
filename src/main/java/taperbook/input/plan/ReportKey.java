package taperbook.input.plan;

import taperbook.i18n.Texts;

/** The keys of a report's front matter. */
public enum ReportKey {
  KIND("kind", "library"),
  TITLE("title", "A first look"),
  AUTHOR("author", "A. Tester"),
  ANSWER("answer", "${about(\"time_to_add_100_km\")} buy 100 km"),
  PUBLISHED("published", "2026-03-14"),
  STATE("state", "published"),
  CORRECTIONS("corrections", "- 2026-05-02: the power at 6:38 was misread"),
  SESSION("session", "finch-quarry-lane"),
  COMPARE("compare", "finch-second-visit"),
  REPEATS("repeats", "finch-second-run, finch-third-run"),
  RUN_SPREAD("run spread", "2 %, six runs of another car at the same station"),
  RANGE_TEST("range test", "finch-ring-road"),
  STOPS("stops", "finch-quarry-lane, finch-second-stop"),
  SEASON("season", "finch-summer, finch-winter; finch-summer-drive, finch-winter-drive"),
  DISTANCES("distances", "100 mi, 200 mi"),
  SOC_MARKS("soc marks", "20, 50, 80"),
  WINDOW("window", "10-80 %"),
  ROAD("road", "plug-in, next leg, per minute, trip, cost"),
  TRIP("trip", "800 km, station every 50 km, 6 min per stop"),
  UNITS("units", "km"),
  BASIS("basis", "driven"),
  TEMPLATE("template", "full"),
  PAPER("paper", "letter"),
  FILM("film", "yes, offset 0:03:20");

  private final String words;
  private final String example;

  ReportKey(String words, String example) {
    this.words = words;
    this.example = example;
  }

  /** Returns the key as used in the file. */
  public String words() {
    return words;
  }

  /** Returns the description of its value. */
  public String meaning() {
    return Texts.ofConstant("key", this, "meaning");
  }

  /** Returns an example of its value. */
  public String example() {
    return example;
  }
}
