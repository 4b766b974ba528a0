package breach.branch;

import breach.project.SiteManager;

/** Its name says nothing, and it reaches into a room that reaches back. Eight lines of code, five of them a method. */
public final class CommonThings {
    private CommonThings() {}

    // the number of things

    public static int two() {
        /* counted
        twice */
        int one = SiteManager.one();

        return one // and
                + one;
    }
}
