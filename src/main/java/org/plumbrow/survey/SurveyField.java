package org.plumbrow.survey;

import java.util.List;
import java.util.Locale;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Option;

/**
 * One thing that is read or asked on the site: its words, its unit and its limits, from here for the form, the hint, the
 * check and the sentences.
 *
 * @param usual limits outside which a reading is kept and asked about; for figures only
 * @param possible what can be a value at all; anything else is refused
 */
record SurveyField(
        String name, String label, Kind kind, Range usual, Range possible, List<Option> options, String note) {

    private static final Range NONE = new Range(0, 0, "");
    private static final double MOST = 1_000_000;

    enum Kind {
        NUMBER,
        WHOLE,
        TEXT,
        LINES,
        CHOICE,
        DATE
    }

    static SurveyField number(String name, String label, double least, double most, String unit) {
        double lowest = least < 0 ? -MOST : 0;
        return new SurveyField(
                name, label, Kind.NUMBER, new Range(least, most, unit), new Range(lowest, MOST, unit), List.of(), "");
    }

    static SurveyField whole(String name, String label, int least, int most, String unit) {
        SurveyField figure = number(name, label, least, most, unit);
        return new SurveyField(name, label, Kind.WHOLE, figure.usual, figure.possible, List.of(), "");
    }

    static SurveyField text(String name, String label, String note) {
        return new SurveyField(name, label, Kind.TEXT, NONE, NONE, List.of(), note);
    }

    static SurveyField lines(String name, String label, String note) {
        return new SurveyField(name, label, Kind.LINES, NONE, NONE, List.of(), note);
    }

    static SurveyField choice(String name, String label, Option... options) {
        return new SurveyField(name, label, Kind.CHOICE, NONE, NONE, List.of(options), "");
    }

    static SurveyField yesNo(String name, String label) {
        return choice(name, label, new Option("YES", "Yes"), new Option("NO", "No"));
    }

    static SurveyField date(String name, String label) {
        return new SurveyField(name, label, Kind.DATE, NONE, NONE, List.of(), "");
    }

    /** What can be a value at all. */
    SurveyField within(double least, double most) {
        return new SurveyField(name, label, kind, usual, new Range(least, most, usual.unit()), options, note);
    }

    SurveyField noted(String words) {
        return new SurveyField(name, label, kind, usual, possible, options, words);
    }

    /** The same field in one row of a group that repeats: {@code plane.2.pitch}. */
    SurveyField inRow(String prefix, int row, String rowWords) {
        return new SurveyField(
                prefix + "." + row + "." + name,
                rowWords.isEmpty() ? label : rowWords + ", " + decapitalised(label),
                kind,
                usual,
                possible,
                options,
                note);
    }

    private static String decapitalised(String words) {
        boolean abbreviation = words.length() > 1 && Character.isUpperCase(words.charAt(1));
        return abbreviation ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    boolean isFigure() {
        return kind == Kind.NUMBER || kind == Kind.WHOLE;
    }

    String unit() {
        return usual.unit();
    }

    /** "15 to 4,000 A": what stands under the label. */
    String hint() {
        String limits = isFigure() ? limits(usual) : "";
        return limits.isEmpty() || note.isEmpty() ? limits + note : limits + ". " + note;
    }

    static String limits(Range range) {
        String unit = range.unit().isEmpty() ? "" : " " + range.unit();
        return plain(range.least()) + " to " + plain(range.most()) + unit;
    }

    /** "1,250", "0.5", "−4". A year is written without a comma by its own hint. */
    static String plain(double figure) {
        boolean whole = figure == Math.rint(figure) && Math.abs(figure) < 1e9;
        return (whole ? String.format(Locale.US, "%.0f", figure) : String.format(Locale.US, "%s", figure))
                .replace('-', '−');
    }

    /** As people read a value that is stored: the words of a choice, the figure with its unit. */
    public String words(String value) {
        if (value.isEmpty()) {
            return "–";
        }
        if (kind == Kind.CHOICE) {
            return options.stream()
                    .filter(option -> option.value().equals(value))
                    .map(Option::words)
                    .findFirst()
                    .orElse(value);
        }
        return isFigure() && !unit().isEmpty() ? value.replace('-', '−') + " " + unit() : value;
    }
}
