package org.plumbrow.database.server;

import org.jspecify.annotations.Nullable;

/** The database on this machine cannot be used. Carries one sentence that says why and one that says what to do. */
final class ServerUnusable extends RuntimeException {

    private final String remedy;

    ServerUnusable(String why, String remedy) {
        this(why, remedy, null);
    }

    ServerUnusable(String why, String remedy, @Nullable Throwable cause) {
        super(why, cause);
        this.remedy = remedy;
    }

    String remedy() {
        return remedy;
    }
}
