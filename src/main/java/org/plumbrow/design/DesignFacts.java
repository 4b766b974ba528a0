package org.plumbrow.design;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;

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
        TitleBlock sheet,
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

    /** The same with other runs: for a try. */
    public DesignFacts with(List<Run> others) {
        return copy(revision, sheet, others);
    }

    /** The same under the letter of a revision, with who checked it. */
    public DesignFacts frozenAs(String letter, TitleBlock frozen) {
        return copy(letter, frozen, runs);
    }

    /** Field by field, here only. */
    private DesignFacts copy(@Nullable String letter, TitleBlock other, List<Run> others) {
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
