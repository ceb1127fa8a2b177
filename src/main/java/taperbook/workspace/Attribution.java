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
 * Finds the numbers that changed since a version was published, and the input change that caused
 * each.
 *
 * <p>Both versions are recomputed with other random draws, because a change that the draws alone
 * cause does not count. Then each input change is undone separately. The number of recomputations
 * is bounded: at most {@value #MAX_CHANGES} changes, {@value #REDRAWS} additional draws of each
 * version and {@value #REDRAWS_UNDONE} of each change.
 */
final class Attribution {
  /** If there are more changes, they are grouped by row, and beyond that by file. */
  private static final int MAX_CHANGES = 8;

  private static final int REDRAWS = 4;

  private static final int REDRAWS_UNDONE = 2;

  private final CarriedReport published;
  private final Map<String, InputFile> inputs;
  private final boolean sameProgram;
  private final String program;
  private final MetricRerun rerun;

  /**
   * Creates the attribution of changes since a version.
   *
   * @param published the version
   * @param inputs the current files, by path
   * @param program name and version of the current program
   * @param rerun recomputes the numbers from other files
   */
  Attribution(
      CarriedReport published, Map<String, InputFile> inputs, String program, MetricRerun rerun) {
    this.published = published;
    this.inputs = inputs;
    this.sameProgram = published.program().equals(program);
    this.program = program;
    this.rerun = rerun;
  }

  /** Returns the numbers that moved with their causes, in the order of the new version. */
  List<MovedNumber> of(NumbersFile numbers) {
    List<NumbersFile> oldRecomputed = rerun.redrawn(published.files(), 1, REDRAWS);
    Resampling before = redraws(published.numbers(), sameProgram ? oldRecomputed : List.of());
    Resampling after = redraws(numbers, rerun.redrawn(inputs, 1, REDRAWS));
    boolean sameRequests = rerun.requestSameNumbers(published.files(), inputs);
    boolean sameWindows = windows(published.numbers()).equals(windows(numbers));
    List<MovedNumber> moved =
        NumberMoves.between(before, after, sameRequests && sameWindows).stream()
            .filter(m -> !rerun.isPrintedAlike(m))
            .toList();
    if (moved.isEmpty()) {
      return moved;
    }
    ChangeCauses causes = new ChangeCauses(before, after);
    enterChanges(causes, sameRequests);
    if (!sameProgram) {
      // Without the program change, the result is the published version, except for data that has
      // become outdated.
      causes.enter(published.program() + " was replaced by " + program);
    }
    return causes.name(moved);
  }

  private static List<SocWindow> windows(NumbersFile numbers) {
    return numbers.ground().map(CommonGround::windows).orElse(List.of());
  }

  private void enterChanges(ChangeCauses causes, boolean sameRequests) {
    List<InputChange> changes =
        new ArrayList<>(InputChanges.between(published.files(), inputs, MAX_CHANGES));
    if (!sameRequests) {
      inputs.keySet().stream()
          .filter(path -> path.endsWith(".md") && published.files().containsKey(path))
          .forEach(path -> changes.add(frontMatter(path)));
    }
    boolean single = changes.size() == 1 && sameProgram;
    for (InputChange change : changes.subList(0, Math.min(MAX_CHANGES, changes.size()))) {
      List<NumbersFile> undone =
          single ? List.of() : rerun.redrawn(change.undone(), 1, REDRAWS_UNDONE);
      if (undone.isEmpty()) {
        causes.enter(change.words());
      } else {
        causes.enter(change.words(), new Resampling(undone));
      }
    }
    if (changes.size() > MAX_CHANGES) {
      causes.enter((changes.size() - MAX_CHANGES) + " more changed files");
    }
  }

  /** Returns the requests of the old front matter, applied to the current files. */
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
