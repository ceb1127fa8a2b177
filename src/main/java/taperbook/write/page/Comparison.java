package taperbook.write.page;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import taperbook.model.Caveat;
import taperbook.model.Estimate;
import taperbook.model.ReportResult;
import taperbook.model.SessionResult;
import taperbook.model.SocWindow;
import taperbook.model.Unit;
import taperbook.words.Wording;

/** Sessions side by side: headline numbers, what sets them apart, and what cannot be compared. */
final class Comparison {
  private final ReportResult result;
  private final NumberViews views;
  private final Wording wording;

  Comparison(ReportResult result, NumberViews views, Wording wording) {
    this.result = result;
    this.views = views;
    this.wording = wording;
  }

  Map<String, Object> map() {
    boolean present = !result.compared().isEmpty();
    return Map.of(
        "present",
        present,
        "sessions",
        result.sessions().stream().map(Comparison::head).toList(),
        "rows",
        present ? rows() : List.of(),
        "statements",
        present ? statements() : List.of(),
        "caveats",
        present ? apart() : List.of());
  }

  private static Map<String, Object> head(SessionResult session) {
    return Map.of(
        "name", session.session().name(), "subject", FactTexts.subject(session.session()));
  }

  private List<Map<String, Object>> rows() {
    Set<String> ids = new LinkedHashSet<>(List.of("start_soc", "end_soc"));
    ids.addAll(Headline.ids(result.plan()));
    sharedWindow().ifPresent(w -> ids.addAll(windowIds(w)));
    ids.addAll(List.of("energy_added", "energy_per_soc", "consumption", "driven_range_full"));
    List<Map<String, Object>> rows = new ArrayList<>();
    for (String id : ids) {
      Optional<String> label =
          result.sessions().stream()
              .flatMap(s -> s.numbers().find(id).stream())
              .map(n -> NumberViews.whole(n.label()))
              .findFirst();
      label.ifPresent(
          text ->
              rows.add(
                  Map.of(
                      "label",
                      text,
                      "cells",
                      result.sessions().stream().map(s -> views.view(s, id)).toList())));
    }
    return rows;
  }

  /** The first window that every session went through, so that there is something to compare. */
  private Optional<SocWindow> sharedWindow() {
    return result.plan().wishes().windows().stream()
        .filter(
            window ->
                result.sessions().stream()
                    .allMatch(
                        s ->
                            windowIds(window).stream()
                                .allMatch(id -> s.numbers().estimate(id).isPresent())))
        .findFirst();
  }

  private static List<String> windowIds(SocWindow window) {
    return List.of("time_soc_" + window.idPart(), "average_power_" + window.idPart());
  }

  private List<String> statements() {
    List<String> statements = new ArrayList<>();
    for (SessionResult other : result.compared()) {
      start(result.main(), other).ifPresent(statements::add);
    }
    return statements;
  }

  private Optional<String> start(SessionResult main, SessionResult other) {
    Optional<Estimate> a = main.numbers().estimate("start_soc");
    Optional<Estimate> b = other.numbers().estimate("start_soc");
    if (a.isEmpty() || b.isEmpty()) {
      return Optional.of(
          "The state of charge that "
              + (a.isEmpty() ? main : other).session().name()
              + " began at is not known, so that times from plugging in cannot be compared.");
    }
    if (a.get().bounds().overlaps(b.get().bounds())) {
      return Optional.empty();
    }
    return Optional.of(
        "The sessions began at different states of charge: "
            + main.session().name()
            + " at "
            + wording.value(a.get(), Unit.PERCENT)
            + ", "
            + other.session().name()
            + " at "
            + wording.value(b.get(), Unit.PERCENT)
            + ". Peaks, totals, times from plugging in and times to add a distance are therefore"
            + " not like for like; times for the same window and energy per per cent are.");
  }

  private List<Map<String, Object>> apart() {
    List<Set<Caveat>> sets = result.sessions().stream().map(CaveatMarks::all).toList();
    Set<Caveat> common = new LinkedHashSet<>(sets.get(0));
    sets.forEach(common::retainAll);
    List<Map<String, Object>> apart = new ArrayList<>();
    for (int i = 0; i < sets.size(); i++) {
      List<String> own =
          sets.get(i).stream().filter(c -> !common.contains(c)).map(Caveat::sentence).toList();
      if (!own.isEmpty()) {
        String name = result.sessions().get(i).session().name();
        apart.add(Map.of("session", name, "sentences", own));
      }
    }
    return apart;
  }
}
