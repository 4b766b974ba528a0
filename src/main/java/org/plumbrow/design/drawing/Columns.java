package org.plumbrow.design.drawing;

import org.plumbrow.design.DesignFacts;

/**
 * Where the columns of a one-line stand.
 *
 * @param sources left edge of the source circuits; below 0 where they are on another sheet
 * @param combiner middle of the combiners; below 0 where there are none
 * @param inverter middle of the inverters
 * @param first left edge of the first device
 * @param step from device to device; 0 where devices and service are on another sheet
 * @param count of columns of devices
 */
record Columns(double sources, double combiner, double inverter, double first, double step, int count) {

    static final double SOURCE_WIDTH = 214;
    private static final double COMBINER_WIDTH = 100;
    static final double INVERTER_WIDTH = 136;
    private static final double WIDEST_STEP = 150;

    static Columns whole(DesignFacts facts, int depth) {
        double x = Frame.LEFT + SOURCE_WIDTH;
        double combiner = -1;
        if (!facts.combiners().isEmpty()) {
            combiner = x + COMBINER_WIDTH / 2;
            x += COMBINER_WIDTH;
        }
        return withDevices(Frame.LEFT, combiner, x, depth);
    }

    static Columns sources(DesignFacts facts) {
        Columns whole = whole(facts, 1);
        return new Columns(whole.sources, whole.combiner, whole.inverter, whole.first, 0, 0);
    }

    static Columns service(int depth) {
        return withDevices(-1, -1, Frame.LEFT, depth);
    }

    private static Columns withDevices(double sources, double combiner, double left, int depth) {
        double first = left + INVERTER_WIDTH;
        double step = (ServiceStack.LEFT - first) / Math.max(1, depth);
        return new Columns(sources, combiner, left + INVERTER_WIDTH / 2, first, step, depth);
    }

    boolean hasSources() {
        return sources >= 0;
    }

    boolean hasService() {
        return step > 0;
    }

    double labelWidth() {
        return Math.min(step, WIDEST_STEP) - 12;
    }

    /** Middle of the column of a device that has so many before it on its way from the service. */
    double device(int fromService) {
        return first + step * (count - fromService - 0.5);
    }

    /** Left edge of that column. */
    double edge(int fromService) {
        return first + step * (count - fromService - 1);
    }
}
