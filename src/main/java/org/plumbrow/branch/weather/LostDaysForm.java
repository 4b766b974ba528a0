package org.plumbrow.branch.weather;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.WeatherFamily;
import org.plumbrow.branch.WeatherTable;
import org.plumbrow.branch.Written;

/** Half-days lost in each month, as typed; an empty month loses none. */
record LostDaysForm(
        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal january,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal february,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal march,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal april,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal may,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal june,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal july,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal august,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal september,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal october,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal november,

        @DecimalMin(value = "0", message = HALF_DAYS) @DecimalMax(value = "40", message = HALF_DAYS) @Nullable
        BigDecimal december,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version) {

    private static final String HALF_DAYS = "Write the half-days as a number from 0 to 40.";

    static LostDaysForm of(WeatherTable table, WeatherFamily family) {
        BigDecimal[] of = Arrays.stream(Month.values())
                .map(month -> Written.figure(table.lostHalfDays(family, month)))
                .toArray(BigDecimal[]::new);
        return new LostDaysForm(
                of[0],
                of[1],
                of[2],
                of[3],
                of[4],
                of[5],
                of[6],
                of[7],
                of[8],
                of[9],
                of[10],
                of[11],
                table.version(family));
    }

    /** Month by month; what was left empty is 0. */
    Map<Month, Double> lost() {
        List<@Nullable BigDecimal> typed = Arrays.asList(
                january, february, march, april, may, june, july, august, september, october, november, december);
        Map<Month, Double> lost = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            BigDecimal halfDays = typed.get(month.ordinal());
            lost.put(month, halfDays == null ? 0.0 : halfDays.doubleValue());
        }
        return lost;
    }

    static List<Written> written(Map<Month, Double> lost) {
        return lost.entrySet().stream()
                .map(month -> Written.of(
                        month.getKey().getDisplayName(TextStyle.FULL, Locale.US),
                        field(month.getKey()),
                        Written.figure(month.getValue())))
                .toList();
    }

    static String field(Month month) {
        return month.name().toLowerCase(Locale.ROOT);
    }
}
