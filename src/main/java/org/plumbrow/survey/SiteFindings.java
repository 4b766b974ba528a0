package org.plumbrow.survey;

import java.util.List;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.survey.SurveyFacts.Occasion;
import org.plumbrow.survey.SurveyFacts.RoofPlane;
import org.plumbrow.survey.SurveyLook.Seen;

/** What the gate to surveyed finds on roof and ground, along the routes, of shade, loads and photos. Pure. */
final class SiteFindings {

    static final int LEAST_ROOF_YEARS = 15;
    static final double MOST_SLOPE_PERCENT = 15;
    static final double LEAST_GATE_FT = 8;

    private SiteFindings() {}

    static Finding roof(Seen seen) {
        List<RoofPlane> roof = seen.facts().roof();
        boolean whole =
                !roof.isEmpty() && roof.stream().allMatch(plane -> Needs.measured(plane) && Needs.described(plane));
        if (!whole) {
            return Findings.notRead("The roof’s covering, structure and measures", SurveyPart.ROOF, "are");
        }
        RoofPlane first = roof.get(0);
        String more = roof.size() > 1 ? "; %d planes in all".formatted(roof.size()) : "";
        return Findings.read(
                "%s: %s of %d, pitch %s°, azimuth %s°%s."
                        .formatted(
                                first.name(),
                                java.util.Objects.requireNonNull(first.covering())
                                        .words(),
                                first.year(),
                                Findings.figure(Needs.given(first.pitchDeg())),
                                Findings.figure(Needs.given(first.azimuthDeg())),
                                more),
                seen,
                PhotoItem.ROOF_PLANES,
                PhotoItem.FRAMING);
    }

    static Finding roofLife(Seen seen) {
        List<RoofPlane> roof = seen.facts().roof();
        if (roof.isEmpty() || roof.stream().anyMatch(plane -> plane.lifeYears() == null)) {
            return Findings.notRead("How long the roof will last", SurveyPart.ROOF);
        }
        PartReadings read = seen.sheet().readings(SurveyPart.ROOF);
        for (int row : read.rows(SiteSheets.ROOF.get(0))) {
            String field = "plane." + row + ".life_years";
            Integer years = read.whole(field);
            if (years != null
                    && years < LEAST_ROOF_YEARS
                    && seen.explained(SurveyPart.ROOF, field).isEmpty()) {
                return new Finding.Broken(
                        "Plane %d of the roof lasts %d more years; 15 are asked for.".formatted(row, years),
                        "Agree a new covering with the customer, and say so at that reading.");
            }
        }
        return new Finding.Satisfied("Each plane lasts 15 more years, or a new covering is agreed.");
    }

    static Finding field(Seen seen) {
        SurveyFacts.Ground ground = seen.facts().ground();
        Double northSouth = ground.slopeNorthSouthPercent();
        Double eastWest = ground.slopeEastWestPercent();
        if (northSouth == null || eastWest == null || ground.wet() == null || ground.tiles() == null) {
            return Findings.notRead("Slope, wet places and tiles of the field", SurveyPart.GROUND, "are");
        }
        double steepest = Math.max(Math.abs(northSouth), Math.abs(eastWest));
        String field = Math.abs(northSouth) >= Math.abs(eastWest) ? "slope_ns_percent" : "slope_ew_percent";
        if (steepest > MOST_SLOPE_PERCENT
                && seen.explained(SurveyPart.GROUND, field).isEmpty()) {
            return new Finding.Broken(
                    "The field slopes %s %%; fixed tables stand on 15 %% at most.".formatted(Findings.figure(steepest)),
                    "Choose another place, or say at that reading what the engineer answered.");
        }
        return Findings.read(
                "Steepest slope %s %%; wet places: %s; tiles: %s."
                        .formatted(Findings.figure(steepest), ground.wet(), ground.tiles()),
                seen,
                PhotoItem.FIELD_CORNERS);
    }

    static Finding probes(Seen seen) {
        long probes = Needs.probes(seen.facts());
        if (probes < Needs.LEAST_PROBES) {
            return Findings.notRead("Depth and refusal at two places", SurveyPart.GROUND, "are");
        }
        double least = seen.facts().ground().probes().stream()
                .filter(probe -> probe.depthFt() != null)
                .mapToDouble(probe -> Needs.given(probe.depthFt()))
                .min()
                .orElse(0);
        return Findings.read(
                "%d probes; the least deep reached %s ft.".formatted(probes, Findings.figure(least)),
                seen,
                PhotoItem.PROBES);
    }

    static Finding gate(Seen seen) {
        Double gate = seen.facts().access().gateWidthFt();
        if (gate == null || seen.facts().access().lane() == null) {
            return Findings.notRead("Gate and lane", SurveyPart.ACCESS, "are");
        }
        if (gate < LEAST_GATE_FT && seen.explained(SurveyPart.ACCESS, "gate_ft").isEmpty()) {
            return new Finding.Broken(
                    "The narrowest gate is %s ft; the post driver needs 8 ft.".formatted(Findings.figure(gate)),
                    "Find another way in, or say at that reading how the driver gets through.");
        }
        return Findings.read("Narrowest gate %s ft.".formatted(Findings.figure(gate)), seen, PhotoItem.LANE);
    }

    static Finding horizon(Seen seen) {
        var readings = seen.facts().horizon(Occasion.BEFORE);
        if (readings.size() < Needs.LEAST_HORIZON) {
            return Findings.notRead("The horizon in nine directions or more", SurveyPart.SHADE);
        }
        var highest = readings.stream()
                .max(java.util.Comparator.comparingDouble(SurveyFacts.HorizonReading::elevationDeg))
                .orElseThrow();
        return Findings.read("Horizon in %d directions; the highest stands %s° at azimuth %s°."
                .formatted(
                        readings.size(),
                        Findings.figure(highest.elevationDeg()),
                        Findings.figure(highest.azimuthDeg())));
    }

    static Finding route(Seen seen) {
        boolean lines = seen.sheet().readings(SurveyPart.ROUTES).has("private_lines");
        List<SurveyFacts.Route> routes = seen.facts().routes();
        if (!lines || routes.isEmpty() || routes.stream().anyMatch(route -> route.lengthFt() == null)) {
            return Findings.notRead("The routes and the private lines", SurveyPart.ROUTES, "are");
        }
        double feet = routes.stream()
                .mapToDouble(route -> Needs.given(route.lengthFt()))
                .sum();
        return Findings.read(
                "%d %s, %s ft together."
                        .formatted(routes.size(), routes.size() == 1 ? "route" : "routes", Findings.figure(feet)),
                seen,
                PhotoItem.ROUTE);
    }

    static Finding loads(Seen seen) {
        List<Completeness.Lack> lacks = seen.completeness().of(SurveyPart.LOADS);
        return lacks.isEmpty()
                ? new Finding.Satisfied("The sheet of loads that must not stop is complete.")
                : new Finding.Broken(
                        "Of the loads is missing: " + lacks.get(0).sentence() + ".",
                        "Write it on the survey’s page “Critical loads”.");
    }

    static Finding photos(Seen seen) {
        List<PhotoItem> missing = Completeness.missingPhotos(seen.project(), seen.photos());
        if (missing.isEmpty()) {
            return new Finding.Satisfied("All %d photos are there, or their subject does not exist here."
                    .formatted(PhotoItem.of(seen.project()).size()));
        }
        String first = missing.get(0).number() + ". " + missing.get(0).words();
        return new Finding.Broken(
                missing.size() == 1
                        ? "1 photo is missing: %s.".formatted(first)
                        : "%d photos are missing, the first is %s.".formatted(missing.size(), first),
                "Take them, or say why their subject does not exist here.");
    }

    static Finding enoughToDraw(Seen seen) {
        List<Completeness.Lack> lacks = seen.completeness().lacks();
        if (lacks.isEmpty()) {
            return new Finding.Satisfied("Enough to draw.");
        }
        Completeness.Lack first = lacks.get(0);
        String rest = lacks.size() == 1 ? "1 thing" : "%d things, first of all".formatted(lacks.size());
        return new Finding.Broken(
                "The designer still lacks %s: %s, %s".formatted(rest, first.part(), stopped(first.sentence())),
                "The survey’s page lists them all.");
    }

    private static String stopped(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
