package org.plumbrow.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.project.Duty;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectRegister;
import org.plumbrow.project.SiteLoad;
import org.springframework.stereotype.Component;

/** Opens the demo's projects, each on its own day. */
@Component
@WithDemo
class DemoProjects {

    private static final Map<String, Mounting> MOUNTINGS =
            Map.of("ground", Mounting.GROUND, "flat", Mounting.FLAT_ROOF, "pitched", Mounting.PITCHED_ROOF);

    private final ProjectRegister register;

    private final DemoMore more;

    DemoProjects(ProjectRegister register, DemoMore more) {
        this.register = register;
        this.more = more;
    }

    /** A project of the story, with the row that tells it. */
    record Told(String key, UUID id, SeedRow row) {}

    List<Told> open(Cast cast, Story story, DemoSettings.Places places) {
        List<Told> told = new ArrayList<>();
        List<SeedRow> rows = new ArrayList<>(more.projects(SeedRow.of("projects.csv")));
        rows.sort(java.util.Comparator.comparing((SeedRow row) -> begun(row)).reversed());
        for (SeedRow row : rows) {
            LocalDate day = story.daysAgo(begun(row));
            StoryClock.at(
                    story.during(day, told.size()),
                    () -> told.add(new Told(
                            row.text("key"),
                            register.openUnchecked(
                                    cast.branchId(),
                                    project(row, cast, story, places),
                                    cast.actor(row.text("project_manager"))),
                            row)));
        }
        return told;
    }

    /** A project comes in two weeks before its contract is signed; a new one came in last week. */
    private static int begun(SeedRow row) {
        return row.maybe("signed_days_ago").map(days -> days + 14).orElse(6);
    }

    private static NewProject project(SeedRow row, Cast cast, Story story, DemoSettings.Places places) {
        return new NewProject(
                row.text("name"),
                null,
                row.text("contact"),
                List.of(new NewProject.NewContact(
                        row.text("contact"), "decides", row.text("phone"), row.text("email"), "en", true)),
                site(row, places),
                contract(row),
                new NewProject.NewPromise(
                        Milestone.valueOf(row.text("milestone")),
                        story.inDays(row.whole("promised_in_days")),
                        0,
                        row.text("project_manager"),
                        ""),
                people(row, cast));
    }

    private static ProjectFacts.Site site(SeedRow row, DemoSettings.Places places) {
        Set<SiteLoad> loads = EnumSet.noneOf(SiteLoad.class);
        if (!row.text("loads").equals("none")) {
            loads.add(
                    SiteLoad.valueOf(row.text("loads").toUpperCase(Locale.ROOT).replace(' ', '_')));
        }
        return new ProjectFacts.Site(
                row.text("street"),
                "Quillback",
                null,
                null,
                row.figure("latitude"),
                row.figure("longitude"),
                loads,
                row.yes("generator"),
                row.yes("three_phase"),
                row.yes("supply_side_tap"),
                places.utilities().get(row.text("utility")),
                places.permitOffices().get(row.text("permit_office")),
                List.of(row.text("meter_number")));
    }

    private static ProjectFacts.Contract contract(SeedRow row) {
        BigDecimal kwDc = row.figure("module_w")
                .multiply(row.figure("modules"))
                .divide(BigDecimal.valueOf(1000), 3, java.math.RoundingMode.HALF_UP);
        BigDecimal kwAc = row.figure("inverter_kw_ac").multiply(row.figure("inverters"));
        return new ProjectFacts.Contract(
                kwDc,
                kwAc,
                List.of(new ProjectFacts.ArrayFacts(
                        MOUNTINGS.get(row.text("mounting")),
                        row.whole("modules"),
                        row.figure("module_w"),
                        row.figure("tilt_deg"),
                        row.figure("azimuth_deg"))),
                row.whole("inverters"),
                row.figure("inverter_kw_ac"),
                null,
                null,
                row.whole("trench_ft"),
                row.whole("bore_ft"),
                row.whole("guaranteed_kwh"),
                row.figure("price_usd"));
    }

    private static Map<Duty, ProjectFacts.InCharge> people(SeedRow row, Cast cast) {
        Map<Duty, ProjectFacts.InCharge> people = new EnumMap<>(Duty.class);
        Map<Duty, String> names = new LinkedHashMap<>();
        names.put(Duty.PROJECT_MANAGER, row.text("project_manager"));
        names.put(Duty.SURVEYOR, "Odo");
        names.put(Duty.DESIGNER, "Dov");
        names.put(Duty.PERMITS, "Rosa");
        names.put(Duty.ELECTRICIAN, row.text("mounting").equals("ground") ? "Sil" : "Nell");
        names.put(Duty.PERSON_IN_CHARGE, row.text("project_manager"));
        names.forEach((duty, name) -> people.put(duty, cast.inCharge(name)));
        return people;
    }
}
