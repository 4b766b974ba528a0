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
import org.plumbrow.calc.duration.WorkRate;
import org.plumbrow.web.Refusal;

/** A rate of work as typed. What it is called, counted in and done with stays with the shipped table. */
record RateForm(
        @NotNull(message = RATE)
        @DecimalMin(value = "0.01", message = RATE)
        @DecimalMax(value = "100000", message = RATE)
        @Nullable
        BigDecimal low,

        @NotNull(message = RATE)
        @DecimalMin(value = "0.01", message = RATE)
        @DecimalMax(value = "100000", message = RATE)
        @Nullable
        BigDecimal typical,

        @NotNull(message = RATE)
        @DecimalMin(value = "0.01", message = RATE)
        @DecimalMax(value = "100000", message = RATE)
        @Nullable
        BigDecimal high,

        @NotNull(message = PEOPLE) @Min(value = 1, message = PEOPLE) @Max(value = 40, message = PEOPLE) @Nullable
        Integer crewLeast,

        @NotNull(message = PEOPLE) @Min(value = 1, message = PEOPLE) @Max(value = 40, message = PEOPLE) @Nullable
        Integer crewMost,

        @NotNull(message = ONCE)
        @DecimalMin(value = "0", message = ONCE)
        @DecimalMax(value = "20", message = ONCE)
        @Nullable
        BigDecimal firstUnitDays,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version)
        implements RowForm {

    private static final String RATE = "Write the amount a day as a number from 0.01 to 100,000.";
    private static final String PEOPLE = "Write the people as a whole number from 1 to 40.";
    private static final String ONCE = "Write the days before the first unit, from 0 to 20.";

    static RateForm of(Kept<WorkRate> kept) {
        WorkRate rate = kept.row();
        return new RateForm(
                Written.figure(rate.low()),
                Written.figure(rate.typical()),
                Written.figure(rate.high()),
                rate.crewLeast(),
                rate.crewMost(),
                Written.figure(rate.firstUnitDays()),
                kept.version());
    }

    @Override
    public Optional<Refusal> wrong() {
        if (typical.compareTo(low) < 0) {
            return Optional.of(new Refusal("typical", "A typical day brings at least " + low.toPlainString() + "."));
        }
        if (high.compareTo(typical) < 0) {
            return Optional.of(new Refusal("high", "A good day brings at least " + typical.toPlainString() + "."));
        }
        return crewMost < crewLeast
                ? Optional.of(new Refusal("crewMost", "The people elsewhere are at least " + crewLeast + "."))
                : Optional.empty();
    }

    @Override
    public List<Written> written() {
        return List.of(
                Written.of("On a slow day", "low", figure(low)),
                Written.of("On a typical day", "typical", figure(typical)),
                Written.of("On a good day", "high", figure(high)),
                Written.of("People at a home", "crewLeast", crewLeast),
                Written.of("People elsewhere", "crewMost", crewMost),
                Written.of("Days to begin", "firstUnitDays", figure(firstUnitDays)));
    }

    /** So that 45 and 45.0 are the same. */
    private static BigDecimal figure(BigDecimal typed) {
        return Written.figure(typed.doubleValue());
    }
}
