package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Days;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.Travel;
import org.plumbrow.branch.WeatherFamily;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.branch.office.OfficeEditing;
import org.plumbrow.branch.office.OfficeTerms;
import org.plumbrow.branch.place.PlaceEditing;
import org.plumbrow.branch.place.PlaceTerms;
import org.plumbrow.branch.utility.UtilityEditing;
import org.plumbrow.branch.utility.UtilityTerms;
import org.plumbrow.branch.weather.WeatherEditing;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.crew.AwayReason;
import org.plumbrow.crew.AwayTime;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.crew.CrewTerms;
import org.plumbrow.crew.EquipmentEditing;
import org.plumbrow.crew.EquipmentTerms;
import org.plumbrow.database.Ids;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;

/** Gives the branch its settings, crews and machines, as its manager would. */
@Component
@WithDemo
class DemoSettings {

    private static final BranchFacts.Yard YARD = new BranchFacts.Yard("2 Depot Road, Quillback", 41.93, -77.33);

    private final BranchSettings settings;
    private final PlaceEditing place;
    private final UtilityEditing utilities;
    private final OfficeEditing offices;
    private final WeatherEditing weather;
    private final CrewEditing crews;
    private final EquipmentEditing machines;
    private final DemoMore more;

    DemoSettings(
            BranchSettings settings,
            PlaceEditing place,
            UtilityEditing utilities,
            OfficeEditing offices,
            WeatherEditing weather,
            CrewEditing crews,
            EquipmentEditing machines,
            DemoMore more) {
        this.settings = settings;
        this.place = place;
        this.utilities = utilities;
        this.offices = offices;
        this.weather = weather;
        this.crews = crews;
        this.machines = machines;
        this.more = more;
    }

    /** Utilities and permit offices by name. */
    record Places(Map<String, UUID> utilities, Map<String, UUID> permitOffices) {}

    Places give(Cast cast, Story story) {
        UUID branch = cast.branchId();
        BranchFacts now = settings.facts(branch);
        place.change(branch, now.version(), new PlaceTerms(now.name(), Story.VALLEY, Optional.of(YARD), Travel.USUAL));
        SeedRow.of("weather.csv").forEach(row -> lost(branch, row));
        Map<String, UUID> away = crews(cast, story);
        cast.crews().putAll(away);
        away.putAll(machines(branch, story));
        SeedRow.of("absences.csv").forEach(row -> away(row, away.get(row.text("who")), story));
        return new Places(utilities(branch), offices(branch));
    }

    private void lost(UUID branch, SeedRow row) {
        Map<Month, Double> lost = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            lost.put(
                    month,
                    row.figure(month.name().substring(0, 3).toLowerCase(java.util.Locale.ROOT))
                            .doubleValue());
        }
        WeatherFamily family = WeatherFamily.valueOf(row.text("family"));
        weather.change(branch, family, settings.weather(branch).version(family), lost);
    }

    private Map<String, UUID> utilities(UUID branch) {
        Map<String, UUID> ids = new LinkedHashMap<>();
        for (SeedRow row : SeedRow.of("utilities.csv")) {
            UUID id = Ids.next();
            utilities.add(
                    id,
                    branch,
                    new UtilityTerms(
                            row.text("name"),
                            row.whole("notice_working_days"),
                            Weekdays.of(row.text("weekdays")),
                            Weekdays.MONDAY_TO_FRIDAY,
                            true,
                            row.whole("disconnect_most_ft"),
                            row.text("must_be_present"),
                            row.text("phone"),
                            row.text("email")));
            LocalTime backBy = row.has("back_by") ? LocalTime.parse(row.text("back_by")) : null;
            utilities.addSlot(
                    branch, id, LocalTime.parse(row.text("slot_from")), LocalTime.parse(row.text("slot_to")), backBy);
            ids.put(row.text("name"), id);
        }
        return ids;
    }

    private Map<String, UUID> offices(UUID branch) {
        Map<String, UUID> ids = new LinkedHashMap<>();
        for (SeedRow row : SeedRow.of("permit-offices.csv")) {
            UUID id = Ids.next();
            offices.add(
                    id,
                    branch,
                    new OfficeTerms(
                            row.text("name"),
                            CodeEdition.valueOf(row.text("code_edition")),
                            Optional.of(days(row.text("permit_days"))),
                            Optional.of(days(row.text("inspection_days"))),
                            row.text("phone")));
            ids.put(row.text("name"), id);
        }
        return ids;
    }

    private static Days days(String three) {
        List<Integer> parts =
                Arrays.stream(three.split(";")).map(Integer::valueOf).toList();
        return new Days(parts.get(0), parts.get(1), parts.get(2));
    }

    private Map<String, UUID> crews(Cast cast, Story story) {
        Map<String, UUID> ids = new LinkedHashMap<>();
        for (SeedRow row : more.crews(SeedRow.of("crews.csv"))) {
            Set<Skill> skills = EnumSet.noneOf(Skill.class);
            row.parts("skills", ";").forEach(skill -> skills.add(Skill.valueOf(skill)));
            UUID id = Ids.next();
            CrewTerms terms = new CrewTerms(
                    row.text("name"),
                    row.whole("size"),
                    row.whole("electrical"),
                    skills,
                    cast.people().get(row.text("lead")),
                    story.daysAgo(700),
                    null);
            refused(crews.add(id, cast.branchId(), terms));
            ids.put(row.text("name"), id);
        }
        return ids;
    }

    private Map<String, UUID> machines(UUID branch, Story story) {
        Map<String, UUID> ids = new LinkedHashMap<>();
        for (SeedRow row : more.machines(SeedRow.of("equipment.csv"))) {
            UUID id = Ids.next();
            refused(machines.add(
                    id,
                    branch,
                    new EquipmentTerms(
                            EquipmentKind.valueOf(row.text("kind")), row.text("name"), story.daysAgo(700), null)));
            ids.put(row.text("name"), id);
        }
        return ids;
    }

    private void away(SeedRow row, UUID id, Story story) {
        LocalDate first = story.inDays(row.whole("from_day"));
        AwayTime time = new AwayTime(
                first,
                Half.MORNING,
                story.inDays(row.whole("to_day")),
                Half.AFTERNOON,
                AwayReason.valueOf(row.text("reason")),
                row.text("note"));
        refused(
                row.text("who").startsWith("Crew")
                        ? crews.away(Ids.next(), id, time)
                        : machines.away(Ids.next(), id, time));
    }

    private static void refused(Optional<Refusal> no) {
        no.ifPresent(refusal -> {
            throw new IllegalStateException("demo-seed: " + refusal.sentence());
        });
    }
}
