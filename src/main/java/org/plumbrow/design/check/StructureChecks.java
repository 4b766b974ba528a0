package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Check.Input;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Racking;

/** What can be said of a structure without designing one: whether the engineer's letter covers the site. */
final class StructureChecks {

    private static final String LETTER = "engineer's letter or maker's table";

    private StructureChecks() {}

    static List<Check> of(DesignFacts design) {
        Racking racking = design.racking();
        if (racking == null) {
            return List.of(Check.cannotTell("Structural letter", LETTER, List.of("the letter and what it assumes")));
        }
        List<Check> checks = new ArrayList<>();
        checks.add(covers("Wind", racking.siteWindMph(), racking.windMph(), "mph"));
        checks.add(covers("Ground snow", racking.siteSnowPsf(), racking.snowPsf(), "psf"));
        if (design.arrays().stream().anyMatch(array -> array.mounting() == Mounting.GROUND)) {
            checks.add(covers("Frost depth", racking.siteFrostIn(), racking.frostIn(), "in"));
            checks.add(embedment(racking));
        }
        if (racking.letterBy() == null || racking.letterDate() == null) {
            checks.add(Check.cannotTell("Structural letter", LETTER, List.of("engineer with license, and date")));
        }
        return checks;
    }

    private static Check covers(String what, @Nullable Double site, @Nullable Double letter, String unit) {
        List<String> missing = new ArrayList<>();
        if (site == null) {
            missing.add("value of the site");
        }
        if (letter == null) {
            missing.add("value that the letter assumes");
        }
        return site == null || letter == null
                ? Check.cannotTell(what, LETTER, missing)
                : Check.atMost(
                        what + " of the site",
                        LETTER,
                        site,
                        letter,
                        unit,
                        List.of(Input.of("the letter assumes", letter, unit)),
                        "The letter does not cover this site: ask the engineer.");
    }

    private static Check embedment(Racking racking) {
        Double depth = racking.embedmentIn();
        Double frost = racking.siteFrostIn();
        if (depth == null || frost == null) {
            return Check.cannotTell("Embedment", LETTER, List.of("embedment, and frost depth of the site"));
        }
        Check check = Check.atLeast(
                "Embedment of the posts",
                "house rule (frost lifts posts; local code gives the depth)",
                depth,
                frost,
                "in",
                List.of(Input.of("frost depth of the site", frost, "in")),
                "");
        return check.verdict() == Verdict.FAIL
                ? check.but(Verdict.NEEDS_ENGINEER, "Above the frost: the engineer confirms it in writing.")
                : check;
    }

    /** Free strips as they are drawn; what the office asks is its own. */
    static List<Check> setbacks(DesignFacts design) {
        return design.arrays().stream()
                .map(array -> {
                    Double strip = array.setbackFt();
                    boolean roof = array.mounting() != Mounting.GROUND;
                    double least = roof ? 3 : 0;
                    String subject = array.mark() + ": free strip around it";
                    String clause = roof ? "fire code (IFC 1205, usually 3 ft)" : "zoning of the place";
                    return strip == null
                            ? Check.cannotTell(subject, clause, List.of("the free strip"))
                            : Check.atLeast(subject, clause, strip, least, "ft", List.of(), "Keep the fire path free.");
                })
                .toList();
    }

    static List<Check> generator(DesignFacts design) {
        var generator = design.generator();
        if (generator == null) {
            return List.of();
        }
        boolean apart = generator.arrayOnUtilitySide() || !generator.interlock().isBlank();
        return List.of(Check.said(
                "Generator and array",
                "NEC 702.5, 705.40",
                apart ? Verdict.PASS : Verdict.FAIL,
                generator.arrayOnUtilitySide()
                        ? "Generator and array: the array meets the utility's side of the switch."
                        : apart
                                ? "Generator and array: kept apart by " + generator.interlock() + "."
                                : "Generator and array: nothing keeps them from feeding the same wires.",
                apart ? "" : "Move the array to the utility's side of the switch, or show the interlock."));
    }
}
