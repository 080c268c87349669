package dev.kilnledger.core.document.internal;

/**
 * A field of an object, by which its value is asked for after reading.
 *
 * @param <F> the value of the field
 */
@SuppressWarnings("UnusedTypeParameter") // it is what the form hands back as its value
public final class Field<F> {
  private final String name;

  Field(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }
}
