package org.plumbrow.calc.planning.replan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.LargeBranch;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;

class StandingWeeksTest {

    /** Whatever is planned around what stands: it stands, and no rule breaks, as all before it stands before it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatStandsIsFixedAndARestPlannedByUrgencyBreaksNoRule(long seed) {
        PlanningProblem whole = LargeBranch.of(75, seed);
        Plan plan = SerialPlanner.plan(whole);
        Published published =
                new Published(plan, HalfDay.afternoon(whole.today().date().plusWeeks(8)));
        PlanningProblem lost = LostWeek.of(whole, 0, 2);
        BranchModel model = BranchModel.of(lost, SerialPlanner.plan(lost), Optional.of(published));
        KnownPlaces known = new KnownPlaces(model, plan);
        Decoder decoder = new Decoder(model);
        Dates dates = decoder.emptyDates();
        decoder.decode(known.kept(), dates);

        PlanningProblem fixed = new StandingWeeks(known, dates).fixed();
        Plan rest = SerialPlanner.plan(fixed);

        assertThat(PlanCheck.breaches(lost, rest)).isEmpty();
        int standing = 0;
        int free = 0;
        for (Activity activity : fixed.activities()) {
            int number = model.number(activity.id());
            if (number >= 0 && known.isCountedOn(number) && known.stands(number, dates)) {
                Placement was = plan.of(activity.id()).orElseThrow();
                assertThat(rest.of(activity.id()).orElseThrow().start()).isEqualTo(was.start());
                assertThat(rest.of(activity.id()).orElseThrow().crewId()).isEqualTo(was.crewId());
                standing++;
            }
            free += activity.fix() instanceof Fix.Free ? 1 : 0;
        }
        assertThat(standing).isPositive();
        assertThat(known.movedOfCountedOn(dates)).isPositive();
        assertThat(free).isPositive();
    }
}
