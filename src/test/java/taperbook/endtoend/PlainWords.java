package taperbook.endtoend;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import taperbook.blank.SheetKind;
import taperbook.buildinfo.BuildInfo;
import taperbook.cli.Command;
import taperbook.cli.Option;
import taperbook.input.KnownColumn;
import taperbook.input.KnownColumns;
import taperbook.input.plan.ReportKey;
import taperbook.plan.Basis;
import taperbook.plan.RoadTopic;
import taperbook.quantity.Unit;
import taperbook.session.Channel;
import taperbook.session.ConditionItem;
import taperbook.session.DisplayRounding;
import taperbook.session.HowKnown;
import taperbook.session.Item;
import taperbook.session.RangeItem;
import taperbook.session.RowsWritten;

/**
 * Words without accents that may be in the outputs of a program that speaks {@link PseudoLanguage}:
 * those of the input formats and of the tester's files. A word of the tester's prose counts only
 * beside a word that it is beside there, so that it does not hide a word of the program.
 */
final class PlainWords {
  /** Names that no translation changes: the program and the runtime that runs it. */
  private static final Set<String> NAMES = Set.of("taperbook", "java");

  /** A word, also part of a name in camel case or of one that an amount is glued to in a PDF. */
  private static final Pattern WORD = Pattern.compile("[A-ZÀ-Þ]?[a-zß-ž]+…?|[A-ZÀ-Þ]+…?");

  private static final Pattern PLAIN = Pattern.compile("(?=.*[aeiouy])[a-z]{3,}");

  /** Ids, names of files and folders, hashes, heads of columns and addresses. */
  private static final Pattern NAME =
      Pattern.compile(
          "\\S*[\\w\\])][/_]\\S*|https?:\\S+|\\b[\\w-]+\\.[a-z]{2,4}\\b|--[a-z]+"
              + "|\\b[0-9a-f]*[0-9][0-9a-f]{5,}\\b|\\[[a-z]+(?:-[a-z]+)+]");

  private static final int CONTEXT = 40;
  private static final int MOST_WORDS_OF_A_NAME = 2;

  private final Set<String> words = new HashSet<>(NAMES);
  private final Set<String> pairs = new HashSet<>();

  /** Collects the words of the input formats and of the tester's files in a project folder. */
  PlainWords(Path project) throws IOException {
    vocabulary().forEach(text -> words.addAll(words(text)));
    try (Stream<Path> all = Files.walk(project.resolve("sessions"))) {
      for (Path file : all.toList()) {
        words.addAll(words(file.getFileName().toString()));
        if (Files.isRegularFile(file)) {
          addCells(Files.readString(file));
        }
      }
    }
    try (Stream<Path> all = Files.list(project.resolve("reports"))) {
      for (Path file : all.filter(each -> each.toString().endsWith(".md")).toList()) {
        words.addAll(words(file.getFileName().toString()));
        addFrontMatter(Files.readAllLines(file));
        addPairs(Files.readString(file));
      }
    }
  }

  private static List<String> vocabulary() {
    List<String> all = new ArrayList<>();
    all.add(BuildInfo.ofThisProgram().name());
    for (Item[] items : List.<Item[]>of(ConditionItem.values(), RangeItem.values())) {
      for (Item item : items) {
        all.add(item.words());
        all.addAll(item.kind().words());
      }
    }
    Stream.of(KnownColumns.readings(), KnownColumns.legs(), KnownColumns.facts())
        .flatMap(Collection::stream)
        .map(KnownColumn::name)
        .forEach(all::add);
    all.addAll(of(Channel.values(), Channel::columnName));
    all.addAll(of(ReportKey.values(), ReportKey::words));
    all.addAll(List.of(Basis.DRIVEN.words(), Basis.RATED.words()));
    all.addAll(of(RoadTopic.values(), RoadTopic::words));
    all.addAll(of(HowKnown.values(), HowKnown::words));
    all.addAll(of(DisplayRounding.values(), DisplayRounding::words));
    all.addAll(of(RowsWritten.values(), RowsWritten::words));
    all.addAll(of(Unit.values(), Unit::symbol));
    all.addAll(of(SheetKind.values(), SheetKind::word));
    all.addAll(of(Option.values(), Option::usage));
    for (Command command : Command.values()) {
      all.add(command.word());
      command.usages().forEach(usage -> all.add(usage.arguments()));
      command.examples().forEach(example -> all.add(example.call()));
    }
    return all;
  }

  private static <T> List<String> of(T[] values, Function<T, String> text) {
    return Arrays.stream(values).map(text).toList();
  }

  private static List<String> words(String text) {
    return WORD.matcher(text).results().map(PlainWords::lower).toList();
  }

  private static String lower(MatchResult word) {
    return word.group().toLowerCase(Locale.ROOT);
  }

  /** The words of a short cell, such as a name or a choice, may be alone. */
  private void addCells(String csv) {
    for (String cell : csv.split("[,;\"\\n\\r]", -1)) {
      List<String> of = words(cell);
      if (of.size() <= MOST_WORDS_OF_A_NAME) {
        words.addAll(of);
      }
    }
    addPairs(csv);
  }

  /** A key or a short value may be quoted alone. */
  private void addFrontMatter(List<String> lines) {
    lines.stream().filter(line -> line.matches("[a-z ]+: .*")).forEach(this::addShortParts);
  }

  private void addShortParts(String line) {
    for (String part : line.split(": ", 2)) {
      List<String> of = words(part);
      if (of.size() <= MOST_WORDS_OF_A_NAME) {
        words.addAll(of);
      }
    }
  }

  private void addPairs(String text) {
    List<String> all = words(text);
    for (int i = 1; i < all.size(); i++) {
      pairs.add(all.get(i - 1) + " " + all.get(i));
    }
  }

  /** Returns the plain words of a text that are none of these, each with what is around it. */
  Set<String> strangers(String text) {
    String open = NAME.matcher(text).replaceAll("·");
    List<MatchResult> all = WORD.matcher(open).results().toList();
    Set<String> strangers = new TreeSet<>();
    for (int i = 0; i < all.size(); i++) {
      String word = lower(all.get(i));
      String before = i == 0 ? "" : lower(all.get(i - 1));
      String behind = i + 1 == all.size() ? "" : lower(all.get(i + 1));
      if (PLAIN.matcher(word).matches()
          && !words.contains(word)
          && !pairs.contains(before + " " + word)
          && !pairs.contains(word + " " + behind)) {
        strangers.add(word + " in: " + around(open, all.get(i)));
      }
    }
    return strangers;
  }

  private static String around(String text, MatchResult word) {
    int from = Math.max(0, word.start() - CONTEXT);
    int to = Math.min(text.length(), word.end() + CONTEXT);
    return text.substring(from, to).replaceAll("\\s+", " ");
  }
}
