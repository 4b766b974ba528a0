package org.plumbrow.calc.planning.engine;

/** Who looks on while a plan is made, and may stop it; what is found by then stands. */
public interface Watch {

    /** Nobody looks on. */
    Watch NOBODY = new Watch() {
        @Override
        public boolean isStopped() {
            return false;
        }

        @Override
        public void progress(String stage, int done, int of, long lateness) {}
    };

    boolean isStopped();

    /**
     * @param stage what is being done, in words
     * @param of 1 where a stage is not counted
     * @param lateness weighted half-days late of the best plan so far
     */
    void progress(String stage, int done, int of, long lateness);
}
