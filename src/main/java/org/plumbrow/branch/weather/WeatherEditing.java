package org.plumbrow.branch.weather;

import java.time.Month;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.WeatherFamily;
import org.plumbrow.branch.WeatherTable;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes how many half-days a branch plans as lost to rain, snow and mud. */
@Service
@Transactional
public class WeatherEditing {

    private static final String CHANGE = """
            update weather_loss set version = version + 1, lost_half_days = :lost
             where branch_id = :branch and family = :family and version = :version
            """;

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;

    WeatherEditing(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
    }

    /**
     * @param lostHalfDays 0 to 40; a month without an entry loses none
     * @throws EditedMeanwhile if somebody else changed that family since that version
     */
    public void change(UUID branchId, WeatherFamily family, long version, Map<Month, Double> lostHalfDays) {
        access.require(branchId, May.CHANGE_SETTINGS);
        WeatherTable before = settings.weather(branchId);
        Double[] months = Arrays.stream(Month.values())
                .map(month -> lostHalfDays.getOrDefault(month, 0.0))
                .toArray(Double[]::new);
        int changed = jdbc.sql(CHANGE)
                .param("lost", months)
                .param("branch", branchId)
                .param("family", family.name())
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(version, before.version(family));
        }
        log.changed(
                branchId,
                access.actor(),
                "half-days lost to weather, " + family.words().toLowerCase(Locale.ROOT),
                LostDaysForm.written(lost(before, family)),
                LostDaysForm.written(lost(months)));
    }

    static Map<Month, Double> lost(WeatherTable table, WeatherFamily family) {
        return lost(Arrays.stream(Month.values())
                .map(month -> table.lostHalfDays(family, month))
                .toArray(Double[]::new));
    }

    private static Map<Month, Double> lost(Double[] months) {
        Map<Month, Double> lost = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            lost.put(month, months[month.ordinal()]);
        }
        return lost;
    }
}
