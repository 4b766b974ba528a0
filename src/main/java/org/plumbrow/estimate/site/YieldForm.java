package org.plumbrow.estimate.site;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.SkyModel;
import org.plumbrow.web.Entered;

/** How a yield is computed, as typed. A loss without a name is none; one blank row always stands behind the others. */
record YieldForm(
        @Nullable String weatherId,
        List<LossForm> losses,
        List<MonthForm> snow,
        @Nullable String yearPercent,
        @Nullable String modelPercent,
        @Nullable String sky,
        @Nullable String albedo,
        @Nullable String gammaPercent,
        @Nullable String efficiencyPercent,
        @Nullable String useHorizon,
        List<RowForm> rows,
        @Nullable String version) {

    static final Range PERCENT = new Range(0, 99, "%");
    static final Range SPREAD = new Range(0, 30, "%");
    static final Range ALBEDO = new Range(0, 1, "");
    static final Range GAMMA = new Range(-1, 0, "% for each kelvin");
    static final Range EFFICIENCY = new Range(80, 100, "%");
    static final Range WIDTH_FT = new Range(1, 98, "ft");
    static final Range PITCH_FT = new Range(1, 650, "ft");
    private static final int MOST_LOSSES = 20;
    private static final int MOST_ARRAYS = 40;
    private static final int LONGEST_NAME = 60;

    record LossForm(@Nullable String name, @Nullable String percent) {
        static final LossForm BLANK = new LossForm("", "");

        boolean isBlank() {
            return Entered.text(name).isEmpty() && Entered.text(percent).isEmpty();
        }
    }

    record MonthForm(@Nullable String percent) {
        static final MonthForm NONE = new MonthForm("0");
    }

    record RowForm(@Nullable String widthFt, @Nullable String pitchFt) {
        static final RowForm BLANK = new RowForm("", "");
    }

    YieldForm {
        losses = padded(losses, LossForm.BLANK, Math.min(MOST_LOSSES, losses == null ? 1 : losses.size()));
        snow = padded(snow, MonthForm.NONE, 12).subList(0, 12);
        rows = padded(rows, RowForm.BLANK, MOST_ARRAYS).subList(0, MOST_ARRAYS);
    }

    private static <T> List<T> padded(@Nullable List<T> sent, T blank, int least) {
        List<T> all = new ArrayList<>();
        for (int at = 0; at < Math.max(least, sent == null ? 0 : sent.size()); at++) {
            T one = sent == null || at >= sent.size() ? null : sent.get(at);
            all.add(one == null ? blank : one);
        }
        return all;
    }

    static YieldForm of(YieldRows.Kept kept) {
        YieldTerms terms = kept.terms();
        List<LossForm> losses = new ArrayList<>(terms.losses().stream()
                .map(loss -> new LossForm(loss.name(), Entered.written(loss.percent())))
                .toList());
        losses.add(LossForm.BLANK);
        UUID weather = kept.weatherId();
        return new YieldForm(
                weather == null ? "" : weather.toString(),
                losses,
                terms.snowPercent().stream()
                        .map(percent -> new MonthForm(Entered.written(percent)))
                        .toList(),
                Entered.written(terms.yearPercent()),
                Entered.written(terms.modelPercent()),
                terms.sky().name(),
                Entered.written(terms.albedo()),
                Entered.written(terms.gammaPercent()),
                Entered.written(terms.efficiencyPercent()),
                String.valueOf(terms.useHorizon()),
                terms.rows().stream()
                        .map(row -> new RowForm(Entered.written(row.widthFt()), Entered.written(row.pitchFt())))
                        .toList(),
                String.valueOf(kept.version()));
    }

    YieldTerms read(Entered entered) {
        return new YieldTerms(
                losses(entered),
                snow(entered),
                entered.required("yearPercent", "the spread from year to year", yearPercent, SPREAD),
                entered.maybe("modelPercent", "the spread of the estimate", modelPercent, SPREAD),
                sky(entered),
                entered.required("albedo", "what the ground reflects", albedo, ALBEDO),
                entered.required("gammaPercent", "the modules’ change of power", gammaPercent, GAMMA),
                entered.required("efficiencyPercent", "the inverters’ efficiency", efficiencyPercent, EFFICIENCY),
                WeatherForms.yes(useHorizon),
                rows(entered));
    }

    private List<YieldTerms.Loss> losses(Entered entered) {
        List<YieldTerms.Loss> read = new ArrayList<>();
        for (int at = 0; at < losses.size(); at++) {
            LossForm loss = losses.get(at);
            if (!loss.isBlank()) {
                String row = "losses[%d].".formatted(at);
                String name = entered.given(row + "name", "what the loss is called", loss.name(), LONGEST_NAME);
                String what = name.isEmpty() ? "this loss" : "the loss “" + name + "”";
                read.add(new YieldTerms.Loss(name, entered.required(row + "percent", what, loss.percent(), PERCENT)));
            }
        }
        return read;
    }

    private List<Double> snow(Entered entered) {
        List<Double> read = new ArrayList<>();
        for (int at = 0; at < 12; at++) {
            String month = MonthRow.name(java.time.Month.of(at + 1));
            Double percent = entered.maybe(
                    "snow[%d].percent".formatted(at),
                    "what snow takes in " + month,
                    snow.get(at).percent(),
                    PERCENT);
            read.add(percent == null ? 0.0 : percent);
        }
        return read;
    }

    private SkyModel sky(Entered entered) {
        try {
            return SkyModel.valueOf(Entered.text(sky));
        } catch (IllegalArgumentException e) {
            entered.refuse("sky", "Choose one of the list.");
            return SkyModel.HAY_DAVIES;
        }
    }

    private List<YieldTerms.RowFeet> rows(Entered entered) {
        List<YieldTerms.RowFeet> read = new ArrayList<>();
        int last = 0;
        for (int at = 0; at < rows.size(); at++) {
            String row = "rows[%d].".formatted(at);
            Double width = entered.maybe(
                    row + "widthFt",
                    "the height of a row along its slope",
                    rows.get(at).widthFt(),
                    WIDTH_FT);
            Double pitch = entered.maybe(
                    row + "pitchFt",
                    "the distance from row to row",
                    rows.get(at).pitchFt(),
                    PITCH_FT);
            if (width != null && pitch != null && pitch < width) {
                entered.refuse(
                        row + "pitchFt",
                        "From row to row it is at least the row’s own %s ft.".formatted(Entered.written(width)));
            }
            read.add(new YieldTerms.RowFeet(width, pitch));
            last = width == null && pitch == null ? last : at + 1;
        }
        return read.subList(0, last);
    }

    @Nullable
    UUID weather(Entered entered) {
        if (Entered.text(weatherId).isEmpty()) {
            return null;
        }
        try {
            return UUID.fromString(Entered.text(weatherId));
        } catch (IllegalArgumentException e) {
            entered.refuse("weatherId", "Choose one of the list.");
            return null;
        }
    }

    /** Every field, for the page that lays theirs beside yours. */
    List<Written> written() {
        String chosen = Entered.text(weatherId).isEmpty() ? "the nearest" : "chosen";
        List<Written> all = new ArrayList<>();
        all.add(Written.of("Weather", "weatherId", weatherId, chosen));
        all.addAll(writtenLosses());
        all.addAll(writtenSnow());
        all.add(Written.of("Spread from year to year, %", "yearPercent", yearPercent));
        all.add(Written.of("Spread of the estimate, %", "modelPercent", modelPercent));
        all.add(Written.of("Sky", "sky", sky));
        all.add(Written.of("Ground reflects", "albedo", albedo));
        all.add(Written.of("Power for each kelvin, %", "gammaPercent", gammaPercent));
        all.add(Written.of("Inverter efficiency, %", "efficiencyPercent", efficiencyPercent));
        String applied = WeatherForms.yes(useHorizon) ? "yes" : "no";
        all.add(Written.of("Horizon applied", "useHorizon", useHorizon, applied));
        all.addAll(writtenRows());
        return all;
    }

    private List<Written> writtenLosses() {
        List<Written> all = new ArrayList<>();
        for (int at = 0; at < losses.size(); at++) {
            String row = "losses[%d].".formatted(at);
            String label = "Loss %d".formatted(at + 1);
            all.add(Written.of(label, row + "name", losses.get(at).name()));
            all.add(Written.of(label + ", %", row + "percent", losses.get(at).percent()));
        }
        return all;
    }

    private List<Written> writtenSnow() {
        List<Written> all = new ArrayList<>();
        for (int at = 0; at < snow.size(); at++) {
            String label = "Snow, %s, %%".formatted(MonthRow.name(java.time.Month.of(at + 1)));
            all.add(Written.of(
                    label, "snow[%d].percent".formatted(at), snow.get(at).percent()));
        }
        return all;
    }

    private List<Written> writtenRows() {
        List<Written> all = new ArrayList<>();
        for (int at = 0; at < rows.size(); at++) {
            String row = "rows[%d].".formatted(at);
            String label = "Array %d, ".formatted(at + 1);
            all.add(Written.of(
                    label + "row height, ft", row + "widthFt", rows.get(at).widthFt()));
            all.add(Written.of(
                    label + "row to row, ft", row + "pitchFt", rows.get(at).pitchFt()));
        }
        return all;
    }
}
