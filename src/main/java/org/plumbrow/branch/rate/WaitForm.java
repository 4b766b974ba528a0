package org.plumbrow.branch.rate;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.plumbrow.web.Refusal;

/** A wait as typed. */
record WaitForm(
        @NotNull(message = DAYS)
        @DecimalMin(value = "0", message = DAYS)
        @DecimalMax(value = "2000", message = DAYS)
        @Nullable
        BigDecimal low,

        @NotNull(message = DAYS)
        @DecimalMin(value = "0", message = DAYS)
        @DecimalMax(value = "2000", message = DAYS)
        @Nullable
        BigDecimal typical,

        @NotNull(message = DAYS)
        @DecimalMin(value = "0", message = DAYS)
        @DecimalMax(value = "2000", message = DAYS)
        @Nullable
        BigDecimal high,

        @NotNull(message = "Choose which days count.") @Nullable
        DayKind dayKind,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version)
        implements RowForm {

    private static final String DAYS = "Write the days as a number from 0 to 2,000.";

    static WaitForm of(Kept<WaitTime> kept) {
        WaitTime wait = kept.row();
        return new WaitForm(
                Written.figure(wait.days().low()),
                Written.figure(wait.days().typical()),
                Written.figure(wait.days().high()),
                wait.dayKind(),
                kept.version());
    }

    @Override
    public Optional<Refusal> wrong() {
        return InOrder.wrong(low, typical, high);
    }

    @Override
    public List<Written> written() {
        return List.of(
                Written.of("Least, days", "low", Written.figure(low.doubleValue())),
                Written.of("Usual, days", "typical", Written.figure(typical.doubleValue())),
                Written.of("Most, days", "high", Written.figure(high.doubleValue())),
                Written.of("Days that count", "dayKind", dayKind, dayKind.words()));
    }
}
