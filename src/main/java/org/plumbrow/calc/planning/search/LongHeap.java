package org.plumbrow.calc.planning.search;

/** A queue of numbers, the smallest first; the JDK's would make an object of each. */
final class LongHeap {

    private final long[] heap;
    private int size;

    LongHeap(int most) {
        heap = new long[most];
    }

    boolean isEmpty() {
        return size == 0;
    }

    void clear() {
        size = 0;
    }

    void add(long number) {
        int at = size++;
        while (at > 0) {
            int parent = (at - 1) >> 1;
            if (heap[parent] <= number) {
                break;
            }
            heap[at] = heap[parent];
            at = parent;
        }
        heap[at] = number;
    }

    long remove() {
        long first = heap[0];
        long last = heap[--size];
        int at = 0;
        while (true) {
            int child = 2 * at + 1;
            if (child >= size) {
                break;
            }
            if (child + 1 < size && heap[child + 1] < heap[child]) {
                child++;
            }
            if (heap[child] >= last) {
                break;
            }
            heap[at] = heap[child];
            at = child;
        }
        heap[at] = last;
        return first;
    }
}
