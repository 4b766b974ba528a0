package org.plumbrow.calc.finance;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Money as it is shown. */
public final class Cents {

    private Cents() {}

    /** Rounded half up to cents. */
    public static BigDecimal of(double usd) {
        return BigDecimal.valueOf(usd).setScale(2, RoundingMode.HALF_UP);
    }
}
