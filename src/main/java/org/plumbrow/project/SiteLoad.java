package org.plumbrow.project;

/** What on the site hangs on the power and decides how long it may be off. */
public enum SiteLoad {
    HOME("home"),
    POULTRY("poultry houses"),
    DAIRY("dairy"),
    SWINE("swine houses"),
    COLD_STORE("cold store"),
    GREENHOUSE("greenhouse");

    private final String words;

    SiteLoad(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
