package org.plumbrow.design.equipment;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.StringCurrent;
import org.plumbrow.design.InverterType;
import org.plumbrow.design.ModuleType;
import org.plumbrow.design.part.Cells;

/**
 * One entry of the catalogue.
 *
 * @param id null for a generic one that the program brings
 * @param ended no longer offered; designs that name it keep it
 */
public record Entry(@Nullable UUID id, EquipmentKind kind, Cells cells, long version, boolean ended) {

    public String name() {
        return cells.text("name");
    }

    public boolean isOwn() {
        return id != null;
    }

    /** @throws IllegalStateException for an inverter */
    public ModuleType module() {
        require(EquipmentKind.MODULE);
        return new ModuleType(
                name(),
                figure("powerW"),
                figure("vocV"),
                figure("vmpV"),
                figure("iscA"),
                figure("impA"),
                cells.number("vocPercent"),
                cells.number("vmpPercent"),
                figure("pmaxPercent"),
                figure("iscPercent"),
                cells.whole("cellsInSeries", 0),
                figure("maxSeriesFuseA"),
                figure("maxSystemV"),
                figure("noctC"),
                cells.whole("longSideMm", 0),
                cells.whole("shortSideMm", 0));
    }

    /** @throws IllegalStateException for a module */
    public InverterType inverter() {
        require(EquipmentKind.INVERTER);
        int phases = cells.whole("phases", 1);
        return new InverterType(
                name(),
                figure("powerKwAc"),
                phases,
                figure("acV"),
                StringCurrent.inverterA(figure("powerKwAc"), figure("acV"), phases),
                figure("maxDcV"),
                figure("mpptFromV"),
                figure("mpptToV"),
                figure("fullFromV"),
                figure("fullToV"),
                cells.whole("inputs", 1),
                cells.whole("stringsPerInput", 1),
                figure("inputMaxA"),
                figure("inputShortCircuitA"),
                figure("efficiencyPercent"),
                cells.yes("rapidShutdown"),
                cells.yes("arcFault"));
    }

    private void require(EquipmentKind wanted) {
        if (kind != wanted) {
            throw new IllegalStateException(name() + " is no " + wanted);
        }
    }

    private double figure(String name) {
        return cells.number(name, 0);
    }
}
