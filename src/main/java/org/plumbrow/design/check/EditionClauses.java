package org.plumbrow.design.check;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.electrical.Check;

/**
 * Names clauses as the edition in force at the permit office does. The core numbers them as in 2020 and 2023; the places in
 * 2014 and 2017 are from memory, and 2026 is cited by the numbers of 2023, which the sentence says.
 */
final class EditionClauses {

    /** As numbered since 2020, and before. The longer ones come first. */
    private static final List<Map.Entry<String, String>> BEFORE_2020 = List.of(
            Map.entry("310.15(B)(1), 310.15(C)(1)", "Tables 310.15(B)(2)(a), 310.15(B)(3)(a)"),
            Map.entry("310.10(G)", "310.10(H)"),
            Map.entry("Table 310.16", "Table 310.15(B)(16)"),
            Map.entry("705.11(B)", "705.12(A)"),
            Map.entry("705.11(C)", "705.12(A), 705.31"),
            Map.entry("705.11", "705.12(A)"),
            Map.entry("705.12(B)(1)", "705.12(B)(2)(3)(a)"),
            Map.entry("705.12(B)(2)", "705.12(B)(2)(3)(b)"),
            Map.entry("705.12(B)(3)", "705.12(B)(2)(3)(c)"),
            Map.entry("705.12(B)(4)", "705.12(B)(2)(3)(d)"),
            Map.entry("705.28", "705.60"));

    private static final Pattern CODE = Pattern.compile("\\bNEC\\b");

    private EditionClauses() {}

    static Check in(CodeEdition edition, Check check) {
        return check.citing(cited(edition, check.clause()));
    }

    static String cited(CodeEdition edition, String clause) {
        return CODE.matcher(numbered(edition, clause)).replaceAll(words(edition));
    }

    private static String words(CodeEdition edition) {
        return edition == CodeEdition.NEC_2026 ? "NEC 2026 (numbers of 2023)" : edition.words();
    }

    private static String numbered(CodeEdition edition, String clause) {
        if (edition.compareTo(CodeEdition.NEC_2020) >= 0) {
            return clause;
        }
        String before = BEFORE_2020.stream()
                .filter(place -> clause.contains(place.getKey()))
                .findFirst()
                .map(place -> clause.replace(place.getKey(), place.getValue()))
                .orElse(clause);
        return edition == CodeEdition.NEC_2014 ? before.replace("705.12(B)(2)(3)", "705.12(D)(2)(3)") : before;
    }
}
