package org.plumbrow.calc.planning.singleproject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A made-up project in the library's layout. */
class ProjectTextTest {

    private static final String TEXT = """
            ************************************************************************
            jobs (incl. supersource/sink ):  4
            RESOURCES
              - renewable                 :  2   R
              - nonrenewable              :  0   N
              - doubly constrained        :  0   D
            PRECEDENCE RELATIONS:
            jobnr.    #modes  #successors   successors
               1        1          2           2   3
               2        1          1           4
               3        1          1           4
               4        1          0
            ************************************************************************
            REQUESTS/DURATIONS:
            jobnr. mode duration  R 1  R 2
            ------------------------------------------------------------------------
              1      1     0       0    0
              2      1     5       2    0
              3      1     3       1    4
              4      1     0       0    0
            RESOURCEAVAILABILITIES:
              R 1  R 2
                2    4
            """;

    @Test
    void durationsDemandsAndSuccessorsAreRead() {
        SingleProject project = ProjectText.read(TEXT);

        assertThat(project.capacities()).containsExactly(2, 4);
        assertThat(project.steps())
                .containsExactly(
                        new SingleProject.Step(0, List.of(0, 0), List.of(1, 2)),
                        new SingleProject.Step(5, List.of(2, 0), List.of(3)),
                        new SingleProject.Step(3, List.of(1, 4), List.of(3)),
                        new SingleProject.Step(0, List.of(0, 0), List.of()));
        assertThat(project.criticalPath()).isEqualTo(5);
        assertThat(ListEvolution.best(project, 50, 1).makespan()).isEqualTo(8);
    }

    @Test
    void whatCannotBeReadIsSaidWithItsLine() {
        refuses(
                TEXT.replace("   3        1          1           4", "   3        1          2           4"),
                11,
                "job 3 has 2 successors, 1 are named");
        refuses(
                TEXT.replace("  3      1     3       1    4", "  3      1     x       1    4"),
                19,
                "numbers are looked for, not \"3      1     x       1    4\"");
        refuses(TEXT.replace("  3      1     3 ", "  3      1    -3 "), 19, "job 3 lasts -3 periods");
        refuses(
                TEXT.replace("nonrenewable              :  0", "nonrenewable              :  1"),
                5,
                "only renewable resources are taken");
        refuses(TEXT.replace("    2    4", "    2    3"), 23, "Step 3 asks for 4 of resource 2, of which there are 3.");
        refuses(
                TEXT.replace("   2        1          1           4", "   2        1          1           1"),
                23,
                "Some steps wait for each other in a circle.");
        refuses(
                TEXT.replace("   2        1          1           4", "   2        3          1           4"),
                10,
                "job 2 has 3 modes; one is taken");
        refuses("", 1, "\"jobs (incl. supersource/sink )\" is looked for from here on and not found");
    }

    private static void refuses(String text, int line, String what) {
        assertThatThrownBy(() -> ProjectText.read(text))
                .isInstanceOfSatisfying(
                        UnreadableProject.class,
                        refusal -> assertThat(refusal.line()).isEqualTo(line))
                .hasMessage("line " + line + ": " + what);
    }
}
