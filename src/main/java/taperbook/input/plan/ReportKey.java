package taperbook.input.plan;

/** The keys of a report's front matter. */
public enum ReportKey {
  KIND("kind", "what kind of report it is: session or library", "library"),
  TITLE("title", "the title of the report", "A first look"),
  AUTHOR("author", "who answers for the report", "A. Tester"),
  ANSWER(
      "answer",
      "the answer at the top, in place of the one that is composed; calls as in the article",
      "${about(\"time_to_add_100_km\")} buy 100 km"),
  PUBLISHED("published", "the day of publication", "2026-03-14"),
  STATE("state", "draft, or published for a version that must not change unsaid", "published"),
  CORRECTIONS(
      "corrections",
      "what was put right after publication, a list of days with the reason",
      "- 2026-05-02: the power at 6:38 was misread"),
  SESSION("session", "the name of the session reported", "finch-quarry-lane"),
  COMPARE("compare", "names of sessions to hold it against", "finch-second-visit"),
  REPEATS(
      "repeats",
      "names of sessions that repeat the one reported, by the same vehicle",
      "finch-second-run, finch-third-run"),
  RUN_SPREAD(
      "run spread",
      "how far runs of one car differ, as a standard deviation in per cent, and where that comes"
          + " from",
      "2 %, six runs of another car at the same station"),
  RANGE_TEST("range test", "names of range tests", "finch-ring-road"),
  STOPS(
      "stops",
      "names of sessions of the reported car on one day in their order, the reported one among them",
      "finch-quarry-lane, finch-second-stop"),
  SEASON(
      "season",
      "pairs of sessions, or of range tests, of the reported car: the warm one, then the cold one",
      "finch-summer, finch-winter; finch-summer-drive, finch-winter-drive"),
  DISTANCES("distances", "distances to know the time for", "100 mi, 200 mi"),
  SOC_MARKS("soc marks", "states of charge to know the time to", "20, 50, 80"),
  WINDOW("window", "a window of state of charge", "10-80 %"),
  ROAD("road", "what to tell of the road", "plug-in, next leg, per minute, trip, cost"),
  TRIP("trip", "the trip to plan", "800 km, station every 50 km, 6 min per stop"),
  UNITS("units", "the unit of distances", "km"),
  BASIS("basis", "what headline distances rest on", "driven"),
  TEMPLATE("template", "the name of a template, such as full for a PDF with all methods", "full"),
  PAPER("paper", "what the PDF is laid out for: a4 or letter", "letter"),
  FILM(
      "film",
      "whether charts are also painted for a film, yes or no; offset, the time of the film at which"
          + " elapsed time is 0",
      "yes, offset 0:03:20");

  private final String words;
  private final String meaning;
  private final String example;

  ReportKey(String words, String meaning, String example) {
    this.words = words;
    this.meaning = meaning;
    this.example = example;
  }

  /** Returns the key as used in the file. */
  public String words() {
    return words;
  }

  /** Returns the description of its value. */
  public String meaning() {
    return meaning;
  }

  /** Returns an example of its value. */
  public String example() {
    return example;
  }
}
