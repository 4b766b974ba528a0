package org.plumbrow.calc.ridethrough.house;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.Limit.Kind;

/** The limits of a house: settings, each with its source; where nobody has set one, these. */
public record HouseLimits(List<Limit> limits) {

    private static final String POULTRY_MANUAL = "University of Kentucky poultry manual, chapter 7: ";
    private static final String CO2_SOURCE = POULTRY_MANUAL + "danger of asphyxia above 30,000 ppm";

    public HouseLimits {
        limits = List.copyOf(limits);
    }

    public static HouseLimits usual(Species species) {
        return new HouseLimits(
                switch (species) {
                    case BROILERS, TURKEYS ->
                        List.of(
                                new Limit(
                                        Kind.HEAT,
                                        36.1,
                                        POULTRY_MANUAL + "97 degF, above it only 20 to 30 min in still air"),
                                co2(3, CO2_SOURCE));
                    case LAYERS ->
                        List.of(
                                new Limit(Kind.HEAT, 33, "common practice for caged hens, no publication"),
                                co2(3, CO2_SOURCE));
                    case PIGS ->
                        List.of(
                                new Limit(
                                        Kind.HEAT,
                                        35,
                                        "95 degF: nursery trial, Robert and others, Swine Housings II 2003"),
                                co2(4, "the same trial: 4 %"));
                    case CATTLE ->
                        List.of(
                                new Limit(
                                        Kind.THI, 72, "dairy notes on the temperature-humidity index: moderate stress"),
                                co2(3, CO2_SOURCE));
                });
    }

    private static Limit co2(double percent, String source) {
        return new Limit(Kind.CO2, percent, source);
    }

    /** Young animals that need brooders: cold is a limit too. 28 degC for chicks in their first days is common practice. */
    public HouseLimits alsoCold(double airC, String source) {
        List<Limit> more = new ArrayList<>(limits);
        more.add(new Limit(Kind.COLD, airC, source));
        return new HouseLimits(more);
    }
}
