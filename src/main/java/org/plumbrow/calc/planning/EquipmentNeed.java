package org.plumbrow.calc.planning;

/** So many pieces of one shared kind of equipment, held from start to finish. */
public record EquipmentNeed(String equipmentId, int count) {

    public EquipmentNeed {
        if (count < 1) {
            throw new IllegalArgumentException("count of " + equipmentId + " must be at least 1: " + count);
        }
    }
}
