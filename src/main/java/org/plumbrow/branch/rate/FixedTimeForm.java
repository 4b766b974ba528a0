package org.plumbrow.branch.rate;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.FixedTime;
import org.plumbrow.web.Refusal;

/** A time that does not depend on the size of the job, as typed. */
record FixedTimeForm(
        @NotNull(message = DAYS)
        @DecimalMin(value = "0.01", message = DAYS)
        @DecimalMax(value = "60", message = DAYS)
        @Nullable
        BigDecimal low,

        @NotNull(message = DAYS)
        @DecimalMin(value = "0.01", message = DAYS)
        @DecimalMax(value = "60", message = DAYS)
        @Nullable
        BigDecimal typical,

        @NotNull(message = DAYS)
        @DecimalMin(value = "0.01", message = DAYS)
        @DecimalMax(value = "60", message = DAYS)
        @Nullable
        BigDecimal high,

        @NotNull(message = PEOPLE) @Min(value = 1, message = PEOPLE) @Max(value = 40, message = PEOPLE) @Nullable
        Integer people,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version)
        implements RowForm {

    private static final String DAYS = "Write the days as a number from 0.01 to 60.";
    private static final String PEOPLE = "Write the people as a whole number from 1 to 40.";

    static FixedTimeForm of(Kept<FixedTime> kept) {
        FixedTime time = kept.row();
        return new FixedTimeForm(
                Written.figure(time.days().low()),
                Written.figure(time.days().typical()),
                Written.figure(time.days().high()),
                time.people(),
                kept.version());
    }

    @Override
    public Optional<Refusal> wrong() {
        return InOrder.wrong(low, typical, high);
    }

    @Override
    public List<Written> written() {
        return List.of(
                Written.of("Short, days", "low", Written.figure(low.doubleValue())),
                Written.of("Typical, days", "typical", Written.figure(typical.doubleValue())),
                Written.of("Long, days", "high", Written.figure(high.doubleValue())),
                Written.of("People", "people", people));
    }
}
