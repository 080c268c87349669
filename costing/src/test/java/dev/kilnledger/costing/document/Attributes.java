package dev.kilnledger.costing.document;

import dev.kilnledger.units.Amount;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * Looks through values for attributes that say nothing: optional ones that are empty, and ones that
 * are as they would be by default. What no sample states, no round trip of samples proves.
 */
final class Attributes {
  private final Map<String, Boolean> stated = new TreeMap<>();
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

  private Attributes() {}

  /** The attributes that none of the samples states, as {@code Type.attribute}. */
  static List<String> unstated(Object... samples) {
    Attributes attributes = new Attributes();
    for (Object sample : samples) {
      attributes.look(sample);
    }
    return attributes.stated.entrySet().stream()
        .filter(entry -> !entry.getValue())
        .map(Map.Entry::getKey)
        .toList();
  }

  private void look(Object value) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(this::look);
    } else if (value instanceof Iterable<?> items) {
      items.forEach(this::look);
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(this::look);
    } else if (value.getClass().getSimpleName().startsWith("Immutable") && seen.add(value)) {
      for (Class<?> type : value.getClass().getInterfaces()) {
        lookThrough(type, value);
      }
    }
  }

  private void lookThrough(Class<?> type, Object value) {
    for (Method accessor : type.getMethods()) {
      if (accessor.getParameterCount() > 0 || Modifier.isStatic(accessor.getModifiers())) {
        continue;
      }
      boolean isAbstract = Modifier.isAbstract(accessor.getModifiers());
      if (isAbstract) {
        Object content = call(accessor, value);
        state(type, accessor, !isEmpty(content));
        look(content);
      } else if (setter(type, accessor, call(accessor, value)).isPresent()) {
        Object content = call(accessor, value);
        // a value that does not stand without it states it
        boolean usual = byDefault(type, accessor, value).filter(content::equals).isPresent();
        state(type, accessor, !usual);
        look(content);
      }
    }
  }

  private void state(Class<?> type, Method attribute, boolean says) {
    stated.merge(
        type.getSimpleName() + "." + attribute.getName(), says, (before, now) -> before || now);
  }

  private static boolean isEmpty(Object content) {
    return content.equals(Optional.empty())
        || content.equals(OptionalInt.empty())
        || content.equals(List.of())
        || content.equals(Set.of())
        || content.equals(Map.of());
  }

  /** What an attribute is where everything else that is needed is stated; empty if none can be. */
  private static Optional<Object> byDefault(Class<?> type, Method attribute, Object value) {
    try {
      Object builder = type.getMethod("builder").invoke(null);
      for (Method accessor : type.getMethods()) {
        if (accessor.getParameterCount() == 0
            && !Modifier.isStatic(accessor.getModifiers())
            && !accessor.getName().equals(attribute.getName())) {
          Object content = call(accessor, value);
          Optional<Method> setter = setter(type, accessor, content);
          if (setter.isPresent()) {
            setter.get().invoke(builder, content);
          }
        }
      }
      Object built = builder.getClass().getMethod("build").invoke(builder);
      return Optional.of(call(attribute, built));
    } catch (NoSuchMethodException | IllegalAccessException | InvocationTargetException e) {
      return Optional.empty();
    }
  }

  private static Optional<Method> setter(Class<?> type, Method accessor, Object content) {
    return Arrays.stream(type.getClasses())
        .filter(nested -> nested.getSimpleName().equals("Builder"))
        .flatMap(builder -> Arrays.stream(builder.getMethods()))
        .filter(method -> method.getName().equals(accessor.getName()))
        .filter(method -> method.getParameterCount() == 1)
        .filter(method -> takes(method.getParameterTypes()[0], content))
        .findFirst();
  }

  private static boolean takes(Class<?> parameter, Object content) {
    return parameter.isInstance(content)
        || (parameter == boolean.class && content instanceof Boolean)
        || (parameter == int.class && content instanceof Integer)
        || (parameter == long.class && content instanceof Long)
        || (parameter == Amount.class && content instanceof Amount<?>);
  }

  private static Object call(Method accessor, Object value) {
    try {
      return accessor.invoke(value);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new LinkageError(accessor.toString(), e);
    }
  }
}
