package org.plumbrow.calc.electrical;

import java.util.Arrays;
import java.util.Optional;

/** The columns of the ampacity table: which temperature a conductor or a terminal bears. */
public enum TemperatureRating {
    C60(60),
    C75(75),
    C90(90);

    private final int celsius;

    TemperatureRating(int celsius) {
        this.celsius = celsius;
    }

    public int celsius() {
        return celsius;
    }

    public static Optional<TemperatureRating> of(int celsius) {
        return Arrays.stream(values()).filter(one -> one.celsius == celsius).findFirst();
    }
}
