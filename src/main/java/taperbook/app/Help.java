package taperbook.app;

/** What {@code taperbook --help} prints. */
final class Help {
  private Help() {}

  static String text() {
    return """
        taperbook: from charging readings and a range test to a report that others can check

          taperbook report              make every report that is out of date
          taperbook report NAME ...     make these reports, if they are out of date
          taperbook check               read everything, say every problem, write nothing
          taperbook check NAME ...      the same of these reports, with each figure typed by hand
          taperbook explain NAME ID     say how a number of a report came about
          taperbook explain NAME ID SESSION    the same of a session it is held against, or of one
                                               session of a library
          taperbook verify FILE.pdf     recompute a report from what its PDF carries, and compare

          --folder DIR   the folder that holds sessions/ and reports/ (default: this one)
          --version      name and version
          --help         this text

        A report is a text reports/NAME.md; what is made of it goes into reports/NAME/.
        Exit status: 0 done, 1 input refused or PDF not verified, 2 wrong usage,
        3 a fault of the program.
        """;
  }
}
