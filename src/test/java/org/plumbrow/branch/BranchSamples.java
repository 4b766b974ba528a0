package org.plumbrow.branch;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.days.ClosedDays;
import org.plumbrow.branch.office.OfficeEditing;
import org.plumbrow.branch.office.OfficeTerms;
import org.plumbrow.branch.utility.UtilityEditing;
import org.plumbrow.branch.utility.UtilityTerms;
import org.plumbrow.database.Ids;
import org.springframework.stereotype.Component;

/** Values for the addresses of the settings' pages; a utility and a permit office for whoever needs one. */
@Component
public class BranchSamples implements RouteSamples {

    private final TestWorld world;
    private final BranchSettings settings;
    private final UtilityEditing utilities;
    private final OfficeEditing offices;
    private final ClosedDays closedDays;

    BranchSamples(
            TestWorld world,
            BranchSettings settings,
            UtilityEditing utilities,
            OfficeEditing offices,
            ClosedDays closedDays) {
        this.world = world;
        this.settings = settings;
        this.utilities = utilities;
        this.offices = offices;
        this.closedDays = closedDays;
    }

    /** A utility that wants five working days and switches from nine to four, Monday to Friday. */
    public UUID utility(TestBranch branch, String name) {
        UUID id = Ids.next();
        UtilityTerms terms = utilityTerms(name, 10);
        world.as(branch.manager(), () -> {
            utilities.add(id, branch.id(), terms);
            utilities.addSlot(branch.id(), id, LocalTime.of(9, 0), LocalTime.of(16, 0), null);
        });
        return id;
    }

    public UtilityTerms utilityTerms(String name, int disconnectMostFt) {
        return new UtilityTerms(
                name,
                5,
                Weekdays.MONDAY_TO_FRIDAY,
                Weekdays.MONDAY_TO_FRIDAY,
                true,
                disconnectMostFt,
                "customer",
                "555-555-0190",
                "");
    }

    public UUID permitOffice(TestBranch branch, String name) {
        UUID id = Ids.next();
        OfficeTerms terms = new OfficeTerms(name, CodeEdition.NEC_2020, Optional.empty(), Optional.empty(), "");
        world.as(branch.manager(), () -> offices.add(id, branch.id(), terms));
        return id;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        UUID utility = utility(branch, "Sample Electric");
        LocalDate day = LocalDate.of(2027, 8, 2);
        world.as(branch.manager(), () -> {
            closedDays.close(ClosedDays.Whose.ofBranch(branch.id()), day, day, "stock-taking");
            closedDays.close(new ClosedDays.Whose(branch.id(), utility, "utility"), day, day, "training");
        });
        Map<String, String> values = new HashMap<>();
        world.as(branch.manager(), () -> {
            UtilityFacts facts = settings.utility(branch.id(), utility).orElseThrow();
            values.put("slotId", facts.slots().get(0).id().toString());
            values.put("utilityClosedDayId", first(facts.closedDays()));
            values.put("closedDayId", first(settings.facts(branch.id()).closedDays()));
        });
        values.put("utilityId", utility.toString());
        values.put("officeId", permitOffice(branch, "Sample County").toString());
        values.put("rateCode", "trench");
        values.put("timeCode", "mobilise");
        values.put("waitCode", "locate");
        values.put("weatherFamily", "roof");
        return values;
    }

    private static String first(java.util.List<OwnClosedDay> days) {
        return days.get(0).id().toString();
    }

    @Override
    public Map<String, Map<String, String>> fields() {
        return Map.of("POST /settings/days/worked/off", Map.of("day", "2027-03-06"));
    }
}
