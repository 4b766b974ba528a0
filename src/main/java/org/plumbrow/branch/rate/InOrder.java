package org.plumbrow.branch.rate;

import java.math.BigDecimal;
import java.util.Optional;
import org.plumbrow.web.Refusal;

/** Three days of which each is at least the one before. */
final class InOrder {

    private InOrder() {}

    static Optional<Refusal> wrong(BigDecimal low, BigDecimal typical, BigDecimal high) {
        if (typical.compareTo(low) < 0) {
            return Optional.of(new Refusal("typical", "Write at least " + low.toPlainString() + " days here."));
        }
        return high.compareTo(typical) < 0
                ? Optional.of(new Refusal("high", "Write at least " + typical.toPlainString() + " days here."))
                : Optional.empty();
    }
}
