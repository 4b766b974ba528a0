package org.plumbrow.cutover.daylog;

import org.jspecify.annotations.Nullable;

/**
 * A step or a hold point as the procedure stood on the day.
 *
 * @param code "1" to "14", "H1" to "H5"
 * @param who who acts
 * @param whyNot why it does not apply to this job; null when it does
 * @param named who has to be named before it is done; null for nobody but whoever writes
 */
record LogStep(
        String code,
        int position,
        boolean hold,
        String words,
        String what,
        String who,
        int typicalMinutes,
        @Nullable String whyNot,
        @Nullable String named) {

    public boolean applies() {
        return whyNot == null;
    }

    /** "Step 7" or "Hold point H3". */
    public String title() {
        return hold ? "Hold point " + code : "Step " + code;
    }
}
