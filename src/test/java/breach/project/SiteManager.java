package breach.project;

import breach.branch.CommonThings;

/** Its name says nothing, and it stands in a circle. */
public final class SiteManager {

    private SiteManager() {}

    public static int one() {
        return 1;
    }

    static int four() {
        return 2 * CommonThings.two();
    }
}
