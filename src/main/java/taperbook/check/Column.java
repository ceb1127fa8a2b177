package taperbook.check;

/**
 * A column that a file has.
 *
 * @param name its name
 * @param index number of its cell in each row, from 0
 * @param unit its unit symbol; empty if it takes none
 */
record Column(String name, int index, String unit) {
  /** Number of its cell from 1, as problems give it. */
  int number() {
    return index + 1;
  }
}
