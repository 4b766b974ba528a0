package org.plumbrow.estimate.guarantee;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;

/** The terms as typed. */
record TermsForm(
        @Nullable String rate,
        @Nullable String rateGrows,
        @Nullable String years,
        @Nullable String settled,
        @Nullable String fades,
        @Nullable String systemFades,
        @Nullable String free,
        @Nullable String weather,
        @Nullable String surplus,
        @Nullable String beginsOn,
        @Nullable String version) {

    static final List<Option> WEATHER = List.of(
            new Option("carried", "We carry bad years: what is missing is owed, whatever the weather was"),
            new Option("adjusted", "The promise follows the light that was measured in the year"));
    static final List<Option> SURPLUS = List.of(
            new Option("lost", "Surplus of a good year stays the customer’s and counts for nothing later"),
            new Option("kept", "Surplus of a good year is used first when a later year falls short"));

    /** Rate and years are left open: only the contract says them. */
    static final TermsForm BLANK = new TermsForm(
            "",
            "0",
            "",
            "1",
            Entered.written(PromiseTerms.USUAL_FADING),
            Entered.written(PromiseTerms.USUAL_FADING),
            "0",
            "carried",
            "lost",
            "",
            "-1");

    static TermsForm of(GuaranteeRows.Kept kept) {
        PromiseTerms terms = kept.terms();
        LocalDate begins = terms.beginsOn();
        return new TermsForm(
                Entered.written(terms.rateUsd()),
                Entered.written(terms.rateGrowsPercent()),
                String.valueOf(terms.years()),
                String.valueOf(terms.settledYears()),
                Entered.written(terms.fadesPercent()),
                Entered.written(terms.systemFadesPercent()),
                Entered.written(terms.freePercent()),
                terms.carriesWeather() ? "carried" : "adjusted",
                terms.keepsSurplus() ? "kept" : "lost",
                begins == null ? "" : begins.toString(),
                String.valueOf(kept.version()));
    }

    /** Only to be used when nothing was refused. */
    PromiseTerms read(Entered typed) {
        int stands = whole(typed, "years", "the years of the guarantee", years, PromiseTerms.YEARS);
        Range upTo = new Range(1, Math.max(1, stands), "years");
        return new PromiseTerms(
                typed.required("rate", "what a missing kWh costs", rate, PromiseTerms.RATE),
                typed.required("rateGrows", "the growth of the rate", rateGrows, PromiseTerms.GROWS),
                stands,
                whole(typed, "settled", "the years settled together", settled, upTo),
                typed.required("fades", "by how much the promise falls", fades, PromiseTerms.FADES),
                typed.required("systemFades", "by how much the system fades", systemFades, PromiseTerms.FADES),
                typed.required("free", "what may be missing", free, PromiseTerms.FREE),
                chosen(typed, "weather", weather, WEATHER).equals("carried"),
                chosen(typed, "surplus", surplus, SURPLUS).equals("kept"),
                typed.date("beginsOn", "the first day of the guarantee", beginsOn));
    }

    private static int whole(Entered typed, String field, String what, @Nullable String value, Range range) {
        Integer read = typed.whole(field, what, value, range);
        if (read == null && !typed.errors().hasFieldErrors(field)) {
            typed.refuse(field, "Write %s as a whole number from %s.".formatted(what, Entered.hint(range)));
        }
        return read == null ? (int) range.least() : read;
    }

    private static String chosen(Entered typed, String field, @Nullable String value, List<Option> options) {
        String text = Entered.text(value);
        if (options.stream().noneMatch(option -> option.value().equals(text))) {
            typed.refuse(field, "Choose one of the two.");
        }
        return text;
    }
}
