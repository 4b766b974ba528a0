package org.plumbrow.branch;

/** How long a wait takes at least, usually and at most, in days of whatever kind the wait is counted in. */
public record Days(int least, int usual, int most) {

    public Days {
        if (least < 0 || usual < least || most < usual) {
            throw new IllegalArgumentException("days are not in order: " + least + ", " + usual + ", " + most);
        }
    }

    /** Three-point mean, (a + 4m + b) / 6. */
    public double mean() {
        return (least + 4.0 * usual + most) / 6;
    }
}
