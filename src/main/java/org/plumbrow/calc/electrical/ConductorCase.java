package org.plumbrow.calc.electrical;

import org.jspecify.annotations.Nullable;

/**
 * One run of conductors where it lies.
 *
 * @param name as people call it, "R3, INV 1 to D1"
 * @param phases 0 for direct current, 1 or 3
 * @param maximumA the current it has to carry, without the quarter for continuous use
 * @param operatingA the current that counts for the drop
 * @param volts that it begins with: of the string at Vmp, or line to line
 * @param deviceA of the overcurrent device that protects it; null when the source itself limits the current
 * @param conductors that carry current in the raceway, of one set
 * @param ground null where none was said
 * @param raceway what it lies in
 * @param racewaySize null where none was said
 * @param nipple at most 24 in long
 * @param coverIn null above ground
 * @param sets of conductors side by side, each in a raceway of its own, that share the current
 */
public record ConductorCase(
        String name,
        int phases,
        double maximumA,
        double operatingA,
        double volts,
        double lengthFt,
        @Nullable Double deviceA,
        ConductorSize size,
        ConductorMaterial material,
        Insulation insulation,
        TemperatureRating terminals,
        double ambientC,
        int conductors,
        @Nullable ConductorSize ground,
        ConductorMaterial groundMaterial,
        Raceway raceway,
        @Nullable String racewaySize,
        boolean nipple,
        @Nullable Double coverIn,
        BurialCover location,
        int sets) {

    public ConductorCase {
        if (sets < 1) {
            throw new IllegalArgumentException(sets + " sets of conductors");
        }
    }

    /** What the terminals count for. */
    public double designA() {
        return Overcurrent.CONTINUOUS * maximumA;
    }

    public boolean isDc() {
        return phases == 0;
    }

    /** At its operating current, power factor 1. @throws IllegalArgumentException when it is not in the tables */
    public VoltageDrop.Result drop() {
        return isDc()
                ? VoltageDrop.dc(size, material, lengthFt, operatingA / sets, volts)
                : VoltageDrop.ac(phases, size, material, raceway, lengthFt, operatingA / sets, volts, 1);
    }

    /** Whether the tables know a conductor of that size and material. */
    public boolean isInTables() {
        return size.ampacity(material, TemperatureRating.C90).isPresent()
                && size.ampacity(material, terminals).isPresent()
                && size.acOhmsPerKft(material).isPresent();
    }

    public ConductorCase with(ConductorSize other) {
        return copy(deviceA, other, sets);
    }

    /** The same run behind another device, or none. */
    public ConductorCase protectedBy(@Nullable Double otherA) {
        return copy(otherA, size, sets);
    }

    public ConductorCase inSets(int others) {
        return copy(deviceA, size, others);
    }

    private ConductorCase copy(@Nullable Double otherA, ConductorSize other, int others) {
        return new ConductorCase(
                name,
                phases,
                maximumA,
                operatingA,
                volts,
                lengthFt,
                otherA,
                other,
                material,
                insulation,
                terminals,
                ambientC,
                conductors,
                ground,
                groundMaterial,
                raceway,
                racewaySize,
                nipple,
                coverIn,
                location,
                others);
    }
}
