package org.plumbrow.survey;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What a survey has read of a site. What was not read is null or empty; figures stand as they were read, also those
 * outside their usual limits.
 *
 * @param version grows with every change of any part; 0 while nothing is recorded
 */
public record SurveyFacts(
        UUID projectId,
        long version,
        Service service,
        Distances distances,
        List<RoofPlane> roof,
        Ground ground,
        List<Route> routes,
        List<HorizonReading> horizon,
        Access access,
        List<CriticalLoad> loads,
        @Nullable String surveyedBy,
        @Nullable LocalDate surveyedOn) {

    public SurveyFacts {
        roof = List.copyOf(roof);
        routes = List.copyOf(routes);
        horizon = List.copyOf(horizon);
        loads = List.copyOf(loads);
    }

    public boolean isRecorded() {
        return version > 0;
    }

    public List<HorizonReading> horizon(Occasion occasion) {
        return horizon.stream().filter(one -> one.occasion() == occasion).toList();
    }

    /**
     * The service and what hangs on it.
     *
     * @param volts by the pair's code, "A-N", "A-B"
     * @param mainPosition END, CENTRE or FEED_THROUGH of the busbar
     * @param conductors size, material and kind of the service conductors in words
     */
    public record Service(
            org.plumbrow.calc.electrical.@Nullable Service type,
            Map<String, Double> volts,
            @Nullable Double frequencyHz,
            @Nullable String rotation,
            @Nullable Double mainA,
            @Nullable Double busA,
            @Nullable Double interruptingKa,
            @Nullable Double faultKa,
            Meter meter,
            Transformer transformer,
            @Nullable String conductors,
            @Nullable Double conductorA,
            @Nullable String grounding,
            @Nullable Integer freeSpaces,
            @Nullable String mainPosition,
            Generator generator,
            @Nullable String otherSources,
            @Nullable String interconnection) {

        public Service {
            volts = Collections.unmodifiableMap(new TreeMap<>(volts));
        }

        /** The highest voltage from line to line that was read. */
        public Optional<Double> highestLineV() {
            return volts.entrySet().stream()
                    .filter(read -> !read.getKey().endsWith("-N"))
                    .map(Map.Entry::getValue)
                    .max(Double::compare);
        }
    }

    /** @param ctRatio current transformers, "400:5"; null without any */
    public record Meter(
            @Nullable String number,
            @Nullable String form,
            @Nullable String ctRatio) {}

    /** @param kind POLE or PAD; @param shared whether other customers hang on it */
    public record Transformer(
            @Nullable Double kva,
            @Nullable Integer phases,
            @Nullable String number,
            @Nullable String kind,
            @Nullable Boolean shared) {}

    /** @param present null while nobody has said; @param switchKind MANUAL, AUTOMATIC, INTERLOCK or NONE */
    public record Generator(
            @Nullable Boolean present,
            @Nullable Double kva,
            @Nullable String fuel,
            @Nullable String switchKind,
            @Nullable String place) {}

    /** Along the way that conductors take, in feet; POI is the point of interconnection. */
    public record Distances(
            @Nullable Double arrayToInverterFt,
            @Nullable Double inverterToPoiFt,
            @Nullable Double inverterToMeterFt,
            @Nullable Double disconnectToMeterFt) {}

    /**
     * One plane of a roof.
     *
     * @param azimuthDeg from true north, clockwise
     * @param widthFt along the eave; @param lengthFt up the slope
     * @param structure in words: rafters and their size, trusses, purlins, deck
     */
    public record RoofPlane(
            String name,
            @Nullable RoofCovering covering,
            @Nullable Integer year,
            @Nullable Integer lifeYears,
            @Nullable String structure,
            @Nullable Double rafterSpacingIn,
            @Nullable Double pitchDeg,
            @Nullable Double azimuthDeg,
            @Nullable Double widthFt,
            @Nullable Double lengthFt,
            @Nullable Double eaveFt,
            @Nullable String obstructions) {}

    /** @param tiles where drain tiles lie, or that there are none */
    public record Ground(
            @Nullable String soil,
            List<Probe> probes,
            @Nullable Double slopeNorthSouthPercent,
            @Nullable Double slopeEastWestPercent,
            @Nullable String wet,
            @Nullable String tiles,
            @Nullable Double fieldLengthFt,
            @Nullable Double fieldWidthFt,
            @Nullable Double frostDepthIn) {

        public Ground {
            probes = List.copyOf(probes);
        }
    }

    /** A probe post or auger hole. @param refused whether it would go no deeper */
    public record Probe(
            String place,
            @Nullable Double depthFt,
            @Nullable Boolean refused) {}

    /** @param kind TRENCH, BORE or ABOVE_GROUND; @param crosses what it crosses, in words */
    public record Route(
            String name,
            @Nullable String kind,
            @Nullable Double lengthFt,
            @Nullable String crosses,
            @Nullable Double coverIn) {

        public boolean isTrench() {
            return "TRENCH".equals(kind);
        }

        public boolean isBore() {
            return "BORE".equals(kind);
        }
    }

    /** When the horizon was read. */
    public enum Occasion {
        BEFORE,
        DAY_ONE
    }

    /** How high the horizon stands in one direction. @param azimuthDeg from true north, clockwise */
    public record HorizonReading(double azimuthDeg, double elevationDeg, Occasion occasion) {}

    public record Access(
            @Nullable Double gateWidthFt,
            @Nullable String lane,
            @Nullable String overheadLines) {}

    /** A building or thing that must not stop. @param animals number; @param massLb of each */
    public record CriticalLoad(
            String name,
            @Nullable String kind,
            @Nullable Integer animals,
            @Nullable Double massLb,
            @Nullable String details,
            @Nullable String blackoutTimes) {}
}
