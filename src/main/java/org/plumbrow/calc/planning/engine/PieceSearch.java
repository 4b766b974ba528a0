package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.plumbrow.calc.planning.exact.Answer;
import org.plumbrow.calc.planning.exact.Piece;
import org.plumbrow.calc.planning.exact.PieceSolver;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Threads;

/**
 * Large-neighbourhood search in rounds: of one plan several pieces are drawn and solved side by side; their answers are
 * tried on the plan one after the other in the order drawn. So the number of threads changes the time and nothing else.
 */
final class PieceSearch {

    private static final int PIECES_A_ROUND = 4;
    /** Rounds without a better plan after which it is given up. */
    private static final int PATIENCE = 12;

    private static final int LEAST_WORKS = 12;
    private static final int MOST_WORKS = 150;

    /** Deterministic seconds that a piece may take. */
    private static final double WORK_A_PIECE = 0.03;

    private final BranchModel model;
    private final Decoder decoder;
    private final Dates best;
    private final Dates tried;
    private final Chance chance;
    private final PieceSolver solver;
    private Order order;
    private double works = 50;

    PieceSearch(BranchModel model, Order start, boolean withDisturbance, long seed) {
        this.model = model;
        decoder = new Decoder(model);
        best = decoder.emptyDates();
        tried = decoder.emptyDates();
        chance = new Chance(seed);
        solver = new PieceSolver(withDisturbance, (int) (seed & 0x7FFFFFFF));
        order = start;
        decoder.decode(order, best);
    }

    Order order() {
        return order;
    }

    Dates dates() {
        return best;
    }

    /**
     * @param rounds of four pieces each
     * @param least no plan has less lateness
     */
    void run(int rounds, int threads, long least, Watch watch) {
        int idle = 0;
        for (int round = 0; round < rounds && idle < PATIENCE && goesOn(least, watch); round++) {
            long before = best.cost();
            List<Piece> pieces = new ArrayList<>();
            for (int piece = 0; piece < PIECES_A_ROUND; piece++) {
                pieces.add(new Neighbourhood(model, decoder, best, chance).draw((int) works));
            }
            merge(pieces, solved(pieces, threads));
            idle = best.cost() < before ? 0 : idle + 1;
            watch.progress("Improving pieces of the plan", round + 1, rounds, best.lateness());
        }
    }

    private boolean goesOn(long least, Watch watch) {
        return !watch.isStopped() && best.cost() > least * Dates.LATE;
    }

    private List<Answer> solved(List<Piece> pieces, int threads) {
        List<Callable<Answer>> calls = new ArrayList<>();
        pieces.forEach(piece -> calls.add(() -> solver.improve(piece, WORK_A_PIECE)));
        return Threads.all(calls, threads);
    }

    private void merge(List<Piece> pieces, List<Answer> answers) {
        for (int at = 0; at < answers.size(); at++) {
            Answer answer = answers.get(at);
            boolean proved = answer.kind() == Answer.Kind.OPTIMAL;
            works = Math.max(LEAST_WORKS, Math.min(MOST_WORKS, works * (proved ? 1.05 : 0.9)));
            if (answer.hasDates()) {
                take(pieces.get(at), answer);
            }
        }
    }

    private void take(Piece piece, Answer answer) {
        Order next = Orders.of(model, best);
        for (int number = 0; number < model.size(); number++) {
            if (piece.free()[number]) {
                next.key()[number] = answer.start()[number];
                next.crew()[number] = answer.crew()[number];
                next.notBefore()[number] = Orders.held(model.tasks[number], answer.start()[number]);
            }
        }
        decoder.decode(next, tried);
        if (tried.cost() <= best.cost()) {
            best.take(tried);
            order = next;
        }
    }
}
