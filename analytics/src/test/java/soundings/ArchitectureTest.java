package soundings;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class ArchitectureTest {
    private static final JavaClasses CODE = new ClassFileImporter()
            .importUrl(Analysis.class.getProtectionDomain().getCodeSource().getLocation());

    /** The packages that touch the world; every other one is a pure function of its arguments. */
    private static final Set<String> SHELL =
            Set.of("workbook", "reference", "cli", "xlsx", "html", "results", "forms", "chart", "template");

    @TestFactory
    Stream<DynamicTest> each_package_uses_only_what_its_row_allows() {
        return Packages.MAY_USE.entrySet().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.getKey(),
                        () -> classes()
                                .that()
                                .resideInAPackage(in(row.getKey()))
                                .should()
                                .onlyDependOnClassesThat()
                                .resideInAnyPackage(allowed(row.getKey(), row.getValue()))
                                .because("data flows one way; a new arrow is a decision and a change of this table")
                                .check(CODE)));
    }

    private static String in(String name) {
        return Packages.BASE + "." + name + "..";
    }

    private static String[] allowed(String name, Packages.MayUse row) {
        List<String> allowed = new ArrayList<>(List.of("java..", "javax.xml..", "org.jspecify.."));
        allowed.add(in(name));
        row.ours().forEach(other -> allowed.add(in(other)));
        row.libraries().forEach(library -> allowed.add(library + ".."));
        return allowed.toArray(String[]::new);
    }

    @Test
    void every_package_stands_in_the_table_and_every_row_has_a_package() {
        Set<String> found = CODE.stream()
                .map(JavaClass::getPackageName)
                .filter(p -> p.startsWith(Packages.BASE + "."))
                .map(p -> p.substring(Packages.BASE.length() + 1).replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        found.remove("cli");

        assertThat(found).isEqualTo(Packages.MAY_USE.keySet());
    }

    @Test
    void packages_form_no_cycle() {
        slices().matching(Packages.BASE + ".(*)..").should().beFreeOfCycles().check(CODE);
    }

    @Test
    void pure_packages_touch_no_file_no_clock_no_chance() {
        String[] pure = Packages.MAY_USE.keySet().stream()
                .filter(p -> !SHELL.contains(p))
                .map(ArchitectureTest::in)
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAnyPackage(pure)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net..")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.LocalDateTime.class, "now")
                .orShould()
                .callMethod(java.time.ZoneId.class, "systemDefault")
                .orShould()
                .callMethod(java.util.Locale.class, "getDefault")
                .orShould()
                .callMethod(Math.class, "random")
                .check(CODE);
    }

    @Test
    void only_the_command_line_prints_and_the_child_process_that_answers_on_its_output() {
        noClasses()
                .that()
                .resideOutsideOfPackage(in("cli"))
                .and()
                .doNotHaveFullyQualifiedName("soundings.template.Child")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .check(CODE);
    }

    @Test
    void no_library_is_used_that_only_came_with_another() {
        noClasses()
                .that()
                .resideInAPackage(Packages.BASE + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "com.google.common..",
                        "org.apache.commons..",
                        "it.unimi..",
                        "org.slf4j..",
                        "org.apache.logging..")
                .check(CODE);
    }
}
