package dev.kilnledger.examples.gate;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javassist.Modifier;
import javassist.bytecode.AttributeInfo;
import javassist.bytecode.ClassFile;
import javassist.bytecode.ConstPool;
import javassist.bytecode.ExceptionsAttribute;
import javassist.bytecode.FieldInfo;
import javassist.bytecode.MethodInfo;
import javassist.bytecode.SignatureAttribute;

/**
 * What embedders can compile against, as text that a review can read, and back as class files
 * without code that can be compared. One line for a class, and one for each of its members: flags,
 * name, type as the class file has it, and behind bars what generics and exceptions it states.
 */
final class ApiText {
  private static final String BAR = " | ";

  /** By the bit, in the order of the language. */
  private static final Map<Integer, String> FLAGS = new LinkedHashMap<>();

  static {
    FLAGS.put(Modifier.PUBLIC, "public");
    FLAGS.put(Modifier.PROTECTED, "protected");
    FLAGS.put(Modifier.STATIC, "static");
    FLAGS.put(Modifier.ABSTRACT, "abstract");
    FLAGS.put(Modifier.FINAL, "final");
    FLAGS.put(Modifier.VARARGS, "varargs");
    FLAGS.put(Modifier.INTERFACE, "interface");
    FLAGS.put(Modifier.ANNOTATION, "annotation");
    FLAGS.put(Modifier.ENUM, "enum");
  }

  private ApiText() {}

  /** The lines of a class: its own, then its fields and methods in the order of their text. */
  static List<String> lines(ClassFile type) {
    StringJoiner head = new StringJoiner(" ");
    head.add("class" + flags(type.getAccessFlags() & ~Modifier.VARARGS));
    head.add(type.getName()).add(type.getSuperclass());
    for (String parent : type.getInterfaces()) {
      head.add(parent);
    }
    List<String> members = new ArrayList<>();
    for (FieldInfo field : type.getFields()) {
      if (isOpen(field.getAccessFlags())) {
        String text = field.getName() + " " + field.getDescriptor();
        members.add(
            "  field"
                + flags(field.getAccessFlags() & ~Modifier.VARARGS)
                + " "
                + text
                + generics(field.getAttribute(SignatureAttribute.tag)));
      }
    }
    for (MethodInfo method : type.getMethods()) {
      if (isOpen(method.getAccessFlags())) {
        StringBuilder text =
            new StringBuilder("  method").append(flags(method.getAccessFlags())).append(' ');
        text.append(method.getName()).append(' ').append(method.getDescriptor());
        text.append(generics(method.getAttribute(SignatureAttribute.tag)));
        if (method.getExceptionsAttribute() != null) {
          for (String thrown : method.getExceptionsAttribute().getExceptions()) {
            text.append(BAR).append("throws ").append(thrown);
          }
        }
        members.add(text.toString());
      }
    }
    members.sort(null);
    members.add(0, head + generics(type.getAttribute(SignatureAttribute.tag)));
    return members;
  }

  static boolean isOpen(int flags) {
    return (flags & (Modifier.PUBLIC | Modifier.PROTECTED)) != 0 && (flags & SYNTHETIC) == 0;
  }

  private static final int SYNTHETIC = 0x1000;

  private static String flags(int bits) {
    StringBuilder words = new StringBuilder();
    FLAGS.forEach(
        (bit, word) -> {
          if ((bits & bit) != 0) {
            words.append(' ').append(word);
          }
        });
    return words.toString();
  }

  private static String generics(AttributeInfo signature) {
    return signature == null ? "" : BAR + ((SignatureAttribute) signature).getSignature();
  }

  /** The classes of a text as an archive of class files without code. */
  static byte[] archive(List<String> lines) throws IOException {
    List<ClassFile> types = new ArrayList<>();
    for (String line : lines) {
      String[] parts = line.strip().split(" \\| ", -1);
      List<String> words = List.of(parts[0].split(" ", -1));
      int flags = 0;
      int at = 1;
      for (; FLAGS.containsValue(words.get(at)); at++) {
        String word = words.get(at);
        flags |=
            FLAGS.entrySet().stream()
                .filter(e -> e.getValue().equals(word))
                .mapToInt(Map.Entry::getKey)
                .sum();
      }
      List<String> rest = words.subList(at, words.size());
      if (words.get(0).equals("class")) {
        types.add(type(flags, rest, parts));
      } else {
        ClassFile type = types.get(types.size() - 1);
        ConstPool pool = type.getConstPool();
        if (words.get(0).equals("field")) {
          FieldInfo field = new FieldInfo(pool, rest.get(0), rest.get(1));
          field.setAccessFlags(flags);
          signature(pool, parts).forEach(field::addAttribute);
          type.addField2(field);
        } else {
          MethodInfo method = new MethodInfo(pool, rest.get(0), rest.get(1));
          method.setAccessFlags(flags);
          signature(pool, parts).forEach(method::addAttribute);
          thrown(pool, method, parts);
          type.addMethod2(method);
        }
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (ClassFile type : types) {
        zip.putNextEntry(new ZipEntry(type.getName().replace('.', '/') + ".class"));
        type.write(new DataOutputStream(zip));
      }
    }
    return bytes.toByteArray();
  }

  private static ClassFile type(int flags, List<String> names, String[] parts) {
    ClassFile type = new ClassFile((flags & Modifier.INTERFACE) != 0, names.get(0), names.get(1));
    type.setAccessFlags(flags);
    type.setInterfaces(names.subList(2, names.size()).toArray(String[]::new));
    signature(type.getConstPool(), parts).forEach(type::addAttribute);
    return type;
  }

  private static List<AttributeInfo> signature(ConstPool pool, String[] parts) {
    return parts.length > 1 && !parts[1].startsWith("throws ")
        ? List.of(new SignatureAttribute(pool, parts[1]))
        : List.of();
  }

  private static void thrown(ConstPool pool, MethodInfo method, String[] parts) {
    List<String> names = new ArrayList<>();
    for (String part : parts) {
      if (part.startsWith("throws ")) {
        names.add(part.substring("throws ".length()));
      }
    }
    if (!names.isEmpty()) {
      ExceptionsAttribute thrown = new ExceptionsAttribute(pool);
      thrown.setExceptions(names.toArray(String[]::new));
      method.setExceptionsAttribute(thrown);
    }
  }
}
