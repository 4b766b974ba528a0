package org.plumbrow.calc.planning;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.plumbrow.calc.calendar.HalfDay;

/** Places what is settled before any planning: what is done, has begun, or is pinned to a date. */
final class FixedPlacing {

    private final Board board;
    private final Placing placing;

    FixedPlacing(Placing placing) {
        this.placing = placing;
        this.board = placing.board;
    }

    void placeAll() {
        inTime(Fix.Done.class, Fix.Done::start).forEach(this::placeDone);
        inTime(Fix.Expected.class, Fix.Expected::start).forEach(this::placeExpected);
        inTime(Fix.Begun.class, Fix.Begun::start).forEach(this::placeBegun);
        PinnedPlacing pins = new PinnedPlacing(placing);
        inTime(Fix.Pinned.class, Fix.Pinned::start).forEach(pins::place);
    }

    private <F extends Fix> List<Integer> inTime(Class<F> kind, Function<F, HalfDay> start) {
        Function<Integer, HalfDay> startOf = number -> start.apply(fix(number, kind));
        return IntStream.range(0, board.placed.length)
                .filter(number -> kind.isInstance(board.activity(number).fix()))
                .boxed()
                .sorted(Comparator.comparing(startOf))
                .toList();
    }

    private <F extends Fix> F fix(int number, Class<F> kind) {
        return kind.cast(board.activity(number).fix());
    }

    private void placeDone(int number) {
        Fix.Done done = fix(number, Fix.Done.class);
        board.place(number, done.start(), done.finish(), new Bound.Finished(done.finish()));
    }

    private void placeExpected(int number) {
        Fix.Expected expected = fix(number, Fix.Expected.class);
        board.place(number, expected.start(), notPast(expected.answer()), new Bound.Underway(expected.start()));
    }

    /** An overdue answer is counted for today: it has not come, and nothing better is known. */
    private HalfDay notPast(HalfDay answer) {
        HalfDay today = board.problem.today();
        return answer.isBefore(today) ? today : answer;
    }

    private void placeBegun(int number) {
        Fix.Begun begun = fix(number, Fix.Begun.class);
        Work work = board.activity(number).work();
        Readiness now = new Readiness(board.time.today, new Bound.Underway(begun.start()));
        if (work instanceof Work.Waiting wait) {
            HalfDay answer = notPast(board.time.answered(begun.start(), wait));
            board.place(number, begun.start(), answer, now.bound());
        } else if (work instanceof Work.AtDesk) {
            placing.atDesk(number, begun.halfDaysLeft(), now);
        } else {
            List<Integer> crews = begun.crewId()
                    .map(id -> List.of(board.crewNumbers.get(id)))
                    .orElseGet(() -> placing.choice.of(number));
            placing.byFirstCrew(number, crews, crew -> begun.halfDaysLeft(), now);
        }
    }
}
