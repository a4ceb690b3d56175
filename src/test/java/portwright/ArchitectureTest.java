package portwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.FileDescriptor;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The house plan: which room may use which, and which library stays in which room. */
class ArchitectureTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("portwright");

    private static final Map<String, List<String>> ALLOWED = new LinkedHashMap<>();

    static {
        ALLOWED.put("units", List.of());
        ALLOWED.put("source", List.of());
        ALLOWED.put("model", List.of("units"));
        ALLOWED.put("geometry", List.of("model", "units"));
        ALLOWED.put("data", List.of("source", "units"));
        ALLOWED.put("calc.combustion", List.of("units", "source", "data"));
        ALLOWED.put("calc.flow", List.of("units", "source", "data", "calc.combustion"));
        ALLOWED.put("calc.draft", List.of("units", "source", "data", "calc.flow", "calc.combustion"));
        ALLOWED.put("calc.supply", List.of("units", "source", "data"));
        ALLOWED.put("calc.room", List.of("units", "source", "data"));
        ALLOWED.put("calc.firing", List.of("units", "source", "data", "calc.combustion", "calc.draft", "calc.flow"));
        ALLOWED.put(
                "calc.firing.log",
                List.of("units", "source", "data", "calc.combustion", "calc.draft", "calc.flow", "calc.firing"));
        ALLOWED.put("review", List.of("calc", "data", "geometry", "model", "units", "source"));
        ALLOWED.put("check", List.of("review", "geometry", "model", "source", "units", "data", "calc"));
        ALLOWED.put("layout", List.of("check", "review", "geometry", "model", "units", "source", "data"));
        ALLOWED.put("file", List.of("model", "units", "data", "source"));
        ALLOWED.put(
                "report", List.of("check", "review", "model", "source", "units", "geometry", "data", "calc", "layout"));
        ALLOWED.put("form", List.of("check", "model", "units"));
        ALLOWED.put("drawing", List.of("data", "geometry", "model", "check", "review", "units", "source"));
        ALLOWED.put(
                "sheet",
                List.of(
                        "report",
                        "check",
                        "review",
                        "geometry",
                        "model",
                        "source",
                        "units",
                        "drawing",
                        "data",
                        "layout",
                        "form"));
    }

    private static String pkg(String room) {
        return "portwright." + room + "..";
    }

    @TestFactory
    List<DynamicTest> everyRoomUsesOnlyWhatItMay() {
        List<DynamicTest> tests = new ArrayList<>();
        ALLOWED.forEach((room, allowed) -> tests.add(DynamicTest.dynamicTest(room, () -> {
            List<String> ok =
                    new ArrayList<>(allowed.stream().map(ArchitectureTest::pkg).toList());
            ok.add(pkg(room));
            DescribedPredicate<JavaClass> foreign = resideInAPackage("portwright..")
                    .and(DescribedPredicate.not(resideInAnyPackage(ok.toArray(String[]::new))));
            noClasses()
                    .that()
                    .resideInAPackage(pkg(room))
                    .should()
                    .dependOnClassesThat(foreign)
                    .because("nothing flows back up")
                    .allowEmptyShould(true)
                    .check(ALL);
        })));
        return tests;
    }

    /** A half file must not be possible: only one class writes files, and a window's mark, which nobody reads. */
    @Test
    void filesAreWrittenWholeByOneClass() {
        DescribedPredicate<JavaCall<?>> writes = DescribedPredicate.describe("write a file", c -> {
            String owner = c.getTargetOwner().getName();
            return owner.equals("java.nio.file.Files")
                            && c.getName()
                                    .matches(
                                            "write|writeString|newOutputStream|newBufferedWriter|newByteChannel|copy|move")
                    || owner.matches("java.io.(FileOutputStream|FileWriter|RandomAccessFile|PrintStream)")
                            && c.getName().equals("<init>")
                            // what the process was given to write to is no file of ours
                            && c.getTarget().getRawParameterTypes().stream()
                                    .noneMatch(p -> p.isEquivalentTo(FileDescriptor.class))
                    || owner.equals("java.nio.channels.FileChannel")
                            && c.getName().equals("open");
        });
        noClasses()
                .that()
                .doNotHaveSimpleName("AtomicFile")
                .and()
                .doNotHaveSimpleName("OpenMark")
                .should()
                .callCodeUnitWhere(writes)
                .check(ALL);
    }

    @Test
    void commandLineAndWindowDoNotKnowEachOther() {
        noClasses()
                .that()
                .resideInAPackage(pkg("cli"))
                .should()
                .dependOnClassesThat(resideInAPackage(pkg("app")))
                .allowEmptyShould(true)
                .check(ALL);
        noClasses()
                .that()
                .resideInAPackage(pkg("app"))
                .should()
                .dependOnClassesThat(resideInAPackage(pkg("cli")))
                .allowEmptyShould(true)
                .check(ALL);
    }

    @Test
    void noTwoPackagesImportEachOther() {
        slices().matching("portwright.(**)")
                .should()
                .beFreeOfCycles()
                .allowEmptyShould(true)
                .check(ALL);
    }

    @Test
    void librariesStayInTheirRooms() {
        fence("geometry", "org.locationtech.jts..");
        fence("sheet", "org.apache.pdfbox..");
        fence("app", "javafx..");
        fence("cli", "picocli..");
    }

    private static void fence(String room, String library) {
        noClasses()
                .that()
                .resideOutsideOfPackage(pkg(room))
                .should()
                .dependOnClassesThat(resideInAPackage(library))
                .because(library + " stays in " + room)
                .check(ALL);
    }

    @Test
    void awtIsNowhereButBehindThePdfLibrary() {
        noClasses().should().dependOnClassesThat(resideInAPackage("java.awt..")).check(ALL);
    }

    @Test
    void standardStreamsBelongToTheCommandLine() {
        noClasses()
                .that()
                .resideOutsideOfPackage(pkg("cli"))
                .and()
                .doNotHaveFullyQualifiedName("portwright.Main")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(ALL);
    }

    @Test
    void theFenceBites() {
        assertThatThrownBy(() -> fence("source", "java.util.."))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("stays in source");
    }
}
