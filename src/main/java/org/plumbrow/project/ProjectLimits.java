package org.plumbrow.project;

import org.plumbrow.calc.Range;

/** The limits of what a contract and a site say: for the forms, the import and their hints. The database holds the same. */
public final class ProjectLimits {

    public static final Range SYSTEM_KW = new Range(0.1, 20_000, "kW");
    public static final Range MODULES = new Range(1, 100_000, "modules");
    public static final Range MODULE_W = new Range(10, 1_000, "W");
    public static final Range TILT_DEG = new Range(0, 90, "degrees");
    public static final Range AZIMUTH_DEG = new Range(0, 359.99, "degrees");
    public static final Range INVERTERS = new Range(1, 5_000, "inverters");
    public static final Range INVERTER_KW = new Range(0.1, 5_000, "kW");
    public static final Range POSTS = new Range(0, 20_000, "posts");
    public static final Range STRINGS = new Range(0, 20_000, "strings");
    public static final Range TRENCH_FT = new Range(0, 50_000, "ft");
    public static final Range BORE_FT = new Range(0, 20_000, "ft");
    public static final Range GUARANTEED_KWH = new Range(1, 50_000_000, "kWh");
    public static final Range PRICE_USD = new Range(0, 100_000_000, "dollars");
    public static final Range LATITUDE_DEG = new Range(-90, 90, "degrees");
    public static final Range LONGITUDE_DEG = new Range(-180, 180, "degrees");
    public static final Range TOLERANCE_DAYS = new Range(0, 365, "days");
    public static final Range WEIGHT = new Range(1, 5, "times");
    public static final int LONGEST_NAME = 120;
    public static final int LONGEST_TEXT = 500;
    public static final int MOST_ARRAYS = 12;
    public static final int MOST_METERS = 12;

    private ProjectLimits() {}
}
