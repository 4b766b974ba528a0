package org.plumbrow.calc.planning.search;

/**
 * Crews that take equally long for a work: one search finds the first place for all of them.
 *
 * @param number among the teams of a branch
 * @param word which 64 crews of the branch it is of
 * @param crews their bits
 */
record Team(int number, int word, long crews, int halfDays, boolean inTheWeather) {

    int firstCrew() {
        return (word << 6) + Long.numberOfTrailingZeros(crews);
    }
}
