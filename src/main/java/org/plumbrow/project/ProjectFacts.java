package org.plumbrow.project;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;

/**
 * A project as other rooms read it, at one moment.
 *
 * @param number as people call it, {@code QV-2027-014}
 * @param stage reached; null while the project is new
 * @param weight how much a late day counts in the plan, 1 to 5
 * @param customer name of the customer
 * @param promise the newest promise; null while there is none
 */
public record ProjectFacts(
        UUID id,
        UUID branchId,
        String number,
        String name,
        @Nullable Stage stage,
        Standing standing,
        int weight,
        Instant createdAt,
        String customer,
        Site site,
        Contract contract,
        @Nullable Promise promise,
        Map<Duty, InCharge> people) {

    /** Where the array is built and what is on the site; an empty set of loads means none. */
    public record Site(
            @Nullable String street,
            @Nullable String town,
            @Nullable String state,
            @Nullable String zip,
            @Nullable BigDecimal latitudeDeg,
            @Nullable BigDecimal longitudeDeg,
            Set<SiteLoad> loads,
            boolean generator,
            boolean threePhase,
            boolean supplySideTap,
            @Nullable UUID utilityId,
            @Nullable UUID permitOfficeId,
            List<String> meterNumbers) {

        public Site {
            latitudeDeg = plain(latitudeDeg);
            longitudeDeg = plain(longitudeDeg);
            loads = loads.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(loads));
            meterNumbers = List.copyOf(meterNumbers);
        }

        /** "4 Sedge Hollow Road, Quillback"; empty when neither is known. */
        public String address() {
            StringBuilder line = new StringBuilder(street == null ? "" : street);
            if (town != null && !town.isBlank()) {
                line.append(line.isEmpty() ? "" : ", ").append(town);
            }
            return line.toString();
        }

        public boolean has(SiteLoad load) {
            return loads.contains(load);
        }

        /** Whether animals or milk hang on the power. */
        public boolean isFarm() {
            return has(SiteLoad.POULTRY) || has(SiteLoad.DAIRY) || has(SiteLoad.SWINE);
        }
    }

    /**
     * What the contract fixes. Every figure may be missing in a project that has just come in.
     *
     * @param inverterKwAc of one inverter
     * @param priceUsd null for people who may not see money
     */
    public record Contract(
            @Nullable BigDecimal systemKwDc,
            @Nullable BigDecimal systemKwAc,
            List<ArrayFacts> arrays,
            @Nullable Integer inverters,
            @Nullable BigDecimal inverterKwAc,
            @Nullable Integer posts,
            @Nullable Integer strings,
            @Nullable Integer trenchFt,
            @Nullable Integer boreFt,
            @Nullable Integer guaranteedKwhPerYear,
            @Nullable BigDecimal priceUsd) {

        public Contract {
            systemKwDc = plain(systemKwDc);
            systemKwAc = plain(systemKwAc);
            inverterKwAc = plain(inverterKwAc);
            priceUsd = plain(priceUsd);
            arrays = List.copyOf(arrays);
        }

        Contract withPrice(@Nullable BigDecimal usd) {
            return new Contract(
                    systemKwDc,
                    systemKwAc,
                    arrays,
                    inverters,
                    inverterKwAc,
                    posts,
                    strings,
                    trenchFt,
                    boreFt,
                    guaranteedKwhPerYear,
                    usd);
        }

        public Contract withGuaranteedKwh(int kwhPerYear) {
            return new Contract(
                    systemKwDc,
                    systemKwAc,
                    arrays,
                    inverters,
                    inverterKwAc,
                    posts,
                    strings,
                    trenchFt,
                    boreFt,
                    kwhPerYear,
                    priceUsd);
        }

        /** Modules of all arrays; 0 when none is known. */
        public int modules() {
            return arrays.stream()
                    .mapToInt(array -> array.modules() == null ? 0 : array.modules())
                    .sum();
        }

        /** The mounting of the array with the most modules; empty without an array. */
        public Optional<Mounting> mounting() {
            return arrays.stream()
                    .max(Comparator.comparingInt(array -> array.modules() == null ? 0 : array.modules()))
                    .map(ArrayFacts::mounting);
        }

        public boolean has(Mounting mounting) {
            return arrays.stream().anyMatch(array -> array.mounting() == mounting);
        }
    }

    /** One array: azimuth in degrees from true north, clockwise. */
    public record ArrayFacts(
            Mounting mounting,
            @Nullable Integer modules,
            @Nullable BigDecimal moduleW,
            @Nullable BigDecimal tiltDeg,
            @Nullable BigDecimal azimuthDeg) {

        public ArrayFacts {
            moduleW = plain(moduleW);
            tiltDeg = plain(tiltDeg);
            azimuthDeg = plain(azimuthDeg);
        }
    }

    /**
     * A date told to the customer in writing for one milestone.
     *
     * @param toleranceDays calendar days by which it may pass without being broken
     * @param promisedBy who said it
     * @param reason why this date, or why it changed; may be empty
     */
    public record Promise(
            UUID id,
            Milestone milestone,
            LocalDate date,
            int toleranceDays,
            String promisedBy,
            String reason,
            Instant at,
            String recordedBy) {

        /** The last day that keeps it. */
        public LocalDate lastDay() {
            return date.plusDays(toleranceDays);
        }
    }

    /** Somebody with a duty; without an account the id is null. */
    public record InCharge(@Nullable UUID personId, String name) {}

    public Optional<InCharge> inCharge(Duty duty) {
        return Optional.ofNullable(people.get(duty));
    }

    public boolean isNew() {
        return stage == null;
    }

    /** Whether work is planned for it: signed at least, not yet commissioned, neither on hold nor called off. */
    public boolean isInThePlan() {
        return standing == Standing.OPEN && stage != null && stage != Stage.COMMISSIONED;
    }

    ProjectFacts withoutMoney() {
        return withContract(contract.withPrice(null));
    }

    ProjectFacts withContract(Contract other) {
        return new ProjectFacts(
                id, branchId, number, name, stage, standing, weight, createdAt, customer, site, other, promise, people);
    }

    /** Without trailing zeros, so that equal figures are equal whatever the column's scale. */
    private static @Nullable BigDecimal plain(@Nullable BigDecimal figure) {
        if (figure == null) {
            return null;
        }
        BigDecimal stripped = figure.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
