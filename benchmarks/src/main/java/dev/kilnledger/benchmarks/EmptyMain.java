package dev.kilnledger.benchmarks;

/** What a fresh JVM takes at least: a main that prints one line. */
final class EmptyMain {
  private EmptyMain() {}

  /**
   * Prints a line.
   *
   * @param arguments how many milliseconds to wait before, none if empty
   * @throws InterruptedException if the wait is interrupted
   */
  public static void main(String[] arguments) throws InterruptedException {
    if (arguments.length > 0) {
      Thread.sleep(Long.parseLong(arguments[0]));
    }
    System.out.println("nothing");
  }
}
