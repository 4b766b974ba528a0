package org.plumbrow.calc.energy.weather;

/**
 * How far a year made from monthly means is off, against the hours of the very files whose means it was made from. Five
 * public typical years (41 to 26 degrees north), five planes each; the test of the same name measures it again.
 */
final class MonthlyMeansError {

    static final String SENTENCE =
            "Measured against five public files: a year's yield is off by -1 to +3 % (facing south "
                    + "-0.5 to +1.5 %), a month's by -3.5 to +8.5 %; how far the means themselves are off comes on top. "
                    + "Bring a file where there is one.";

    private MonthlyMeansError() {}
}
