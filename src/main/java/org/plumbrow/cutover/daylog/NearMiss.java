package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.util.List;

/**
 * Something that went well by luck only.
 *
 * @param step at which one stood
 * @param happened what happened
 * @param couldHave what could have happened
 * @param done what was done
 */
record NearMiss(String step, Instant at, String by, String happened, String couldHave, String done) {

    static List<NearMiss> of(LogState state) {
        return state.of(EntryKind.NEAR_MISS).stream()
                .map(one -> new NearMiss(
                        one.entry().step(),
                        one.at(),
                        one.entry().byName(),
                        String.valueOf(one.value()),
                        about(state, one, EntryKind.COULD_HAVE),
                        about(state, one, EntryKind.WAS_DONE)))
                .toList();
    }

    private static String about(LogState state, LogState.Effective one, EntryKind kind) {
        return state.changesOf(one.entry().id()).stream()
                .filter(entry -> entry.kind() == kind)
                .map(entry -> String.valueOf(entry.value()))
                .findFirst()
                .orElse("");
    }
}
