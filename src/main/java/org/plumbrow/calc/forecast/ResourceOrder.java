package org.plumbrow.calc.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;

/**
 * Who hands crew and equipment to whom: a crew goes through its works in the plan's order, and each piece of equipment goes
 * from user to user (a free piece that came back last before the start is taken, so that as few as possible wait).
 */
final class ResourceOrder {

    private final ForecastQuestion question;
    private final List<Activity> order;
    private final Map<String, List<Step.Arc>> arcs = new HashMap<>();

    ResourceOrder(ForecastQuestion question, List<Activity> order) {
        this.question = question;
        this.order = order;
    }

    Map<String, List<Step.Arc>> arcs(Map<String, Integer> place) {
        Map<String, Integer> lastOfCrew = new HashMap<>();
        Map<String, Piece[]> pieces = new HashMap<>();
        question.problem().equipment().forEach(kind -> pieces.put(kind.id(), pieces(kind)));
        for (Activity activity : order) {
            if (activity.fix() instanceof Fix.Done) {
                continue;
            }
            int own = place.get(activity.id());
            Placement placement = question.plan().of(activity.id()).orElseThrow();
            placement.crewId().ifPresent(crew -> handOn(activity, lastOfCrew.put(crew, own)));
            for (EquipmentNeed need : activity.equipment()) {
                take(activity, own, placement, need.count(), pieces.getOrDefault(need.equipmentId(), new Piece[0]));
            }
        }
        return arcs;
    }

    private static final class Piece {
        private @Nullable Integer user;
        private HalfDay free = HalfDay.morning(LocalDate.MIN);
    }

    private static Piece[] pieces(Equipment kind) {
        Piece[] pieces = new Piece[kind.count()];
        Arrays.setAll(pieces, i -> new Piece());
        return pieces;
    }

    private void take(Activity activity, int own, Placement placement, int count, Piece[] pieces) {
        List<Piece> free = Arrays.stream(pieces)
                .filter(piece -> piece.free.isBefore(placement.start()))
                .sorted(Comparator.comparing((Piece piece) -> piece.free).reversed())
                .limit(count)
                .toList();
        for (Piece piece : free) {
            handOn(activity, piece.user);
            piece.user = own;
            piece.free = placement.finish();
        }
    }

    private void handOn(Activity activity, @Nullable Integer before) {
        if (before != null) {
            arcs.computeIfAbsent(activity.id(), id -> new ArrayList<>()).add(new Step.Arc(before, 0, 0));
        }
    }
}
