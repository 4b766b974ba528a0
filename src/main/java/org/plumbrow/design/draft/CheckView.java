package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;

/**
 * One check as a page shows it.
 *
 * @param result value and limit; null where nothing was measured
 * @param margin share of the limit that is left; null without one
 */
record CheckView(
        String shape,
        String verdict,
        String sentence,
        List<Check.Input> inputs,
        @Nullable String result,
        @Nullable String margin,
        String clause,
        String remedy) {

    /** What does not simply pass, with the part where its cause is changed. */
    record First(CheckView check, String part, String slug, Verdict verdict) {

        /** The worst first: what fails, what an engineer decides, what cannot be told, remarks. */
        static List<First> of(List<DesignChecks.Group> groups) {
            List<First> all = new ArrayList<>();
            for (DesignChecks.Group group : groups) {
                group.checks().stream()
                        .filter(check -> check.verdict() != Verdict.PASS)
                        .map(check -> new First(
                                CheckView.of(check),
                                group.part().title(),
                                group.part().slug(),
                                check.verdict()))
                        .forEach(all::add);
            }
            all.sort(Comparator.comparingInt(one -> WORST_FIRST.indexOf(one.verdict())));
            return all;
        }
    }

    private static final List<Verdict> WORST_FIRST =
            List.of(Verdict.FAIL, Verdict.NEEDS_ENGINEER, Verdict.CANNOT_TELL, Verdict.REMARK);

    /** Checks that belong together and pass. */
    record Passing(String title, List<CheckView> checks) {

        static List<Passing> of(List<DesignChecks.Group> groups) {
            return groups.stream()
                    .map(group -> new Passing(
                            group.title(),
                            group.checks().stream()
                                    .filter(check -> check.verdict() == Verdict.PASS)
                                    .map(CheckView::of)
                                    .toList()))
                    .filter(group -> !group.checks().isEmpty())
                    .toList();
        }
    }

    static CheckView of(Check check) {
        return new CheckView(
                shape(check.verdict()),
                words(check.verdict()),
                check.sentence(),
                check.inputs(),
                Double.isNaN(check.value()) || Double.isNaN(check.limit()) ? null : result(check),
                Double.isNaN(check.margin()) ? null : margin(check.margin()),
                check.clause(),
                check.remedy());
    }

    private static String result(Check check) {
        return "%s; limit %s"
                .formatted(Check.amount(check.value(), check.unit()), Check.amount(check.limit(), check.unit()))
                .replace(" ;", ";")
                .strip();
    }

    private static String margin(double share) {
        return String.format(Locale.US, "%.1f %%", 100 * share).replace('-', '\u2212');
    }

    private static String words(Verdict verdict) {
        String words = verdict.words();
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    private static String shape(Verdict verdict) {
        return switch (verdict) {
            case PASS -> "done";
            case REMARK -> "risk";
            case FAIL -> "trouble";
            case NEEDS_ENGINEER -> "hold";
            case CANNOT_TELL -> "unknown";
        };
    }
}
