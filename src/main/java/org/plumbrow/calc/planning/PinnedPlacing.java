package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * Places what is pinned. A date that was told to somebody is kept even where it clashes with another booking or with a
 * predecessor: the plan shows the clash and says so. Only a date on which nobody works cannot be kept.
 */
final class PinnedPlacing {

    private final Board board;
    private final Placing placing;

    PinnedPlacing(Placing placing) {
        this.placing = placing;
        this.board = placing.board;
    }

    void place(int number) {
        Fix.Pinned pin = (Fix.Pinned) board.activity(number).fix();
        int slot = slotOf(number, pin.start());
        Readiness at = new Readiness(slot, new Bound.Pin(pin.start()));
        Work work = board.activity(number).work();
        if (slot >= board.time.size()) {
            placing.noRoom(number);
        } else if (work instanceof Work.Waiting wait) {
            placing.waiting(number, wait, at);
        } else if (work instanceof Work.AtDesk desk) {
            placing.atDesk(number, desk.halfDays(), at);
        } else {
            byCrew(number, pin, at);
        }
    }

    private int slotOf(int number, HalfDay pinned) {
        HalfDay today = board.problem.today();
        if (pinned.isBefore(today)) {
            board.find(
                    number,
                    Finding.Kind.PIN_TOO_EARLY,
                    "%s was fixed on %s, which is past, and has not begun. Record its start or choose another day."
                            .formatted(board.name(number), DayWords.of(pinned.date())));
            return board.time.today;
        }
        board.problem
                .calendar()
                .whyClosed(pinned.date())
                .ifPresent(reason -> board.find(
                        number,
                        Finding.Kind.PIN_ON_DAY_OFF,
                        "%s is fixed on %s, a day off (%s). Choose another day."
                                .formatted(board.name(number), DayWords.of(pinned.date()), reason)));
        return board.time.axis.atOrAfter(pinned);
    }

    private void byCrew(int number, Fix.Pinned pin, Readiness at) {
        List<Integer> able =
                pin.crewId().map(id -> List.of(board.crewNumbers.get(id))).orElseGet(() -> placing.choice.of(number));
        if (able.isEmpty()) {
            board.find(number, Finding.Kind.NO_CREW, placing.choice.whyNobody(number));
            return;
        }
        Optional<Spot> spot = free(number, able, at).or(() -> regardless(number, able.get(0), at));
        spot.ifPresentOrElse(
                found -> {
                    sayWhatClashes(number, found, at);
                    placing.book(number, found);
                },
                () -> placing.noRoom(number));
    }

    private Optional<Spot> free(int number, List<Integer> crews, Readiness at) {
        return crews.stream()
                .map(crew -> placing.search.first(
                        number, crew, placing.choice.halfDays(number, crew), at.slot(), at.bound(), board.time.size()))
                .flatMap(Optional::stream)
                .filter(spot -> spot.start() == at.slot())
                .findFirst();
    }

    private Optional<Spot> regardless(int number, int crew, Readiness at) {
        return placing.search.regardless(number, crew, placing.choice.halfDays(number, crew), at.slot(), at.bound());
    }

    private void sayWhatClashes(int number, Spot spot, Readiness at) {
        CrewTimeline crew = board.crews[spot.crew()];
        String day = DayWords.of(board.time.at(at.slot()).date());
        if (spot.start() != at.slot()) {
            board.find(
                    number,
                    Finding.Kind.PIN_DURING_ABSENCE,
                    "%s is fixed on %s, when %s is away. Choose another crew or day."
                            .formatted(board.name(number), day, crew.crew.name()));
        }
        if (!placing.choice.ableTo(number).contains(spot.crew())) {
            board.find(
                    number,
                    Finding.Kind.PIN_WITHOUT_SKILL,
                    "%s is given to %s, who may not do it. Choose another crew."
                            .formatted(board.name(number), crew.crew.name()));
        }
        int busy = crew.lastBusyIn(spot.index(), spot.length());
        if (busy >= 0) {
            board.find(
                    number,
                    Finding.Kind.BOOKED_TWICE,
                    "%s already works on %s on %s. %s is fixed there too: choose another crew or day."
                            .formatted(
                                    crew.crew.name(),
                                    board.name(crew.occupant(busy)),
                                    DayWords.of(
                                            board.time.at(crew.present[busy]).date()),
                                    board.name(number)));
        }
        equipmentClash(number, spot);
    }

    private void equipmentClash(int number, Spot spot) {
        for (EquipmentNeed need : board.activity(number).equipment()) {
            EquipmentTimeline timeline = board.equipment.get(need.equipmentId());
            if (timeline == null || timeline.lastShortage(spot.start(), spot.finish(), need.count()) >= 0) {
                board.find(
                        number,
                        Finding.Kind.EQUIPMENT_SHORT,
                        "%s is fixed on %s, but too few of %s are free then."
                                .formatted(
                                        board.name(number),
                                        DayWords.of(board.time.at(spot.start()).date()),
                                        board.words().equipment(need.equipmentId())));
            }
        }
    }

    /** Once everything has its date: which pinned starts lie before what must come first. */
    void findBrokenOrder() {
        for (int number = 0; number < board.placed.length; number++) {
            if (board.activity(number).fix() instanceof Fix.Pinned && board.placed[number] != null) {
                orderOf(number);
            }
        }
    }

    private void orderOf(int number) {
        Activity activity = board.activity(number);
        HalfDay start = board.placed[number].start();
        List<Predecessor> links = activity.predecessors();
        for (int link = 0; link < links.size(); link++) {
            Placement before = board.placed[board.network.predecessors[number][link]];
            if (before == null) {
                board.find(
                        number,
                        Finding.Kind.PIN_BEFORE_PREDECESSOR,
                        "%s is fixed on %s, but %s, which comes first, has no date."
                                .formatted(
                                        board.name(number),
                                        DayWords.of(start.date()),
                                        board.words().activity(links.get(link).activityId())));
            } else if (board.time.readyAfter(before.finish(), links.get(link)) > board.time.axis.atOrAfter(start)) {
                board.find(
                        number,
                        Finding.Kind.PIN_BEFORE_PREDECESSOR,
                        "%s is fixed on %s, but %s, which comes first, ends %s."
                                .formatted(
                                        board.name(number),
                                        DayWords.of(start.date()),
                                        board.words().activity(before.activityId()),
                                        PlanWords.when(before.finish())));
            }
        }
    }
}
