package org.plumbrow.calc.planning.replan;

import java.util.Arrays;
import org.plumbrow.calc.planning.search.Order;

/** Changes to one order that can be taken back all together. */
final class Steps {

    final Order order;

    private int[] numbers = new int[64];
    private final Order before;
    private final boolean[] isTouched;
    private int count;

    Steps(Order order) {
        this.order = order;
        before = order.copy();
        isTouched = new boolean[order.key().length];
    }

    /** Has to be called before a task's place in the order is changed. */
    void touch(int number) {
        if (!isTouched[number]) {
            isTouched[number] = true;
            numbers = count == numbers.length ? Arrays.copyOf(numbers, 2 * count) : numbers;
            numbers[count++] = number;
        }
    }

    boolean isTouched(int number) {
        return isTouched[number];
    }

    int count() {
        return count;
    }

    int at(int index) {
        return numbers[index];
    }

    /** What was changed stands from now on. */
    void keep() {
        settle(order, before);
    }

    void takeBack() {
        settle(before, order);
    }

    private void settle(Order from, Order to) {
        for (int at = 0; at < count; at++) {
            int number = numbers[at];
            to.key()[number] = from.key()[number];
            to.crew()[number] = from.crew()[number];
            to.notBefore()[number] = from.notBefore()[number];
            isTouched[number] = false;
        }
        count = 0;
    }
}
