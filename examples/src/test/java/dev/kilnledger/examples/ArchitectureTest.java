package dev.kilnledger.examples;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import dev.kilnledger.core.finding.FindingCode;
import dev.kilnledger.core.reading.ByteSource;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The rules of the house that a compiler does not know. */
class ArchitectureTest {
  private static final JavaClasses LIBRARY =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(
              "dev.kilnledger.units",
              "dev.kilnledger.core",
              "dev.kilnledger.thermal",
              "dev.kilnledger.costing");

  @Test
  void modulesDependInOneDirection() {
    layeredArchitecture()
        .consideringOnlyDependenciesInLayers()
        .layer("units")
        .definedBy("dev.kilnledger.units..")
        .layer("core")
        .definedBy("dev.kilnledger.core..")
        .layer("thermal")
        .definedBy("dev.kilnledger.thermal..")
        .layer("costing")
        .definedBy("dev.kilnledger.costing..")
        .whereLayer("units")
        .mayNotAccessAnyLayer()
        .whereLayer("core")
        .mayOnlyAccessLayers("units")
        .whereLayer("thermal")
        .mayOnlyAccessLayers("units", "core")
        .whereLayer("costing")
        .mayOnlyAccessLayers("units", "core", "thermal")
        .check(LIBRARY);
  }

  @Test
  void onlyTheWholeJobAndTheOutfitSeeThermal() {
    noClasses()
        .that()
        .resideInAPackage("dev.kilnledger.costing..")
        .and()
        .resideOutsideOfPackages(
            "dev.kilnledger.costing.document..",
            "dev.kilnledger.costing.job..",
            "dev.kilnledger.costing.outfit..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("dev.kilnledger.thermal..")
        .check(LIBRARY);
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("dev.kilnledger.(*).(*)..").should().beFreeOfCycles().check(LIBRARY);
  }

  @Test
  void moneyStaysInCosting() {
    noClasses()
        .that()
        .resideOutsideOfPackage("dev.kilnledger.costing..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage("org.joda.money..")
        .check(LIBRARY);
  }

  @Test
  void implementationClassesOfTheUnitsLibraryStayInUnits() {
    noClasses()
        .that()
        .resideOutsideOfPackage("dev.kilnledger.units..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("tech.units.indriya..", "systems.uom..", "tech.uom..")
        .check(LIBRARY);
  }

  @Test
  void nothingStaticChanges() {
    fields().that().areStatic().should().beFinal().check(LIBRARY);
    fields()
        .that()
        .areStatic()
        .and()
        .arePublic()
        .and()
        .areDeclaredInClassesThat()
        .areNotEnums()
        .should()
        .notHaveRawType(
            describe(
                "containers that a reader could change",
                type ->
                    type.isArray()
                        || type.isAssignableTo(Collection.class)
                        || type.isAssignableTo(Map.class)))
        .check(LIBRARY);
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.concurrent.atomic..")
        .orShould()
        .dependOnClassesThat()
        .areAssignableTo(ThreadLocal.class)
        .check(LIBRARY);
  }

  @Test
  void resultsDoNotDependOnTheMachine() {
    Set<String> clocks = Set.of("now", "currentTimeMillis", "nanoTime");
    Set<String> defaults = Set.of("systemDefault", "systemDefaultZone", "defaultCharset", "random");
    Set<String> formats =
        Set.of("java.text.NumberFormat", "java.text.DecimalFormat", "java.util.Random");
    noClasses()
        .should()
        .accessTargetWhere(
            access(
                "reads a clock or a default locale, zone or charset",
                access -> {
                  String owner = access.getTargetOwner().getName();
                  String name = access.getTarget().getName();
                  boolean own = owner.startsWith("dev.kilnledger");
                  return !own
                      && (clocks.contains(name)
                          || defaults.contains(name)
                          || formats.contains(owner)
                          || (owner.equals(Locale.class.getName()) && name.equals("getDefault"))
                          || usesDefaultLocale(owner, access));
                }))
        .check(LIBRARY);
  }

  private static boolean usesDefaultLocale(String owner, JavaAccess<?> access) {
    String target = access.getTarget().getFullName();
    return owner.equals(String.class.getName())
        && Set.of(
                "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
                "java.lang.String.formatted([Ljava.lang.Object;)",
                "java.lang.String.toLowerCase()",
                "java.lang.String.toUpperCase()",
                "java.lang.String.getBytes()",
                "java.lang.String.<init>([B)")
            .contains(target);
  }

  @Test
  void theLibraryIsSilent() {
    noClasses()
        .should()
        .accessTargetWhere(
            access(
                "writes to the console",
                access ->
                    access.getTargetOwner().isEquivalentTo(System.class)
                        && Set.of("out", "err").contains(access.getTarget().getName())))
        .orShould()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.logging..", "java.net..", "org.slf4j..")
        .check(LIBRARY);
  }

  /**
   * What is read and written are the streams and paths that the caller names. {@link ByteSource}
   * opens the caller's path; everything else takes a source or a stream.
   */
  @Test
  void nothingOutsideIsTouchedButWhatTheCallerNames() {
    noClasses()
        .that()
        .doNotBelongToAnyOf(ByteSource.class)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.nio.file..", "java.nio.channels..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile)")
        .check(LIBRARY);
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.net..",
            "javax.net..",
            "java.rmi..",
            "javax.naming..",
            "java.sql..",
            "java.util.jar..",
            "java.util.prefs..",
            "javax.script..",
            "java.lang.foreign..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.lang\\.Process.*|java\\.util\\.zip\\.ZipFile|java\\.io\\.Console")
        .check(LIBRARY);
  }

  /** A library that asks its surroundings answers differently from place to place. */
  @Test
  void surroundingsAreNotAsked() {
    Map<Class<?>, Set<String>> asking =
        Map.of(
            System.class,
            Set.of(
                "getProperty",
                "getProperties",
                "setProperty",
                "getenv",
                "load",
                "loadLibrary",
                "exit",
                "in"),
            Runtime.class,
            Set.of("exec", "load", "loadLibrary", "exit", "halt", "addShutdownHook"),
            Boolean.class,
            Set.of("getBoolean"),
            Integer.class,
            Set.of("getInteger"),
            Long.class,
            Set.of("getLong"));
    noClasses()
        .should()
        .accessTargetWhere(
            access(
                "asks or changes the surroundings",
                access ->
                    asking.entrySet().stream()
                        .anyMatch(
                            entry ->
                                access.getTargetOwner().isEquivalentTo(entry.getKey())
                                    && entry.getValue().contains(access.getTarget().getName()))))
        .check(LIBRARY);
  }

  @Test
  void everyPackageIsNullMarked() {
    classes()
        .should(
            new ArchCondition<JavaClass>("be in a null-marked package") {
              @Override
              public void check(JavaClass type, ConditionEvents events) {
                if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
                  events.add(SimpleConditionEvent.violated(type, type.getPackageName()));
                }
              }
            })
        .check(LIBRARY);
  }

  /** A code is what programs look for: it must mean one thing. */
  @Test
  void noFindingCodeStandsTwice() throws ClassNotFoundException {
    List<String> codes = new ArrayList<>();
    for (JavaClass type : LIBRARY) {
      if (type.isEnum() && type.isAssignableTo(FindingCode.class)) {
        for (Object constant : Class.forName(type.getName()).getEnumConstants()) {
          codes.add(((FindingCode) constant).code());
        }
      }
    }
    assertThat(codes)
        .hasSizeGreaterThan(50)
        .doesNotHaveDuplicates()
        .allSatisfy(code -> assertThat(code).matches("[a-z0-9]+(-[a-z0-9]+)*"));
  }

  @Test
  void everyValueIsSerializable() {
    classes()
        .that()
        .haveSimpleNameStartingWith("Immutable")
        .should()
        .beAssignableTo(Serializable.class)
        .check(LIBRARY);
  }

  @Test
  void classesAreOpenOnPurposeOnly() {
    classes()
        .that()
        .arePublic()
        .and()
        .areNotInterfaces()
        .and()
        .areNotEnums()
        .and()
        .areTopLevelClasses()
        .and()
        .resideOutsideOfPackage("..internal..")
        .should()
        .haveModifier(JavaModifier.FINAL)
        .check(LIBRARY);
  }

  @Test
  void packagesAreNamedAfterConcepts() {
    noClasses()
        .should()
        .resideInAnyPackage("..util..", "..common..", "..helper..", "..manager..", "..impl..")
        .check(LIBRARY);
  }

  private static DescribedPredicate<JavaAccess<?>> access(
      String description, java.util.function.Predicate<JavaAccess<?>> predicate) {
    return describe(description, predicate);
  }
}
