package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;

/** What the rules say of the design: each check that does not simply pass, and the others by their clause. */
final class CheckSheets {

    /** In the order of what has to be looked at first. */
    private static final List<Verdict> OPEN =
            List.of(Verdict.FAIL, Verdict.NEEDS_ENGINEER, Verdict.CANNOT_TELL, Verdict.REMARK);

    private final List<DesignChecks.Group> groups;
    private final CodeEdition edition;

    CheckSheets(List<DesignChecks.Group> groups, CodeEdition edition) {
        this.groups = groups;
        this.edition = edition;
    }

    List<Drawn> sheets() {
        Flow flow = Flow.onNewSheet();
        List<List<String>> open = open(groups);
        if (!open.isEmpty()) {
            flow.table(new Table(
                    "Checks that do not simply pass", List.of("Result", "Check", "Clause", "What to do"), open));
        }
        flow.table(new Table(
                "Checks that pass, by clause",
                List.of("About", "Clause", "Passing", "Nearest to its limit", "Left of it"),
                passing()));
        flow.notes("Code edition", List.of(edition(edition)));
        String says = "What the rules say: " + summary(groups) + ".";
        return Drawn.all("checks", "Checks", "C", Drawn.NOT_TO_SCALE, says, flow.canvases());
    }

    static String edition(CodeEdition edition) {
        return "Clauses are those of " + edition.words()
                + " or as its later editions number them; the permit office says which edition counts.";
    }

    /** "2 fail, 1 cannot tell yet, 40 pass". */
    static String summary(List<DesignChecks.Group> groups) {
        return "%d fail, %d need a licensed engineer, %d cannot be told yet, %d pass with a remark, %d pass"
                .formatted(
                        DesignChecks.count(groups, Verdict.FAIL),
                        DesignChecks.count(groups, Verdict.NEEDS_ENGINEER),
                        DesignChecks.count(groups, Verdict.CANNOT_TELL),
                        DesignChecks.count(groups, Verdict.REMARK),
                        DesignChecks.count(groups, Verdict.PASS));
    }

    /** Result, sentence, clause and what to do of each. */
    static List<List<String>> open(List<DesignChecks.Group> groups) {
        List<List<String>> rows = new ArrayList<>();
        for (Verdict verdict : OPEN) {
            groups.stream()
                    .flatMap(group -> group.checks().stream())
                    .filter(check -> check.verdict() == verdict)
                    .forEach(check ->
                            rows.add(List.of(verdict.words(), check.sentence(), check.clause(), check.remedy())));
        }
        return rows;
    }

    private List<List<String>> passing() {
        List<List<String>> rows = new ArrayList<>();
        for (DesignChecks.Group group : groups) {
            Map<String, List<Check>> byClause = new LinkedHashMap<>();
            group.checks().stream()
                    .filter(check -> check.verdict() == Verdict.PASS)
                    .forEach(check -> byClause.computeIfAbsent(check.clause(), clause -> new ArrayList<>())
                            .add(check));
            byClause.forEach((clause, checks) -> rows.add(passing(group.title(), clause, checks)));
        }
        return rows;
    }

    private static List<String> passing(String title, String clause, List<Check> checks) {
        Check nearest = checks.stream()
                .min(Comparator.comparingDouble(CheckSheets::left))
                .orElseThrow();
        String left = Double.isNaN(nearest.margin()) ? "" : Say.rounded(100 * nearest.margin(), 1) + " %";
        return List.of(title, clause, String.valueOf(checks.size()), nearest.sentence(), left);
    }

    private static double left(Check check) {
        return Double.isNaN(check.margin()) ? Double.MAX_VALUE : check.margin();
    }
}
