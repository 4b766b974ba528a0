package org.plumbrow.project.gate.page;

import java.math.BigDecimal;

/** Figures as a form's field holds them: without trailing zeros and without an exponent. */
final class NumbersWritten {

    private NumbersWritten() {}

    static String of(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString();
    }
}
