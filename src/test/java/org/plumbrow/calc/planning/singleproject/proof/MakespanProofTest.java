package org.plumbrow.calc.planning.singleproject.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.planning.singleproject.KnownProjects;
import org.plumbrow.calc.planning.singleproject.ListEvolution;
import org.plumbrow.calc.planning.singleproject.SingleProject;
import org.plumbrow.calc.planning.singleproject.Timetable;
import org.plumbrow.calc.planning.singleproject.TimetableCheck;

/** Against published optima, and a case that is plain on paper. */
class MakespanProofTest {

    @BeforeEach
    void solverIsThere() {
        assumeTrue(MakespanProof.isThere(), "the solver's library is not here");
    }

    @Test
    void publishedOptimaAreProved() {
        List<KnownProjects> some = KnownProjects.of("j30", "j301_1", "j302_1", "j3010_1", "j3025_1", "j3041_1");

        assertThat(some).hasSize(5).allSatisfy(known -> {
            Timetable rough = ListEvolution.best(known.project(), 100, 1);
            ProvenTimetable proven = MakespanProof.run(known.project(), rough, 30, 1, System::nanoTime);
            assertThat(TimetableCheck.faults(known.project(), proven.best())).isEmpty();
            assertThat(proven.isOptimal()).isTrue();
            assertThat(proven.lower()).isEqualTo(known.upper());
        });
    }

    @Test
    void aBoundNeverLiesAboveAPublishedTimetable() {
        List<KnownProjects> hard = KnownProjects.of("j120", "j1201_1", "j12011_1");

        assertThat(hard).hasSize(2).allSatisfy(known -> {
            Timetable rough = ListEvolution.best(known.project(), 2_000, 1);
            ProvenTimetable proven = MakespanProof.run(known.project(), rough, 2, 1, System::nanoTime);
            assertThat(TimetableCheck.faults(known.project(), proven.best())).isEmpty();
            assertThat(proven.best().makespan()).isBetween(known.lower(), rough.makespan());
            assertThat(proven.lower()).isBetween(known.project().criticalPath(), known.upper());
        });
    }

    @Test
    void aTimetableThatIsTooLongIsShortened() {
        SingleProject.Step step = new SingleProject.Step(2, List.of(1), List.of());
        SingleProject project = new SingleProject(List.of(2), List.of(step, step, step));

        ProvenTimetable proven = MakespanProof.run(project, new Timetable(List.of(0, 2, 4), 6), 5, 1, System::nanoTime);

        assertThat(proven.best().makespan()).isEqualTo(4);
        assertThat(proven.isOptimal()).isTrue();
    }
}
