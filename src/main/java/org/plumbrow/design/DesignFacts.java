package org.plumbrow.design;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.Service;

/**
 * The whole content of a design: what is built, from what, how it is wired and connected. Checks, drawings and quantities
 * are made from this and nothing else. Things point to one another by their marks, the short names that stand on the
 * drawings ("A1" an array, "INV 1" an inverter, "1.2.1" the first string on input 2 of inverter 1, "R3" a run, "D2" a
 * device). What nobody has said yet is null or empty.
 *
 * @param revision letter of the frozen revision; null while it is a draft
 * @param designLowC lowest air temperature expected, for the voltage in the cold
 * @param designHighC the 2 % high air temperature, for the voltage in the heat and for conductors
 */
public record DesignFacts(
        UUID projectId,
        UUID branchId,
        long version,
        @Nullable String revision,
        Sheet sheet,
        CodeEdition codeEdition,
        @Nullable Double designLowC,
        @Nullable Double designHighC,
        @Nullable String temperatureSource,
        ServicePoint service,
        List<PvArray> arrays,
        List<PlacedInverter> inverters,
        List<PvString> strings,
        List<Combiner> combiners,
        List<Run> runs,
        List<Device> devices,
        Connection connection,
        @Nullable Generator generator,
        @Nullable Racking racking,
        List<Label> labels,
        List<Placed> places) {

    public DesignFacts {
        arrays = List.copyOf(arrays);
        inverters = List.copyOf(inverters);
        strings = List.copyOf(strings);
        combiners = List.copyOf(combiners);
        runs = List.copyOf(runs);
        devices = List.copyOf(devices);
        labels = List.copyOf(labels);
        // revisions that were frozen before places could be written have none
        places = List.copyOf(Objects.requireNonNullElse(places, List.<Placed>of()));
    }

    /** What the title block says. */
    public record Sheet(
            String projectNumber,
            String projectName,
            String address,
            String utility,
            @Nullable String drawnBy,
            @Nullable String checkedBy,
            LocalDate date) {}

    /**
     * The customer's service as surveyed.
     *
     * @param highestV the highest line-to-line voltage that was read there
     * @param mainA rating of the main device
     * @param busA rating of the busbar
     * @param interruptingKa what the gear can interrupt
     * @param faultKa what can flow there in a short circuit, by the utility
     * @param conductorA ampacity of the service conductors, for a tap ahead of the main
     * @param disconnectMostFt how far from its meter the utility lets its disconnect stand; null: the usual
     */
    public record ServicePoint(
            @Nullable Service type,
            @Nullable Double highestV,
            @Nullable String meterNumber,
            @Nullable Double mainA,
            @Nullable Double busA,
            @Nullable Double interruptingKa,
            @Nullable Double faultKa,
            @Nullable Double conductorA,
            @Nullable Double transformerKva,
            @Nullable String transformerNumber,
            @Nullable Integer disconnectMostFt) {

        public int disconnectAtMostFt() {
            return disconnectMostFt == null ? UtilityFacts.USUAL_DISCONNECT_FT : disconnectMostFt;
        }
    }

    /**
     * One array: all its modules lie in one plane.
     *
     * @param onDwelling on a one- or two-family house: at most 600 V
     * @param tables rows of tables on the ground, or rows on the roof, from south (or eave) to north
     * @param modulesHigh modules one above the other in a row
     * @param portrait whether the long side runs up the slope
     * @param modulesWide modules beside one another in each row, row by row
     * @param rowPitchFt from the front edge of a row to the front edge of the next; null with one row or flush on a roof
     * @param setbackFt free strip around it (boundary, fire path)
     */
    public record PvArray(
            String mark,
            String name,
            Mounting mounting,
            boolean onDwelling,
            double tiltDeg,
            double azimuthDeg,
            ModuleType module,
            boolean portrait,
            int modulesHigh,
            List<Integer> modulesWide,
            @Nullable Double rowPitchFt,
            @Nullable Double setbackFt,
            @Nullable Double planeLengthFt,
            @Nullable Double planeWidthFt,
            List<Obstruction> obstructions) {

        public PvArray {
            modulesWide = List.copyOf(modulesWide);
            obstructions = List.copyOf(obstructions);
        }

        public int rows() {
            return modulesWide.size();
        }

        public int modules() {
            return modulesHigh
                    * modulesWide.stream().mapToInt(Integer::intValue).sum();
        }

        public double kwDc() {
            return modules() * module.powerW() / 1000;
        }
    }

    /** Something that stands in or beside an array; from its lower left corner, along the row and up the slope. */
    public record Obstruction(
            String name, double rightFt, double upFt, double widthFt, double lengthFt, double heightFt) {}

    /** One inverter in its place. @param array mark of the array beside which it stands; null at the service */
    public record PlacedInverter(
            String mark, InverterType type, @Nullable String array, String place) {}

    /**
     * Modules in series on one input of an inverter.
     *
     * @param input counted from 1
     * @param firstModule number of its first module in the array, counted from 1 row by row; the others follow
     * @param combiner mark of the combiner in which it ends; null when it runs to the inverter by itself
     */
    public record PvString(
            String mark,
            String array,
            String inverter,
            int input,
            int modules,
            int firstModule,
            @Nullable String combiner) {}

    /** Where strings come together. @param fuseA of each string; null without fuses */
    public record Combiner(
            String mark,
            String place,
            int circuits,
            @Nullable Double fuseA,
            double ratedV,
            double ratedA) {}

    /** What flows in a run. */
    public enum Flow {
        DC_STRING("direct current of one string"),
        DC_COMBINED("direct current of several strings"),
        AC("alternating current");

        private final String words;

        Flow(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * Conductors between two places.
     *
     * @param from mark of what it comes from (string, combiner, inverter, device)
     * @param to mark of where it goes, "POI" for the point of interconnection
     * @param size of each current-carrying conductor, "10", "2/0", "250"
     * @param conductors current-carrying ones in this run, of one set
     * @param groundSize of the equipment ground
     * @param ambientC of the hottest part of the way; null: the design's high
     * @param coverIn of earth over it where it is buried; null above ground
     * @param under what it lies under where buried: field, driveway, building
     * @param terminalC 60, 75 or 90: marking of the terminals
     * @param parallel sets side by side, each in its own raceway; null for one
     */
    public record Run(
            String mark,
            Flow flow,
            String from,
            String to,
            double lengthFt,
            String size,
            ConductorMaterial material,
            Insulation insulation,
            int conductors,
            @Nullable String groundSize,
            @Nullable ConductorMaterial groundMaterial,
            Raceway raceway,
            @Nullable String racewaySize,
            @Nullable Double ambientC,
            @Nullable Double coverIn,
            @Nullable String under,
            int terminalC,
            List<String> crossings,
            @Nullable Integer parallel) {

        public Run {
            crossings = List.copyOf(crossings);
        }

        public int sets() {
            return parallel == null ? 1 : parallel;
        }

        /** The same way with other conductors. */
        public Run laidAs(
                String otherSize,
                @Nullable Integer sets,
                @Nullable String otherGround,
                @Nullable String otherRacewaySize) {
            return new Run(
                    mark,
                    flow,
                    from,
                    to,
                    lengthFt,
                    otherSize,
                    material,
                    insulation,
                    conductors,
                    otherGround,
                    groundMaterial,
                    raceway,
                    otherRacewaySize,
                    ambientC,
                    coverIn,
                    under,
                    terminalC,
                    crossings,
                    sets);
        }
    }

    /** What a device is. */
    public enum DeviceKind {
        BREAKER("breaker"),
        FUSED_DISCONNECT("fused disconnect"),
        UNFUSED_DISCONNECT("disconnect without fuses"),
        PANEL("panel"),
        METER("meter");

        private final String words;

        DeviceKind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A device on the way from the inverters to the service.
     *
     * @param inRun mark of the run that it stands at the end of and protects
     * @param interruptingKa null when not stated
     * @param whoMayOpen "anybody", "the utility", "qualified people"
     * @param utilityDisconnect the one that the utility asks for: visible break, lockable, outside
     * @param toMeterFt its distance to the meter
     * @param utilityLetter whether the utility has agreed to a longer distance in writing
     */
    public record Device(
            String mark,
            DeviceKind kind,
            String name,
            @Nullable String inRun,
            double ratedA,
            double ratedV,
            @Nullable Double interruptingKa,
            String place,
            String whoMayOpen,
            boolean utilityDisconnect,
            @Nullable Double toMeterFt,
            boolean utilityLetter) {}

    /** How the array meets the service. */
    public enum ConnectionKind {
        /** At the end of the busbar away from the main. */
        BREAKER_AT_FAR_END("breaker at the far end of the bus"),
        BREAKER_ANYWHERE("breaker anywhere on the bus"),
        BY_SUM_OF_DEVICES("breaker on the bus, by the sum of all devices"),
        CENTER_FED_PANEL("breaker at one end of a center-fed panel"),
        /** The utility's outage is the cutover. */
        SUPPLY_SIDE_TAP("tap ahead of the main");

        private final String words;

        ConnectionKind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * The point of interconnection.
     *
     * @param breakerA of the array in the panel; null for a tap
     * @param otherDevicesA sum of all other load and supply breakers on the bus, for the sum rule; null unknown
     * @param otherSourcesA continuous output of sources already there
     * @param newMainA where the main is made smaller
     * @param dwelling a house
     */
    public record Connection(
            ConnectionKind kind,
            @Nullable Double breakerA,
            @Nullable Double otherDevicesA,
            double otherSourcesA,
            @Nullable Double newMainA,
            boolean dwelling,
            String place) {}

    /**
     * The customer's generator and its switch.
     *
     * @param arrayOnUtilitySide whether the array meets the service on the utility's side of the switch, so that the two
     *     never feed the same wires
     * @param interlock how they are kept apart, in words; empty when not said
     */
    public record Generator(
            @Nullable Double kva, String switchKind, String place, boolean arrayOnUtilitySide, String interlock) {}

    /**
     * What the maker's table or the engineer's letter says of the racking; inputs are never designed here.
     *
     * @param frostIn depth that the letter assumes
     * @param letterBy engineer, with licence
     */
    public record Racking(
            @Nullable Integer posts,
            @Nullable Double postLengthFt,
            @Nullable Double embedmentIn,
            @Nullable Double exposedIn,
            @Nullable Double postSpacingFt,
            @Nullable Double frontClearanceIn,
            @Nullable Double windMph,
            @Nullable Double snowPsf,
            @Nullable Double frostIn,
            @Nullable Double siteWindMph,
            @Nullable Double siteSnowPsf,
            @Nullable Double siteFrostIn,
            @Nullable String letterBy,
            @Nullable LocalDate letterDate,
            @Nullable UUID letterEvidence) {}

    /** A label or plaque, and where it goes. */
    public record Label(String place, String text, String clause) {}

    /** The same with other runs: for a try. */
    public DesignFacts with(List<Run> others) {
        return copy(revision, sheet, others);
    }

    /** The same under the letter of a revision, with who checked it. */
    public DesignFacts frozenAs(String letter, Sheet frozen) {
        return copy(letter, frozen, runs);
    }

    /** Field by field, here only. */
    private DesignFacts copy(@Nullable String letter, Sheet other, List<Run> others) {
        return new DesignFacts(
                projectId,
                branchId,
                version,
                letter,
                other,
                codeEdition,
                designLowC,
                designHighC,
                temperatureSource,
                service,
                arrays,
                inverters,
                strings,
                combiners,
                others,
                devices,
                connection,
                generator,
                racking,
                labels,
                places);
    }

    public boolean isDraft() {
        return revision == null;
    }

    public int modules() {
        return arrays.stream().mapToInt(PvArray::modules).sum();
    }

    public double kwDc() {
        return arrays.stream().mapToDouble(PvArray::kwDc).sum();
    }

    public double kwAc() {
        return inverters.stream()
                .mapToDouble(inverter -> inverter.type().powerKwAc())
                .sum();
    }

    public Optional<PvArray> array(String mark) {
        return arrays.stream().filter(array -> array.mark().equals(mark)).findFirst();
    }

    public Optional<PlacedInverter> inverter(String mark) {
        return inverters.stream()
                .filter(inverter -> inverter.mark().equals(mark))
                .findFirst();
    }

    public Optional<Run> run(String mark) {
        return runs.stream().filter(run -> run.mark().equals(mark)).findFirst();
    }

    public List<PvString> stringsOf(String inverter) {
        return strings.stream()
                .filter(string -> string.inverter().equals(inverter))
                .toList();
    }
}
