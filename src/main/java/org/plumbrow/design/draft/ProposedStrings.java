package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.StringCase;
import org.plumbrow.calc.electrical.StringVoltage;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.check.Cases;
import org.plumbrow.design.part.Cells;

/** Strings that follow from arrays and inverters. Pure. */
final class ProposedStrings {

    private final DesignFacts design;

    ProposedStrings(DesignFacts design) {
        this.design = design;
    }

    /** A place on an inverter's input. */
    private record Slot(PlacedInverter inverter, int input, int number) {
        String mark() {
            return inverter.mark().replaceAll("\\D+", "") + "." + input + "." + number;
        }

        String place() {
            return inverter.mark() + " input " + input;
        }
    }

    /** As few strings as the voltages allow, all of an array alike in length where its modules divide. */
    List<Cells> rows() {
        List<Slot> free = slots();
        Map<String, String> landed = new HashMap<>();
        List<Cells> rows = new ArrayList<>();
        for (PvArray array : design.arrays()) {
            int first = 1;
            for (int length : lengths(array)) {
                Slot slot = take(free, array, length, landed);
                if (slot == null) {
                    return rows;
                }
                rows.add(Cells.of(
                        "mark", slot.mark(),
                        "array", array.mark(),
                        "inverter", slot.inverter().mark(),
                        "input", slot.input(),
                        "modules", length,
                        "firstModule", first,
                        "combiner", ""));
                first += length;
            }
        }
        return rows;
    }

    /** First each input's first string, then its second: so that inputs are loaded alike. */
    private List<Slot> slots() {
        List<Slot> slots = new ArrayList<>();
        int most = design.inverters().stream()
                .mapToInt(inverter -> inverter.type().stringsPerInput())
                .max()
                .orElse(0);
        int inputs = design.inverters().stream()
                .mapToInt(inverter -> inverter.type().inputs())
                .max()
                .orElse(0);
        for (int number = 1; number <= most; number++) {
            for (int input = 1; input <= inputs; input++) {
                for (PlacedInverter inverter : design.inverters()) {
                    if (input <= inverter.type().inputs()
                            && number <= inverter.type().stringsPerInput()) {
                        slots.add(new Slot(inverter, input, number));
                    }
                }
            }
        }
        return slots;
    }

    /**
     * The next free place: at the array's own inverters before others, and where nothing lies yet or strings just like this
     * one. Only when there is no such place any other one, which the checks will find.
     *
     * @param landed what lies on an input already
     */
    private static @Nullable Slot take(List<Slot> free, PvArray array, int length, Map<String, String> landed) {
        String like = array.mark() + " " + length;
        List<Slot> alike = free.stream()
                .filter(slot -> landed.getOrDefault(slot.place(), like).equals(like))
                .toList();
        List<Slot> offered = alike.isEmpty() ? free : alike;
        Slot slot = offered.stream()
                .filter(one -> array.mark().equals(one.inverter().array()))
                .findFirst()
                .or(() -> offered.stream().findFirst())
                .orElse(null);
        if (slot != null) {
            free.remove(slot);
            landed.put(slot.place(), like);
        }
        return slot;
    }

    /** Lengths that add up to the array's modules, within the voltages of the first inverter. */
    private List<Integer> lengths(PvArray array) {
        if (design.inverters().isEmpty() || array.modules() == 0) {
            return List.of();
        }
        int most = Math.max(1, longest(array));
        int strings = (array.modules() + most - 1) / most;
        int shorter = array.modules() / strings;
        int longer = array.modules() - shorter * strings;
        List<Integer> lengths = new ArrayList<>();
        for (int at = 0; at < strings; at++) {
            lengths.add(at < longer ? shorter + 1 : shorter);
        }
        return lengths;
    }

    private int longest(PvArray array) {
        return new StringCase(
                        "",
                        Cases.module(array.module()),
                        Cases.input(design.inverters().get(0).type()),
                        1,
                        1,
                        null,
                        design.designLowC() == null
                                ? StringVoltage.TABLE_ENDS_C
                                : Math.max(StringVoltage.TABLE_ENDS_C, design.designLowC()),
                        design.designHighC() == null ? 40 : design.designHighC(),
                        Cases.place(array),
                        array.mounting() == Mounting.PITCHED_ROOF)
                .mostInSeries();
    }
}
