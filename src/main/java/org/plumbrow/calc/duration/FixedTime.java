package org.plumbrow.calc.duration;

/** Days that a job takes for a thing whatever its size: one row of a branch's table. */
public record FixedTime(String code, String words, Spread days, int people) {

    public FixedTime {
        WorkRate.PEOPLE.check("people", people);
    }
}
