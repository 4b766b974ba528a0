package org.plumbrow.estimate.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;

/** What a form carries of the version that it was opened with, and its fields for the page that lays theirs beside yours. */
final class Versions {

    private static final long NONE = Long.MIN_VALUE;

    private Versions() {}

    /** A version that no thing has where the form did not carry it. */
    static long of(@Nullable String carried) {
        try {
            return Long.parseLong(Typed.text(carried));
        } catch (NumberFormatException missing) {
            return NONE;
        }
    }

    static List<Written> written(String name, boolean invented) {
        return List.of(
                Written.of("Name", "name", name), Written.of("Made up", "invented", invented, invented ? "yes" : "no"));
    }
}
