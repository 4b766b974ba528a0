package org.plumbrow.design.drawing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.ConductorMaterial;
import org.plumbrow.calc.electrical.Insulation;
import org.plumbrow.calc.electrical.Raceway;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.design.Combiner;
import org.plumbrow.design.Connection;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Flow;
import org.plumbrow.design.Generator;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.Label;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.Obstruction;
import org.plumbrow.design.PlaceKind;
import org.plumbrow.design.Placed;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Racking;
import org.plumbrow.design.Run;
import org.plumbrow.design.ServicePoint;
import org.plumbrow.design.Spot;
import org.plumbrow.design.TitleBlock;

/** Designs that nobody built: a home, a field, a flat roof, a large field, and any number at random. */
final class MadeUpDesigns {

    static final ModuleType MODULE = new ModuleType(
            "Generic 550 W, 144 half cells",
            550,
            49.9,
            41.96,
            13.99,
            13.11,
            -0.265,
            -0.34,
            -0.34,
            0.05,
            144,
            25,
            1500,
            45,
            2278,
            1134);
    static final ModuleType SMALL_MODULE = new ModuleType(
            "Generic 410 W", 410, 37.1, 31.2, 13.9, 13.1, -0.27, null, -0.35, 0.05, 108, 25, 1000, 45, 1722, 1134);

    private MadeUpDesigns() {}

    static InverterType inverter(double kw, int phases, double volts, int inputs, int perInput) {
        double amperes = kw * 1000 / (phases == 3 ? Math.sqrt(3) * volts : volts);
        return new InverterType(
                "Generic " + kw + " kW",
                kw,
                phases,
                volts,
                Math.round(amperes * 10) / 10.0,
                phases == 3 ? 1000 : 600,
                200,
                850,
                300,
                800,
                inputs,
                perInput,
                30,
                50,
                97.5,
                true,
                true);
    }

    static DesignFacts home() {
        var array = new PvArray(
                "A1",
                "South roof",
                Mounting.PITCHED_ROOF,
                true,
                30,
                172,
                SMALL_MODULE,
                true,
                2,
                List.of(9),
                null,
                1.5,
                42.0,
                18.0,
                List.of(new Obstruction("Vent", 40, 3, 1, 1, 1.5)));
        var inverter = new PlacedInverter("INV 1", inverter(7.6, 1, 240, 2, 1), "A1", "garage wall, outside");
        var strings = List.of(
                new PvString("1.1.1", "A1", "INV 1", 1, 9, 1, null),
                new PvString("1.2.1", "A1", "INV 1", 2, 9, 10, null));
        var runs = List.of(
                dcRun("R1", "1.1.1", "INV 1", 45),
                dcRun("R2", "1.2.1", "INV 1", 52),
                new Run(
                        "R3",
                        Flow.AC,
                        "INV 1",
                        "D1",
                        12,
                        "8",
                        ConductorMaterial.COPPER,
                        Insulation.THWN_2,
                        3,
                        "10",
                        ConductorMaterial.COPPER,
                        Raceway.EMT,
                        "3/4",
                        null,
                        null,
                        null,
                        75,
                        List.of(),
                        null),
                new Run(
                        "R4",
                        Flow.AC,
                        "D1",
                        "POI",
                        22,
                        "8",
                        ConductorMaterial.COPPER,
                        Insulation.THWN_2,
                        3,
                        "10",
                        ConductorMaterial.COPPER,
                        Raceway.EMT,
                        "3/4",
                        null,
                        null,
                        null,
                        75,
                        List.of(),
                        null));
        var devices = List.of(
                new Device(
                        "D1",
                        DeviceKind.UNFUSED_DISCONNECT,
                        "AC disconnect",
                        null,
                        60,
                        240,
                        null,
                        "beside the meter",
                        "anybody",
                        true,
                        6.0,
                        false),
                new Device(
                        "B1",
                        DeviceKind.BREAKER,
                        "Array breaker",
                        "R4",
                        40,
                        240,
                        10.0,
                        "house panel, far end",
                        "qualified people",
                        false,
                        null,
                        false));
        return new DesignFacts(
                UUID.randomUUID(),
                UUID.randomUUID(),
                1,
                null,
                sheet("QV-2027-031", "Alder Lane home", "14 Alder Lane, Quillback"),
                CodeEdition.NEC_2023,
                -20.0,
                33.0,
                "station 12 miles away, mean annual extreme minimum",
                new ServicePoint(
                        Service.SINGLE_PHASE_120_240,
                        246.0,
                        "M-44821",
                        200.0,
                        225.0,
                        22.0,
                        10.0,
                        200.0,
                        25.0,
                        "T-0917",
                        null),
                List.of(array),
                List.of(inverter),
                strings,
                List.of(),
                runs,
                devices,
                new Connection(
                        ConnectionKind.BREAKER_AT_FAR_END, 40.0, null, 0, null, true, "house panel in the basement"),
                null,
                null,
                labels(),
                List.of());
    }

    /** 180 modules, three inverters, ten strings of 18, a transfer switch. */
    static DesignFacts field() {
        return ground(3, new int[] {4, 3, 3}, 18, List.of(30, 30, 30), "B");
    }

    /** 240 modules on a flat roof, combiners with fuses. */
    static DesignFacts flatRoof() {
        var array = new PvArray(
                "A1",
                "Gymnasium roof",
                Mounting.FLAT_ROOF,
                false,
                10,
                195,
                MODULE,
                false,
                1,
                List.of(20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20, 20),
                5.2,
                6.0,
                190.0,
                90.0,
                List.of(
                        new Obstruction("Air handler", 154, 10, 10, 8, 5),
                        new Obstruction("Skylight", 154, 34, 4, 4, 1)));
        List<PlacedInverter> inverters = new ArrayList<>();
        List<PvString> strings = new ArrayList<>();
        List<Combiner> combiners = new ArrayList<>();
        List<Run> runs = new ArrayList<>();
        List<Device> devices = new ArrayList<>();
        int module = 1;
        for (int i = 1; i <= 3; i++) {
            inverters.add(
                    new PlacedInverter("INV " + i, inverter(33.3, 3, 480, 3, 2), null, "electrical room, south wall"));
            combiners.add(new Combiner("C" + i, "roof, beside row 1", 5, 20.0, 1000, 100));
            for (int s = 1; s <= 5; s++) {
                String mark = i + ".1." + s;
                strings.add(new PvString(mark, "A1", "INV " + i, 1, 16, module, "C" + i));
                runs.add(dcRun("R" + (runs.size() + 1), mark, "C" + i, 40 + 10 * s));
                module += 16;
            }
            runs.add(new Run(
                    "R" + (runs.size() + 1),
                    Flow.DC_COMBINED,
                    "C" + i,
                    "INV " + i,
                    120,
                    "2",
                    ConductorMaterial.COPPER,
                    Insulation.THWN_2,
                    2,
                    "6",
                    ConductorMaterial.COPPER,
                    Raceway.RMC,
                    "1 1/4",
                    50.0,
                    null,
                    null,
                    75,
                    List.of(),
                    null));
            runs.add(new Run(
                    "R" + (runs.size() + 1),
                    Flow.AC,
                    "INV " + i,
                    "P1",
                    10,
                    "6",
                    ConductorMaterial.COPPER,
                    Insulation.THWN_2,
                    3,
                    "10",
                    ConductorMaterial.COPPER,
                    Raceway.EMT,
                    "1",
                    null,
                    null,
                    null,
                    75,
                    List.of(),
                    null));
            devices.add(new Device(
                    "B" + i,
                    DeviceKind.BREAKER,
                    "Inverter breaker",
                    runs.get(runs.size() - 1).mark(),
                    60,
                    480,
                    14.0,
                    "panel P1",
                    "qualified people",
                    false,
                    null,
                    false));
        }
        addService(runs, devices, 150, 480, "P1");
        return new DesignFacts(
                UUID.randomUUID(),
                UUID.randomUUID(),
                4,
                "C",
                sheet("QV-2027-009", "Harrow school, gymnasium", "200 School Road, Quillback"),
                CodeEdition.NEC_2020,
                -18.0,
                34.0,
                "station 8 miles away",
                new ServicePoint(
                        Service.WYE_480_277, 489.0, "M-77120", 800.0, 800.0, 42.0, 30.0, 800.0, 500.0, null, null),
                List.of(array),
                inverters,
                strings,
                combiners,
                runs,
                devices,
                new Connection(
                        ConnectionKind.SUPPLY_SIDE_TAP,
                        null,
                        null,
                        0,
                        null,
                        false,
                        "main switchboard, ahead of the main"),
                null,
                null,
                labels(),
                List.of());
    }

    /** Eight inverters, sixty strings. */
    static DesignFacts large() {
        return ground(8, new int[] {8, 8, 8, 8, 7, 7, 7, 7}, 18, List.of(60, 60, 60, 60, 60, 60, 60, 60, 60), "AA");
    }

    /** Twenty-five inverters of eight strings each. */
    static DesignFacts twoHundredStrings() {
        int[] eight = new int[25];
        java.util.Arrays.fill(eight, 8);
        return ground(25, eight, 18, java.util.Collections.nCopies(18, 100), "D");
    }

    /** The home under another name. */
    static DesignFacts named(String name) {
        return home().frozenAs("A", sheet("QV-2027-031", name, name));
    }

    static DesignFacts ground(int count, int[] stringsEach, int series, List<Integer> wide, String revision) {
        var array = new PvArray(
                "A1",
                "Field south of the barn",
                Mounting.GROUND,
                false,
                30,
                180,
                MODULE,
                true,
                2,
                wide,
                24.5,
                10.0,
                null,
                null,
                List.of(new Obstruction("Well head", 60, -14, 3, 3, 3)));
        List<PlacedInverter> inverters = new ArrayList<>();
        List<PvString> strings = new ArrayList<>();
        List<Run> runs = new ArrayList<>();
        List<Device> devices = new ArrayList<>();
        int module = 1;
        for (int i = 1; i <= count; i++) {
            inverters.add(new PlacedInverter("INV " + i, inverter(30, 3, 480, 4, 2), "A1", "rack at row 1, west end"));
            for (int s = 0; s < stringsEach[i - 1]; s++) {
                String mark = i + "." + (s / 2 + 1) + "." + (s % 2 + 1);
                strings.add(new PvString(mark, "A1", "INV " + i, s / 2 + 1, series, module, null));
                runs.add(dcRun("R" + (runs.size() + 1), mark, "INV " + i, 60 + 12 * s));
                module += series;
            }
            runs.add(new Run(
                    "R" + (runs.size() + 1),
                    Flow.AC,
                    "INV " + i,
                    "P1",
                    15 + i,
                    "6",
                    ConductorMaterial.COPPER,
                    Insulation.THWN_2,
                    3,
                    "10",
                    ConductorMaterial.COPPER,
                    Raceway.PVC_80,
                    "1",
                    null,
                    null,
                    null,
                    75,
                    List.of(),
                    null));
            devices.add(new Device(
                    "B" + i,
                    DeviceKind.BREAKER,
                    "Inverter breaker",
                    runs.get(runs.size() - 1).mark(),
                    50,
                    480,
                    14.0,
                    "panel P1",
                    "qualified people",
                    false,
                    null,
                    false));
        }
        addService(runs, devices, 60 * count, 480, "P1");
        return new DesignFacts(
                UUID.randomUUID(),
                UUID.randomUUID(),
                3,
                revision,
                sheet("QV-2027-014", "Sedge dairy, north & south <barns>", "880 Sedge Road, Quillback"),
                CodeEdition.NEC_2020,
                -22.0,
                32.0,
                "station 21 miles away",
                new ServicePoint(
                        Service.WYE_480_277, 486.0, "M-20188", 400.0, 600.0, 35.0, 18.5, 600.0, 300.0, "T-5512", null),
                List.of(array),
                inverters,
                strings,
                List.of(),
                runs,
                devices,
                new Connection(ConnectionKind.SUPPLY_SIDE_TAP, null, null, 0, null, false, "tap box beside the meter"),
                new Generator(
                        150.0,
                        "break-before-make, by hand",
                        "parlor wall",
                        true,
                        "Array has no path to the generator."),
                new Racking(
                        wide.size() * 16,
                        12.0,
                        84.0,
                        60.0,
                        8.5,
                        30.0,
                        115.0,
                        40.0,
                        48.0,
                        115.0,
                        35.0,
                        42.0,
                        "P. Marrow, PE 00000",
                        LocalDate.of(2027, 3, 1),
                        null),
                labels(),
                count == 3 ? places() : List.of());
    }

    private static void addService(List<Run> runs, List<Device> devices, double amperes, double volts, String panel) {
        devices.add(new Device(
                panel,
                DeviceKind.PANEL,
                "Array panel",
                null,
                2 * amperes,
                volts,
                35.0,
                "rack at row 1",
                "qualified people",
                false,
                null,
                false));
        runs.add(new Run(
                "R" + (runs.size() + 1),
                Flow.AC,
                panel,
                "D1",
                310,
                "250",
                ConductorMaterial.ALUMINUM,
                Insulation.XHHW_2,
                3,
                "2",
                ConductorMaterial.ALUMINUM,
                Raceway.PVC_40,
                "3",
                null,
                36.0,
                "field",
                75,
                List.of("water line to the barn", "private drive"),
                null));
        devices.add(new Device(
                "D1",
                DeviceKind.FUSED_DISCONNECT,
                "Array disconnect",
                runs.get(runs.size() - 1).mark(),
                amperes,
                volts,
                100.0,
                "outside, on the meter wall",
                "anybody",
                true,
                8.0,
                false));
        runs.add(new Run(
                "R" + (runs.size() + 1),
                Flow.AC,
                "D1",
                "POI",
                9,
                "4/0",
                ConductorMaterial.COPPER,
                Insulation.THWN_2,
                3,
                "2",
                ConductorMaterial.COPPER,
                Raceway.RMC,
                "2 1/2",
                null,
                null,
                null,
                75,
                List.of(),
                null));
    }

    private static Run dcRun(String mark, String from, String to, double feet) {
        return new Run(
                mark,
                Flow.DC_STRING,
                from,
                to,
                feet,
                "10",
                ConductorMaterial.COPPER,
                Insulation.PV_WIRE,
                2,
                "10",
                ConductorMaterial.COPPER,
                Raceway.FREE_AIR,
                null,
                50.0,
                null,
                null,
                90,
                List.of(),
                null);
    }

    private static TitleBlock sheet(String number, String name, String address) {
        return new TitleBlock(
                number, name, address, "Tallgrass Electric", "Dov Marrin", "Ines Aldana", LocalDate.of(2027, 3, 12));
    }

    private static List<Placed> places() {
        return List.of(
                place(PlaceKind.THING, "A1", "", -150, -260),
                place(PlaceKind.THING, "INV 1", "", -32, -196),
                place(PlaceKind.THING, "D1", "", 2, -8),
                place(PlaceKind.ROUTE, "R14", "", -32, -196, -32, -60, 2, -8),
                place(PlaceKind.BOUNDARY, "", "north boundary", -200, 60, 120, 60),
                place(PlaceKind.FENCE, "", "pasture fence", -200, -280, -10, -280, -10, -120),
                place(PlaceKind.BUILDING, "", "parlor", 10, 10, 70, 10, 70, 40, 10, 40),
                place(PlaceKind.BURIED_LINE, "", "water line", -80, 0, -10, -100),
                place(PlaceKind.LANE, "", "farm lane", -200, 20, 0, 20));
    }

    private static Placed place(PlaceKind kind, String mark, String name, double... points) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < points.length; i += 2) {
            spots.add(new Spot(points[i], points[i + 1]));
        }
        return new Placed(kind, mark, name, spots);
    }

    private static List<Label> labels() {
        return List.of(
                new Label("AC disconnect", "PHOTOVOLTAIC AC DISCONNECT, rated current and voltage", "NEC 690.13(B)"),
                new Label("Service", "Directory of sources with a picture of the disconnects' places", "NEC 705.10"));
    }

    /** Anything a designer may enter, by chance but always the same for a seed. */
    static DesignFacts random(long seed) {
        Random chance = new Random(seed);
        int count = 1 + chance.nextInt(9);
        int[] each = chance.ints(count, 1, 9).toArray();
        int series = 6 + chance.nextInt(14);
        int rows = 1 + chance.nextInt(10);
        int all = java.util.Arrays.stream(each).sum() * series;
        List<Integer> wide = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            wide.add(Math.max(1, (all + 2 * rows - 1) / (2 * rows)));
        }
        return ground(count, each, series, wide, chance.nextBoolean() ? "A" : "Z");
    }
}
