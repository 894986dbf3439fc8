package streamwright.solve;

import java.util.stream.IntStream;
import streamwright.yard.BoardCount;
import streamwright.yard.Work;

/** Work that every repair takes, by counting alone. */
final class RepairLeast {
    private RepairLeast() {}

    /**
     * Minutes. Strings on no board are plugged in. Boards that are dead, are no longer on offer or are more than may be
     * used are hung anew or come down; of the last, every string that was there and nowhere else goes to another board, and
     * those with the fewest may be chosen. Where boards are missing, each new one is hung, gets a hop, and carries a string
     * that was elsewhere or nowhere. No minute is counted twice: of strings as of boards only those that are told apart
     * are added.
     *
     * @param forced strings, outputs and panels on no board
     */
    static double work(Site site, Installed installed, int forced) {
        Work minutes = site.yard.work();
        BoardCount count = site.yard.boardCount();
        int boards = installed.boards.size();
        int surplus = installed.surplus(count);
        int dead = (int) IntStream.range(0, boards).filter(installed::dead).count();
        int[] alone = new int[boards];
        installed.seats.forEach(seats -> {
            if (seats.size() == 1) {
                alone[seats.get(0).board()]++;
            }
        });
        int moved = IntStream.of(alone).sorted().limit(surplus).sum();
        int news = installed.missing(count);
        double down = installed.lost + Math.max(dead, surplus);
        return minutes.board() * (down + news)
                + minutes.hop() * news
                + minutes.lead() * (moved + Math.max(forced, news));
    }
}
