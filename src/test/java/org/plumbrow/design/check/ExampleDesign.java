package org.plumbrow.design.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
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
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Racking;
import org.plumbrow.design.Run;
import org.plumbrow.design.ServicePoint;
import org.plumbrow.design.TitleBlock;

/**
 * The equipment and site of the published worked examples as a whole design: 180 modules of 550 W in ten strings of 18 on
 * two inverters of 40 kW at 480 V, a feeder of 350 ft 2/0 aluminum, a tap ahead of the main. Every check passes or passes
 * with a remark; each test spoils one thing.
 */
final class ExampleDesign {

    static final ModuleType MODULE = module(-0.25);

    CodeEdition edition = CodeEdition.NEC_2020;

    @Nullable
    Double lowC = -29.0;

    ServicePoint service =
            new ServicePoint(Service.WYE_480_277, 490.0, "M 1", 800.0, 800.0, 42.0, 18.0, 800.0, 150.0, "T 1", null);
    List<PvArray> arrays = new ArrayList<>(List.of(array(Mounting.GROUND, MODULE)));
    List<PlacedInverter> inverters = new ArrayList<>();
    List<PvString> strings = new ArrayList<>();
    List<Combiner> combiners = new ArrayList<>();
    List<Run> runs = new ArrayList<>();
    List<Device> devices = new ArrayList<>();
    Connection connection = new Connection(ConnectionKind.SUPPLY_SIDE_TAP, null, null, 0, null, false, "meter wall");

    @Nullable
    Generator generator;

    @Nullable
    Racking racking = racking(115, 115, 84);

    List<Label> labels = List.of();

    ExampleDesign() {
        int module = 1;
        for (int number = 1; number <= 2; number++) {
            inverters.add(new PlacedInverter("INV " + number, inverter(true), "A1", "row 1"));
            for (int string = 1; string <= 5; string++) {
                String mark = number + "." + string + ".1";
                strings.add(new PvString(mark, "A1", "INV " + number, string, 18, module, null));
                module += 18;
            }
            runs.add(acRun("R" + number, "INV " + number, "P1", 20, "6", ConductorMaterial.COPPER, "8"));
            devices.add(device("B" + number, DeviceKind.BREAKER, "R" + number, 70, 480, 35.0));
        }
        runs.add(dcRun("R3", "1.1.1", "INV 1", 220, "10"));
        runs.add(acRun("R4", "P1", "D1", 300, "4/0", ConductorMaterial.ALUMINUM, "2"));
        runs.add(acRun("R5", "D1", "POI", 9, "1", ConductorMaterial.COPPER, "6"));
        devices.add(device("P1", DeviceKind.PANEL, null, 200, 480, null));
        devices.add(new Device(
                "D1",
                DeviceKind.FUSED_DISCONNECT,
                "AC disconnect",
                "R4",
                125,
                480,
                100.0,
                "outside",
                "anybody",
                true,
                8.0,
                false));
    }

    static ModuleType module(@Nullable Double vocPercent) {
        return new ModuleType(
                "550 W", 550, 49.9, 41.96, 13.95, 13.11, vocPercent, -0.30, -0.34, 0.045, 72, 25, 1500, 45, 2278, 1134);
    }

    static InverterType inverter(boolean forRoofs) {
        return new InverterType(
                "40 kW", 40, 3, 480, 48.11, 1100, 200, 1000, 500, 850, 5, 2, 40, 50, 97.5, forRoofs, forRoofs);
    }

    static PvArray array(Mounting mounting, ModuleType module) {
        return new PvArray(
                "A1",
                "south",
                mounting,
                false,
                30,
                180,
                module,
                true,
                2,
                List.of(45, 45),
                24.0,
                10.0,
                null,
                null,
                List.of());
    }

    static Run acRun(
            String mark, String from, String to, double feet, String size, ConductorMaterial material, String ground) {
        return new Run(
                mark,
                Flow.AC,
                from,
                to,
                feet,
                size,
                material,
                Insulation.XHHW_2,
                3,
                ground,
                material,
                Raceway.PVC_40,
                "3",
                30.0,
                null,
                null,
                75,
                List.of(),
                null);
    }

    static Run dcRun(String mark, String from, String to, double feet, String size) {
        return new Run(
                mark,
                Flow.DC_STRING,
                from,
                to,
                feet,
                size,
                ConductorMaterial.COPPER,
                Insulation.PV_WIRE,
                2,
                "10",
                ConductorMaterial.COPPER,
                Raceway.FREE_AIR,
                null,
                34.0,
                null,
                null,
                90,
                List.of(),
                null);
    }

    static Device device(
            String mark,
            DeviceKind kind,
            @Nullable String inRun,
            double amperes,
            double volts,
            @Nullable Double interruptingKa) {
        return new Device(
                mark,
                kind,
                kind.words(),
                inRun,
                amperes,
                volts,
                interruptingKa,
                "row 1",
                "qualified people",
                false,
                null,
                false);
    }

    static Racking racking(double siteWindMph, double windMph, double embedmentIn) {
        return new Racking(
                60,
                12.0,
                embedmentIn,
                60.0,
                8.5,
                30.0,
                windMph,
                40.0,
                60.0,
                siteWindMph,
                35.0,
                54.0,
                "an engineer, PE",
                LocalDate.of(2027, 3, 1),
                null);
    }

    /** One of the runs made otherwise. */
    ExampleDesign run(String mark, UnaryOperator<Run> other) {
        runs.replaceAll(run -> run.mark().equals(mark) ? other.apply(run) : run);
        return this;
    }

    DesignFacts facts() {
        return new DesignFacts(
                new UUID(0, 1),
                new UUID(0, 2),
                1,
                null,
                new TitleBlock("QV-1", "Field", "1 Road", "Electric", null, null, LocalDate.of(2027, 3, 1)),
                edition,
                lowC,
                34.0,
                "station",
                service,
                arrays,
                inverters,
                strings,
                combiners,
                runs,
                devices,
                connection,
                generator,
                racking,
                labels,
                List.of());
    }
}
