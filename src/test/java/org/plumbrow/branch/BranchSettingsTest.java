package org.plumbrow.branch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.account.Branches;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Actor;
import org.plumbrow.web.NotFound;
import org.springframework.beans.factory.annotation.Autowired;

/** What other rooms read of a branch. */
@PlumbrowTest
class BranchSettingsTest {

    @Autowired
    BranchSettings settings;

    @Autowired
    Branches branches;

    @Autowired
    TestWorld world;

    @Test
    void aNewBranchStartsWithFiveDaysTheUsualHoursAndTheFederalHolidays() {
        UUID id = branches.open(freeCode(), "Fallow River", ZoneId.of("America/Chicago"), Actor.PLUMBROW);
        BranchFacts branch = BranchWall.within(id, () -> settings.facts(id));
        assertThat(branch.zone()).isEqualTo(ZoneId.of("America/Chicago"));
        assertThat(branch.workingWeekdays().words()).isEqualTo("Monday to Friday");
        assertThat(branch.hours().morningStart()).isEqualTo(LocalTime.of(7, 0));
        assertThat(branch.hours().afternoonEnd()).isEqualTo(LocalTime.of(17, 0));
        assertThat(branch.hours().minutesOnSite()).isEqualTo(570);
        assertThat(branch.calendar().whyClosed(LocalDate.of(2027, 7, 5))).contains("Independence Day");
        assertThat(branch.calendar().isWorking(LocalDate.of(2027, 3, 1))).isTrue();
        assertThat(branch.travel()).isEqualTo(new Travel(45, 1.3));
        assertThat(branch.yard()).isEmpty();
    }

    @Test
    void aPlanReadsAWholeBranchInEightQueries() {
        TestBranch branch = world.branch();
        assertThat(Queries.count(() -> world.as(branch.manager(), () -> settings.forPlanning(branch.id()))))
                .isEqualTo(8);
    }

    @Test
    void anotherBranchIsNotThere() {
        TestBranch mine = world.branch();
        TestBranch other = world.branch();
        assertThatThrownBy(() -> world.as(mine.manager(), () -> settings.facts(other.id())))
                .isInstanceOf(NotFound.class);
        assertThatThrownBy(() -> BranchWall.within(mine.id(), () -> settings.facts(other.id())))
                .isInstanceOf(NotFound.class);
    }

    private String freeCode() {
        return world.branch().code() + "N";
    }
}
