package streamwright.cli;

import java.io.PrintWriter;
import streamwright.report.Figures;

/** One line on a terminal that tells how far the planning is, drawn anew in place twice a second until it is closed. */
final class ProgressLine implements AutoCloseable {
    private static final long MILLIS_BETWEEN = 500;
    private static final int WIDTH = 70;

    private final PrintWriter terminal;
    private final Thread drawing = new Thread(this::drawOn, "progress");
    private final long start = System.nanoTime();
    private double cost = Double.POSITIVE_INFINITY;
    private double bound;
    private String doing = "";

    ProgressLine(PrintWriter terminal) {
        this.terminal = terminal;
        drawing.setDaemon(true);
        drawing.start();
    }

    /** @param newCost of the best plan so far; infinite where there is none yet */
    synchronized void show(double newCost, double newBound) {
        cost = newCost;
        bound = newBound;
    }

    /** @param newDoing what is done from now on, instead of planning */
    synchronized void show(String newDoing) {
        doing = newDoing;
    }

    /** Leaves the line empty for what follows; closing again does nothing. */
    @Override
    public void close() {
        if (!drawing.isAlive()) {
            return;
        }
        drawing.interrupt();
        try {
            drawing.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        draw("");
        terminal.print('\r');
        terminal.flush();
    }

    private void drawOn() {
        try {
            while (true) {
                draw(line());
                Thread.sleep(MILLIS_BETWEEN);
            }
        } catch (InterruptedException e) {
            // closed
        }
    }

    private synchronized String line() {
        double seconds = (System.nanoTime() - start) / 1e9;
        return doing.isEmpty() ? text(seconds, cost, bound) : Math.round(seconds) + " s  no plan; " + doing;
    }

    private void draw(String text) {
        terminal.printf("\r%-" + WIDTH + "s", text);
        terminal.flush();
    }

    static String text(double seconds, double cost, double bound) {
        String time = Math.round(seconds) + " s";
        if (!Double.isFinite(cost)) {
            return time + "  no plan yet";
        }
        String gap = bound > 0 && cost > 0 ? "gap " + Figures.percentUp((cost - bound) / cost) : "nothing proved yet";
        return time + "  cost " + Figures.money(cost) + "  bound " + Figures.money(bound) + "  " + gap;
    }
}
