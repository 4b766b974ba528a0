package org.plumbrow.calc;

/**
 * The limits of a quantity, named once and used by the core, the form and the hint.
 *
 * @param least smallest allowed value, included
 * @param most largest allowed value, included
 * @param unit unit of both, as people write it
 */
public record Range(double least, double most, String unit) {

    public Range {
        if (!(least <= most)) {
            throw new IllegalArgumentException("range from " + least + " to " + most + " is empty");
        }
    }

    public boolean holds(double value) {
        return value >= least && value <= most;
    }

    /**
     * @param quantity what is checked, as people call it
     * @throws OutOfRange if the value is outside the limits or not a number
     */
    public double check(String quantity, double value) {
        if (!holds(value)) {
            throw new OutOfRange(quantity, value, this);
        }
        return value;
    }

    /** Says which quantity is outside which limits; a page puts it at the field. */
    public static final class OutOfRange extends IllegalArgumentException {
        private final transient Range range;
        private final String quantity;
        private final double value;

        OutOfRange(String quantity, double value, Range range) {
            super("%s: %s is outside %s to %s %s".formatted(quantity, value, range.least, range.most, range.unit));
            this.quantity = quantity;
            this.value = value;
            this.range = range;
        }

        public String quantity() {
            return quantity;
        }

        public double value() {
            return value;
        }

        public Range range() {
            return range;
        }
    }
}
