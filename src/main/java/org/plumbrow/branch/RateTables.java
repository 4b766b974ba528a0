package org.plumbrow.branch;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.FixedTime;
import org.plumbrow.calc.duration.ShippedTable;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.plumbrow.calc.duration.WorkRate;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A branch's own rates, fixed times and waits, in the order of the shipped table. What a row is called and counted in
 * stays with the shipped table; a row whose figures the branch changed names the branch as its source.
 */
@Service
@Transactional(readOnly = true)
public class RateTables {

    /** Stands where the shipped table names a source. */
    public static final String OWN_SOURCE = "the branch's own figures";

    /** Standard normal quantile of 90 of 100. */
    private static final double Z90 = 1.2815515655446004;

    private static final Map<String, WorkRate> RATES = byCode(ShippedTable.rates(), WorkRate::code);
    private static final Map<String, FixedTime> FIXED_TIMES = byCode(ShippedTable.fixedTimes(), FixedTime::code);
    private static final Map<String, WaitTime> WAITS = byCode(ShippedTable.waits(), WaitTime::code);

    private final JdbcClient jdbc;
    private final BranchReading reading;

    RateTables(JdbcClient jdbc, BranchReading reading) {
        this.jdbc = jdbc;
        this.reading = reading;
    }

    /** All three tables as the core takes them, in three queries. */
    public DurationTables forDurations(UUID branchId) {
        return new DurationTables(
                rates(branchId).stream().map(Kept::row).toList(),
                fixedTimes(branchId).stream().map(Kept::row).toList(),
                waits(branchId).stream().map(Kept::row).toList());
    }

    public List<Kept<WorkRate>> rates(UUID branchId) {
        return rows(
                branchId,
                "work_rate",
                RATES,
                RateTables::rate,
                kept -> kept.row().code());
    }

    public List<Kept<FixedTime>> fixedTimes(UUID branchId) {
        return rows(
                branchId,
                "fixed_time",
                FIXED_TIMES,
                RateTables::fixedTime,
                kept -> kept.row().code());
    }

    public List<Kept<WaitTime>> waits(UUID branchId) {
        return rows(
                branchId,
                "wait_time",
                WAITS,
                RateTables::wait,
                kept -> kept.row().code());
    }

    public Optional<Kept<WorkRate>> rate(UUID branchId, String code) {
        return rates(branchId).stream()
                .filter(kept -> kept.row().code().equals(code))
                .findFirst();
    }

    public Optional<Kept<FixedTime>> fixedTime(UUID branchId, String code) {
        return fixedTimes(branchId).stream()
                .filter(kept -> kept.row().code().equals(code))
                .findFirst();
    }

    public Optional<Kept<WaitTime>> wait(UUID branchId, String code) {
        return waits(branchId).stream()
                .filter(kept -> kept.row().code().equals(code))
                .findFirst();
    }

    /** A row whose code is no longer shipped is left out; the core would not ask for it. */
    private <T> List<Kept<T>> rows(
            UUID branchId,
            String table,
            Map<String, T> shipped,
            RowMapper<Kept<T>> mapper,
            Function<Kept<T>, String> code) {
        reading.mayRead(branchId);
        List<String> order = List.copyOf(shipped.keySet());
        return jdbc
                .sql("select * from " + table + " where branch_id = :branch and code in (:codes)")
                .param("branch", branchId)
                .param("codes", order)
                .query(mapper)
                .stream()
                .sorted(Comparator.comparing(kept -> order.indexOf(code.apply(kept))))
                .toList();
    }

    private static Kept<WorkRate> rate(ResultSet row, int number) throws SQLException {
        WorkRate shipped = RATES.get(row.getString("code"));
        WorkRate own = new WorkRate(
                shipped.code(),
                shipped.words(),
                shipped.unit(),
                row.getDouble("low_per_day"),
                row.getDouble("typical_per_day"),
                row.getDouble("high_per_day"),
                row.getInt("crew_least"),
                row.getInt("crew_most"),
                equipment(row.getString("equipment")),
                row.getDouble("set_up_days"),
                shipped.pace(),
                shipped.source());
        return new Kept<>(own.equals(shipped) ? shipped : sourced(own), shipped, row.getLong("version"));
    }

    private static WorkRate sourced(WorkRate own) {
        return new WorkRate(
                own.code(),
                own.words(),
                own.unit(),
                own.low(),
                own.typical(),
                own.high(),
                own.crewLeast(),
                own.crewMost(),
                own.equipment(),
                own.firstUnitDays(),
                own.pace(),
                OWN_SOURCE);
    }

    private static Kept<FixedTime> fixedTime(ResultSet row, int number) throws SQLException {
        FixedTime shipped = FIXED_TIMES.get(row.getString("code"));
        FixedTime own = new FixedTime(
                shipped.code(),
                shipped.words(),
                new Spread(row.getDouble("low_days"), row.getDouble("typical_days"), row.getDouble("high_days")),
                row.getInt("people"));
        return new Kept<>(own, shipped, row.getLong("version"));
    }

    private static Kept<WaitTime> wait(ResultSet row, int number) throws SQLException {
        WaitTime shipped = WAITS.get(row.getString("code"));
        Spread days = new Spread(row.getDouble("least_days"), row.getDouble("usual_days"), row.getDouble("most_days"));
        DayKind kind = row.getBoolean("calendar_days") ? DayKind.CALENDAR : DayKind.WORKING;
        boolean same = days.equals(shipped.days()) && kind == shipped.dayKind();
        WaitTime own = same
                ? shipped
                : new WaitTime(
                        shipped.code(),
                        shipped.words(),
                        kind,
                        days,
                        mean(days, shipped.shape()),
                        shipped.shape(),
                        OWN_SOURCE);
        return new Kept<>(own, shipped, row.getLong("version"));
    }

    /** Of a PERT wait (a + 4m + b)/6; of a log-normal one median × e^(σ²/2) with σ from its 10 and 90 of 100. */
    static double mean(Spread days, WaitTime.Shape shape) {
        if (shape == WaitTime.Shape.PERT || days.low() <= 0) {
            return days.mean();
        }
        double sigma = Math.log(days.high() / days.low()) / (2 * Z90);
        double mean = days.typical() * Math.exp(sigma * sigma / 2);
        return Math.min(days.high(), Math.max(days.low(), mean));
    }

    /** {@code POST_DRIVER x2;LOCATOR} as kinds and pieces. */
    public static Map<EquipmentKind, Integer> equipment(String written) {
        Map<EquipmentKind, Integer> kinds = new EnumMap<>(EquipmentKind.class);
        Arrays.stream(written.split(";")).filter(part -> !part.isBlank()).forEach(part -> {
            String[] words = part.split(" x");
            kinds.put(EquipmentKind.valueOf(words[0]), words.length == 1 ? 1 : Integer.parseInt(words[1]));
        });
        return kinds;
    }

    /** As {@link #equipment(String)}, the other way. */
    public static String equipment(Map<EquipmentKind, Integer> kinds) {
        return kinds.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(kind -> kind.getKey().name() + (kind.getValue() == 1 ? "" : " x" + kind.getValue()))
                .collect(Collectors.joining(";"));
    }

    private static <T> Map<String, T> byCode(List<T> rows, Function<T, String> code) {
        Map<String, T> byCode = new LinkedHashMap<>();
        rows.forEach(row -> byCode.put(code.apply(row), row));
        return byCode;
    }
}
