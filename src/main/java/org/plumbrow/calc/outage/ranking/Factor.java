package org.plumbrow.calc.outage.ranking;

/**
 * One thing that speaks for or against an hour, with the figures it was judged by.
 *
 * @param value what was found, in {@code unit}; infinite where there is no end of it
 * @param limit what it is held against
 * @param lacks by how much it fails; 0 when it does not
 * @param unit that of value, limit and lack
 * @param detail what it is about: the load, the blackout, the crew; may be empty
 */
public record Factor(
        FactorKind kind, double value, double limit, double lacks, String unit, String detail, Verdict verdict) {

    /** Held against a least value. */
    static Factor atLeast(FactorKind kind, double value, double limit, String detail) {
        double lacks = Math.max(0, limit - value);
        return new Factor(kind, value, limit, lacks, kind.unit(), detail, lacks > 0 ? Verdict.BROKEN : Verdict.MET);
    }

    /** Held against a most value. */
    static Factor atMost(FactorKind kind, double value, double limit, String detail) {
        double lacks = Math.max(0, value - limit);
        return new Factor(kind, value, limit, lacks, kind.unit(), detail, lacks > 0 ? Verdict.BROKEN : Verdict.MET);
    }

    static Factor open(FactorKind kind, double limit, String detail) {
        return new Factor(kind, Double.NaN, limit, 0, kind.unit(), detail, Verdict.OPEN);
    }

    Factor as(Verdict other) {
        return new Factor(kind, value, limit, lacks, unit, detail, other);
    }

    Factor in(String otherUnit) {
        return new Factor(kind, value, limit, lacks, otherUnit, detail, verdict);
    }

    public boolean isBroken() {
        return verdict == Verdict.BROKEN;
    }

    /** Does the value itself keep the limit, whatever the verdict? */
    boolean isWithin() {
        return lacks == 0 && !Double.isNaN(value);
    }

    /** As a colleague says it, with its figures. */
    public String sentence() {
        if (verdict == Verdict.OPEN && Double.isNaN(value) && kind != FactorKind.MEDICAL) {
            return "Not known yet: " + kind.words() + (detail.isEmpty() ? "." : " (" + detail + ").");
        }
        return kind.sentence(this);
    }

    /** What would have to give for this factor to be met. */
    public String cure() {
        return kind.cure(this);
    }
}
