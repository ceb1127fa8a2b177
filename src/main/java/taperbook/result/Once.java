package taperbook.result;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is computed when it is first used, on any thread. */
public final class Once<T> implements Supplier<T> {
  private final Supplier<T> computation;
  private @Nullable T value;

  /** Creates a value that a computation returns, which is not null. */
  public Once(Supplier<T> computation) {
    this.computation = computation;
  }

  @Override
  public synchronized T get() {
    T known = value;
    if (known == null) {
      known = computation.get();
      value = known;
    }
    return known;
  }
}
