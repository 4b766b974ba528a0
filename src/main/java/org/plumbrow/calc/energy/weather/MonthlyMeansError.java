package org.plumbrow.calc.energy.weather;

/** How far a year made from monthly means is off. Measured; see the test of the same name. */
final class MonthlyMeansError {

    static final String SENTENCE = "Bring a file where there is one.";

    private MonthlyMeansError() {}
}
