package org.plumbrow.calc.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One rule held against a design: a planning aid, a licensed person decides.
 *
 * @param subject what is judged, "String voltage in the cold, strings of 18"
 * @param clause the rule's place, "NEC 690.7(A)"; "house rule" where no code asks for it
 * @param inputs what went in, with units
 * @param value that resulted, NaN where nothing was measured
 * @param limit that it is held against, NaN where there is none
 * @param unit of both
 * @param margin share of the limit that is left, below 0 when broken, NaN without a limit or with a limit of 0
 * @param sentence what a colleague would say, with the values
 * @param remedy what to do; empty when nothing is to be done
 */
public record Check(
        String subject,
        String clause,
        List<Input> inputs,
        double value,
        double limit,
        String unit,
        double margin,
        Verdict verdict,
        String sentence,
        String remedy) {

    private static final double ALMOST = 1e-9;

    public Check {
        inputs = List.copyOf(inputs);
    }

    /** "Isc of a module", "13.95 A". */
    public record Input(String what, String value) {
        public static Input of(String what, double value, String unit) {
            return new Input(what, amount(value, unit));
        }
    }

    /** At most two decimals, none that say nothing. */
    static String figure(double value) {
        String plain = String.format(Locale.US, "%,.2f", value);
        return plain.replaceAll("\\.?0+$", "").replace("-", "\u2212");
    }

    /** "1 string", "18 strings", "20.5 A". */
    public static String amount(double value, String unit) {
        boolean one = value == 1 && unit.length() > 2 && unit.endsWith("s");
        return figure(value) + " " + (one ? unit.substring(0, unit.length() - 1) : unit);
    }

    /** A value that may not exceed a limit. */
    public static Check atMost(
            String subject, String clause, double value, double limit, String unit, List<Input> inputs, String remedy) {
        boolean holds = value <= limit + ALMOST;
        String sentence = "%s: %s of at most %s.".formatted(subject, amount(value, unit), amount(limit, unit));
        return limited(subject, clause, value, limit, unit, limit - value, holds, inputs, sentence, remedy);
    }

    /** A value that must reach a limit. */
    public static Check atLeast(
            String subject, String clause, double value, double limit, String unit, List<Input> inputs, String remedy) {
        boolean holds = value >= limit - ALMOST;
        String sentence = "%s: %s, at least %s %s needed."
                .formatted(subject, amount(value, unit), amount(limit, unit), limit == 1 ? "is" : "are");
        return limited(subject, clause, value, limit, unit, value - limit, holds, inputs, sentence, remedy);
    }

    private static Check limited(
            String subject,
            String clause,
            double value,
            double limit,
            String unit,
            double left,
            boolean holds,
            List<Input> inputs,
            String sentence,
            String remedy) {
        Verdict verdict = holds ? Verdict.PASS : Verdict.FAIL;
        double margin = limit == 0 ? Double.NaN : left / limit;
        return new Check(subject, clause, inputs, value, limit, unit, margin, verdict, sentence, holds ? "" : remedy);
    }

    /** What cannot be judged as long as something is not known. */
    public static Check cannotTell(String subject, String clause, List<String> missing) {
        String lacking = String.join(", ", missing);
        return new Check(
                subject,
                clause,
                List.of(),
                Double.NaN,
                Double.NaN,
                "",
                Double.NaN,
                Verdict.CANNOT_TELL,
                subject + ": cannot tell yet.",
                "Missing: " + lacking + ".");
    }

    /** What no number decides. */
    public static Check said(String subject, String clause, Verdict verdict, String sentence, String remedy) {
        return new Check(subject, clause, List.of(), Double.NaN, Double.NaN, "", Double.NaN, verdict, sentence, remedy);
    }

    /** The same, with another verdict and what to do. */
    public Check but(Verdict other, String whatToDo) {
        return new Check(subject, clause, inputs, value, limit, unit, margin, other, sentence, whatToDo);
    }

    /** The same under another name of its clause. */
    public Check citing(String otherClause) {
        return new Check(subject, otherClause, inputs, value, limit, unit, margin, verdict, sentence, remedy);
    }

    /** The same in other words. */
    Check saying(String words) {
        return new Check(subject, clause, inputs, value, limit, unit, margin, verdict, words, remedy);
    }

    public Check with(Input... more) {
        List<Input> all = new ArrayList<>(inputs);
        all.addAll(List.of(more));
        return new Check(subject, clause, all, value, limit, unit, margin, verdict, sentence, remedy);
    }
}
