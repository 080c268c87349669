package dev.kilnledger.examples.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A guide as its reader sees it, and the blocks of code in it. */
record Guide(String text, List<Block> blocks) {
  static final Pattern FENCED =
      Pattern.compile("^```(\\w+)\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);

  /** One block: its language, and its text with a line feed at the end of each line. */
  record Block(String language, String text) {}

  static Guide read(String name) {
    String text = file(Path.of("guides", name));
    List<Block> blocks = new ArrayList<>();
    Matcher fenced = FENCED.matcher(text);
    while (fenced.find()) {
      blocks.add(new Block(fenced.group(1), fenced.group(2)));
    }
    return new Guide(text, blocks);
  }

  List<String> blocksOf(String language) {
    return blocks.stream()
        .filter(block -> block.language().equals(language))
        .map(Block::text)
        .toList();
  }

  static String file(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
