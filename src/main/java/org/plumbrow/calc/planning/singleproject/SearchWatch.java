package org.plumbrow.calc.planning.singleproject;

/** Who looks on while a search runs. Called from the search's thread. */
public interface SearchWatch {

    /** Lets a search run to the end of its schedules. */
    SearchWatch NOBODY = new SearchWatch() {
        @Override
        public void found(Timetable better) {}

        @Override
        public boolean isOver() {
            return false;
        }
    };

    /** Told of the first timetable of a search and of each that is shorter than all before. */
    void found(Timetable better);

    /** Asked after every few schedules: whether the search is to end. */
    boolean isOver();
}
