package dev.kilnledger.core.document.internal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * How a value stands in a document.
 *
 * @param <T> the value
 */
public abstract class Form<T> {
  /** Forms are made by {@link Forms} and {@link ObjectForm}. */
  Form() {}

  /** Reads a value; null where it cannot be read, and then the problem is told. */
  abstract @Nullable T read(JsonValue value, String path, Reading reading);

  /** What stands for such a value, for messages. */
  abstract String accepted();

  /** Writes a value. */
  abstract void write(T value, JsonGenerator out) throws IOException;

  /** The schema of the value; forms with a name put it into the definitions and refer to it. */
  abstract Map<String, Object> schema(Definitions definitions);

  /**
   * The form of another value that stands like this one.
   *
   * @param <U> the other value
   * @param to makes it of what was read; what it refuses becomes a problem
   * @param back makes of it what is written
   * @return the form
   */
  public <U> Form<U> as(Function<T, U> to, Function<U, T> back) {
    Form<T> form = this;
    return new Form<>() {
      @Override
      @Nullable U read(JsonValue value, String path, Reading reading) {
        T read = form.read(value, path, reading);
        if (read == null) {
          return null;
        }
        try {
          return to.apply(read);
        } catch (IllegalArgumentException e) {
          reading.refused(value, path, e);
          return null;
        }
      }

      @Override
      String accepted() {
        return form.accepted();
      }

      @Override
      void write(U value, JsonGenerator out) throws IOException {
        form.write(back.apply(value), out);
      }

      @Override
      Map<String, Object> schema(Definitions definitions) {
        return form.schema(definitions);
      }
    };
  }

  /** A name as a part of a JSON pointer (RFC 6901). */
  static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  static boolean isType(
      JsonValue value, JsonValue.Type type, String accepted, String path, Reading reading) {
    if (value.type() == type) {
      return true;
    }
    reading.problem(value, path, value.shown() + " stands there", accepted);
    return false;
  }

  boolean isType(JsonValue value, JsonValue.Type type, String path, Reading reading) {
    return isType(value, type, accepted(), path, reading);
  }
}
