package org.plumbrow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DemoMoreTest {

    private static final List<SeedRow> TOLD = SeedRow.of("projects.csv");

    @Test
    void withoutTheSettingThereIsTheSeedAndNothingElse() {
        DemoMore none = new DemoMore(0);
        assertThat(none.projects(TOLD)).isEqualTo(TOLD);
        assertThat(none.crews(SeedRow.of("crews.csv"))).hasSize(4);
        assertThat(none.machines(SeedRow.of("equipment.csv"))).isEqualTo(SeedRow.of("equipment.csv"));
    }

    @Test
    void theSameNumberGivesTheSameProjectsAndEachIsItsOwn() {
        List<SeedRow> many = new DemoMore(300).projects(TOLD);
        assertThat(many).hasSize(300).isEqualTo(new DemoMore(300).projects(TOLD));
        assertThat(many.subList(0, TOLD.size())).isEqualTo(TOLD);
        for (String column : List.of("key", "name", "meter_number", "email")) {
            assertThat(many).extracting(row -> row.text(column)).doesNotHaveDuplicates();
        }
    }

    @Test
    void aStageIsReachedOnlyBehindTheOneBeforeIt() {
        List<SeedRow> many = new DemoMore(300).projects(TOLD);
        assertThat(many.subList(TOLD.size(), 300)).allSatisfy(row -> {
            assertThat(row.has("signed_days_ago")).isTrue();
            assertThat(row.has("installed_days_ago")).isFalse();
            if (row.has("designed_days_ago")) {
                assertThat(row.whole("surveyed_days_ago")).isGreaterThan(row.whole("designed_days_ago"));
            }
        });
    }

    @Test
    void crewsAndMachinesComeInProportion() {
        DemoMore more = new DemoMore(150);
        assertThat(more.crews(SeedRow.of("crews.csv")))
                .hasSize(12)
                .extracting(row -> row.text("name"))
                .contains("Crew 12");
        assertThat(more.machines(SeedRow.of("equipment.csv")))
                .extracting(row -> row.text("name"))
                .contains("Post driver 3");
    }
}
