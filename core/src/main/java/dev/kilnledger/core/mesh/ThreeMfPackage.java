package dev.kilnledger.core.mesh;

import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** The zip around a 3MF model: finds the model in it and reads it, element by element. */
final class ThreeMfPackage {
  private static final String RELATIONSHIPS = "_rels/.rels";
  private static final String MODEL_TYPE =
      "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf};

  private final ByteSource source;
  private final ThreeMfLimits limits;

  ThreeMfPackage(ByteSource source, ThreeMfLimits limits) {
    this.source = source;
    this.limits = limits;
  }

  /** Any namespace will do. */
  private static final String ANY = "";

  /** Takes the start tags and end tags of a part. */
  interface Elements {
    void start(XMLStreamReader xml) throws UnreadableInputException;

    void end(String name) throws UnreadableInputException;
  }

  /** Hands on what belongs to the core specification; extensions are passed over. */
  void readModel(Elements elements, Progress progress) throws IOException {
    String[] model = {""};
    readPart(
        RELATIONSHIPS,
        ANY,
        new Elements() {
          @Override
          public void start(XMLStreamReader xml) {
            if (xml.getLocalName().equals("Relationship")
                && MODEL_TYPE.equals(xml.getAttributeValue(null, "Type"))) {
              String target = xml.getAttributeValue(null, "Target");
              model[0] = target == null ? "" : target;
            }
          }

          @Override
          public void end(String name) {}
        },
        Progress.unheard());
    if (model[0].isEmpty()) {
      throw problem(RELATIONSHIPS, "it names no 3D model", "a relationship of type " + MODEL_TYPE);
    }
    readPart(model[0], ThreeMfModel.CORE, elements, progress);
  }

  private void readPart(String name, String namespace, Elements elements, Progress progress)
      throws IOException {
    String wanted = withoutSlash(name);
    try (CountedStream file = new CountedStream(source, progress);
        ZipInputStream zip = new ZipInputStream(file)) {
      Unfolded unfolded = new Unfolded(zip, limits.unfoldedBytes());
      ZipEntry entry = zip.getNextEntry();
      while (entry != null) {
        if (withoutSlash(entry.getName()).equalsIgnoreCase(wanted)) {
          parse(wanted, unfolded, namespace, elements);
          return;
        }
        // unfolded like the rest, so that what is passed over counts as well
        unfolded.passOver();
        entry = zip.getNextEntry();
      }
    } catch (ZipException | EOFException | IllegalArgumentException e) {
      // the zip reader tells a name that is no text by the latter
      throw problem("zip", "it is broken: " + e.getMessage(), "a zip file");
    }
    throw problem("zip", "there is no part " + wanted, "a zip file with that part");
  }

  private static void parse(String part, InputStream in, String namespace, Elements elements)
      throws IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    try {
      XMLStreamReader xml = factory.createXMLStreamReader(decoded(in));
      while (xml.hasNext()) {
        int event = xml.next();
        if (event == XMLStreamConstants.DTD) {
          throw problem(part, "it has a document type", "a model without one");
        } else if (event == XMLStreamConstants.START_ELEMENT && isOf(namespace, xml)) {
          elements.start(xml);
        } else if (event == XMLStreamConstants.END_ELEMENT && isOf(namespace, xml)) {
          elements.end(xml.getLocalName());
        }
      }
    } catch (XMLStreamException e) {
      if (e.getNestedException() instanceof CharacterCodingException) {
        throw problem(part, "it is no text in UTF-8 or UTF-16", "the XML of a 3MF model");
      }
      if (e.getNestedException() instanceof IOException io) {
        throw io;
      }
      Location at = e.getLocation();
      throw problem(
          at == null ? part : part + ", line " + at.getLineNumber(),
          "it is no well-formed XML",
          "the XML of a 3MF model");
    }
  }

  private static boolean isOf(String namespace, XMLStreamReader xml) {
    return namespace.equals(ANY) || namespace.equals(xml.getNamespaceURI());
  }

  /** Decoded here, as the parser would print to the console what is no text in its first line. */
  private static Reader decoded(InputStream in) throws IOException {
    PushbackInputStream bytes = new PushbackInputStream(in, BYTE_ORDER_MARK.length);
    byte[] first = bytes.readNBytes(BYTE_ORDER_MARK.length);
    int mark = first.length < 2 ? 0 : ((first[0] & 0xff) << 8) | (first[1] & 0xff);
    if (!Arrays.equals(first, BYTE_ORDER_MARK)) {
      bytes.unread(first);
    }
    Charset charset =
        mark == 0xfeff || mark == 0xfffe ? StandardCharsets.UTF_16 : StandardCharsets.UTF_8;
    return new InputStreamReader(bytes, charset.newDecoder());
  }

  private static String withoutSlash(String name) {
    return name.startsWith("/") ? name.substring(1) : name;
  }

  static UnreadableInputException problem(String where, String what, String accepted) {
    return new UnreadableInputException(InputProblem.of("3MF file, " + where, what, accepted));
  }

  /** Counts what the zip unfolds to. */
  private static final class Unfolded extends FilterInputStream {
    /** What the parser would have to hold in memory at once. */
    private static final int LONGEST_TAG = 1 << 20;

    private final long most;
    private long count;
    private long sinceTag;

    Unfolded(InputStream in, long most) {
      super(in);
      this.most = most;
    }

    /** Reads to the end of a part that may be anything. */
    void passOver() throws IOException {
      byte[] bytes = new byte[1 << 13];
      int read = super.read(bytes, 0, bytes.length);
      while (read >= 0) {
        count(read);
        read = super.read(bytes, 0, bytes.length);
      }
    }

    private void count(int read) throws IOException {
      count += read;
      if (count > most) {
        throw problem("zip", "it unfolds to more than " + most + " bytes", "up to that");
      }
    }

    @Override
    public int read() throws IOException {
      byte[] one = new byte[1];
      return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
      int read = super.read(into, from, length);
      count(Math.max(0, read));
      for (int i = 0; i < read; i++) {
        sinceTag = into[from + i] == '<' ? 0 : sinceTag + 1;
        if (sinceTag > LONGEST_TAG) {
          throw problem("zip", "a tag is longer than " + LONGEST_TAG + " bytes", "up to that");
        }
      }
      return read;
    }

    @Override
    public void close() {
      // the zip goes on after the part
    }
  }
}
