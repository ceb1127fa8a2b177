package taperbook.workspace;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import taperbook.quantity.SocWindow;
import taperbook.result.CommonGround;
import taperbook.result.MovedNumber;
import taperbook.session.InputFile;
import taperbook.verify.CarriedReport;
import taperbook.verify.ChangeCauses;
import taperbook.verify.InputChange;
import taperbook.verify.InputChanges;
import taperbook.verify.NumberMoves;
import taperbook.verify.NumbersFile;
import taperbook.verify.Resampling;

/**
 * Which numbers moved since a version was published, and which change of the input moved each.
 *
 * <p>Both versions are measured again with other draws, since what those alone move has not moved;
 * then each change is undone by itself. What is measured is bounded: at most {@value #MOST_CHANGES}
 * changes, {@value #REDRAWS} more draws of each version and {@value #REDRAWS_UNDONE} of each
 * change.
 */
final class Attribution {
  /** More changes are told by row, and even more by file. */
  private static final int MOST_CHANGES = 8;

  private static final int REDRAWS = 4;

  private static final int REDRAWS_UNDONE = 2;

  private final CarriedReport published;
  private final Map<String, InputFile> inputs;
  private final boolean sameProgram;
  private final String program;
  private final MetricRerun remeasuring;

  /**
   * Since a version.
   *
   * @param published the version
   * @param inputs the files now, by path
   * @param program name and version of the program now
   * @param remeasuring measures files again
   */
  Attribution(
      CarriedReport published,
      Map<String, InputFile> inputs,
      String program,
      MetricRerun remeasuring) {
    this.published = published;
    this.inputs = inputs;
    this.sameProgram = published.program().equals(program);
    this.program = program;
    this.remeasuring = remeasuring;
  }

  /** The numbers that moved with their causes, in the order of the new version. */
  List<MovedNumber> of(NumbersFile numbers) {
    List<NumbersFile> oldByThisProgram = remeasuring.redrawn(published.files(), 1, REDRAWS);
    Resampling before = redraws(published.numbers(), sameProgram ? oldByThisProgram : List.of());
    Resampling after = redraws(numbers, remeasuring.redrawn(inputs, 1, REDRAWS));
    boolean asked = remeasuring.askAlike(published.files(), inputs);
    boolean sameWindows = windows(published.numbers()).equals(windows(numbers));
    List<MovedNumber> moved =
        NumberMoves.between(before, after, asked && sameWindows).stream()
            .filter(m -> !remeasuring.isPrintedAlike(m))
            .toList();
    if (moved.isEmpty()) {
      return moved;
    }
    ChangeCauses causes = new ChangeCauses(before, after);
    enterChanges(causes, asked);
    if (!sameProgram) {
      // Undoing the program is the version as it was published, but for the data that is old now.
      causes.enter(published.program() + " was replaced by " + program);
    }
    return causes.name(moved);
  }

  private static List<SocWindow> windows(NumbersFile numbers) {
    return numbers.ground().map(CommonGround::windows).orElse(List.of());
  }

  private void enterChanges(ChangeCauses causes, boolean asked) {
    List<InputChange> changes =
        new ArrayList<>(InputChanges.between(published.files(), inputs, MOST_CHANGES));
    if (!asked) {
      inputs.keySet().stream()
          .filter(path -> path.endsWith(".md") && published.files().containsKey(path))
          .forEach(path -> changes.add(frontMatter(path)));
    }
    boolean single = changes.size() == 1 && sameProgram;
    for (InputChange change : changes.subList(0, Math.min(MOST_CHANGES, changes.size()))) {
      List<NumbersFile> undone =
          single ? List.of() : remeasuring.redrawn(change.undone(), 1, REDRAWS_UNDONE);
      if (undone.isEmpty()) {
        causes.enter(change.words());
      } else {
        causes.enter(change.words(), new Resampling(undone));
      }
    }
    if (changes.size() > MOST_CHANGES) {
      causes.enter((changes.size() - MOST_CHANGES) + " more changed files");
    }
  }

  /** What the old front matter asked for, of the files as they are now. */
  private InputChange frontMatter(String path) {
    Map<String, InputFile> files = new TreeMap<>(published.files());
    files.putAll(inputs);
    files.computeIfPresent(path, (p, now) -> published.files().get(p));
    return new InputChange(path + ": the front matter asks for other numbers", files);
  }

  private static Resampling redraws(NumbersFile printed, List<NumbersFile> others) {
    List<NumbersFile> all = new ArrayList<>(List.of(printed));
    all.addAll(others);
    return new Resampling(all);
  }
}
