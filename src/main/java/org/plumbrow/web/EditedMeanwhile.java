package org.plumbrow.web;

/** Somebody saved the same thing after it was opened here: answered with 409, theirs beside yours. */
public final class EditedMeanwhile extends RuntimeException {

    public EditedMeanwhile(long openedVersion, long currentVersion) {
        super("opened at version " + openedVersion + ", now " + currentVersion);
    }

    /** @throws EditedMeanwhile if the versions differ */
    public static void check(long openedVersion, long currentVersion) {
        if (openedVersion != currentVersion) {
            throw new EditedMeanwhile(openedVersion, currentVersion);
        }
    }
}
