package org.plumbrow.cutover.ridethrough;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.design.part.Cells;

/** What people wrote of one site, kind by kind. */
public record OnSite(Map<LoadKind, Kept> kinds) {

    public OnSite {
        kinds = Map.copyOf(kinds);
    }

    /** @param version of the kind; -1 while nobody has written it */
    public record Kept(List<Cells> rows, long version) {
        static final Kept NOTHING = new Kept(List.of(), -1);

        public Kept {
            rows = List.copyOf(rows);
        }
    }

    Kept kept(LoadKind kind) {
        return kinds.getOrDefault(kind, Kept.NOTHING);
    }

    public List<Cells> rows(LoadKind kind) {
        return kept(kind).rows();
    }

    Optional<Cells> only(LoadKind kind) {
        return rows(kind).stream().findFirst();
    }

    /** Is anything written that could suffer? Without it nobody knows how long the site stands. */
    public boolean saysWhatSuffers() {
        return List.of(LoadKind.HOUSES, LoadKind.TANK, LoadKind.STORES, LoadKind.GREENHOUSES, LoadKind.HOME).stream()
                .anyMatch(kind -> !rows(kind).isEmpty());
    }

    public boolean hasGenerator() {
        return !rows(LoadKind.GENERATOR).isEmpty();
    }

    public boolean hasAnimals() {
        return !rows(LoadKind.HOUSES).isEmpty();
    }

    public boolean hasMilk() {
        return !rows(LoadKind.TANK).isEmpty();
    }

    public boolean hasStores() {
        return !rows(LoadKind.STORES).isEmpty();
    }

    /** Somebody depends on electrical equipment. */
    public boolean medical() {
        return only(LoadKind.HOME).map(home -> home.yes("medical")).orElse(false);
    }

    public boolean medicalAgreed() {
        return only(LoadKind.HOME).map(home -> home.yes("agreed")).orElse(false);
    }
}
