package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.cutover.ridethrough.LoadKind;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.design.part.Cells;
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
    TestPages pages;

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

    @Test
    void theGateReadsLoadsGeneratorAnimalsMilkAndWeather() {
        project = fixture.noticeGiven(ground, fixture.dairy(ground));
        assertThat(item(5).state()).isEqualTo(ItemState.CANNOT_TELL);
        assertThat(item(8).state()).isEqualTo(ItemState.CANNOT_TELL);
        assertThat(item(6).state()).as("by hand as long as nothing is written").isEqualTo(ItemState.OPEN);
        tank("from1=04:00; to1=06:00; from2=17:00; to2=19:00");
        assertThat(item(5).state()).isEqualTo(ItemState.DONE);
        assertThat(item(8).state()).isEqualTo(ItemState.DONE);
        assertThat(item(8).sentence()).contains("3 h 00 min after milking, 2 h 00 min needed.");
        assertThat(item(11).state()).isEqualTo(ItemState.CANNOT_TELL);
        assertThat(item(11).sentence())
                .contains("2 qualified people, 2 needed")
                .contains("Nobody has counted parts and calibrated tools.");
        assertThat(item(10).sentence()).contains("A typical year does not know");
        assertThat(item(13).sentence()).contains("As computed:");
        generator("90", "2027-03-20");
        assertThat(item(6).state()).as("a run that is still ahead").isEqualTo(ItemState.OPEN);
        clock.standAt("2027-03-25T14:00:00Z");
        assertThat(item(6).state()).isEqualTo(ItemState.DONE);
        assertThat(item(6).sentence())
                .startsWith("Fuel for ")
                .contains("Days since its last run under the farm's load: 6, 7 at most.");
    }

    @Test
    void milkingTooNearOrFuelTooLittleShutsTheGate() {
        project = fixture.noticeGiven(ground, fixture.dairy(ground));
        tank("from1=06:00; to1=07:01; from2=17:00; to2=19:00");
        generator("0", "2027-03-20");
        clock.standAt("2027-03-25T14:00:00Z");
        assertThat(item(8).state()).isEqualTo(ItemState.BROKEN);
        assertThat(item(8).sentence()).contains("1 h 59 min after milking, 2 h 00 min needed.");
        assertThat(item(6).state()).isEqualTo(ItemState.BROKEN);
        tank("from1=05:00; to1=06:00; from2=12:29; to2=14:00");
        assertThat(item(8).sentence()).contains("1 h 59 min before milking, 2 h 00 min needed.");
    }

    @Test
    void anItemLeadsToWhatItIsJudgedBy() {
        project = fixture.noticeGiven(ground, fixture.dairy(ground));
        for (var page : Map.of(2, "outage", 5, "without-power", 10, "outage/readiness", 15, "day-log")
                .entrySet()) {
            var answer = pages.get(
                    ground.branch().projectManager(), "/projects/" + project + "/gate-items/cutover." + page.getKey());
            assertThat(answer).bodyText().contains("href=\"/projects/" + project + "/" + page.getValue() + "\"");
        }
    }

    private void tank(String milkings) {
        keep(LoadKind.TANK, "fullLb=12900; milkLb=6400; milkF=38; roomF=72; afterF=50; coolingF=20; " + milkings);
    }

    private void generator(String gallons, String lastRun) {
        keep(
                LoadKind.GENERATOR,
                "ratedKw=80; transfer=AUTOMATIC; rotation=SAME; galPerKwh=0.08; fuelGal=" + gallons + "; lastRun="
                        + lastRun);
        keep(LoadKind.LOADS, "mark=fan; number=16; kw=1.1; start=5");
    }

    private void keep(LoadKind kind, String cells) {
        Map<String, String> written = Arrays.stream(cells.split("; "))
                .map(cell -> cell.split("="))
                .collect(Collectors.toMap(cell -> cell[0], cell -> cell[1]));
        asPm(() -> {
            assertThat(loads.keep(
                            project, kind, kept.merge(kind, 0L, (a, b) -> a + 1) - 1, List.of(new Cells(written))))
                    .isEmpty();
            return written;
        });
    }

    private final Map<LoadKind, Long> kept = new HashMap<>();

    @Autowired
    SiteLoads loads;

    @Autowired
    org.plumbrow.TestClock clock;
}
