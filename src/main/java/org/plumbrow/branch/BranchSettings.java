package org.plumbrow.branch;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.time.Clock;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.SettingRows.ClosedRow;
import org.plumbrow.branch.SettingRows.Years;
import org.plumbrow.branch.UtilityFacts.Slot;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What a branch decided for itself, for every room that needs it. A visitor gets the settings of their own branches;
 * work in the background whatever the wall's scope holds.
 */
@Service
@Transactional(readOnly = true)
public class BranchSettings {

    private static final String BRANCH = """
            select b.id, b.code, b.name, b.zone, b.version, s.version as calendar_version,
                   s.working_weekdays, s.federal_holidays, s.morning_start, s.morning_end, s.afternoon_start,
                   s.afternoon_end, s.yard_address, s.yard_latitude_deg, s.yard_longitude_deg, s.travel_speed_mph,
                   s.travel_road_factor,
                   array(select w.day from worked_day w where w.branch_id = b.id) as worked_days
              from branch b join branch_setting s on s.branch_id = b.id
             where b.id = :branch
            """;
    private static final String CLOSED_DAYS =
            "select id, utility_id, day, reason from closed_day where branch_id = :branch order by day, id";
    /** A row a slot; a utility without any has one row without. */
    private static final String UTILITIES = """
            select u.*, s.id as slot_id, s.off_from, s.off_to, s.back_by
              from utility u left join utility_slot s on s.utility_id = u.id
             where u.branch_id = :branch order by u.name, u.id, s.off_from, s.off_to, s.id
            """;

    private static final String PERMIT_OFFICES =
            "select * from permit_office where branch_id = :branch order by name, id";
    private static final String WEATHER =
            "select family, version, lost_half_days from weather_loss where branch_id = :branch";
    /** Federal holidays are worked out from so many years ago to so many ahead. */
    private static final int YEARS_BACK = 2;

    private static final int YEARS_AHEAD = 10;

    private final JdbcClient jdbc;
    private final BranchReading reading;
    private final RateTables rates;
    private final Clock clock;

    BranchSettings(JdbcClient jdbc, BranchReading reading, RateTables rates, Clock clock) {
        this.jdbc = jdbc;
        this.reading = reading;
        this.rates = rates;
        this.clock = clock;
    }

    /** Everything a plan needs, in eight queries; once a page. */
    public PlanningSettings forPlanning(UUID branchId) {
        reading.mayRead(branchId);
        return ReadOnce.of(new ForPlanning(branchId), () -> readForPlanning(branchId));
    }

    private record ForPlanning(UUID branchId) {}

    private PlanningSettings readForPlanning(UUID branchId) {
        List<ClosedRow> closed = closedDays(branchId);
        return new PlanningSettings(
                branch(branchId, closed),
                utilities(branchId, closed),
                offices(branchId),
                rates.forDurations(branchId),
                losses(branchId));
    }

    /** Two queries. */
    public BranchFacts facts(UUID branchId) {
        reading.mayRead(branchId);
        return branch(branchId, closedDays(branchId));
    }

    /** All utilities, by name, those included that have ended; two queries. */
    public List<UtilityFacts> utilities(UUID branchId) {
        reading.mayRead(branchId);
        return utilities(branchId, closedDays(branchId));
    }

    public Optional<UtilityFacts> utility(UUID branchId, UUID utilityId) {
        return utilities(branchId).stream()
                .filter(utility -> utility.id().equals(utilityId))
                .findFirst();
    }

    /** The utility of whichever of the visitor's branches has it. */
    public Optional<UtilityFacts> utility(UUID utilityId) {
        return branchOf("utility", utilityId).flatMap(branchId -> utility(branchId, utilityId));
    }

    /** All permit offices, by name, those included that have ended; one query. */
    public List<PermitOfficeFacts> permitOffices(UUID branchId) {
        reading.mayRead(branchId);
        return offices(branchId);
    }

    public Optional<PermitOfficeFacts> permitOffice(UUID branchId, UUID officeId) {
        return permitOffices(branchId).stream()
                .filter(office -> office.id().equals(officeId))
                .findFirst();
    }

    /** The permit office of whichever of the visitor's branches has it. */
    public Optional<PermitOfficeFacts> permitOffice(UUID officeId) {
        return branchOf("permit_office", officeId).flatMap(branchId -> permitOffice(branchId, officeId));
    }

    private Optional<UUID> branchOf(String table, UUID id) {
        return jdbc.sql("select branch_id from " + table + " where id = :id")
                .param("id", id)
                .query(UUID.class)
                .optional();
    }

    public WeatherTable weather(UUID branchId) {
        reading.mayRead(branchId);
        return losses(branchId);
    }

    private BranchFacts branch(UUID branchId, List<ClosedRow> closed) {
        return ReadOnce.of(new BranchOf(branchId), () -> readBranch(branchId, closed));
    }

    private record BranchOf(UUID branchId) {}

    private BranchFacts readBranch(UUID branchId, List<ClosedRow> closed) {
        List<OwnClosedDay> own = closed.stream()
                .filter(row -> row.utilityId() == null)
                .map(ClosedRow::day)
                .toList();
        return jdbc.sql(BRANCH)
                .param("branch", branchId)
                .query((row, number) -> SettingRows.branch(row, own, years()))
                .optional()
                .orElseThrow(NotFound::new);
    }

    private List<UtilityFacts> utilities(UUID branchId, List<ClosedRow> closed) {
        Map<UUID, List<OwnClosedDay>> closedOf = closed.stream()
                .filter(row -> row.utilityId() != null)
                .collect(groupingBy(ClosedRow::utilityId, mapping(ClosedRow::day, toList())));
        Map<UUID, UtilityFacts> utilities = new LinkedHashMap<>();
        jdbc.sql(UTILITIES).param("branch", branchId).query(row -> {
            UUID id = row.getObject("id", UUID.class);
            UtilityFacts known = utilities.get(id);
            if (known == null) {
                known = SettingRows.utility(row, closedOf.getOrDefault(id, List.of()), years());
            }
            Slot slot = SettingRows.slot(row);
            utilities.put(id, slot == null ? known : known.with(slot));
        });
        return List.copyOf(utilities.values());
    }

    private List<PermitOfficeFacts> offices(UUID branchId) {
        return jdbc.sql(PERMIT_OFFICES)
                .param("branch", branchId)
                .query(SettingRows::permitOffice)
                .list();
    }

    private WeatherTable losses(UUID branchId) {
        Map<WeatherFamily, WeatherTable.Row> rows = new EnumMap<>(WeatherFamily.class);
        jdbc.sql(WEATHER).param("branch", branchId).query(row -> {
            Double[] months = (Double[]) row.getArray("lost_half_days").getArray();
            rows.put(
                    WeatherFamily.valueOf(row.getString("family")),
                    new WeatherTable.Row(List.of(months), row.getLong("version")));
        });
        return new WeatherTable(rows);
    }

    private List<ClosedRow> closedDays(UUID branchId) {
        return ReadOnce.of(
                new ClosedDaysOf(branchId),
                () -> jdbc.sql(CLOSED_DAYS)
                        .param("branch", branchId)
                        .query(ClosedRow::of)
                        .list());
    }

    private record ClosedDaysOf(UUID branchId) {}

    private Years years() {
        int now = clock.instant().atZone(java.time.ZoneOffset.UTC).getYear();
        return new Years(now - YEARS_BACK, now + YEARS_AHEAD);
    }
}
