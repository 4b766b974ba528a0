package org.plumbrow.survey;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.survey.SurveyFacts.HorizonReading;
import org.plumbrow.survey.SurveyFacts.Occasion;

/** Makes of the parts as written what other rooms read. */
final class FactsReading {

    private FactsReading() {}

    static SurveyFacts of(UUID projectId, SurveySheet sheet) {
        PartReadings service = sheet.readings(SurveyPart.SERVICE);
        PartReadings close = sheet.readings(SurveyPart.CLOSE);
        String day = close.text("surveyed_on");
        return new SurveyFacts(
                projectId,
                sheet.version(),
                service(service),
                new SurveyFacts.Distances(
                        service.number("array_to_inverter_ft"),
                        service.number("inverter_to_poi_ft"),
                        service.number("inverter_to_meter_ft"),
                        service.number("disconnect_to_meter_ft")),
                roof(sheet.readings(SurveyPart.ROOF)),
                ground(sheet.readings(SurveyPart.GROUND)),
                routes(sheet.readings(SurveyPart.ROUTES)),
                horizon(sheet),
                access(sheet.readings(SurveyPart.ACCESS)),
                loads(sheet.readings(SurveyPart.LOADS)),
                close.text("surveyed_by"),
                day == null ? null : LocalDate.parse(day));
    }

    static @Nullable Service type(PartReadings service) {
        String written = service.text("type");
        return Arrays.stream(Service.values())
                .filter(type -> type.name().equals(written))
                .findFirst()
                .orElse(null);
    }

    static Map<String, Double> volts(PartReadings service) {
        Map<String, Double> volts = new HashMap<>();
        for (String pair : ServiceSheet.PAIRS) {
            Double read = service.number(ServiceSheet.voltName(pair));
            if (read != null) {
                volts.put(pair, read);
            }
        }
        return volts;
    }

    private static SurveyFacts.Service service(PartReadings read) {
        return new SurveyFacts.Service(
                type(read),
                volts(read),
                read.number("frequency_hz"),
                read.text("rotation"),
                read.number("main_a"),
                read.number("bus_a"),
                read.number("interrupting_ka"),
                read.number("fault_ka"),
                new SurveyFacts.Meter(read.text("meter_number"), read.text("meter_form"), read.text("ct_ratio")),
                new SurveyFacts.Transformer(
                        read.number("transformer_kva"),
                        read.whole("transformer_phases"),
                        read.text("transformer_number"),
                        read.text("transformer_kind"),
                        read.flag("transformer_shared")),
                read.text("conductors"),
                read.number("conductor_a"),
                read.text("grounding"),
                read.whole("free_spaces"),
                read.text("main_position"),
                new SurveyFacts.Generator(
                        read.flag("generator"),
                        read.number("generator_kva"),
                        read.text("generator_fuel"),
                        read.text("generator_switch"),
                        read.text("generator_place")),
                read.text("other_sources"),
                read.text("interconnection"));
    }

    private static List<SurveyFacts.RoofPlane> roof(PartReadings read) {
        FieldGroup group = SiteSheets.ROOF.get(0);
        return read.rows(group).stream()
                .map(row -> plane(read, group, row, "plane." + row + "."))
                .toList();
    }

    private static SurveyFacts.RoofPlane plane(PartReadings read, FieldGroup group, int row, String in) {
        return new SurveyFacts.RoofPlane(
                name(read, in + "name", group.legend(row)),
                RoofCovering.of(read.text(in + "covering")).orElse(null),
                read.whole(in + "year"),
                read.whole(in + "life_years"),
                read.text(in + "structure"),
                read.number(in + "spacing_in"),
                read.number(in + "pitch_deg"),
                read.number(in + "azimuth_deg"),
                read.number(in + "width_ft"),
                read.number(in + "length_ft"),
                read.number(in + "eave_ft"),
                read.text(in + "obstructions"));
    }

    private static String name(PartReadings read, String field, String otherwise) {
        return read.has(field) ? read.written(field) : otherwise;
    }

    private static SurveyFacts.Ground ground(PartReadings read) {
        FieldGroup group = SiteSheets.GROUND.get(1);
        List<SurveyFacts.Probe> probes = read.rows(group).stream()
                .map(row -> new SurveyFacts.Probe(
                        name(read, "probe." + row + ".place", group.legend(row)),
                        read.number("probe." + row + ".depth_ft"),
                        read.flag("probe." + row + ".refused")))
                .toList();
        return new SurveyFacts.Ground(
                read.text("soil"),
                probes,
                read.number("slope_ns_percent"),
                read.number("slope_ew_percent"),
                read.text("wet"),
                read.text("tiles"),
                read.number("field_length_ft"),
                read.number("field_width_ft"),
                read.number("frost_in"));
    }

    private static List<SurveyFacts.Route> routes(PartReadings read) {
        FieldGroup group = SiteSheets.ROUTES.get(0);
        return read.rows(group).stream()
                .map(row -> new SurveyFacts.Route(
                        name(read, "route." + row + ".name", group.legend(row)),
                        read.text("route." + row + ".kind"),
                        read.number("route." + row + ".length_ft"),
                        read.text("route." + row + ".crosses"),
                        read.number("route." + row + ".cover_in")))
                .toList();
    }

    private static List<HorizonReading> horizon(SurveySheet sheet) {
        List<HorizonReading> all = new ArrayList<>(horizon(sheet.readings(SurveyPart.SHADE), Occasion.BEFORE));
        all.addAll(horizon(sheet.readings(SurveyPart.DAY_ONE), Occasion.DAY_ONE));
        return all;
    }

    static List<HorizonReading> horizon(PartReadings read, Occasion occasion) {
        List<HorizonReading> readings = new ArrayList<>();
        for (int azimuth = SiteSheets.FIRST_AZIMUTH;
                azimuth <= SiteSheets.LAST_AZIMUTH;
                azimuth += SiteSheets.AZIMUTH_STEP) {
            Double elevation = read.number(SiteSheets.horizonName(azimuth));
            if (elevation != null) {
                readings.add(new HorizonReading(azimuth, elevation, occasion));
            }
        }
        return readings;
    }

    private static SurveyFacts.Access access(PartReadings read) {
        return new SurveyFacts.Access(read.number("gate_ft"), read.text("lane"), read.text("overhead"));
    }

    private static List<SurveyFacts.CriticalLoad> loads(PartReadings read) {
        FieldGroup group = SiteSheets.LOADS.get(0);
        String blackout = read.text("blackout");
        return read.rows(group).stream()
                .map(row -> load(read, group, row, "load." + row + ".", blackout))
                .toList();
    }

    private static SurveyFacts.CriticalLoad load(
            PartReadings read, FieldGroup group, int row, String in, @Nullable String blackout) {
        return new SurveyFacts.CriticalLoad(
                name(read, in + "name", group.legend(row)),
                read.text(in + "kind"),
                read.whole(in + "animals"),
                read.number(in + "mass_lb"),
                read.text(in + "details"),
                blackout);
    }
}
