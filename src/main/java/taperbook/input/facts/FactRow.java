package taperbook.input.facts;

import taperbook.diagnostics.ProblemCode;
import taperbook.diagnostics.ProblemLog;
import taperbook.diagnostics.Quoted;
import taperbook.session.Item;

/**
 * A row of a facts file with its item.
 *
 * @param item the item
 * @param line line number from 1
 * @param value the value as entered, trimmed
 * @param unit the unit as entered, trimmed
 * @param howKnown how it is known, normalized
 * @param giveOrTake the tolerance as entered, trimmed; empty if there is none
 * @param numbers numbers of the cells of value, unit, how known and give or take, from 1
 */
record FactRow(
    Item item,
    int line,
    String value,
    String unit,
    String howKnown,
    String giveOrTake,
    CellNumbers numbers) {
  /** Numbers of cells in their row, from 1; 0 for a missing column. */
  record CellNumbers(int value, int unit, int howKnown, int giveOrTake) {}

  void problemOfValue(
      ProblemLog log, ProblemCode code, String found, String expected, String remedy) {
    log.add(code, line, numbers.value(), found, forItem(expected), remedy);
  }

  void problemOfUnit(ProblemLog log, String found, String expected, String remedy) {
    log.add(
        ProblemCode.UNIT_NOT_UNDERSTOOD, line, numbers.unit(), found, forItem(expected), remedy);
  }

  void problemOfHowKnown(
      ProblemLog log, ProblemCode code, String found, String expected, String remedy) {
    log.add(code, line, numbers.howKnown(), found, forItem(expected), remedy);
  }

  void problemOfGiveOrTake(ProblemLog log, ProblemCode code, String expected, String remedy) {
    log.add(code, line, numbers.giveOrTake(), Quoted.of(giveOrTake), forItem(expected), remedy);
  }

  String forItem(String expected) {
    return expected + " for " + item.words();
  }
}
