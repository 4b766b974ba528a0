package org.plumbrow.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.springframework.beans.factory.annotation.Autowired;

/** What a project is to other rooms, and who may read it. */
@PlumbrowTest
class ProjectsTest {

    @Autowired
    TestWorld world;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    Projects projects;

    @Test
    void aProjectReadsBackAsItWasOpened() {
        TestBranch branch = world.branch();
        UUID id = fixture.aDairyGroundMount().in(branch).meters("77 1234", "88").build();

        ProjectFacts facts = world.as(branch.projectManager(), () -> projects.facts(id));

        assertThat(facts.number()).isEqualTo(branch.code() + "-2027-001");
        assertThat(facts.stage()).isNull();
        assertThat(facts.standing()).isEqualTo(Standing.OPEN);
        assertThat(facts.customer()).isEqualTo("Sedge Hollow Dairy, owner");
        assertThat(facts.site().address()).isEqualTo("4 Sedge Hollow Road, Quillback");
        assertThat(facts.site().loads()).containsExactlyInAnyOrder(SiteLoad.DAIRY, SiteLoad.HOME);
        assertThat(facts.site().meterNumbers()).containsExactly("77 1234", "88");
        assertThat(facts.contract().systemKwDc()).isEqualByComparingTo("99");
        assertThat(facts.contract().mounting()).contains(Mounting.GROUND);
        assertThat(facts.contract().modules()).isEqualTo(180);
        assertThat(facts.contract().priceUsd()).isEqualByComparingTo("198000");
        assertThat(facts.promise().date()).isEqualTo(LocalDate.of(2027, 4, 16));
        assertThat(facts.inCharge(Duty.PROJECT_MANAGER).orElseThrow().name()).isEqualTo("Tamsin");
    }

    @Test
    void aDesignerReadsItWithoutThePrice() {
        TestBranch branch = world.branch();
        UUID id = fixture.aHomeRoof().in(branch).build();
        ProjectFacts facts = world.as(branch.designer(), () -> projects.facts(id));
        assertThat(facts.contract().priceUsd()).isNull();
        assertThat(facts.contract().systemKwDc()).isNotNull();
    }

    @Test
    void aCrewLeadWhoseCrewIsNotBookedThereIsToldSo() {
        TestBranch branch = world.branch();
        UUID id = fixture.aHomeRoof().in(branch).build();
        assertThatThrownBy(() -> world.as(branch.crewLead(), () -> projects.facts(id)))
                .isInstanceOf(NotForYourRole.class)
                .satisfies(no -> assertThat(((NotForYourRole) no).sentence())
                        .isEqualTo("Crew leads of a crew that is booked here may do this."));
    }

    @Test
    void anotherBranchsProjectIsNotThere() {
        UUID id = fixture.aHomeRoof().in(world.branch()).build();
        TestBranch other = world.branch();
        assertThatThrownBy(() -> world.as(other.manager(), () -> projects.facts(id)))
                .isInstanceOf(NotFound.class);
    }

    @Test
    void numbersCountWithoutAGapWhenManyOpenProjectsAtOnce() throws Exception {
        TestBranch branch = world.branch();
        ExecutorService people = Executors.newFixedThreadPool(4);
        try {
            List<Callable<UUID>> tasks = IntStream.range(0, 12)
                    .<Callable<UUID>>mapToObj(
                            n -> () -> fixture.aHomeRoof().in(branch).build())
                    .toList();
            List<UUID> ids = new java.util.ArrayList<>();
            for (Future<UUID> opened : people.invokeAll(tasks)) {
                ids.add(opened.get());
            }
            List<String> numbers = world.as(branch.manager(), () -> projects.factsUnchecked(ids)).stream()
                    .map(ProjectFacts::number)
                    .toList();
            assertThat(numbers)
                    .containsExactlyElementsOf(IntStream.rangeClosed(1, 12)
                            .mapToObj(n -> "%s-2027-%03d".formatted(branch.code(), n))
                            .toList());
        } finally {
            people.shutdown();
        }
    }

    @Test
    void manyProjectsAreReadInOneQuery() {
        TestBranch branch = world.branch();
        List<UUID> ids = IntStream.range(0, 5)
                .mapToObj(n -> fixture.aDairyGroundMount().in(branch).build())
                .toList();
        assertThat(Queries.count(() -> world.as(branch.manager(), () -> {
                    assertThat(projects.factsUnchecked(ids)).hasSize(5);
                })))
                .isEqualTo(1);
    }
}
