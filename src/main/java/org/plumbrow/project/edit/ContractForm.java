package org.plumbrow.project.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.PartFields;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;

/** What the contract fixes, as typed. An array without a mounting is none. */
record ContractForm(
        @Nullable String systemKwDc,
        @Nullable String systemKwAc,
        @Nullable List<ArrayForm> arrays,
        @Nullable String inverters,
        @Nullable String inverterKwAc,
        @Nullable String posts,
        @Nullable String strings,
        @Nullable String trenchFt,
        @Nullable String boreFt,
        @Nullable String guaranteedKwh,
        @Nullable String priceUsd,
        @Nullable String version) {

    /** One array as typed. */
    record ArrayForm(
            @Nullable String mounting,
            @Nullable String modules,
            @Nullable String moduleW,
            @Nullable String tilt,
            @Nullable String azimuth) {

        static final ArrayForm BLANK = new ArrayForm("", "", "", "", "");

        boolean isBlank() {
            return Stream.of(mounting, modules, moduleW, tilt, azimuth)
                    .allMatch(typed -> Entered.text(typed).isEmpty());
        }

        ProjectFacts.@Nullable ArrayFacts read(Entered entered, String at) {
            Mounting on =
                    entered.choice(at + "mounting", Mounting.class, mounting).orElse(null);
            if (on == null) {
                if (!entered.errors().hasFieldErrors(at + "mounting")) {
                    entered.refuse(at + "mounting", "Choose what this array stands on, or empty its other fields.");
                }
                return null;
            }
            return new ProjectFacts.ArrayFacts(
                    on,
                    entered.whole(at + "modules", "the modules", modules, ProjectLimits.MODULES),
                    entered.number(at + "moduleW", "the power of one module", moduleW, ProjectLimits.MODULE_W),
                    entered.number(at + "tilt", "the tilt", tilt, ProjectLimits.TILT_DEG),
                    entered.number(at + "azimuth", "the azimuth", azimuth, ProjectLimits.AZIMUTH_DEG));
        }
    }

    /** What an array may stand on; nothing for a row that is none. */
    static List<Option> mountings() {
        List<Option> options = new ArrayList<>(List.of(new Option("", "–")));
        for (Mounting each : Mounting.values()) {
            options.add(new Option(each.name(), each.words()));
        }
        return options;
    }

    static ContractForm of(Values values, long version) {
        List<ArrayForm> arrays = new ArrayList<>();
        for (int i = 0; i < values.rows("arrays"); i++) {
            String at = "arrays[" + i + "].";
            arrays.add(new ArrayForm(
                    values.get(at + "mounting"),
                    values.get(at + "modules"),
                    values.get(at + "moduleW"),
                    values.get(at + "tilt"),
                    values.get(at + "azimuth")));
        }
        return new ContractForm(
                values.get("systemKwDc"),
                values.get("systemKwAc"),
                arrays,
                values.get("inverters"),
                values.get("inverterKwAc"),
                values.get("posts"),
                values.get("strings"),
                values.get("trenchFt"),
                values.get("boreFt"),
                values.get("guaranteedKwh"),
                values.get("priceUsd"),
                Long.toString(version));
    }

    /** With one more row to fill in. */
    ContractForm withABlankArray() {
        List<ArrayForm> more = new ArrayList<>(rows());
        if (more.size() < ProjectLimits.MOST_ARRAYS) {
            more.add(ArrayForm.BLANK);
        }
        return new ContractForm(
                systemKwDc,
                systemKwAc,
                more,
                inverters,
                inverterKwAc,
                posts,
                strings,
                trenchFt,
                boreFt,
                guaranteedKwh,
                priceUsd,
                version);
    }

    /** @return what was typed; only to be used when nothing was refused */
    ProjectFacts.Contract read(Entered entered) {
        List<ProjectFacts.ArrayFacts> stood = new ArrayList<>();
        for (int i = 0; i < rows().size(); i++) {
            ArrayForm row = rows().get(i);
            if (!row.isBlank()) {
                stood.add(row.read(entered, "arrays[" + i + "]."));
            }
        }
        BigDecimal dc = entered.number("systemKwDc", "the system size DC", systemKwDc, ProjectLimits.SYSTEM_KW);
        return new ProjectFacts.Contract(
                dc,
                entered.number("systemKwAc", "the system size AC", systemKwAc, ProjectLimits.SYSTEM_KW),
                stood.stream().filter(Objects::nonNull).toList(),
                entered.whole("inverters", "the inverters", inverters, ProjectLimits.INVERTERS),
                entered.number("inverterKwAc", "the power of one inverter", inverterKwAc, ProjectLimits.INVERTER_KW),
                entered.whole("posts", "the posts", posts, ProjectLimits.POSTS),
                entered.whole("strings", "the strings", strings, ProjectLimits.STRINGS),
                entered.whole("trenchFt", "the trench", trenchFt, ProjectLimits.TRENCH_FT),
                entered.whole("boreFt", "the bore", boreFt, ProjectLimits.BORE_FT),
                entered.whole(
                        "guaranteedKwh", "the guaranteed energy a year", guaranteedKwh, ProjectLimits.GUARANTEED_KWH),
                entered.number("priceUsd", "the price", priceUsd, ProjectLimits.PRICE_USD));
    }

    /** The form's own fields as they were typed. */
    List<Written> written() {
        List<Written> fields = new ArrayList<>();
        Map<String, @Nullable String> single = new LinkedHashMap<>();
        single.put("systemKwDc", systemKwDc);
        single.put("systemKwAc", systemKwAc);
        single.put("inverters", inverters);
        single.put("inverterKwAc", inverterKwAc);
        single.put("posts", posts);
        single.put("strings", strings);
        single.put("trenchFt", trenchFt);
        single.put("boreFt", boreFt);
        single.put("guaranteedKwh", guaranteedKwh);
        single.put("priceUsd", priceUsd);
        single.forEach((name, typed) -> fields.add(Written.of(PartFields.label(name), name, Entered.text(typed))));
        for (int i = 0; i < rows().size(); i++) {
            ArrayForm row = rows().get(i);
            String at = "arrays[" + i + "].";
            if (!row.isBlank()) {
                fields.add(Written.of(PartFields.label(at + "mounting"), at + "mounting", row.mounting));
                fields.add(Written.of(PartFields.label(at + "modules"), at + "modules", row.modules));
                fields.add(Written.of(PartFields.label(at + "moduleW"), at + "moduleW", row.moduleW));
                fields.add(Written.of(PartFields.label(at + "tilt"), at + "tilt", row.tilt));
                fields.add(Written.of(PartFields.label(at + "azimuth"), at + "azimuth", row.azimuth));
            }
        }
        return fields;
    }

    /** A row that was not sent between others is a blank one. */
    private List<ArrayForm> rows() {
        return arrays == null
                ? List.of()
                : arrays.stream()
                        .map(row -> row == null ? ArrayForm.BLANK : row)
                        .toList();
    }
}
