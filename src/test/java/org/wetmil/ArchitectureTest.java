package org.wetmil;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.callMethodWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludePackageInfos;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Executors;
import org.wetmil.workbook.copy.SpreadsheetClasses;

/** One arrow down the rooms, and each outside library behind one door. */
@AnalyzeClasses(
    packages = "org.wetmil",
    importOptions = {DoNotIncludeTests.class, DoNotIncludePackageInfos.class})
class ArchitectureTest {

  /** From the door down: a room may use those of the floors below it, never above or beside it. */
  private static final List<List<String>> FLOORS =
      List.of(
          List.of("cli"),
          List.of("jobs"),
          List.of("workbook"),
          List.of("checks"),
          List.of("reconcile", "audit"),
          List.of("estimate"),
          List.of("catalogue"),
          List.of("trade", "measure", "ledger"),
          List.of("formula"),
          List.of("quantity"));

  @ArchTest static final ArchRule roomsUseOnlyTheRoomsBelowThem = oneArrowDown();

  @ArchTest
  static final ArchRule onlyTheWorkbookRoomUsesTheSpreadsheetLibrary =
      onlyRoom(
          "workbook",
          "org.apache.poi..",
          "org.apache.xmlbeans..",
          "org.openxmlformats..",
          "org.apache.commons.compress..",
          "com.microsoft..");

  @ArchTest
  static final ArchRule onlyTheLedgerRoomUsesTheCsvLibrary =
      onlyRoom("ledger", "org.apache.commons.csv..");

  @ArchTest
  static final ArchRule onlyTheCliRoomUsesTheCommandLineLibrary = onlyRoom("cli", "picocli..");

  @ArchTest
  static final ArchRule onlyTheJobsRoomUsesTheJsonLibrary =
      onlyRoom("jobs", "com.fasterxml.jackson..");

  @ArchTest
  static final ArchRule onlyTheCliRoomPrints =
      noClasses().that().resideOutsideOfPackage(inside("cli")).should(ACCESS_STANDARD_STREAMS);

  @ArchTest
  static final ArchRule onlyMainEndsTheProcess =
      classes().that(endTheProcess()).should().be(Main.class);

  /** Bids are the contractor's own business: nothing is sent, fetched or started. */
  @ArchTest
  static final ArchRule nothingReachesOutOfTheProgram =
      noClasses().should().dependOnClassesThat(reachOut()).orShould(startPrograms());

  /** Two threads that come to these classes from two sides wait for each other for ever. */
  @ArchTest
  static final ArchRule whoeverWorksSideBySideSetsUpTheSpreadsheetClassesFirst =
      classes()
          .that()
          .resideInAPackage(inside("jobs"))
          .and(workSideBySide())
          .should(
              callMethodWhere(
                  describe(
                      "set up the spreadsheet classes",
                      call ->
                          call.getTargetOwner().isEquivalentTo(SpreadsheetClasses.class)
                              && call.getName().equals("load"))));

  private static DescribedPredicate<JavaClass> workSideBySide() {
    return describe(
        "work side by side",
        worker ->
            worker.getMethodCallsFromSelf().stream()
                .anyMatch(
                    call ->
                        call.getTargetOwner().isEquivalentTo(Executors.class)
                            || Set.of("parallel", "parallelStream").contains(call.getName())));
  }

  private static DescribedPredicate<JavaClass> reachOut() {
    Set<String> names = Set.of("java.net.URI", "java.net.URL", "java.net.URLDecoder");
    return DescribedPredicate.describe(
        "reach the network or other programs",
        used ->
            (resideInAnyPackage("java.net..", "java.net.http..", "javax.net..", "java.rmi..")
                        .test(used)
                    && !names.contains(used.getName()))
                || used.isEquivalentTo(ProcessBuilder.class)
                || used.isEquivalentTo(Process.class));
  }

  private static ArchCondition<JavaClass> startPrograms() {
    return callMethodWhere(
        describe(
            "open a connection or run a command",
            call ->
                Set.of("exec", "openConnection", "openStream")
                    .contains(call.getTarget().getName())));
  }

  private static LayeredArchitecture oneArrowDown() {
    LayeredArchitecture arrow =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("Main")
            .definedBy("org.wetmil")
            .whereLayer("Main")
            .mayNotBeAccessedByAnyLayer();
    List<String> above = new ArrayList<>(List.of("Main"));
    for (List<String> floor : FLOORS) {
      for (String room : floor) {
        arrow =
            arrow
                .layer(room)
                .definedBy(inside(room))
                .whereLayer(room)
                .mayOnlyBeAccessedByLayers(above.toArray(String[]::new));
      }
      above.addAll(floor);
    }
    return arrow.ensureAllClassesAreContainedInArchitecture();
  }

  /** Asks the users of a library where they live, so that a rule without any user fails. */
  private static ArchRule onlyRoom(String room, String... library) {
    return classes()
        .that(use("use " + String.join(", ", library), resideInAnyPackage(library)))
        .should()
        .resideInAPackage(inside(room));
  }

  private static DescribedPredicate<JavaClass> use(
      String description, DescribedPredicate<JavaClass> used) {
    return DescribedPredicate.describe(
        description,
        user ->
            user.getDirectDependenciesFromSelf().stream()
                .anyMatch(dependency -> used.test(dependency.getTargetClass())));
  }

  private static DescribedPredicate<JavaClass> endTheProcess() {
    return DescribedPredicate.describe(
        "end the process",
        caller ->
            caller.getMethodCallsFromSelf().stream()
                .anyMatch(
                    call ->
                        Set.of("exit", "halt").contains(call.getName())
                            && (call.getTargetOwner().isEquivalentTo(System.class)
                                || call.getTargetOwner().isEquivalentTo(Runtime.class))));
  }

  private static String inside(String room) {
    return "org.wetmil." + room + "..";
  }
}
