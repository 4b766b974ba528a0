package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemState;
import org.plumbrow.project.gate.ItemView;
import org.springframework.beans.factory.annotation.Autowired;

/** The gate to the cutover asks for a booked window with notice given, and reads the day log. */
@PlumbrowTest
class CutoverGateTest {

    @Autowired
    TestWorld world;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    CutoverRoad road;

    @Autowired
    OutageRecords records;

    @Autowired
    Gates gates;

    private Ground ground;
    private UUID project;

    @BeforeEach
    void aHome() {
        ground = fixture.ground();
        project = fixture.home(ground);
    }

    private <T> T asPm(Supplier<T> work) {
        return world.as(ground.branch().projectManager(), work);
    }

    private ItemView item(int number) {
        return asPm(() -> gates.view(project, Stage.CUTOVER)).items().stream()
                .filter(item -> item.code().equals("cutover." + number))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutAWindowTheGateStaysShut() {
        assertThat(item(1).state()).isEqualTo(ItemState.BROKEN);
        assertThat(item(1).sentence()).isEqualTo("No outage is booked. Choose and book a window on the outage page.");
        assertThat(item(2).state()).isEqualTo(ItemState.BROKEN);
    }

    @Test
    void theUtilityIsToldInTimeAndConfirms() {
        fixture.booked(ground, project);
        assertThat(item(1).sentence()).startsWith("Valley Electric has not been told of Fri, Mar 26 yet.");
        asPm(() -> records.utilityTold(project, LocalDate.of(2027, 3, 1), "through the portal"));
        assertThat(item(1).sentence())
                .isEqualTo("Valley Electric has not confirmed Fri, Mar 26. Write down its number on the outage page.");
        asPm(() -> records.utilityConfirms(project, "VE-77"));
        assertThat(item(1).finding().sentence())
                .isEqualTo("Valley Electric confirmed Fri, Mar 26 (VE-77), told on Mon, Mar 1.");
    }

    @Test
    void theCustomerIsToldTwoFullWorkingDaysAhead() {
        fixture.booked(ground, project);
        clock.standAt("2027-03-23T14:00:00Z");
        asPm(() -> records.customerTold(project, LocalDate.of(2027, 3, 23), "in person"));
        assertThat(item(2).state()).isEqualTo(ItemState.DONE);
        clock.standAt("2027-03-24T14:00:00Z");
        asPm(() -> records.customerTold(project, LocalDate.of(2027, 3, 24), "in person"));
        assertThat(item(2).sentence())
                .isEqualTo(
                        "The customer was told on Wed, Mar 24; for Fri, Mar 26 it had to be by Tue, Mar 23. Move the window.");
    }

    @Test
    void aDayThatDoesNotWorkForTheCustomerShutsTheGate() {
        fixture.noticeGiven(ground, project);
        assertThat(item(2).state()).isEqualTo(ItemState.DONE);
        asPm(() -> records.customerAnswers(project, false, ""));
        assertThat(item(2).state()).isEqualTo(ItemState.BROKEN);
    }

    @Test
    void whatTheLogHoldsIsNotAskedASecondTime() {
        for (int number : new int[] {15, 16, 17, 18, 21}) {
            assertThat(item(number).state()).as("item " + number).isEqualTo(ItemState.OPEN);
        }
        assertThat(item(19).state()).isEqualTo(ItemState.CANNOT_TELL);
        road.prepare(ground.branch(), project);
        for (int number : new int[] {15, 16, 17, 18, 19, 21, 22}) {
            assertThat(item(number).state()).as("item " + number).isEqualTo(ItemState.DONE);
        }
        assertThat(item(19).sentence()).isEqualTo("After the utility closed: A-N 120.0 V, B-N 120.0 V, A-B 240.0 V.");
        assertThat(item(22).sentence()).startsWith("The power was off for ");
    }

    @Autowired
    org.plumbrow.TestClock clock;
}
