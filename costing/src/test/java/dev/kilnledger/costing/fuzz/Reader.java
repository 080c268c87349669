package dev.kilnledger.costing.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import dev.kilnledger.core.document.CoreDocuments;
import dev.kilnledger.core.document.Document;
import dev.kilnledger.core.document.DocumentLimits;
import dev.kilnledger.core.gcode.GCodeReader;
import dev.kilnledger.core.gcode.PrintProgramme;
import dev.kilnledger.core.material.MaterialLibrary;
import dev.kilnledger.core.mesh.Facets;
import dev.kilnledger.core.mesh.MeshMeasure;
import dev.kilnledger.core.mesh.MeshSize;
import dev.kilnledger.core.mesh.StlFile;
import dev.kilnledger.core.mesh.StlScaling;
import dev.kilnledger.core.mesh.ThreeMfFile;
import dev.kilnledger.core.part.PerAxis;
import dev.kilnledger.core.progress.Progress;
import dev.kilnledger.core.reading.ByteSource;
import dev.kilnledger.core.reading.InputProblem;
import dev.kilnledger.core.reading.UnreadableInputException;
import dev.kilnledger.costing.document.CostingDocuments;
import dev.kilnledger.costing.document.JobDesk;
import dev.kilnledger.costing.document.JobReply;
import dev.kilnledger.costing.document.PriceListCsv;
import dev.kilnledger.costing.offer.Offer;
import dev.kilnledger.thermal.document.ThermalDocuments;
import dev.kilnledger.units.Amount;
import dev.kilnledger.units.Amounts;
import dev.kilnledger.units.Kind;
import dev.kilnledger.units.UcumText;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;

/**
 * The readers, each with what it may answer: a value that makes sense and can be written and read
 * again, or the one exception that it documents, with where, what and what would be accepted.
 * Whatever else comes out of {@link #take} is a defect.
 */
enum Reader {
  /** Text of units; bad text is told by an IllegalArgumentException. */
  UCUM(180) {
    private final List<Kind<?>> kinds =
        List.of(Kind.LENGTH, Kind.MASS, Kind.TEMPERATURE, Kind.DENSITY, Kind.RATIO, Kind.ENERGY);

    @Override
    void take(byte[] input) throws UnreadableInputException {
      String text = new String(input, UTF_8);
      Kind<?> kind = kinds.get(Math.floorMod(Arrays.hashCode(input), kinds.size()));
      Amount<?> amount;
      try {
        amount = UcumText.parse(text, kind);
      } catch (IllegalArgumentException e) {
        require(e.getClass() == IllegalArgumentException.class, "told by its own exception");
        throw new UnreadableInputException(InputProblem.of("text", e.getMessage(), "a unit"));
      }
      require(UcumText.parse(UcumText.print(amount), kind).equals(amount), "reads back");
      require(!amount.toString().isEmpty() && Double.isFinite(amount.si()), "is a number");
      require(UcumText.parse(text, List.of(kind)).equals(amount), "reads the same of one kind");
      require(Double.isFinite(UcumText.parse(text).si()), "reads without a kind");
    }
  },

  /** Print programmes, none of which is refused. */
  GCODE(180) {
    @Override
    void take(byte[] input) throws IOException {
      PrintProgramme read = GCodeReader.standard().read(ByteSource.of(input));
      require(read.complete() && read.unreadLines() <= read.lines(), "counts its lines");
      require(read.lines() <= input.length, "has no more lines than bytes");
      require(read.leastTime().si() >= 0, "takes no time backwards");
      require(read.tools().stream().allMatch(use -> use.netFilament().si() > 0), "feeds forwards");
      require(read.firstUnreadLines().size() <= 100, "tells a hundred lines at most");
      require(read.passedOver().size() <= 1001, "names a thousand words at most");
    }
  },

  /** STL files: their facets, and a scaled copy, which must be readable as well. */
  STL(240) {
    @Override
    void take(byte[] input) throws IOException {
      StlFile stl = StlFile.of(ByteSource.of(input), Amounts.millimetres(1));
      long facets = facets(stl);
      var factor = Amounts.ratio(1.19);
      ByteArrayOutputStream copy = new ByteArrayOutputStream();
      StlScaling.standard()
          .write(stl, PerAxis.of(factor, factor, factor), copy, Progress.unheard());
      long copied = facets(StlFile.of(ByteSource.of(copy.toByteArray()), Amounts.millimetres(1)));
      require(copied == facets, "the copy has " + copied + " facets of " + facets);
    }
  },

  /** STL files, measured. */
  STL_MEASURED(4) {
    @Override
    void take(byte[] input) throws IOException {
      measured(StlFile.of(ByteSource.of(input), Amounts.millimetres(1)));
    }
  },

  /** 3MF files. */
  THREE_MF(180) {
    @Override
    void take(byte[] input) throws IOException {
      facets(ThreeMfFile.of(ByteSource.of(input)));
    }
  },

  /** 3MF files, measured; the input is the model, and the zip around it is sound. */
  THREE_MF_MODEL(3) {
    @Override
    void take(byte[] input) throws IOException {
      measured(ThreeMfFile.of(ByteSource.of(Seeds.zipped(input))));
    }
  },

  /** Documents of materials. */
  MATERIALS(60) {
    private final Document<?> document = CoreDocuments.materials(MaterialLibrary.standard());

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /** Documents of equipment. */
  EQUIPMENT(50) {
    private final Document<?> document = CoreDocuments.equipment(MaterialLibrary.standard());

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /** Documents of firings. */
  FIRING(6) {
    private final Document<?> document = ThermalDocuments.firing(MaterialLibrary.standard());

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /** Documents of sintering curves. */
  SINTERING_CURVE(20) {
    private final Document<?> document = ThermalDocuments.sinteringCurve();

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /** Documents of price books. */
  PRICE_BOOK(30) {
    private final Document<?> document = CostingDocuments.priceBook();

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /** Price lists in CSV. */
  PRICE_LIST(40) {
    @Override
    void take(byte[] input) throws IOException {
      List<Offer> offers = PriceListCsv.standard().read(ByteSource.of(input));
      String text = PriceListCsv.standard().text(offers);
      require(PriceListCsv.standard().read(text).equals(offers), "reads back");
    }
  },

  /** Documents of jobs. */
  JOB(6) {
    private final Document<?> document = CostingDocuments.job(MaterialLibrary.standard());

    @Override
    void take(byte[] input) throws IOException {
      document(document, input);
    }
  },

  /**
   * Documents of jobs, computed: answered or refused with all problems, whatever stands in them.
   */
  JOB_DESK(1) {
    private final JobDesk desk = JobDesk.standard();

    @Override
    void take(byte[] input) throws IOException {
      JobReply reply = desk.answer(ByteSource.of(input), DocumentLimits.standard());
      require(reply.answer().isPresent() == reply.problems().isEmpty(), "answers or says why not");
      if (reply.answer().isEmpty()) {
        throw new UnreadableInputException(reply.problems());
      }
    }
  };

  private static final int LONGEST_PROBLEM = 20_000;

  private final int share;

  /** A reader that gets so many of a thousand inputs: few where one takes long. */
  Reader(int share) {
    this.share = share;
  }

  /** How many of all the inputs of a run it gets. */
  long of(long inputs) {
    return Math.max(1, inputs * share / 1000);
  }

  /** Reads an input and checks the answer. */
  abstract void take(byte[] input) throws IOException;

  /** Reads an input; answers whether it was accepted. */
  final boolean accepts(byte[] input) throws IOException {
    try {
      take(input);
      return true;
    } catch (UnreadableInputException e) {
      require(!e.problems().isEmpty(), "says what is wrong");
      for (InputProblem problem : e.problems()) {
        require(!problem.where().isBlank() && !problem.what().isBlank(), "says where and what");
        require(!problem.accepted().isBlank(), "says what would be accepted");
        require(problem.text().length() < LONGEST_PROBLEM, "is short");
      }
      return false;
    }
  }

  private static long facets(Facets mesh) throws IOException {
    long[] count = {0};
    mesh.forEach(
        (ax, ay, az, bx, by, bz, cx, cy, cz) -> {
          count[0]++;
          require(Double.isFinite(ax + ay + az + bx + by + bz + cx + cy + cz), "finite corners");
        },
        Progress.unheard());
    return count[0];
  }

  private static void measured(Facets mesh) throws IOException {
    MeshSize size = MeshMeasure.standard().measure(mesh);
    require(size.facets() > 0 && size.area().si() >= 0, "has an area");
    require(size.volume().isPresent() == size.closed(), "has a volume if it is closed");
    require(size.volume().stream().allMatch(volume -> volume.si() >= 0), "a volume of 0 or more");
    var extent = size.extent();
    require(!extent.highX().isLessThan(extent.lowX()), "its ends are in order");
  }

  private static <T> void document(Document<T> document, byte[] input) throws IOException {
    T value = document.read(ByteSource.of(input));
    String text = document.text(value);
    require(document.read(ByteSource.of(text.getBytes(UTF_8))).equals(value), "reads back");
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError(what);
    }
  }
}
