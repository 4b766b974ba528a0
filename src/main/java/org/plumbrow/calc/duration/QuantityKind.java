package org.plumbrow.calc.duration;

import org.plumbrow.calc.Range;

/** What is counted or measured on a job, with its unit and its limits. */
public enum QuantityKind {
    MODULES("modules", new Range(0, 100_000, "modules")),
    POSTS("posts, screws or piers", new Range(0, 50_000, "posts")),
    STRINGS("strings", new Range(0, 10_000, "strings")),
    INVERTERS("string inverters", new Range(0, 1_000, "inverters")),
    MICROINVERTERS("microinverters or optimisers", new Range(0, 100_000, "pieces")),
    TRENCH_FT("trench in soil", new Range(0, 50_000, "ft")),
    ROCK_FT("trench or bore in rock", new Range(0, 50_000, "ft")),
    BORE_FT("directional bore", new Range(0, 20_000, "ft")),
    FENCE_FT("fence", new Range(0, 50_000, "ft")),
    CONDUCTOR_RUN_FT("run of conductors in conduit", new Range(0, 50_000, "ft")),
    TERMINATIONS("terminations", new Range(0, 100_000, "terminations")),
    AC_GEAR_SETS("sets of AC gear", new Range(0, 100, "sets")),
    RESEED_ACRES("ground to re-seed and clean", new Range(0, 1_000, "acres"));

    private final String words;
    private final Range range;

    QuantityKind(String words, Range range) {
        this.words = words;
        this.range = range;
    }

    public String words() {
        return words;
    }

    public Range range() {
        return range;
    }

    public String unit() {
        return range.unit();
    }
}
